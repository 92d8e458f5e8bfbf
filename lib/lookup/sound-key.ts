/**
 * A rough sound of a word, so that what English ears write down can be
 * compared with what was said: "dolchay" and dolce are both `dolCe`.
 *
 * Letters: a e i o u · p b t d k g f v w s l r m n h y as in English,
 * `S` sh, `C` ch, `J` the sounds of j and of French je, `z` both z and ts.
 */

/** IPA, longest first. @see Handbook of the International Phonetic Association, 1999 */
const FROM_IPA: readonly (readonly [string, string])[] = [
  ["t͡ʃ", "C"],
  ["d͡ʒ", "J"],
  ["t͡s", "z"],
  ["d͡z", "z"],
  ["aɪ̯", "ai"],
  ["aʊ̯", "au"],
  ["ɔʏ̯", "oi"],
  ["ɐ̯", "r"],
  ["tʃ", "C"],
  ["dʒ", "J"],
  ["ts", "z"],
  ["dz", "z"],
  // A small stroke below: a consonant that is a syllable of its own.
  ["l̩", "el"],
  ["m̩", "em"],
  ["n̩", "en"],
  ["ɐ", "er"],
  ["ɑ", "a"],
  ["ɛ", "e"],
  ["ə", "e"],
  ["œ", "e"],
  ["ø", "e"],
  ["ɪ", "i"],
  ["ɔ", "o"],
  ["ʊ", "u"],
  ["y", "u"],
  ["ʏ", "u"],
  ["ʃ", "S"],
  ["ʒ", "J"],
  ["ç", "k"],
  ["x", "k"],
  ["ɲ", "ny"],
  ["ʎ", "ly"],
  ["ŋ", "ng"],
  ["ɡ", "g"],
  ["ʁ", "r"],
  ["ɾ", "r"],
  ["j", "y"],
  ["ɥ", "w"],
  // Combining tilde: a nasal vowel, heard and written with n.
  ["\u0303", "n"],
];

/** English spelling as it sounds. */
const FROM_ENGLISH: readonly (readonly [RegExp, string])[] = [
  [/^eigh|^aigh/, "e"],
  [/^igh/, "ai"],
  [/^ough/, "o"],
  [/^tch|^tsch/, "C"],
  [/^sch/, "S"],
  [/^sh/, "S"],
  [/^zh/, "J"],
  [/^ch/, "C"],
  [/^ck|^kh|^cc(?![eiy])|^cq/, "k"],
  [/^ph/, "f"],
  [/^gh/, "g"],
  [/^dge?(?=[eiy]|$)/, "J"],
  [/^gn(?=[aeiouy])/, "ny"],
  [/^qu|^kw/, "kw"],
  [/^tzs?|^ts|^zz?/, "z"],
  [/^x/, "ks"],
  [/^c(?=[eiy])/, "s"],
  [/^c/, "k"],
  [/^g(?=[eiy])/, "J"],
  [/^j/, "J"],
  [/^ee|^ea|^ie|^ii/, "i"],
  [/^oo|^ou|^ew|^ue|^uu/, "u"],
  [/^oh|^oa|^oe|^ow$/, "o"],
  [/^ow/, "au"],
  [/^ay|^ai|^ey|^eh|^ei/, "e"],
  [/^ah|^aa/, "a"],
  [/^aw/, "o"],
  [/^uh/, "e"],
  [/^oy|^oi/, "oi"],
  [/^[iu](?=r(?![aeiouy]))/, "e"],
  [/^y(?=[aeiou])/, "y"],
  [/^y/, "i"],
];

/** @returns the sound of an IPA transcription; spaces, stress and length are left out */
export function soundOfIpa(ipa: string): string {
  let rest = single(ipa.normalize("NFC").replace(/[ˈˌː\s.ʔ]/gu, ""));
  let out = "";
  while (rest !== "") {
    const rule = FROM_IPA.find(([from]) => rest.startsWith(from));
    out += rule ? rule[1] : (/^[a-z]/.exec(rest)?.[0] ?? "");
    rest = rest.slice(rule ? rule[0].length : 1);
  }
  return single(out);
}

/** Italian spelling as it sounds. @see any Italian grammar; checked against the entries' IPA in the tests */
const FROM_ITALIAN: readonly (readonly [RegExp, string])[] = [
  [/^sci(?=[aou])|^sc(?=[ei])/, "S"],
  [/^cci(?=[aou])|^ci(?=[aou])|^cc?(?=[ei])/, "C"],
  [/^ggi(?=[aou])|^gi(?=[aou])|^gg?(?=[ei])/, "J"],
  [/^gli(?=[aeou])|^gl(?=i)/, "ly"],
  [/^gn/, "ny"],
  [/^cc?h|^cq|^c/, "k"],
  [/^gg?h/, "g"],
  [/^qu/, "kw"],
  [/^x/, "ks"],
  [/^j/, "y"],
  [/^h/, " "],
  [/^i(?=[aeou])/, "y"],
  [/^u(?=[aeio])/, "w"],
];

/**
 * The sound of a listed word by the rules of its language. Only Italian is
 * regular enough to have its own; the others go by what English ears expect.
 * @param word folded
 */
export function soundOfWord(word: string, lang: string): string {
  return lang === "it" ? soundBy(FROM_ITALIAN, word) : soundOfEnglish(word);
}

/**
 * @param word one word, folded, as someone wrote down what they heard
 * @example soundOfEnglish("gratsioso") // "graziozo" with z for ts; compare by `soundDistance`
 */
export function soundOfEnglish(word: string): string {
  return soundBy(FROM_ENGLISH, word);
}

/** The first rule that fits at a place is taken; a letter without a rule sounds as itself. */
function soundBy(rules: readonly (readonly [RegExp, string])[], word: string): string {
  let rest = word;
  let out = "";
  while (rest !== "") {
    const rule = rules.find(([from]) => from.test(rest));
    const took = rule?.[0].exec(rest)?.[0].length ?? 1;
    out += rule ? rule[1].trim() : /[a-z]/.test(rest[0] ?? "") ? rest[0] : "";
    rest = rest.slice(took);
  }
  return single(out);
}

/** Doubled letters sound once. */
function single(sound: string): string {
  return sound.replace(/(.)\1+/g, "$1");
}

const CLASS: Readonly<Record<string, string>> = {
  p: "p",
  b: "p",
  t: "t",
  d: "t",
  k: "k",
  g: "k",
  f: "f",
  v: "f",
  w: "f",
  s: "s",
  z: "s",
  S: "s",
  C: "s",
  J: "s",
  l: "l",
  r: "r",
  m: "n",
  n: "n",
};

/** The kind of a consonant; undefined for vowels and what is hardly one. */
export function soundClass(letter: string): string | undefined {
  return CLASS[letter];
}

/** The consonants of a sound by kind, vowels left out: what a mishearing keeps. */
export function skeleton(sound: string): string {
  let out = "";
  for (const letter of sound) {
    const kind = CLASS[letter];
    if (kind !== undefined && !out.endsWith(kind)) out += kind;
  }
  return out;
}
