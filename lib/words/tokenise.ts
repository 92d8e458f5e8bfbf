/** One word of a direction, with what stood before and after it. */
export interface Token {
  /** As printed. */
  text: string;
  /** Folded for comparison: no accents, no case. */
  key: string;
  start: number;
  end: number;
  /** A full stop follows: probably an abbreviation. */
  stop: boolean;
  /** Joined to the next token by hyphens only: a stretched or hyphenated word. */
  hyphenAfter: boolean;
  /** A comma, bracket or the like stands before it: no phrase runs across. */
  breakBefore: boolean;
}

const WORD = /(?:\p{L}\.){2,}\p{L}?(?![\p{L}\p{N}])|[\p{L}\p{M}\p{N}]+|[§]\p{L}+/gu;
const ASCII_WORD = /^[a-z0-9]+$/;
const BREAK = /[,;:()[\]/!?=+"“”„«»&|]/;
const MARKS = /\p{M}+/gu;

const foldedWords = new Map<string, string>();
const FOLDED_LIMIT = 20_000;

/** Folds one word: accents off, lower case, ß as ss, inner stops off. */
export function foldWord(word: string): string {
  if (ASCII_WORD.test(word)) return word;
  const known = foldedWords.get(word);
  if (known !== undefined) return known;
  const folded = word
    .normalize("NFKD")
    .replace(MARKS, "")
    .toLowerCase()
    .replaceAll("ß", "ss")
    .replaceAll("œ", "oe")
    .replaceAll("æ", "ae")
    .replaceAll(".", "");
  if (foldedWords.size >= FOLDED_LIMIT) foldedWords.clear();
  foldedWords.set(word, folded);
  return folded;
}

/**
 * Splits a normalised direction into words. "D.C." is one token `dc`; a
 * hyphen, stop or apostrophe separates.
 */
export function tokenise(text: string): Token[] {
  const tokens: Token[] = [];
  let last = 0;
  WORD.lastIndex = 0;
  for (let m = WORD.exec(text); m !== null; m = WORD.exec(text)) {
    const word = m[0];
    const gap = text.slice(last, m.index);
    const before = tokens.at(-1);
    if (before) {
      before.hyphenAfter = /[-‐‑–—_]/.test(gap) && /^[\s\-‐‑–—_]*$/.test(gap);
    }
    const end = m.index + word.length;
    tokens.push({
      text: word,
      key: foldWord(word),
      start: m.index,
      end,
      stop: text.charCodeAt(end) === 46 || word.endsWith("."),
      hyphenAfter: false,
      breakBefore: before !== undefined && BREAK.test(gap),
    });
    last = end;
  }
  return tokens;
}
