import matter from "gray-matter";
import { type Entry, frontMatterSchema } from "./schema";

export interface EntryProblem {
  file: string;
  line: number;
  found: string;
  remedy: string;
}

export interface ParsedEntry {
  entry: Entry | null;
  body: string;
  problems: EntryProblem[];
}

const KEY_ORDER = Object.keys(frontMatterSchema.shape);

/**
 * Reads one entry file.
 * @param file its path below content/entries: `it/allegro.mdx`
 * @returns the entry, or null with every problem at once; never throws
 */
export function parseEntry(file: string, source: string): ParsedEntry {
  const problems: EntryProblem[] = [];
  const report = (key: string, found: string, remedy: string) =>
    problems.push({ file, line: lineOf(source, key), found, remedy });

  let data: unknown;
  let body = "";
  try {
    // An options argument keeps gray-matter from caching (its cache drops errors).
    const parsed = matter(source, {});
    data = parsed.data;
    body = parsed.content.trim();
  } catch (error) {
    report("---", `front matter is not YAML (${firstLine(error)})`, "Quote texts holding a colon.");
    return { entry: null, body, problems };
  }
  if (data && typeof data === "object" && "reviewed" in data && data.reviewed instanceof Date) {
    data.reviewed = data.reviewed.toISOString().slice(0, 10);
  }

  const result = frontMatterSchema.safeParse(data);
  if (!result.success) {
    for (const issue of result.error.issues) {
      const key = String(issue.path[0] ?? "---");
      report(key, `${issue.path.join(".") || "front matter"}: ${issue.message}`, remedyFor(key));
    }
    return { entry: null, body, problems };
  }
  const keys = Object.keys(data as object);
  const wanted = KEY_ORDER.filter((key) => keys.includes(key));
  if (keys.join() !== wanted.join()) {
    const first = keys.find((key, i) => key !== wanted[i]) ?? "---";
    report(first, `keys out of order at "${first}"`, "Run with --fix to put them in order.");
  }
  const [folder = "", name = ""] = file.split("/");
  const slug = name.replace(/\.mdx$/, "");
  if (folder !== "signs" && folder !== result.data.lang) {
    report("lang", `lang ${result.data.lang} in folder ${folder}`, "Move the file or mend lang.");
  }
  return { entry: { ...result.data, slug, folder }, body, problems };
}

function remedyFor(key: string): string {
  return KEY_ORDER.includes(key)
    ? `See \`${key}\` in lib/glossary/schema.ts and its lists in vocabulary.ts.`
    : `Remove it, or use one of: ${KEY_ORDER.join(", ")}.`;
}

function lineOf(source: string, key: string): number {
  const lines = source.split("\n");
  const at = lines.findIndex((line) => line.startsWith(`${key}:`));
  return at < 0 ? 1 : at + 1;
}

function firstLine(error: unknown): string {
  return (error instanceof Error ? error.message : String(error)).split("\n")[0] ?? "";
}
