/** The works cited and the spellings shared on purpose, from content. Node only. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import matter from "gray-matter";
import { z } from "zod";

const CONTENT = join(/*turbopackIgnore: true*/ process.cwd(), "content");

const sourceSchema = z.strictObject({
  title: z.string(),
  by: z.string().optional(),
  year: z.union([z.string(), z.number()]),
  publisher: z.string(),
  used: z.string(),
});
export type Source = z.infer<typeof sourceSchema>;

const sharedSchema = z.record(
  z.string(),
  z.strictObject({ order: z.array(z.string()).min(2), reason: z.string().min(10) }),
);

/** gray-matter carries the YAML reader; a file of YAML alone is read as front matter. */
function readYaml(file: string): unknown {
  return matter(`---\n${readFileSync(join(CONTENT, file), "utf8")}\n---\n`, {}).data;
}

export function loadSources(): Map<string, Source> {
  return new Map(
    Object.entries(z.record(z.string(), sourceSchema).parse(readYaml("sources.yaml"))),
  );
}

export function loadSourceKeys(): Set<string> {
  return new Set(loadSources().keys());
}

/** Folded spelling to the reason it may be claimed twice. */
export function loadSharedSpellings(): Map<string, string> {
  const shared = sharedSchema.parse(readYaml("shared-spellings.yaml"));
  return new Map(Object.entries(shared).map(([spelling, { reason }]) => [spelling, reason]));
}

/** Folded spelling to its entries, the one the reader takes first. */
export function loadSpellingOrder(): Map<string, string[]> {
  const shared = sharedSchema.parse(readYaml("shared-spellings.yaml"));
  return new Map(Object.entries(shared).map(([spelling, { order }]) => [spelling, order]));
}
