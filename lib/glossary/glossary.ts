import type { Entry } from "./schema";

/** All entries, with the ways to reach them. Built once, never changed. */
export interface Glossary {
  /** By slug, in slug order. */
  entries: Entry[];
  bySlug: ReadonlyMap<string, Entry>;
  /** `staccato`, `wedge:crescendo`… to the entry drawn as that sign. */
  byElement: ReadonlyMap<string, Entry>;
}

/** @param entries already validated; on a slug or element claimed twice the first stands (the content check reports it) */
export function makeGlossary(entries: readonly Entry[]): Glossary {
  const sorted = [...entries].sort((a, b) => (a.slug < b.slug ? -1 : a.slug > b.slug ? 1 : 0));
  const bySlug = new Map<string, Entry>();
  const byElement = new Map<string, Entry>();
  for (const entry of sorted) {
    if (!bySlug.has(entry.slug)) bySlug.set(entry.slug, entry);
    for (const element of entry.sign?.elements ?? []) {
      if (!byElement.has(element)) byElement.set(element, entry);
    }
  }
  return { entries: sorted, bySlug, byElement };
}

/**
 * The entry for a sign of a score.
 * @param element MusicXML element name
 * @param value what changes its meaning; the plain element answers when no entry names the value
 */
export function entryForSign(
  glossary: Glossary,
  element: string,
  value: string | null,
): Entry | undefined {
  const exact = value === null ? undefined : glossary.byElement.get(`${element}:${value}`);
  return exact ?? glossary.byElement.get(element);
}

/** The word a sign stands for (the dot means staccato), or the entry itself. */
export function meantBy(glossary: Glossary, entry: Entry): Entry {
  return (entry.means === undefined ? undefined : glossary.bySlug.get(entry.means)) ?? entry;
}
