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

/**
 * All that look-up reads, as shipped: a column of text for every field, its
 * rows by entry. Columns compress a seventh better than rows of objects.
 */
export interface LookUpIndex {
  columns: Record<keyof LookUpEntry, string>;
  /** Folded spelling claimed by two entries, to its slugs with the likelier first. */
  order: Record<string, string[]>;
}

const ROW = "\n";
const ITEM = "|";

/** How each field stands in its column; an absent field is an empty cell. */
const FIELDS: Readonly<Record<keyof LookUpEntry, "text" | "list" | "flag" | "number">> = {
  slug: "text",
  headword: "text",
  lang: "text",
  kind: "text",
  tier: "number",
  isSign: "flag",
  isComposed: "flag",
  isPlain: "flag",
  meaning: "text",
  literal: "text",
  spellings: "list",
  abbreviations: "list",
  inflections: "list",
  means: "text",
  modifies: "text",
  sound: "text",
  asks: "list",
  looks: "list",
  shape: "text",
  stands: "text",
  glyph: "text",
};
const NAMES = Object.keys(FIELDS).filter((name): name is keyof LookUpEntry => name in FIELDS);

/** The slug most headwords have: ASCII, hyphens. It is left out of the file. */
function usualSlug(headword: string): string {
  return fold(headword).replace(/[^a-z0-9]+/g, "-");
}

export function packIndex(
  entries: readonly LookUpEntry[],
  order: LookUpIndex["order"],
): LookUpIndex {
  const cell = (entry: LookUpEntry, name: keyof LookUpEntry): string => {
    const value = entry[name];
    if (name === "slug" && value === usualSlug(entry.headword)) return "";
    if (value === undefined) return "";
    if (value === true) return "1";
    return Array.isArray(value) ? value.join(ITEM) : String(value);
  };
  const columns = Object.fromEntries(
    NAMES.map((name) => [name, entries.map((entry) => cell(entry, name)).join(ROW)]),
  );
  return { columns: columns as LookUpIndex["columns"], order };
}

export function unpackEntries({ columns }: LookUpIndex): LookUpEntry[] {
  const cells = NAMES.map((name) => columns[name].split(ROW));
  const count = cells[0]?.length ?? 0;
  return Array.from({ length: count }, (_, row) => {
    const entry: Record<string, unknown> = {};
    NAMES.forEach((name, k) => {
      const cell = cells[k]?.[row] ?? "";
      if (cell !== "") entry[name] = readCell(cell, FIELDS[name]);
    });
    entry.slug ??= usualSlug(String(entry.headword));
    // The file is made by `packIndex` from entries that the schema has checked.
    return entry as unknown as LookUpEntry;
  });
}

function readCell(cell: string, form: (typeof FIELDS)[keyof LookUpEntry]): unknown {
  if (form === "list") return cell.split(ITEM);
  if (form === "number") return Number(cell);
  return form === "flag" ? true : cell;
}
