import type { Language } from "../glossary/vocabulary";
import type { Lexicon, Written } from "./lexicon";
import { foldWord } from "./tokenise";

/** The reader's best guess at a word no entry explains; always shown as a guess. */
export interface UnknownGuess {
  lang: Language | null;
  /** A known word it seems built on, null when none is near. */
  root: { slug: string; headword: string } | null;
  /** One sentence fragment: what the ending says. */
  ending: string | null;
}

/** Endings with what they say, the telling ones first. Grammar of the languages, common practice. */
const ENDINGS: readonly (readonly [ending: string, lang: Language, says: string])[] = [
  ["issimamente", "it", "in the highest degree"],
  ["issimo", "it", "very much so"],
  ["issima", "it", "very much so"],
  ["mente", "it", "in that manner"],
  ["ando", "it", "doing so, bit by bit"],
  ["endo", "it", "doing so, bit by bit"],
  ["ezza", "it", "the quality of being so"],
  ["oso", "it", "full of it"],
  ["osa", "it", "full of it"],
  ["etto", "it", "a little of it"],
  ["ino", "it", "a little of it"],
  ["ato", "it", "made so"],
  ["evole", "it", "apt to be so"],
  ["ement", "fr", "in that manner"],
  ["eux", "fr", "full of it"],
  ["euse", "fr", "full of it"],
  ["ant", "fr", "doing so"],
  ["issez", "fr", "a request: do so"],
  ["ez", "fr", "a request: do so"],
  ["isch", "de", "in that manner"],
  ["lich", "de", "in that manner"],
  ["voll", "de", "full of it"],
  ["haft", "de", "in that manner"],
  ["end", "de", "doing so"],
  ["igkeit", "de", "the quality of being so"],
  ["ung", "de", "the doing of it"],
];
const SHORTEST_ROOT = 4;

/**
 * @param text one unmatched run of words
 * @returns null when nothing can be said
 */
export function explainUnknown(text: string, lexicon: Lexicon): UnknownGuess | null {
  const words = text.split(/[^\p{L}]+/u).filter((w) => w.length >= 4);
  const word = words[0];
  if (!word || words.length > 1) return null;
  const key = foldWord(word);
  const ending = ENDINGS.find(([e]) => key.endsWith(e) && key.length - e.length >= 3);
  const root = findRoot(key, ending ? key.length - ending[0].length : key.length, lexicon);
  if (!ending && !root) return null;
  return {
    lang: ending?.[1] ?? root?.lang ?? null,
    root: root ? { slug: root.slug, headword: root.headword } : null,
    ending: ending?.[2] ?? null,
  };
}

/** The longest listed word that shares the stem, or at least its first four letters. */
function findRoot(key: string, stemLength: number, lexicon: Lexicon): Written | null {
  for (let length = Math.min(stemLength, key.length - 1); length >= SHORTEST_ROOT; length -= 1) {
    const stem = key.slice(0, length);
    for (const tail of ["", "o", "e", "a", "are", "ere", "en", "er"]) {
      const written = lexicon.phrases
        .get(stem + tail)
        ?.find((w) => w.via !== "abbreviation" && !w.signName);
      if (written && written.role === null) return written;
    }
  }
  return null;
}
