import { editDistance } from "./edit-distance";
import { allowedSlips, type Lexicon, shortened, type Written } from "./lexicon";

export type Guess = "inflection" | "compound" | "misspelling";

export interface Resolved {
  written: Written;
  how: Guess;
  /** 0 to 1: how sure, by the kind of guess alone. */
  sure: number;
  /** The listed spelling it was taken for. */
  as: string;
}

/** Endings to take off, and what to try in their place. Longest first. */
const ENDINGS: readonly (readonly [string, readonly string[]])[] = [
  // Italian: superlative, diminutive, adverb, gerund, participle, gender and number
  ["issimamente", ["o", "e", "amente"]],
  ["issimo", ["o", "e"]],
  ["issima", ["o", "e", "a"]],
  ["issimi", ["o", "e"]],
  ["amente", ["o"]],
  ["emente", ["e"]],
  ["mente", ["e", ""]],
  ["etto", ["o", "e"]],
  ["ando", ["are", "ato", "ante", "endo"]],
  ["endo", ["ere", "uto", "ente", "ando"]],
  ["ante", ["ando", "ato"]],
  ["ente", ["endo"]],
  ["ato", ["ando"]],
  ["ata", ["ato", "ando"]],
  ["ate", ["ato"]],
  ["ati", ["ato"]],
  ["chi", ["co"]],
  ["che", ["co"]],
  ["ghi", ["go"]],
  ["a", ["o", "e"]],
  ["i", ["o", "e"]],
  ["e", ["o", "a", ""]],
  ["o", ["e"]],
  // French: adverb, feminine, plural, verb forms
  ["ement", ["e", "", "ant"]],
  ["euse", ["eux"]],
  ["ive", ["if"]],
  ["ant", ["er", "ez"]],
  ["ez", ["er", "ant"]],
  ["es", ["", "e"]],
  ["s", [""]],
  // German: declension, comparison
  ["eren", ["er", ""]],
  ["erer", ["er", ""]],
  ["ere", ["er", ""]],
  ["ster", ["", "er"]],
  ["sten", ["", "er"]],
  ["end", ["en"]],
  ["en", ["", "e", "end"]],
  ["em", [""]],
  ["er", ["", "e"]],
  ["es", [""]],
];
/** Shortest stem that still says anything. */
const STEM = 3;
/** A German compound shows its parts only when they are whole words. */
const COMPOUND_PART = 5;

const cache = new WeakMap<Lexicon, Map<string, Resolved | null>>();
const CACHE_LIMIT = 20_000;

/**
 * What an unlisted word most likely is: a known word with another ending, a
 * compound that begins with one, or a slip of the pen.
 * @param key folded word
 * @returns null when nothing is near enough
 */
export function resolveWord(key: string, lexicon: Lexicon): Resolved | null {
  let known = cache.get(lexicon);
  if (!known) {
    known = new Map();
    cache.set(lexicon, known);
  }
  const hit = known.get(key);
  if (hit !== undefined) return hit;
  const found = byEnding(key, lexicon) ?? byCompound(key, lexicon) ?? bySlip(key, lexicon);
  if (known.size >= CACHE_LIMIT) known.clear();
  known.set(key, found);
  return found;
}

function byEnding(key: string, lexicon: Lexicon): Resolved | null {
  for (const [ending, others] of ENDINGS) {
    if (!key.endsWith(ending) || key.length - ending.length < STEM) continue;
    const stem = key.slice(0, key.length - ending.length);
    for (const other of others) {
      const as = stem + other;
      if (as.length < 4) continue;
      const written = lexicon.phrases.get(as)?.find((w) => w.via !== "abbreviation" && !w.signName);
      if (written && written.kind !== "form" && fits(ending, written)) {
        return { written, how: "inflection", sure: 0.9, as };
      }
    }
  }
  return null;
}

/** English words end as they please; only words of the endings' own languages are inflected. */
function fits(ending: string, written: Written): boolean {
  if (written.lang === "en" || written.lang === "la") return false;
  if (["euse", "ive", "ement", "ez"].includes(ending)) return written.lang === "fr";
  if (["em", "er", "ere", "erer", "eren", "sten", "ster"].includes(ending)) {
    return written.lang === "de";
  }
  if (ending === "en" || ending === "end") return written.lang === "de";
  if (ending === "s" || ending === "ant") return written.lang === "fr";
  if (ending === "es") return written.lang !== "it";
  if (ending === "e") return true;
  return written.lang === "it";
}

function byCompound(key: string, lexicon: Lexicon): Resolved | null {
  for (let cut = key.length - COMPOUND_PART; cut >= COMPOUND_PART; cut -= 1) {
    const head = key.slice(0, cut);
    const written = lexicon.phrases.get(head)?.find((w) => w.lang === "de" && w.via === "headword");
    // Only nouns are built on so (Pedalgebrauch); schwermütig is no kind of schwer.
    if (written && /^\p{Lu}/u.test(written.headword)) {
      return { written, how: "compound", sure: 0.6, as: head };
    }
  }
  return null;
}

function bySlip(key: string, lexicon: Lexicon): Resolved | null {
  const slips = allowedSlips(key);
  if (slips === 0) return null;
  let best: { as: string; distance: number } | null = null;
  for (const form of shortened(key, slips)) {
    for (const as of lexicon.near.get(form) ?? []) {
      const distance = editDistance(key, as, slips);
      if (distance > Math.min(slips, allowedSlips(as))) continue;
      if (distance > 1 && (key[0] !== as[0] || Math.abs(key.length - as.length) > 1)) continue;
      if (!best || distance < best.distance) best = { as, distance };
    }
  }
  const written = best && lexicon.phrases.get(best.as)?.[0];
  if (!best || !written) return null;
  return { written, how: "misspelling", sure: best.distance === 1 ? 0.7 : 0.5, as: best.as };
}
