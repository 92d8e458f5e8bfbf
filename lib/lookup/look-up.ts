import { foldTight } from "../glossary/fold";
import type { Language } from "../glossary/vocabulary";
import { resolveWord } from "../words/resolve-word";
import { type DescriptionIndex, findDescribed, makeDescriptionIndex } from "./description-index";
import type { LookUpEntry, LookUpIndex, LookUpResult } from "./look-up-index";
import { findNear, makeNearBook, type NearBook } from "./near-spellings";
import { Pool } from "./pool";
import { isPlainEnglish, readEnglish, splitEnglish } from "./read-english";
import { type Query, readQuery } from "./read-query";
import { keysOf, makeSpellingBook, phrasesHolding, type SpellingBook } from "./spelling-book";
import { splitCompound } from "./split-compound";
import { stem } from "./stem";

export type LookUp = (query: string, limit?: number) => LookUpResult[];

interface Books {
  entries: readonly LookUpEntry[];
  bySlug: ReadonlyMap<string, number>;
  /** Signs that stand for an entry, by its place. */
  signsOf: ReadonlyMap<number, readonly number[]>;
  spelling: SpellingBook;
  near: NearBook;
  described: DescriptionIndex;
}

/** Scores of the sure ways to be found; the unsure ways scale between them. */
const SCORE = {
  headword: 1,
  spelling: 0.99,
  abbreviation: 0.985,
  inflection: 0.975,
  phrase: 0.93,
  part: 0.9,
} as const;
const NEXT_CLAIM = 0.005;
/** After a sure find, everything unsure stands behind it. */
const BEHIND = 0.7;
const DESCRIBED = 24;

/**
 * Makes the look-up from its index, in the browser and in Node alike.
 * @returns from a query, at most `limit` (5) entries, best first; never throws
 * @example createLookUp(index)("dolchay")[0] // { slug: "dolce", headword: "dolce", why: "sound", … }
 */
export function createLookUp(index: LookUpIndex): LookUp {
  const books = openBooks(index);
  return (typed, limit = 5) => {
    const query = readQuery(typed);
    if (query.text === "") return [];
    const pool = new Pool(books.entries);
    addExact(query.text, pool, books);
    if (query.core !== query.text) addExact(query.core, pool, books);
    const sure = pool.best >= SCORE.inflection;
    const behind = sure ? BEHIND : 1;
    addPhrases(query.core, pool, books);
    const english = shareOfEnglish(query.core, books);
    addParts(query.core, pool, books);
    addNear(query.core, english, behind, pool, books);
    addDescribed(query, behind, pool, books);
    addMeant(pool, books);
    weighLanguage(query.lang, pool, books);
    return pool.list(limit);
  };
}

function openBooks(index: LookUpIndex): Books {
  const { entries } = index;
  const bySlug = new Map(entries.map((e, at) => [e.slug, at]));
  const signsOf = new Map<number, number[]>();
  entries.forEach((entry, at) => {
    const meant = entry.means === undefined ? undefined : bySlug.get(entry.means);
    if (meant === undefined) return;
    signsOf.set(meant, [...(signsOf.get(meant) ?? []), at]);
  });
  return {
    entries,
    bySlug,
    signsOf,
    spelling: makeSpellingBook(index),
    near: makeNearBook(entries),
    described: makeDescriptionIndex(entries),
  };
}

/** Listed spellings, with or without their stops and spaces, then regular endings. */
function addExact(text: string, pool: Pool, { spelling, bySlug }: Books): void {
  const keys = keysOf(text);
  const lists = [spelling.phrases.get(keys.join(" ")), spelling.tight.get(foldTight(text))];
  for (const list of lists) {
    list?.forEach(({ entry, via }, i) => {
      pool.add(entry, SCORE[via] - i * NEXT_CLAIM, via === "headword" ? "exact" : via);
    });
    if (list) return;
  }
  const [word = "", ...more] = keys;
  if (more.length > 0 || word.length < 4) return;
  const resolved = resolveWord(word, spelling.lexicon);
  const at = resolved && bySlug.get(resolved.written.slug);
  if (resolved?.how === "inflection" && at !== undefined && at !== null) {
    pool.add(at, SCORE.inflection * 0.97, "inflection");
  }
}

