import type { Language } from "../glossary/vocabulary";
import { type Books, openBooks, type Search, shareOfEnglish } from "./books";
import { addDescribed } from "./by-description";
import { addExact, addNear, addParts, addPhrases, SCORE } from "./by-spelling";
import type { LookUpIndex, LookUpResult } from "./look-up-index";
import { Pool } from "./pool";
import { readQuery } from "./read-query";
import { keysOf } from "./spelling-book";

export type LookUp = (query: string, limit?: number) => LookUpResult[];

/** After a sure find, everything unsure stands behind it. */
const BEHIND = 0.7;
/** What a sign needs to stand before a variant that was described: so much of its score. */
const VARIANT_LEAD = 0.75;
const OTHER_LANGUAGE = 0.6;

/**
 * Makes the look-up from its index, in the browser and in Node alike.
 * @returns from a query, at most `limit` (5) entries, best first; never throws
 * @example createLookUp(index)("dolchay")[0] // { slug: "dolce", headword: "dolce", why: "sound", … }
 */
export function createLookUp(index: LookUpIndex): LookUp {
  const books = openBooks(index);
  return (typed, limit = 5) => {
    const query = readQuery(typed);
    if (query.text === "") return [];
    const pool = new Pool(books.entries);
    const english = shareOfEnglish(query.core, books);
    // "german for fast" asks for what fast means, not for the German word fast.
    const onlyMeant = query.lang !== null && english === 1;
    addExact(query.text, pool, books);
    if (query.core !== query.text && !onlyMeant) addExact(query.core, pool, books);
    const behind = pool.best >= SCORE.ending ? BEHIND : 1;
    const search: Search = { query, keys: keysOf(query.core), english, behind, pool, books };
    let near: ReadonlySet<number> = new Set();
    if (!onlyMeant) {
      addPhrases(search);
      addParts(search);
      near = addNear(search);
    }
    addDescribed(search, near);
    addMeant(pool, books);
    if (query.lang !== null) weighLanguage(query.lang, pool, books);
    return pool.list(limit);
  };
}

/**
 * A sign that stands for a word (a dot for staccato) brings the word before
 * itself. A variant of another sign brings that one too, before itself unless
 * the description fits the variant far better.
 */
function addMeant(pool: Pool, { entries, bySlug }: Books): void {
  const found = new Map(pool);
  for (const [at, { score, why }] of found) {
    const entry = entries[at];
    if (!entry?.means || !entry.isSign) continue;
    const meant = bySlug.get(entry.means);
    if (meant === undefined) continue;
    const described = why === "meaning" || why === "looks";
    const own = found.get(meant)?.score ?? 0;
    const first = described && (!entries[meant]?.isSign || own >= score * VARIANT_LEAD);
    pool.add(meant, first ? score + 0.002 : score - 0.002, "means");
  }
}

function weighLanguage(lang: Language, pool: Pool, { entries }: Books): void {
  for (const [at, { score, why }] of [...pool]) {
    if (entries[at]?.lang !== lang) pool.set(at, score * OTHER_LANGUAGE, why);
  }
}
