import { foldTight } from "../glossary/fold";
import { type Books, isEnglishWord, type Search } from "./books";
import { isPlainEnglish } from "./english-phrases";
import { resolveInflection } from "./inflections";
import { findNear } from "./near-spellings";
import type { Pool } from "./pool";
import { keysOf, phrasesLackingOne } from "./spelling-book";
import { splitCompound } from "./split-compound";

/** Scores of the sure ways to be found; the unsure ways scale between them. */
export const SCORE = {
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
/** Steps between those that claim one spelling, and between parts in their order. */
const NEXT_CLAIM = 0.005;
const NEXT_PART = 0.01;
/** Phrases and parts that are also good English mean less. */
const ENGLISH_PHRASE = 0.25;
const ENGLISH_PARTS = 0.6;
const JOINING_WORD = 0.1;
/** What a tier more common adds to a near spelling. */
const NEARER_BY_TIER = 0.015;

/** Listed spellings, with or without their stops and spaces, then regular endings. */
export function addExact(text: string, pool: Pool, { entries, spelling, bySlug }: Books): void {
  const keys = keysOf(text);
  const lists = [spelling.phrases.get(keys.join(" ")), spelling.tight.get(foldTight(text))];
  const list = lists.find((l) => l?.some(({ entry }) => !entries[entry]?.isPlain)) ?? lists[0];
  list?.forEach(({ entry, via }, i) => {
    const score = entries[entry]?.isPlain ? SCORE.plain : SCORE[via];
    pool.add(entry, score - i * NEXT_CLAIM, via === "headword" ? "exact" : via);
  });
  if (pool.best >= SCORE.ending || keys.every(isPlainEnglish)) return;
  const written = resolveInflection(keys, spelling.lexicon);
  const at = written ? bySlug.get(written.slug) : undefined;
  if (at !== undefined) pool.add(at, SCORE.ending, "inflection");
}

/** Listed phrases of which the query lacks one word. */
export function addPhrases({ keys, english, pool, books }: Search): void {
  if (keys.length < 2) return;
  phrasesLackingOne(keys, books.spelling).forEach((phrase, i) => {
    const entry = books.spelling.phrases.get(phrase)?.[0]?.entry;
    if (entry === undefined) return;
    pool.add(entry, SCORE.phrase - ENGLISH_PHRASE * english - i * NEXT_CLAIM, "phrase");
  });
}

/** The parts of a compound, in the order typed, words that only join last. */
export function addParts({ keys, english, pool, books }: Search): void {
  if (keys.length < 2) return;
  const isEnglish = (word: string) => isEnglishWord(word, books);
  const { parts, covered } = splitCompound(keys, books.spelling, books.near, isEnglish);
  const whole = SCORE.part * covered ** 1.5 * (english === 1 ? ENGLISH_PARTS : 1);
  const ordered = [...parts.filter((p) => !p.joins), ...parts.filter((p) => p.joins)];
  ordered.forEach(({ slug, joins, sure }, i) => {
    const at = books.bySlug.get(slug);
    if (at === undefined) return;
    const less = i * NEXT_PART + (1 - sure) * 0.02 + (joins ? JOINING_WORD : 0);
    pool.add(at, whole - less, "part");
  });
}

/** Misspelt, misheard and broken-off words. @returns the places of all that is near */
export function addNear({ keys, english, behind, pool, books }: Search): Set<number> {
  const places = new Set<number>();
  if (english === 1 && keys.length > 1) return places;
  const less = keys.length === 1 ? 1 - 0.2 * english : 1 - 0.5 * english;
  for (const { entry, likeness, by } of findNear(keys, books.near)) {
    const known = books.entries[entry];
    if (!known) continue;
    places.add(entry);
    const score = nearScore(likeness) + NEARER_BY_TIER * (2 - known.tier);
    pool.add(entry, score * less * behind, by);
  }
  return places;
}

/** Falls ever faster: .95 for the same sound, .78 for likeness .8, .38 for .5. */
function nearScore(likeness: number): number {
  return 0.95 - 1.4 * (1 - likeness) ** 1.3;
}