/** Longer listed phrases that hold the query. */
function addPhrases(text: string, pool: Pool, { spelling }: Books): void {
  const keys = keysOf(text);
  if (keys.length < 2) return;
  phrasesHolding(keys, spelling).forEach((phrase, i) => {
    const entry = spelling.phrases.get(phrase)?.[0]?.entry;
    if (entry !== undefined) pool.add(entry, SCORE.phrase - i * NEXT_CLAIM, "phrase");
  });
}

/** The parts of a compound, in the order typed, words that only join last. */
function addParts(text: string, pool: Pool, { spelling, near, described, bySlug }: Books): void {
  const keys = keysOf(text);
  if (keys.length < 2) return;
  const isEnglish = (word: string) => isEnglishWord(word, described, spelling);
  const { parts, covered } = splitCompound(keys, spelling, near, isEnglish);
  const ordered = [...parts.filter((p) => !p.joins), ...parts.filter((p) => p.joins)];
  ordered.forEach(({ slug, joins, sure }, i) => {
    const at = bySlug.get(slug);
    if (at === undefined) return;
    const score = SCORE.part * covered ** 1.5 - i * 0.01 - (1 - sure) * 0.02 - (joins ? 0.1 : 0);
    pool.add(at, score, "part");
  });
}

function addNear(text: string, english: number, behind: number, pool: Pool, books: Books): void {
  const keys = keysOf(text);
  if (english === 1 && keys.length > 1) return;
  const less = keys.length === 1 ? 1 - 0.2 * english : 1 - 0.5 * english;
  for (const { entry, likeness, by } of findNear(keys, books.near)) {
    const known = books.entries[entry];
    if (!known) continue;
    const score = (0.4 + 0.55 * likeness) * less * behind;
    pool.add(entry, score + 0.01 * (2 - known.tier), by);
  }
}

function addDescribed(query: Query, behind: number, pool: Pool, books: Books): void {
  for (const [text, share] of [
    [query.core, 1],
    [query.hint, 0.8],
  ] as const) {
    if (text === "") continue;
    for (const { entry, score, by } of findDescribed(readEnglish(text), books.described, DESCRIBED)) {
      const known = books.entries[entry];
      if (!known) continue;
      pool.add(entry, 0.92 * score * share * likelihood(known, query.lang) * behind, by);
    }
  }
}

/** Of entries that fit equally: the commoner one, an Italian word, no compound. */
function likelihood(entry: LookUpEntry, lang: Language | null): number {
  const tier = 1 - 0.05 * (entry.tier - 1);
  const home = lang !== null || entry.lang === "it" || entry.isSign ? 1 : 0.95;
  return tier * home * (entry.isComposed ? 0.92 : 1) * (entry.kind === "form" ? 0.97 : 1);
}

/**
 * A sign that stands for a word (a dot for staccato) brings the word before
 * itself; a variant of another sign brings that one after itself.
 */
function addMeant(pool: Pool, { entries, bySlug }: Books): void {
  for (const [at, { score, why }] of [...pool]) {
    const entry = entries[at];
    if (!entry?.means || !entry.isSign) continue;
    const meant = bySlug.get(entry.means);
    if (meant === undefined) continue;
    const named = why !== "meaning" && why !== "looks";
    const before = !named && !entries[meant]?.isSign;
    pool.add(meant, before ? score + 0.002 : score - 0.002, "means");
  }
}

function weighLanguage(lang: Language | null, pool: Pool, { entries }: Books): void {
  if (lang === null) return;
  for (const [at, { score, why }] of [...pool]) {
    if (entries[at]?.lang !== lang) pool.set(at, score * 0.6, why);
  }
}

function shareOfEnglish(text: string, { described, spelling }: Books): number {
  const words = splitEnglish(text);
  if (words.length === 0) return 0;
  const known = words.filter((word) => isEnglishWord(word, described, spelling));
  return known.length / words.length;
}

/** In the table of plain English, or in some meaning and no listed term. */
function isEnglishWord(word: string, described: DescriptionIndex, spelling: SpellingBook): boolean {
  if (isPlainEnglish(word)) return true;
  return described.postings.has(`~${stem(word)}`) && !spelling.phrases.has(word);
}


