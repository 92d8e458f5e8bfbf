/** The demo pieces as content lists them. Node only. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import matter from "gray-matter";
import { z } from "zod";

const pieceSchema = z.strictObject({
  slug: z.string(),
  file: z.string(),
  title: z.string(),
  instrument: z.string(),
  purpose: z.string(),
  level: z.string(),
});
export type DemoPiece = z.infer<typeof pieceSchema>;

export function loadPieces(): DemoPiece[] {
  const file = join(/*turbopackIgnore: true*/ process.cwd(), "content", "pieces", "index.yaml");
  if (!existsSync(file)) return [];
  const yaml = readFileSync(file, "utf8");
  return z
    .array(pieceSchema)
    .parse(matter(`---\npieces:\n${yaml.replace(/^/gm, "  ")}\n---\n`, {}).data.pieces ?? []);
}
