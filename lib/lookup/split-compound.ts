import type { Written } from "../words/lexicon";
import { resolveWord } from "../words/resolve-word";
import { findNear, type NearBook } from "./near-spellings";
import type { SpellingBook } from "./spelling-book";

/** One part of a compound direction. */
export interface Part {
  slug: string;
  /** Only joins (e, ma, und): named last. */
  joins: boolean;
  /** 0 to 1. */
  sure: number;
}

export interface Split {
  /** In the order typed. */
  parts: Part[];
  /** 0 to 1: share of the words that some part explains. */
  covered: number;
}

const JOINING = new Set(["link", "but"]);
/** A misspelt word is taken for a term from this likeness on. */
const NEAR_ENOUGH = 0.72;
const SHORTEST_NEAR = 4;

/**
 * Splits a compound into the terms it is made of, longest first: "sul pont.
 * arco" is sul ponticello and arco. Inflected and misspelt words count less.
 * @param keys folded words
 * @param isEnglish words of plain English are not taken for misspelt terms
 */
export function splitCompound(
  keys: readonly string[],
  book: SpellingBook,
  near: NearBook,
  isEnglish: (word: string) => boolean,
): Split {
  const parts: Part[] = [];
  let explained = 0;
  const open: { word: string; at: number }[] = [];
  for (let i = 0; i < keys.length; ) {
    const found = longest(keys, i, book);
    if (found) {
      parts.push(part(found.written, found.sure));
      explained += found.size;
      i += found.size;
      continue;
    }
    open.push({ word: keys[i] ?? "", at: parts.length });
    i += 1;
  }
  if (parts.length === 0 && open.length > 2) return { parts, covered: 0 };
  // Only beside a known term is an unknown word worth guessing.
  for (const { word, at } of open.reverse()) {
    if (word.length < SHORTEST_NEAR || isEnglish(word)) continue;
    const guess = findNear([word], near)[0];
    if (!guess || guess.likeness < NEAR_ENOUGH) continue;
    const slug = near.slugs[guess.entry];
    const written = slug === undefined ? undefined : book.lexicon.bySlug.get(slug);
    if (!written) continue;
    parts.splice(at, 0, part(written, guess.likeness));
    explained += guess.likeness;
  }
  return { parts, covered: keys.length === 0 ? 0 : explained / keys.length };
}

function part(written: Written, sure: number): Part {
  return { slug: written.slug, joins: written.role ? JOINING.has(written.role) : false, sure };
}

function longest(
  keys: readonly string[],
  from: number,
  { lexicon }: SpellingBook,
): { written: Written; size: number; sure: number } | null {
  const first = keys[from] ?? "";
  // The whole query as one phrase is found elsewhere; here it shows its parts.
  const most = Math.min(
    lexicon.starts.get(first) ?? 1,
    keys.length - from,
    Math.max(1, keys.length - 1),
  );
  for (let size = most; size >= 1; size -= 1) {
    const written = lexicon.phrases.get(keys.slice(from, from + size).join(" "))?.[0];
    if (written) return { written, size, sure: 1 };
  }
  if (first.length < SHORTEST_NEAR) return null;
  const resolved = resolveWord(first, lexicon);
  return resolved ? { written: resolved.written, size: 1, sure: resolved.sure } : null;
}
