import type { Entry } from "../glossary/schema";
import { resolveWord } from "../words/resolve-word";
import { askConcepts } from "./ask-concepts";
import type { LookUpEntry, LookUpIndex } from "./look-up-index";
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
  const plain = entries.map(readEntry);
  const claims = Object.fromEntries([...order].map(([key, slugs]) => [key, [...slugs]]));
  const { lexicon } = makeSpellingBook({ entries: plain, order: claims });
  const withInflections = entries.map((entry, i) => {
    const irregular = (entry.inflections ?? []).filter((inflection) => {
      const [word = "", ...more] = keysOf(inflection);
      if (more.length > 0) return true;
      const resolved = resolveWord(word, lexicon);
      return resolved?.how !== "inflection" || resolved.written.slug !== entry.slug;
    });
    const base = plain[i];
    return base && { ...base, ...list("inflections", irregular) };
  });
  return { entries: withInflections.filter((e) => e !== undefined), order: claims };
}

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
