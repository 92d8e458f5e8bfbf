import { type DescriptionIndex, makeDescriptionIndex } from "./description-index";
import { isPlainEnglish } from "./english-phrases";
import { type LookUpEntry, type LookUpIndex, unpackEntries } from "./look-up-index";
import { makeNearBook, type NearBook } from "./near-spellings";
import type { Pool } from "./pool";
import type { Query } from "./read-query";
import { makeSpellingBook, type SpellingBook } from "./spelling-book";
import { splitEnglish } from "./split-english";
import { stem } from "./stem";

/** All that a look-up searches in, opened once from the index. */
export interface Books {
  entries: readonly LookUpEntry[];
  /** Slug to place of the entry. */
  bySlug: ReadonlyMap<string, number>;
  spelling: SpellingBook;
  near: NearBook;
  described: DescriptionIndex;
}

/** One query on its way through the books. */
export interface Search {
  query: Query;
  /** The folded words of its core. */
  keys: readonly string[];
  /** 0 to 1: share of its words that are plain English. */
  english: number;
  /** What everything unsure is multiplied by: less than 1 after a sure find. */
  behind: number;
  pool: Pool;
  books: Books;
}

export function openBooks(index: LookUpIndex): Books {
  const entries = unpackEntries(index);
  return {
    entries,
    bySlug: new Map(entries.map((entry, at) => [entry.slug, at])),
    spelling: makeSpellingBook(entries, index.order),
    near: makeNearBook(entries),
    described: makeDescriptionIndex(entries),
  };
}

/** Share of the words that are plain English; words that are terms as well (a, fast) are not. */
export function shareOfEnglish(text: string, books: Books): number {
  const words = splitEnglish(text);
  if (words.length === 0) return 0;
  if (words.every(isPlainEnglish)) return 1;
  return words.filter((word) => isEnglishWord(word, books)).length / words.length;
}

/** In the table of plain English or in some meaning, and no listed term. */
export function isEnglishWord(word: string, { spelling, described }: Books): boolean {
  if (spelling.lexicon.phrases.has(word)) return false;
  return isPlainEnglish(word) || described.postings.has(`~${stem(word)}`);
}
