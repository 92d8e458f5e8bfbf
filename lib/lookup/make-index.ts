import type { Entry } from "../glossary/schema";
import { askConcepts } from "./ask-concepts";
import { resolveInflection } from "./inflections";
import type { LookUpEntry } from "./look-up-index";
import { type LookUpIndex, packIndex } from "./look-up-index";
import { codeOf, soundDistance } from "./sound-distance";
import { soundOfIpa, soundOfWord } from "./sound-key";
import { keysOf, makeSpellingBook } from "./spelling-book";

/**
 * The index that look-up runs from, made when the site is built.
 * @param order for a folded spelling claimed twice, its slugs with the likelier first
 */
export function makeLookUpIndex(
  entries: readonly Entry[],
  order: ReadonlyMap<string, readonly string[]>,
): LookUpIndex {
  // Like stands by like: that compresses best.
  const shelved = [...entries].sort(
    (a, b) => compare(a.folder, b.folder) || compare(a.slug, b.slug),
  );
  const bare = shelved.map(readEntry);
  const claims = Object.fromEntries([...order].map(([key, slugs]) => [key, [...slugs]]));
  const { lexicon } = makeSpellingBook(bare, claims);
  const whole = bare.map((entry, i) => {
    // Forms that the endings explain need not be shipped.
    const irregular = shelved[i]?.inflections?.filter(
      (form) => resolveInflection(keysOf(form), lexicon)?.slug !== entry.slug,
    );
    return entry.isPlain ? entry : { ...entry, ...list("inflections", irregular) };
  });
  return packIndex(whole, claims);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Kinds of which an English entry is a term of its own; the others are plain words. */
const ENGLISH_TERMS = new Set<Entry["kind"]>(["form", "navigation", "ornament"]);

/** Sounds this near are one: the rules of the language need no help. */
const SAME_SOUND = 0.5;

function readEntry(entry: Entry): LookUpEntry {
  const isPlain = entry.folder === "en" && !ENGLISH_TERMS.has(entry.kind);
  const sound = entry.ipa ? soundOfIpa(entry.ipa) : undefined;
  const byRule = keysOf(entry.headword)
    .map((word) => soundOfWord(word, entry.lang))
    .join("");
  const isRegular =
    sound === undefined || soundDistance(codeOf(sound), codeOf(byRule)) <= SAME_SOUND;
  return {
    slug: entry.slug,
    headword: entry.headword,
    lang: entry.lang,
    kind: entry.kind,
    tier: entry.tier,
    ...(entry.folder === "signs" ? { isSign: true } : {}),
    ...(entry.composed ? { isComposed: true } : {}),
    ...(isPlain ? { isPlain: true } : {}),
    meaning: entry.meaning,
    ...(entry.literal ? { literal: entry.literal } : {}),
    // Other ways to say it in plain English are read as English, not looked up.
    ...list("spellings", isPlain ? [] : entry.spellings),
    ...list("abbreviations", entry.abbreviations),
    ...(entry.means ? { means: entry.means } : {}),
    ...(entry.modifies ? { modifies: entry.modifies } : {}),
    ...(isRegular ? {} : { sound }),
    ...list("asks", askConcepts(entry)),
    ...list("looks", entry.sign?.looks),
    ...(entry.sign ? { shape: entry.sign.shape, stands: entry.sign.stands } : {}),
    ...(entry.sign?.glyph ? { glyph: entry.sign.glyph } : {}),
  };
}

/** An empty list is left out of the file. */
function list<Name extends string>(
  name: Name,
  items: readonly string[] | undefined,
): Partial<Record<Name, string[]>> {
  const out: Partial<Record<Name, string[]>> = {};
  if (items && items.length > 0) out[name] = [...items];
  return out;
}
