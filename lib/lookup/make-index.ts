import type { Entry } from "../glossary/schema";
import { askConcepts } from "./ask-concepts";
import { resolveInflection } from "./inflections";
import { type LookUpEntry, type LookUpIndex, usualSlug } from "./look-up-index";
import { soundOfIpa } from "./sound-key";
import { keysOf, makeSpellingBook } from "./spelling-book";

/**
 * The index that look-up runs from, made when the site is built.
 * @param order for a folded spelling claimed twice, its slugs with the likelier first
 */
export function makeLookUpIndex(
  entries: readonly Entry[],
  order: ReadonlyMap<string, readonly string[]>,
): LookUpIndex {
  const bare = entries.map(readEntry);
  const claims = Object.fromEntries([...order].map(([key, slugs]) => [key, [...slugs]]));
  const { lexicon } = makeSpellingBook(bare, claims);
  return {
    entries: bare.map(({ slug, ...entry }, i) => {
      // Forms that the endings explain need not be shipped.
      const irregular = entries[i]?.inflections?.filter(
        (form) => resolveInflection(keysOf(form), lexicon)?.slug !== slug,
      );
      return {
        ...(slug === usualSlug(entry.headword) ? {} : { slug }),
        ...entry,
        ...list("inflections", irregular),
      };
    }),
    order: claims,
  };
}

/** Kinds of which an English entry is a term of its own; the others are plain words. */
const ENGLISH_TERMS = new Set<Entry["kind"]>(["form", "navigation", "ornament"]);

function readEntry(entry: Entry): LookUpEntry {
  const asks = askConcepts(entry);
  return {
    slug: entry.slug,
    headword: entry.headword,
    lang: entry.lang,
    kind: entry.kind,
    tier: entry.tier,
    ...(entry.folder === "signs" ? { isSign: true } : {}),
    ...(entry.composed ? { isComposed: true } : {}),
    ...(entry.folder === "en" && !ENGLISH_TERMS.has(entry.kind) ? { isPlain: true } : {}),
    meaning: entry.meaning,
    ...(entry.literal ? { literal: entry.literal } : {}),
    ...list("spellings", entry.spellings),
    ...list("abbreviations", entry.abbreviations),
    ...(entry.means ? { means: entry.means } : {}),
    ...(entry.modifies ? { modifies: entry.modifies } : {}),
    ...(entry.ipa ? { sound: soundOfIpa(entry.ipa) } : {}),
    ...list("asks", asks),
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
