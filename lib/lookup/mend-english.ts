import { editDistance } from "../words/edit-distance";
import { isPlainEnglish } from "./english-phrases";
import { ENGLISH_CONCEPTS } from "./english-table";

/** Words of the table by first letter, for mending. */
const byInitial = new Map<string, string[]>();
for (const word of ENGLISH_CONCEPTS.match(/(?<![a-z])[a-z]{5,}(?![a-z])/g) ?? []) {
  const list = byInitial.get(word[0] ?? "") ?? [];
  if (!list.includes(word)) byInitial.set(word[0] ?? "", [...list, word]);
}

/**
 * Mends one slip in words that are neither plain English nor a listed term: "sudenly".
 * @param isTerm tells listed terms
 */
export function mendEnglish(
  words: readonly string[],
  isTerm: (word: string) => boolean,
): { words: string[]; mended: boolean } {
  let mended = false;
  const out = words.map((word) => {
    if (word.length < 5 || isPlainEnglish(word) || isTerm(word)) return word;
    const right = byInitial.get(word[0] ?? "")?.find((known) => editDistance(word, known, 1) === 1);
    if (right === undefined) return word;
    mended = true;
    return right;
  });
  return { words: out, mended };
}
