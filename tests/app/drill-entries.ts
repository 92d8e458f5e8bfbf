import { drillEntries } from "@/app/drill/prompt-entries";
import { LINE_SIGNS } from "@/app/ui/line-signs";
import { toClientEntry } from "@/lib/glossary/client-entry";
import { loadGlossary } from "@/lib/glossary/load";

/** The glossary as the browser has it, and as the drill asks about it. */
export const clientEntries = new Map(
  loadGlossary().entries.map((entry) => [entry.slug, toClientEntry(entry)]),
);
export const isDrawn = (slug: string) => slug in LINE_SIGNS;
export const pool = drillEntries(clientEntries, isDrawn);

export function drillEntry(slug: string) {
  const entry = pool.find((e) => e.slug === slug);
  if (!entry) throw new RangeError(`the glossary has no ${slug}`);
  return entry;
}
