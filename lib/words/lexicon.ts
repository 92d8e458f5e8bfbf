import type { Entry } from "../glossary/schema";
import type { Kind, Language } from "../glossary/vocabulary";
import { foldWord, tokenise } from "./tokenise";

/** The part of an entry that the reader of words needs. */
export type LexiconSource = Pick<
  Entry,
  | "slug"
  | "folder"
  | "headword"
  | "lang"
  | "kind"
  | "spellings"
  | "abbreviations"
  | "inflections"
  | "composed"
  | "modifies"
  | "means"
  | "sign"
>;

export type Via = "headword" | "spelling" | "abbreviation" | "inflection";

/** One way of writing an entry. */
export interface Written {
  slug: string;
  headword: string;
  kind: Kind;
  lang: Language;
  role: LexiconSource["modifies"] | null;
  via: Via;
  /** An English sign name (accent, open): taken only where it is the whole direction. */
  signName: boolean;
}

export interface Lexicon {
  /** Folded words joined by a space, to what they may mean, the likeliest first. */
  phrases: ReadonlyMap<string, readonly Written[]>;
  /** First words of phrases of two words or more, to their greatest number of words. */
  starts: ReadonlyMap<string, number>;
  /** Single folded words of five letters or more, by each form with letters left out, for misspellings. */
  near: ReadonlyMap<string, readonly string[]>;
  /** How to write an entry's headword, by slug. */
  bySlug: ReadonlyMap<string, Written>;
}

const RANK: Record<Via, number> = { headword: 0, spelling: 1, abbreviation: 2, inflection: 3 };
const NEAR_FROM = 5;

/**
 * Index of every spelling.
 * @param order for a spelling claimed twice, its slugs with the likelier first
 */
export function makeLexicon(
  entries: readonly LexiconSource[],
  order: ReadonlyMap<string, readonly string[]> = new Map(),
): Lexicon {
  const phrases = new Map<string, Written[]>();
  const starts = new Map<string, number>();
  const bySlug = new Map<string, Written>();
  const meant = new Map(entries.map((e) => [e.slug, e]));

  const add = (spelling: string, written: Written) => {
    const keys = tokenise(spelling).map((t) => t.key);
    if (keys.length === 0) return;
    const forms = new Set([keys.join(" ")]);
    // "D.C." is also printed "D. C." and "DC"; "D.C. al Fine" likewise.
    if (/(?:\p{L}\.){2,}/u.test(spelling)) {
      forms.add(
        tokenise(spelling.replace(/(\p{L})\./gu, "$1 "))
          .map((t) => t.key)
          .join(" "),
      );
    }
    for (const form of forms) {
      const list = phrases.get(form);
      if (!list) phrases.set(form, [written]);
      else if (!list.some((w) => w.slug === written.slug)) list.push(written);
      const words = form.split(" ");
      const first = words[0] ?? "";
      if (words.length > 1) starts.set(first, Math.max(starts.get(first) ?? 0, words.length));
    }
  };

  for (const entry of entries) {
    const target = (entry.means ? meant.get(entry.means) : undefined) ?? entry;
    const base = {
      slug: target.slug,
      headword: target.headword,
      kind: target.kind,
      lang: target.lang,
      role: target.modifies ?? null,
      signName: entry.folder === "signs" && entry.lang === "en",
    };
    bySlug.set(entry.slug, {
      ...base,
      slug: entry.slug,
      headword: entry.headword,
      via: "headword",
    });
    if (entry.composed) continue;
    add(entry.headword, { ...base, via: "headword" });
    for (const s of entry.spellings ?? []) add(s, { ...base, via: "spelling" });
    for (const s of entry.abbreviations ?? []) add(s, { ...base, via: "abbreviation" });
    for (const s of entry.inflections ?? []) add(s, { ...base, via: "inflection" });
    for (const element of entry.sign?.elements ?? []) {
      if (element === "segno" || element === "coda") {
        phrases.set(`§${element}`, [{ ...base, via: "spelling" }]);
      }
    }
  }
  for (const [key, list] of phrases) sortWritten(key, list, order);
  return { phrases, starts, near: makeNear(phrases), bySlug };
}

function sortWritten(
  key: string,
  list: Written[],
  order: ReadonlyMap<string, readonly string[]>,
): void {
  if (list.length < 2) return;
  const wanted = order.get(key);
  const place = (w: Written) => {
    const at = wanted?.indexOf(w.slug) ?? -1;
    return at < 0 ? 100 + RANK[w.via] + (w.signName ? 10 : 0) : at;
  };
  list.sort((a, b) => place(a) - place(b));
}

/** Every way to leave out up to two letters: a misspelling shares one of these with the right word. */
export function shortened(word: string, letters: number): Set<string> {
  let layer = new Set([word]);
  const all = new Set(layer);
  for (let n = 0; n < letters; n += 1) {
    const next = new Set<string>();
    for (const w of layer) {
      for (let i = 0; i < w.length; i += 1) next.add(w.slice(0, i) + w.slice(i + 1));
    }
    for (const w of next) all.add(w);
    layer = next;
  }
  return all;
}

function makeNear(phrases: ReadonlyMap<string, readonly Written[]>): Map<string, string[]> {
  const near = new Map<string, string[]>();
  for (const [key, list] of phrases) {
    const known = list[0];
    if (key.includes(" ") || key.length < NEAR_FROM || !known) continue;
    if (known.via === "abbreviation" || known.signName || known.kind === "form") continue;
    // English prose is full of near words; what English composers print they spell.
    if (known.lang === "en") continue;
    for (const form of shortened(foldWord(key), allowedSlips(key))) {
      const words = near.get(form);
      if (words) words.push(key);
      else near.set(form, [key]);
    }
  }
  return near;
}

/** Letters that may be wrong in a word: one in five to seven, two in eight or more. */
export function allowedSlips(word: string): number {
  return word.length >= 8 ? 2 : word.length >= NEAR_FROM ? 1 : 0;
}
