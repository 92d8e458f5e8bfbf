import type { Kind } from "../glossary/vocabulary";
import { editDistance } from "./edit-distance";
import { gate } from "./gate";
import type { Lexicon, Written } from "./lexicon";
import { normaliseText } from "./normalise-text";
import { type Guess, resolveWord } from "./resolve-word";
import { type Token, tokenise } from "./tokenise";

/** How a term was recognised. */
export type Recognised = "exact" | "abbreviation" | "inflection" | Guess;

/** One term found in a direction. */
export interface TermMatch {
  slug: string;
  headword: string;
  kind: Kind;
  lang: Written["lang"];
  role: Written["role"];
  /** As printed, music letters as letters. */
  text: string;
  /** Token places: first, and one past the last. */
  from: number;
  to: number;
  how: Recognised;
  /** 0 to 1. */
  sure: number;
  /** Other entries that share this spelling, likeliest first. */
  also: string[];
}

export interface WordsRead {
  /** The text as compared: invisible characters dropped, music letters spelt. */
  text: string;
  tokens: Token[];
  matches: TermMatch[];
  /** Runs of words that no entry explains, as printed. */
  unmatched: string[];
}

/** Short modifiers that a slip of the pen would hide: too short for the general rule. */
const SHORT_MODIFIERS = ["piu", "meno", "poco", "molto", "mezzo", "assai"];
const DYNAMIC_LETTERS = /^(?:p{1,4}|f{1,4}|m[pf])$/;

/** Candidate before the look at the whole direction. */
export interface Candidate extends TermMatch {
  signName: boolean;
  /** The listed spelling, folded. */
  key: string;
}

/**
 * Finds the terms of one printed direction. Longest spelling wins: "poco a
 * poco" is not also "poco". Words that only join (e, und) and function words
 * on their own are not listed. Never throws.
 *
 * @example readWords("dim. e stacc.", lexicon).matches.map((m) => m.slug) // ["diminuendo", "staccato"]
 */
export function readWords(printed: string, lexicon: Lexicon): WordsRead {
  const text = normaliseText(printed);
  const tokens = tokenise(text);
  const candidates: Candidate[] = [];
  for (let i = 0; i < tokens.length; ) {
    const found =
      longestPhrase(tokens, i, text, lexicon) ??
      joinedByHyphens(tokens, i, text, lexicon) ??
      guessWord(tokens, i, text, lexicon);
    if (found) candidates.push(found);
    i = found?.to ?? i + 1;
  }
  const { kept, taken } = gate(tokens, candidates, lexicon, text);
  return { text, tokens, matches: kept, unmatched: unmatchedRuns(text, tokens, taken) };
}

function longestPhrase(
  tokens: readonly Token[],
  from: number,
  text: string,
  lexicon: Lexicon,
): Candidate | null {
  const first = tokens[from];
  if (!first) return null;
  const most = Math.min(lexicon.starts.get(first.key) ?? 1, tokens.length - from);
  let reach = 1;
  while (reach < most && !tokens[from + reach]?.breakBefore) reach += 1;
  for (let size = reach; size >= 1; size -= 1) {
    let key = first.key;
    for (let k = 1; k < size; k += 1) key += ` ${tokens[from + k]?.key ?? ""}`;
    const written = lexicon.phrases.get(key);
    const best = written?.[0];
    if (best) return candidate(text, tokens, from, from + size, key, written, "exact", 1);
  }
  return null;
}

/** "smor - - zan - - do", "cre-scen-do": pieces that only together spell a word. */
function joinedByHyphens(
  tokens: readonly Token[],
  from: number,
  text: string,
  lexicon: Lexicon,
): Candidate | null {
  let to = from;
  while (tokens[to]?.hyphenAfter && to - from < 7) to += 1;
  for (let last = to; last > from; last -= 1) {
    const key = tokens
      .slice(from, last + 1)
      .map((t) => t.key)
      .join("");
    if (key.length < 4) continue;
    const written = lexicon.phrases.get(key);
    if (written?.[0]) return candidate(text, tokens, from, last + 1, key, written, "exact", 0.95);
    const guess = key.length >= 7 ? resolveWord(key, lexicon) : null;
    if (guess && guess.how !== "compound") {
      return candidate(text, tokens, from, last + 1, guess.as, [guess.written], guess.how, 0.6);
    }
  }
  return null;
}

function guessWord(
  tokens: readonly Token[],
  at: number,
  text: string,
  lexicon: Lexicon,
): Candidate | null {
  const token = tokens[at];
  if (!token || token.key.length < 3) return null;
  // Before printed letters only a modifier makes sense: "oiu f" is più f.
  if (DYNAMIC_LETTERS.test(tokens[at + 1]?.key ?? "")) {
    const as = SHORT_MODIFIERS.find((word) => editDistance(token.key, word, 1) === 1);
    const written = as === undefined ? undefined : lexicon.phrases.get(as);
    if (as && written) return candidate(text, tokens, at, at + 1, as, written, "misspelling", 0.6);
  }
  if (token.key.length < 4) return null;
  const guess = resolveWord(token.key, lexicon);
  if (!guess) return null;
  return candidate(text, tokens, at, at + 1, guess.as, [guess.written], guess.how, guess.sure);
}

function candidate(
  text: string,
  tokens: readonly Token[],
  from: number,
  to: number,
  key: string,
  written: readonly Written[],
  how: Recognised,
  sure: number,
): Candidate | null {
  const best = written[0];
  const first = tokens[from];
  const last = tokens[to - 1];
  if (!best || !first || !last) return null;
  const short = how === "exact" && best.via === "abbreviation";
  return {
    slug: best.slug,
    headword: best.headword,
    kind: best.kind,
    lang: best.lang,
    role: best.role,
    text: text.slice(first.start, last.end) + (last.stop && !last.text.endsWith(".") ? "." : ""),
    from,
    to,
    how: short ? "abbreviation" : how === "exact" && best.via === "inflection" ? "inflection" : how,
    sure,
    also: written.slice(1).map((w) => w.slug),
    signName: best.signName,
    key,
  };
}

function unmatchedRuns(
  text: string,
  tokens: readonly Token[],
  taken: readonly boolean[],
): string[] {
  const runs: string[] = [];
  let start = -1;
  let end = -1;
  const close = () => {
    if (start >= 0) runs.push(text.slice(start, end));
    start = -1;
  };
  tokens.forEach((token, i) => {
    const free = !taken[i] && /\p{L}{2}/u.test(token.text);
    if (!free || (start >= 0 && token.breakBefore)) close();
    if (!free) return;
    if (start < 0) start = token.start;
    end = token.end;
  });
  close();
  return runs;
}
