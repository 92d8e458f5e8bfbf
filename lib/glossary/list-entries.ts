import { fold } from "./fold";
import type { Entry } from "./schema";
import { AXES, type Axis, LANGUAGES } from "./vocabulary";

/** Where an entry is listed: under its language, or with the signs. */
export const SHELVES = [...LANGUAGES, "signs"] as const;
export type Shelf = (typeof SHELVES)[number];

export interface EntryFilter {
  axis?: Axis;
  tier?: 1 | 2 | 3;
  shelf?: Shelf;
}

export interface ShelfOfEntries {
  shelf: Shelf;
  /** By first letter without its accent, A to Z; what opens with anything else stands under "#". */
  letters: { letter: string; entries: Entry[] }[];
}

/** A filter from the address of a page; what it does not know it leaves out. */
export function parseEntryFilter(
  params: Readonly<Record<string, string | string[] | undefined>>,
): EntryFilter {
  const first = (key: string) => {
    const value = params[key];
    return Array.isArray(value) ? value[0] : value;
  };
  const tier = Number(first("tier"));
  return {
    axis: AXES.find((axis) => axis === first("axis")),
    tier: tier === 1 || tier === 2 || tier === 3 ? tier : undefined,
    shelf: SHELVES.find((shelf) => shelf === first("lang")),
  };
}

/** The address of a list, its parts always in the same order; "" for the whole list. */
export function entryFilterQuery({ shelf, axis, tier }: EntryFilter): string {
  const params = new URLSearchParams();
  if (shelf) params.set("lang", shelf);
  if (axis) params.set("axis", axis);
  if (tier) params.set("tier", String(tier));
  const query = params.toString();
  return query === "" ? "" : `?${query}`;
}

export function shelfOf(entry: Entry): Shelf {
  return entry.folder === "signs" ? "signs" : entry.lang;
}

export function filterEntries(entries: readonly Entry[], filter: EntryFilter): Entry[] {
  return entries.filter(
    (entry) =>
      (filter.axis === undefined || entry.asks[filter.axis] !== undefined) &&
      (filter.tier === undefined || entry.tier === filter.tier) &&
      (filter.shelf === undefined || shelfOf(entry) === filter.shelf),
  );
}

/** Entries as a dictionary sets them: by shelf, then letter, then headword without accents. */
export function shelveEntries(entries: readonly Entry[]): ShelfOfEntries[] {
  return SHELVES.map((shelf) => ({
    shelf,
    letters: byLetter(entries.filter((entry) => shelfOf(entry) === shelf)),
  })).filter(({ letters }) => letters.length > 0);
}

function byLetter(entries: readonly Entry[]): ShelfOfEntries["letters"] {
  const keyed = entries
    .map((entry) => ({ entry, key: fold(entry.headword) }))
    .sort((a, b) => compare(a.key, b.key) || compare(a.entry.slug, b.entry.slug));
  const letters = new Map<string, Entry[]>();
  for (const { entry, key } of keyed) {
    const initial = key.charAt(0).toUpperCase();
    const letter = /^[A-Z]$/.test(initial) ? initial : "#";
    const group = letters.get(letter);
    if (group) group.push(entry);
    else letters.set(letter, [entry]);
  }
  return [...letters].map(([letter, group]) => ({ letter, entries: group }));
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
