/** Outside facts that lie beside the repository, never in it. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

export const SHARED = join(import.meta.dirname, "..", "..", "..", "shared");

/** True where the facts are there; says so where they are not. */
export function hasShared(what: string): boolean {
  if (existsSync(join(SHARED, what))) return true;
  console.log(`skipped: no ../shared (${what})`);
  return false;
}

export function sharedBytes(path: string): Uint8Array {
  return readFileSync(join(SHARED, path));
}

export function sharedText(path: string): string {
  return readFileSync(join(SHARED, path), "utf8");
}

/** Rows of a tab-separated table as objects by column name. */
export function sharedTable(path: string): Record<string, string>[] {
  const [head = "", ...lines] = sharedText(path).replace(/\n$/, "").split("\n");
  const names = head.split("\t");
  return lines.map((line) => {
    const cells = line.split("\t");
    return Object.fromEntries(names.map((name, i) => [name, cells[i] ?? ""]));
  });
}
