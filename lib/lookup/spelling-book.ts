import { foldTight } from "../glossary/fold";
import type { Lexicon, Via, Written } from "../words/lexicon";
import { tokenise } from "../words/tokenise";
import type { LookUpEntry, LookUpIndex } from "./look-up-index";

/** One way an entry is written. */
export interface Spelling {
  /** Place of the entry in the index. */
  entry: number;
  via: Via;
}

/** Every listed spelling, by what people may type of it. */
export interface SpellingBook {
  /** Folded words joined by a space. Compounds read as parts are here too. */
  phrases: ReadonlyMap<string, readonly Spelling[]>;
  /** The same without spaces and stops: "d.s.alcoda". */
  tight: ReadonlyMap<string, readonly Spelling[]>;
  /** For `resolveWord` and for splitting: compounds read as parts and plain English are left out. */
  lexicon: Lexicon;
  /** Word to the phrases of two words or more that hold it. */
  holding: ReadonlyMap<string, readonly string[]>;
}

const RANK: Record<Via, number> = { headword: 0, spelling: 1, abbreviation: 2, inflection: 3 };

/** Words of a phrase as compared; "D.C." is one word. */
export function keysOf(text: string): string[] {
  return tokenise(text).map((token) => token.key);
}

export function makeSpellingBook(
  entries: readonly LookUpEntry[],
  order: LookUpIndex["order"],
): SpellingBook {
  const phrases = new Map<string, Spelling[]>();
  const tight = new Map<string, Spelling[]>();
  const parts = new Map<string, Written[]>();
  const starts = new Map<string, number>();
  const bySlug = new Map<string, Written>();
  const holding = new Map<string, string[]>();

  entries.forEach((entry, at) => {
    const add = (text: string, via: Via) => {
      const keys = keysOf(text);
      const key = keys.join(" ");
      claim(tight, foldTight(text), { entry: at, via });
      if (key === "" || !claim(phrases, key, { entry: at, via })) return;
      if (keys.length > 1 && !entry.isPlain) {
        for (const word of new Set(keys)) push(holding, word, key);
      }
      if (entry.isComposed || entry.isPlain) return;
      push(parts, key, written(entry, via));
      const first = keys[0] ?? "";
      starts.set(first, Math.max(starts.get(first) ?? 0, keys.length));
    };
    bySlug.set(entry.slug, written(entry, "headword"));
    add(entry.headword, "headword");
    for (const s of entry.spellings ?? []) add(s, "spelling");
    for (const s of entry.abbreviations ?? []) add(s, "abbreviation");
    for (const s of entry.inflections ?? []) add(s, "inflection");
  });

  const slugOf = (s: Spelling) => entries[s.entry]?.slug ?? "";
  for (const [key, list] of phrases) sortClaims(list, order[key], slugOf, (s) => s.via);
  for (const [key, list] of tight) sortClaims(list, order[key], slugOf, (s) => s.via);
  for (const [key, list] of parts) {
    sortClaims(
      list,
      order[key],
      (w) => w.slug,
      (w) => w.via,
    );
  }
  return { phrases, tight, holding, lexicon: { phrases: parts, starts, near: new Map(), bySlug } };
}

function written(entry: LookUpEntry, via: Via): Written {
  const { slug, headword, kind, lang } = entry;
  const signName = entry.isSign === true && lang === "en";
  return { slug, headword, kind, lang, role: entry.modifies ?? null, via, signName };
}

function push<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}

/** @returns false when the entry has claimed this spelling already */
function claim(map: Map<string, Spelling[]>, key: string, spelling: Spelling): boolean {
  const list = map.get(key);
  if (list?.some((s) => s.entry === spelling.entry)) return false;
  push(map, key, spelling);
  return true;
}

function sortClaims<T>(
  list: T[],
  wanted: readonly string[] | undefined,
  slug: (item: T) => string,
  via: (item: T) => Via,
): void {
  if (list.length < 2) return;
  const place = (item: T) => {
    const at = wanted?.indexOf(slug(item)) ?? -1;
    return at < 0 ? 100 + RANK[via(item)] : at;
  };
  list.sort((a, b) => place(a) - place(b));
}

/** Listed phrases that these words lack one word of, at its start or its end; the shortest first. */
export function phrasesLackingOne(keys: readonly string[], book: SpellingBook): string[] {
  const words = keys.join(" ");
  return (book.holding.get(keys[0] ?? "") ?? [])
    .filter((phrase) => {
      if (phrase.length <= words.length) return false;
      const rest = phrase.startsWith(`${words} `)
        ? phrase.slice(words.length + 1)
        : phrase.endsWith(` ${words}`)
          ? phrase.slice(0, -words.length - 1)
          : " ";
      return !rest.includes(" ");
    })
    .sort((a, b) => a.length - b.length);
}
