import type { Outcome } from "../answer";
import { editDistance } from "./edit-distance";
import type { PromptEntry } from "./prompt-entry";

/** What is written of an entry. */
export type Spelled = Pick<
  PromptEntry,
  "slug" | "headword" | "spellings" | "abbreviations" | "inflections"
>;

/** Folded spelling → slugs written so. */
export type SpellingIndex = ReadonlyMap<string, readonly string[]>;

export interface TypedMark {
  outcome: Outcome;
  /** Entry that was typed instead of the one asked for. */
  chose?: string;
  /** The accepted spelling it came nearest to, as printed; to be shown with a slip. */
  nearest: string;
}

export interface MarkOptions {
  /** Spellings of all entries, so that a slip into another term is told from a misspelling. */
  index: SpellingIndex;
  /** A short form is no answer where the full word is asked for. */
  fullOnly?: boolean;
  /** Entries of the same meaning: right in sense, not the word asked for. */
  alsoRight?: readonly string[];
}

/**
 * A spelling without what is free: accents, case, spaces, hyphens, dots, apostrophes.
 *
 * @example foldSpelling("Più  mosso") // "piumosso"
 */
export function foldSpelling(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/ß/g, "ss")
    .replace(/æ/g, "ae")
    .replace(/œ/g, "oe")
    .replace(/[^\p{L}\p{N}]+/gu, "");
}

/** Spellings of all entries, folded. */
export function indexSpellings(entries: readonly Spelled[]): SpellingIndex {
  const index = new Map<string, string[]>();
  for (const entry of entries) {
    for (const spelling of spellingsOf(entry, false)) {
      const key = foldSpelling(spelling);
      const slugs = index.get(key) ?? [];
      if (key && !slugs.includes(entry.slug)) index.set(key, [...slugs, entry.slug]);
    }
  }
  return index;
}

/** Edits forgiven: 1 in four to seven letters, 2 in eight or more. */
export function editsForgiven(letters: number): number {
  return letters >= 8 ? 2 : letters >= 4 ? 1 : 0;
}

/**
 * Marks a typed word.
 * A misspelling that spells another entry, or comes nearer to one, is that entry and not a slip.
 *
 * @param typed what the student wrote
 * @param target the entry asked for
 * @returns `right`, `slip`, `missed`, or `partly` for another word of the same meaning
 * @see reference memory/learning-guidance.md, grading facts
 */
export function markTyped(typed: string, target: Spelled, options: MarkOptions): TypedMark {
  const written = foldSpelling(typed);
  const accepted = spellingsOf(target, options.fullOnly ?? false);
  if (!written) return { outcome: "missed", nearest: target.headword };
  const exact = accepted.find((spelling) => foldSpelling(spelling) === written);
  if (exact !== undefined) return { outcome: "right", nearest: exact };

  // A spelling shared with the target (rit. stands for two words) names no other entry.
  const spelled = options.index.get(written) ?? [];
  const other = spelled.includes(target.slug) ? undefined : spelled[0];
  if (other !== undefined) return instead(other, target, options);

  const own = nearestOf(written, accepted);
  const away = nearestElsewhere(written, target.slug, options.index, own.distance);
  if (away !== null) return instead(away, target, options);
  if (own.distance <= editsForgiven(foldSpelling(own.spelling).length)) {
    return { outcome: "slip", nearest: own.spelling };
  }
  return { outcome: "missed", nearest: target.headword };
}

function instead(slug: string, target: Spelled, { alsoRight }: MarkOptions): TypedMark {
  const outcome: Outcome = alsoRight?.includes(slug) ? "partly" : "missed";
  return { outcome, chose: slug, nearest: target.headword };
}

function spellingsOf(entry: Spelled, fullOnly: boolean): string[] {
  const full = [entry.headword, ...entry.spellings, ...entry.inflections];
  return fullOnly ? full : [...full, ...entry.abbreviations];
}

const FARTHEST = 3;

function nearestOf(
  written: string,
  spellings: readonly string[],
): { spelling: string; distance: number } {
  let best = { spelling: spellings[0] ?? "", distance: FARTHEST };
  for (const spelling of spellings) {
    const folded = foldSpelling(spelling);
    const distance = editDistance(written, folded, FARTHEST - 1);
    if (distance < best.distance && distance <= editsForgiven(folded.length))
      best = { spelling, distance };
  }
  return best;
}

/** Another entry forgiven as a misspelling with fewer edits than the target needs. */
function nearestElsewhere(
  written: string,
  own: string,
  index: SpellingIndex,
  below: number,
): string | null {
  let found: string | null = null;
  let least = below;
  for (const [key, slugs] of index) {
    if (Math.abs(key.length - written.length) >= least) continue;
    const distance = editDistance(written, key, least - 1);
    const slug = slugs.find((s) => s !== own);
    if (
      slug !== undefined &&
      !slugs.includes(own) &&
      distance < least &&
      distance <= editsForgiven(key.length)
    ) {
      found = slug;
      least = distance;
    }
  }
  return found;
}
