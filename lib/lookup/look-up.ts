import { foldTight } from "../glossary/fold";
import type { Language } from "../glossary/vocabulary";
import { type DescriptionIndex, makeDescriptionIndex } from "./description-index";
import { isFiller, isPlainEnglish } from "./english-phrases";
import { findDescribed } from "./find-described";
import { resolveInflection } from "./inflections";
import type { LookUpEntry, LookUpResult } from "./look-up-index";
import { type LookUpIndex, unpackEntries } from "./look-up-index";
import { mendEnglish } from "./mend-english";
import { findNear, makeNearBook, type NearBook } from "./near-spellings";
import { Pool } from "./pool";
import { readEnglish, type Sense } from "./read-english";
import { type Query, readQuery } from "./read-query";
import { keysOf, makeSpellingBook, phrasesLackingOne, type SpellingBook } from "./spelling-book";
import { splitCompound } from "./split-compound";
import { splitEnglish } from "./split-english";
import { stem } from "./stem";

export type LookUp = (query: string, limit?: number) => LookUpResult[];

interface Books {
  entries: readonly LookUpEntry[];
  bySlug: ReadonlyMap<string, number>;
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
  /** An inflection by rule, not by list. */
  ending: 0.95,
  phrase: 0.93,
  part: 0.9,
  /** Typed as a direction in plain English is printed: its term comes first. */
  plain: 0.5,
} as const;
const NEXT_CLAIM = 0.005;
/** After a sure find, everything unsure stands behind it. */
const BEHIND = 0.7;
const DESCRIBED = 24;
/** What kinship in spelling adds to a fitting meaning. */
const KIN = 0.08;
/** What a variant of a sign needs to stand before the sign itself: so much the better match. */
const VARIANT_LEAD = 0.75;

/**
 * Makes the look-up from its index, in the browser and in Node alike.
 * @returns from a query, at most `limit` (5) entries, best first; never throws
 * @example createLookUp(index)("dolchay")[0] // { slug: "dolce", headword: "dolce", why: "sound", … }
 */
export function createLookUp(index: LookUpIndex): LookUp {
  const entries = unpackEntries(index);
  const books: Books = {
    entries,
    bySlug: new Map(entries.map((e, at) => [e.slug, at])),
    spelling: makeSpellingBook(entries, index.order),
    near: makeNearBook(entries),
    described: makeDescriptionIndex(entries),
  };
  return (typed, limit = 5) => {
    const query = readQuery(typed);
    if (query.text === "") return [];
    const pool = new Pool(entries);
    const english = shareOfEnglish(query.core, books);
    addExact(query.text, pool, books);
    // "german for fast" asks for what fast means, not for the German word fast.
    const meant = query.lang !== null && english === 1;
    if (query.core !== query.text && !meant) addExact(query.core, pool, books);
    const behind = pool.best >= SCORE.ending ? BEHIND : 1;
    let near: ReadonlySet<number> = new Set();
    if (!meant) {
      addPhrases(query.core, english, pool, books);
      addParts(query.core, english, pool, books);
      near = addNear(query.core, english, behind, pool, books);
    }
    addDescribed(query, behind, near, pool, books);
    addMeant(pool, books);
    weighLanguage(query.lang, pool, books);
    return pool.list(limit);
  };
}

/** Listed spellings, with or without their stops and spaces, then regular endings. */
function addExact(text: string, pool: Pool, { entries, spelling, bySlug }: Books): void {
  const keys = keysOf(text);
  const lists = [spelling.phrases.get(keys.join(" ")), spelling.tight.get(foldTight(text))];
  const list = lists.find((l) => l?.some(({ entry }) => !entries[entry]?.isPlain)) ?? lists[0];
  list?.forEach(({ entry, via }, i) => {
    const score = entries[entry]?.isPlain ? SCORE.plain : SCORE[via];
    pool.add(entry, score - i * NEXT_CLAIM, via === "headword" ? "exact" : via);
  });
  if (pool.best >= SCORE.ending) return;
  const written = resolveInflection(keys, spelling.lexicon);
  const at = written && bySlug.get(written.slug);
  if (at !== undefined && at !== null && !keys.every(isPlainEnglish)) {
    pool.add(at, SCORE.ending, "inflection");
  }
}

/** Listed phrases of which the query lacks one word. */
function addPhrases(text: string, english: number, pool: Pool, { spelling }: Books): void {
  const keys = keysOf(text);
  if (keys.length < 2) return;
  phrasesLackingOne(keys, spelling).forEach((phrase, i) => {
    const entry = spelling.phrases.get(phrase)?.[0]?.entry;
    if (entry === undefined) return;
    pool.add(entry, SCORE.phrase - 0.25 * english - i * NEXT_CLAIM, "phrase");
  });
}

/** The parts of a compound, in the order typed, words that only join last. */
function addParts(text: string, english: number, pool: Pool, books: Books): void {
  const keys = keysOf(text);
  if (keys.length < 2) return;
  const { spelling, near, described, bySlug } = books;
  const isEnglish = (word: string) => isEnglishWord(word, described, spelling);
  const { parts, covered } = splitCompound(keys, spelling, near, isEnglish);
  const whole = SCORE.part * covered ** 1.5 * (english === 1 ? 0.6 : 1);
  const ordered = [...parts.filter((p) => !p.joins), ...parts.filter((p) => p.joins)];
  ordered.forEach(({ slug, joins, sure }, i) => {
    const at = bySlug.get(slug);
    if (at === undefined) return;
    pool.add(at, whole - i * 0.01 - (1 - sure) * 0.02 - (joins ? 0.1 : 0), "part");
  });
}

