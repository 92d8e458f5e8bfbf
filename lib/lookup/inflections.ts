import type { Lexicon, Written } from "../words/lexicon";
import { resolveWord } from "../words/resolve-word";

/** German superlatives: "feurigste", "am feurigsten". */
const SUPERLATIVE = /^(.{3,}?)(?:e?st)(?:e|er|es|en|em)$/;
const SHORTEST = 4;

/**
 * The term that words are an unlisted form of, by the general endings of its language.
 * @param keys folded words
 */
export function resolveInflection(keys: readonly string[], lexicon: Lexicon): Written | null {
  const [first = "", second, ...more] = keys;
  if (more.length > 0) return null;
  if (second !== undefined) return first === "am" ? superlative(second, lexicon) : null;
  if (first.length < SHORTEST) return null;
  const resolved = resolveWord(first, lexicon);
  return resolved?.how === "inflection" ? resolved.written : superlative(first, lexicon);
}

function superlative(word: string, { phrases }: Lexicon): Written | null {
  const bare = SUPERLATIVE.exec(word)?.[1];
  if (bare === undefined) return null;
  for (const base of [bare, `${bare}e`, `${bare}en`]) {
    const written = phrases.get(base)?.find((w) => w.lang === "de" && w.via === "headword");
    if (written) return written;
  }
  return null;
}
