import type { Mark, ScorePart } from "../score/model";
import { composeDemands, type Demand } from "../words/compose";
import type { Lexicon } from "../words/lexicon";
import { readWords, type WordsRead } from "../words/match-terms";
import { comparePlaces, samePlace } from "./place";
import type { Place } from "./reading";

/** Words printed together at one place of one part, read as one text. */
export interface Phrase extends Place {
  staff: number | null;
  /** Direction numbers it came from, to tie dashes to it. */
  groups: number[];
  words: WordsRead;
  demands: Demand[];
}

/** How many further fragments a word may be stretched over ("cre", "scen", "do"). */
const FRAGMENTS = 5;

/**
 * Reads the words of a part: elements at one place are one text, since
 * phrases are often split over several; fragments of a stretched word are
 * joined over measures.
 */
export function gatherPhrases(part: ScorePart, lexicon: Lexicon): Phrase[] {
  const marks = part.marks.filter((m) => m.element === "words" && m.text !== null);
  const bundles: Mark[][] = [];
  const withLevel = groupsWithLevel(part);
  for (const mark of [...marks].sort(comparePlaces)) {
    const bundle = bundles.at(-1);
    const last = bundle?.at(-1);
    const joins =
      last && samePlace(last, mark) && last.staff === mark.staff && oneText(last, mark, withLevel);
    if (bundle && joins) bundle.push(mark);
    else bundles.push([mark]);
  }
  const phrases: Phrase[] = [];
  for (let i = 0; i < bundles.length; i += 1) {
    const bundle = bundles[i] ?? [];
    const stretched = stretchedWord(bundles, i, lexicon);
    const phrase = stretched?.phrase ?? makePhrase(bundle, textOf(bundle), lexicon);
    if (phrase) phrases.push(phrase);
    i += stretched?.extra ?? 0;
  }
  return phrases;
}

const LEVEL = /^(?:p{1,6}|f{1,6}|m[pf]|n)$/;

/** Directions that print a level beside their words: "sub." qualifies that p, not the words next to it. */
function groupsWithLevel(part: ScorePart): ReadonlySet<number> {
  const groups = new Set<number>();
  for (const mark of part.marks) {
    if (mark.group >= 0 && LEVEL.test(mark.element)) groups.add(mark.group);
  }
  return groups;
}

function oneText(a: Mark, b: Mark, withLevel: ReadonlySet<number>): boolean {
  return a.group === b.group || !(withLevel.has(a.group) || withLevel.has(b.group));
}

function textOf(bundle: readonly Mark[]): string {
  return bundle.map((m) => m.text ?? "").join(" ");
}

function makePhrase(bundle: readonly Mark[], text: string, lexicon: Lexicon): Phrase | null {
  const first = bundle[0];
  if (!first) return null;
  const words = readWords(text, lexicon);
  return {
    measureIndex: first.measureIndex,
    onset: first.onset,
    staff: first.staff,
    groups: bundle.map((m) => m.group),
    words,
    demands: composeDemands(words),
  };
}

/** "cre" in one measure, "scen" and "do" in the next: one word, where it begins. */
function stretchedWord(
  bundles: readonly Mark[][],
  at: number,
  lexicon: Lexicon,
): { phrase: Phrase; extra: number } | null {
  const pieces: string[] = [];
  for (let k = at; k < Math.min(bundles.length, at + FRAGMENTS + 1); k += 1) {
    const piece = (bundles[k]?.[0]?.text ?? "").replace(/[\s\-–—_.]+/gu, "");
    if (bundles[k]?.length !== 1 || !/^\p{L}{1,7}$/u.test(piece)) return null;
    if (k === at && lexicon.phrases.has(piece.toLowerCase())) return null;
    pieces.push(piece);
    const joined = pieces.join("");
    if (k > at && lexicon.phrases.has(joined.toLowerCase())) {
      const phrase = makePhrase(bundles[at] ?? [], joined, lexicon);
      if (!phrase) return null;
      phrase.groups = bundles.slice(at, k + 1).flatMap((b) => b.map((m) => m.group));
      return { phrase, extra: k - at };
    }
  }
  return null;
}
