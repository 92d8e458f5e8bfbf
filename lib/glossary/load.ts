/** Reads the entries from the content folder. Node only: the browser gets the built index. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Glossary, makeGlossary } from "./glossary";
import { type ParsedEntry, parseEntry } from "./parse-entry";
import type { Entry } from "./schema";

export const ENTRIES_FOLDER = join(/*turbopackIgnore: true*/ process.cwd(), "content", "entries");

/** All entry files as paths below the folder (`it/allegro.mdx`), sorted. */
export function listEntryFiles(folder = ENTRIES_FOLDER): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((file) => file.replaceAll("\\", "/"))
    .filter((file) => file.endsWith(".mdx"))
    .sort();
}

export function parseAllEntries(folder = ENTRIES_FOLDER): ParsedEntry[] {
  return listEntryFiles(folder).map((file) =>
    parseEntry(file, readFileSync(join(folder, file), "utf8")),
  );
}

let loaded: Glossary | undefined;

/**
 * The whole glossary, read once a process.
 * @throws Error naming the first file that does not hold to the schema and how many do not
 */
export function loadGlossary(): Glossary {
  if (loaded) return loaded;
  const entries: Entry[] = [];
  const broken: string[] = [];
  for (const { entry, problems } of parseAllEntries()) {
    if (entry) entries.push(entry);
    else broken.push(`${problems[0]?.file}:${problems[0]?.line}: ${problems[0]?.found}`);
  }
  if (broken.length > 0) {
    throw new Error(
      `content/entries/${broken[0]} (${broken.length} broken in all). Run \`npm run check:content\`.`,
    );
  }
  loaded = makeGlossary(entries);
  return loaded;
}

/** The MDX body of an entry. */
export function readEntryBody(entry: Pick<Entry, "slug" | "folder">): string {
  const file = `${entry.folder}/${entry.slug}.mdx`;
  return parseEntry(file, readFileSync(join(ENTRIES_FOLDER, file), "utf8")).body;
}
