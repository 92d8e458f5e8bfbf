/**
 * Music-font and Unicode music letters that stand inside printed words, by code point.
 * @see SMuFL, range Dynamics (U+E520-U+E54F); Unicode, Musical Symbols
 */
const GLYPH_LETTERS: Readonly<Record<string, string>> = {
  "\ue520": "p",
  "\ue521": "m",
  "\ue522": "f",
  "\ue523": "r",
  "\ue524": "s",
  "\ue525": "z",
  "\ue526": "n",
  "\ue527": "pppppp",
  "\ue528": "ppppp",
  "\ue529": "pppp",
  "\ue52a": "ppp",
  "\ue52b": "pp",
  "\ue52c": "mp",
  "\ue52d": "mf",
  "\ue52e": "pf",
  "\ue52f": "ff",
  "\ue530": "fff",
  "\ue531": "ffff",
  "\ue532": "fffff",
  "\ue533": "ffffff",
  "\ue534": "fp",
  "\ue535": "fz",
  "\ue536": "sf",
  "\ue537": "sfp",
  "\ue538": "sfpp",
  "\ue539": "sfz",
  "\ue53a": "sfzp",
  "\ue53b": "sffz",
  "\ue53c": "rf",
  "\ue53d": "rfz",
  "\u{1d18c}": "r",
  "\u{1d18d}": "s",
  "\u{1d18e}": "z",
  "\u{1d18f}": "p",
  "\u{1d190}": "m",
  "\u{1d191}": "f",
  "\ue047": " §segno ",
  "\u{1d10b}": " §segno ",
  "\ue048": " §coda ",
  "\u{1d10c}": " §coda ",
  "\ue045": " D.S. ",
  "\u{1d109}": " D.S. ",
  "\ue046": " D.C. ",
  "\u{1d10a}": " D.C. ",
  "\ue566": " tr ",
  "\u{1d196}": " tr ",
};

const PLAIN = /^[\x20-\x7e\u00a1-\u024f]*$/;
const INVISIBLE =
  /[\u00ad\u061c\u180e\u200b-\u200f\u202a-\u202e\u2060-\u2064\u2066-\u2069\ufeff]/gu;
const TAG = /<\/?[a-z][^<>]*>/gi;
const ENTITY = /&(?:nbsp|amp|lt|gt|quot|apos|#\d{1,6});/gi;
const ENTITIES: Readonly<Record<string, string>> = {
  "&nbsp;": " ",
  "&amp;": "&",
  "&lt;": "<",
  "&gt;": ">",
  "&quot;": '"',
  "&apos;": "'",
};
const MUSIC = /[\ue000-\uf8ff\u{1d100}-\u{1d1ff}]/gu;

/**
 * The readable text of a direction: invisible and direction-changing
 * characters dropped, full-width letters plain, music letters as letters,
 * escaped markup taken off. Other music glyphs become a space.
 */
export function normaliseText(text: string): string {
  let out = text;
  if (out.includes("&")) out = out.replace(ENTITY, (e) => ENTITIES[e.toLowerCase()] ?? " ");
  if (out.includes("<")) out = out.replace(TAG, " ");
  if (PLAIN.test(out)) return out;
  return out
    .replace(INVISIBLE, "")
    .replace(MUSIC, (c) => GLYPH_LETTERS[c] ?? " ")
    .normalize("NFKC");
}
