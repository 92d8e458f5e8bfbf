/**
 * The form in which spellings are compared: no accents, no case, ß as ss,
 * every run of space, stop, hyphen and apostrophe one space. "D.S. al Coda"
 * and "ds al coda" differ here ("d s al coda"): the index keeps both.
 */
export function fold(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/\p{M}+/gu, "")
    .toLowerCase()
    .replace(/ß/g, "ss")
    .replace(/œ/g, "oe")
    .replace(/æ/g, "ae")
    .replace(/[\s.\-‐‑–—_'’ʼ`´]+/gu, " ")
    .trim();
}

/** `fold` without its spaces: abbreviations written with or without stops meet here. */
export function foldTight(text: string): string {
  return fold(text).replaceAll(" ", "");
}
