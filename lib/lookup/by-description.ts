import type { Language } from "../glossary/vocabulary";
import type { Search } from "./books";
import { isFiller } from "./english-phrases";
import { findDescribed } from "./find-described";
import type { LookUpEntry } from "./look-up-index";
import { mendEnglish } from "./mend-english";
import { readEnglish, type Sense } from "./read-english";
import { splitEnglish } from "./split-english";

/** A description that fits wholly stands behind the sure ways to be found. */
const WHOLLY = 0.92;
const MOST_DESCRIBED = 24;
/** What kinship in spelling adds to a fitting meaning. */
const KIN = 0.08;
const IN_BRACKETS = 0.8;
const MENDED = 0.9;
/** A sign found by its meaning, though a word means the same. */
const SIGN_BY_MEANING = 0.96;
/** A sign of the other side of the staff than the one described. */
const WRONG_SIDE = 0.7;

/**
 * Meanings and looks in plain English.
 * @param near entries whose spelling is near as well: "passionate" is kin to appassionato
 */
export function addDescribed(search: Search, near: ReadonlySet<number>): void {
  const { query } = search;
  if (query.core !== "") addText(query.core, 1, near, search);
  if (query.hint !== "") addText(query.hint, IN_BRACKETS, near, search);
}

function addText(text: string, share: number, near: ReadonlySet<number>, search: Search): void {
  const { query, behind, pool, books } = search;
  const isTerm = (word: string) => books.spelling.phrases.has(word);
  const { words, mended } = mendEnglish(splitEnglish(text), isTerm);
  const asked = readEnglish(words);
  const oneThing = words.filter((word) => !isFiller(word)).length < 2;
  const all = WHOLLY * share * behind * (mended ? MENDED : 1);
  for (const { entry, score, by } of findDescribed(asked, books.described, MOST_DESCRIBED)) {
    const known = books.entries[entry];
    if (!known) continue;
    const likely =
      likelihood(known, query.lang, oneThing) *
      (known.isSign && by === "meaning" ? SIGN_BY_MEANING : 1);
    const kin = near.has(entry) ? KIN : 0;
    pool.add(entry, all * score * (likely + kin) * placed(known, asked), by);
  }
}

/**
 * Of entries that fit equally: the commoner one, an Italian word, no plain
 * English, and no compound, least of all when one thing was asked.
 */
function likelihood(entry: LookUpEntry, lang: Language | null, oneThing: boolean): number {
  const tier = 1 - 0.1 * (entry.tier - 1);
  const home = lang !== null || entry.lang === "it" || entry.isSign ? 1 : 0.9;
  const kind = (entry.isPlain ? 0.7 : 1) * (entry.kind === "form" ? 0.97 : 1);
  return tier * home * kind * (entry.isComposed ? (oneThing ? 0.9 : 0.96) : 1);
}

function placed({ stands }: LookUpEntry, asked: readonly Sense[]): number {
  const says = (name: string) => asked.some(({ names }) => names.includes(name));
  const [above, below] = [says("above"), says("below")];
  if (above === below) return 1;
  return stands === (above ? "below-staff" : "above-staff") ? WRONG_SIDE : 1;
}