/** @returns the places of all that is near */
function addNear(
  text: string,
  english: number,
  behind: number,
  pool: Pool,
  books: Books,
): Set<number> {
  const keys = keysOf(text);
  const near = new Set<number>();
  if (english === 1 && keys.length > 1) return near;
  const less = keys.length === 1 ? 1 - 0.2 * english : 1 - 0.5 * english;
  for (const { entry, likeness, by } of findNear(keys, books.near)) {
    const known = books.entries[entry];
    if (!known) continue;
    near.add(entry);
    pool.add(entry, (nearScore(likeness) + 0.015 * (2 - known.tier)) * less * behind, by);
  }
  return near;
}

/** Falls ever faster: .95 for the same sound, .78 for likeness .8, .38 for .5. */
function nearScore(likeness: number): number {
  return 0.95 - 1.4 * (1 - likeness) ** 1.3;
}

/**
 * Meanings and looks in plain English.
 * @param near entries whose spelling is near as well: "passionate" is kin to appassionato
 */
function addDescribed(
  query: Query,
  behind: number,
  near: ReadonlySet<number>,
  pool: Pool,
  books: Books,
): void {
  for (const [text, share] of [
    [query.core, 1],
    [query.hint, 0.8],
  ] as const) {
    if (text === "") continue;
    const { words, mended } = mendEnglish(splitEnglish(text), (word) =>
      books.spelling.phrases.has(word),
    );
    const sure = mended ? 0.9 : 1;
    const asked = readEnglish(words);
    const simple = words.filter((word) => !isFiller(word)).length < 2;
    for (const { entry, score, by } of findDescribed(asked, books.described, DESCRIBED)) {
      const known = books.entries[entry];
      if (!known) continue;
      const sign = known.isSign && by === "meaning" ? 0.96 : 1;
      const weight = share * sure * behind * sign * likelihood(known, query.lang, simple);
      const kin = near.has(entry) ? KIN : 0;
      pool.add(entry, 0.92 * (score * weight + kin * score) * placed(known, asked), by);
    }
  }
}

/** A sign of the other side of the staff than the one described. */
const WRONG_SIDE = 0.7;

function placed({ stands }: LookUpEntry, asked: readonly Sense[]): number {
  const says = (name: string) => asked.some(({ names }) => names.includes(name));
  const [above, below] = [says("above"), says("below")];
  if (above === below) return 1;
  return stands === (above ? "below-staff" : "above-staff") ? WRONG_SIDE : 1;
}

/**
 * Of entries that fit equally: the commoner one, an Italian word, no plain
 * English, and no compound when one thing was asked.
 */
function likelihood(entry: LookUpEntry, lang: Language | null, simple: boolean): number {
  const tier = 1 - 0.1 * (entry.tier - 1);
  const home = lang !== null || entry.lang === "it" || entry.isSign ? 1 : 0.93;
  const kind = (entry.isPlain ? 0.7 : 1) * (entry.kind === "form" ? 0.97 : 1);
  return tier * home * kind * (entry.isComposed ? (simple ? 0.9 : 0.96) : 1);
}

/**
 * A sign that stands for a word (a dot for staccato) brings the word before
 * itself. A variant of another sign brings that one too, before itself unless
 * the description fits the variant far better.
 */
function addMeant(pool: Pool, { entries, bySlug }: Books): void {
  const found = new Map(pool);
  for (const [at, { score, why }] of found) {
    const entry = entries[at];
    if (!entry?.means || !entry.isSign) continue;
    const meant = bySlug.get(entry.means);
    if (meant === undefined) continue;
    const described = why === "meaning" || why === "looks";
    const own = found.get(meant)?.score ?? 0;
    const first = described && (!entries[meant]?.isSign || own >= score * VARIANT_LEAD);
    pool.add(meant, first ? score + 0.002 : score - 0.002, "means");
  }
}

function weighLanguage(lang: Language | null, pool: Pool, { entries }: Books): void {
  if (lang === null) return;
  for (const [at, { score, why }] of [...pool]) {
    if (entries[at]?.lang !== lang) pool.set(at, score * 0.6, why);
  }
}

/** Share of the words that are plain English; words that are terms as well (a, fast) are not. */
function shareOfEnglish(text: string, { described, spelling }: Books): number {
  const words = splitEnglish(text);
  if (words.length === 0) return 0;
  if (words.every(isPlainEnglish)) return 1;
  const known = words.filter((word) => isEnglishWord(word, described, spelling));
  return known.length / words.length;
}

/** In the table of plain English or in some meaning, and no listed term. */
function isEnglishWord(word: string, described: DescriptionIndex, spelling: SpellingBook): boolean {
  if (spelling.lexicon.phrases.has(word)) return false;
  return isPlainEnglish(word) || described.postings.has(`~${stem(word)}`);
}
