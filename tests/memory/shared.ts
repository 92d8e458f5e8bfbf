import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import type { z } from "zod";

/** Reads a JSON file of ../shared/reference/memory; null (and a line in the log) where it is absent. */
export function readShared<T>(name: string, schema: z.ZodType<T>): T | null {
  const file = path.join(import.meta.dirname, "../../../shared/reference/memory", name);
  if (!existsSync(file)) {
    console.log("skipped: no ../shared");
    return null;
  }
  return schema.parse(JSON.parse(readFileSync(file, "utf8")));
}
