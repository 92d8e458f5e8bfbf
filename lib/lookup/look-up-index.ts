import { fold } from "../glossary/fold";
import type { Kind, Language, MODIFIER_ROLES, SHAPES, STANDS } from "../glossary/vocabulary";

/** The part of an entry that finding and listing it needs. Absent lists are empty lists. */
export interface LookUpEntry {
  slug: string;
  headword: string;
  lang: Language;
  kind: Kind;
  tier: 1 | 2 | 3;
  /** Stands with the signs, not under a language. */
  isSign?: true;
  /** A compound that is read as its parts (allegro con brio). */
  isComposed?: true;
  /** A direction in plain English (slower): whoever types it most likely wants the term for it. */
  isPlain?: true;
  meaning: string;
  literal?: string;
  spellings?: string[];
  abbreviations?: string[];
  /** Only those that the general endings of the language do not explain. */
  inflections?: string[];
  /** Slug of the term a sign stands for. */
  means?: string;
  modifies?: (typeof MODIFIER_ROLES)[number];
  /** How the headword sounds to English ears, letters of `sound-key.ts`; from its IPA. */
  sound?: string;
  /** What it asks, as concepts of plain English (see `ask-concepts.ts`). */
  asks?: string[];
  looks?: string[];
  shape?: (typeof SHAPES)[number];
  stands?: (typeof STANDS)[number];
  /** SMuFL name. */
  glyph?: string;
}

/** As shipped: a slug that follows from the headword is left out. */
export type PackedEntry = Omit<LookUpEntry, "slug"> & { slug?: string };

/** All that look-up reads: made at build time, shipped as one JSON file. */
export interface LookUpIndex {
  entries: PackedEntry[];
  /** Folded spelling claimed by two entries, to its slugs with the likelier first. */
  order: Record<string, string[]>;
}

/** The slug most headwords have: ASCII, hyphens. */
export function usualSlug(headword: string): string {
  return fold(headword).replace(/[^a-z0-9]+/g, "-");
}

export function unpackEntries({ entries }: LookUpIndex): LookUpEntry[] {
  return entries.map((entry) => ({ ...entry, slug: entry.slug ?? usualSlug(entry.headword) }));
}

/** Why an entry was found. */
export type Why =
  | "exact"
  | "spelling"
  | "abbreviation"
  | "inflection"
  /** The query is a piece of a longer phrase: "di valse". */
  | "phrase"
  /** One of the parts of a compound query. */
  | "part"
  /** The first letters of it. */
  | "beginning"
  | "misspelling"
  | "sound"
  | "meaning"
  | "looks"
  /** The term that a sign found stands for, or the sign of a term. */
  | "means";

export interface LookUpResult {
  slug: string;
  headword: string;
  why: Why;
  /** 0 to 1; comparable within one list only. */
  score: number;
}
