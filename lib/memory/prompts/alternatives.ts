import { type Random, shuffle } from "../random";
import { keyWords, sameWords, sharedShare } from "./meaning-words";
import type { AlsoRight, PromptEntry } from "./prompt-entry";

/** Kinds near enough that one is a plausible wrong answer for another, when its own kind is too small. */
const KIN: Readonly<Record<string, readonly string[]>> = {
  tempo: ["tempo-change", "character"],
  "tempo-change": ["tempo", "dynamic-change"],
  dynamic: ["dynamic-change"],
  "dynamic-change": ["dynamic", "tempo-change"],
  articulation: ["technique", "ornament"],
  character: ["tempo", "articulation"],
  technique: ["articulation", "ornament"],
  ornament: ["articulation", "technique"],
  navigation: ["form"],
  modifier: ["tempo-change", "dynamic-change"],
  form: ["navigation"],
};

/** From this share of common content words on, a meaning could pass for the other's. */
const TOO_NEAR = 2 / 3;
const TOO_NEAR_IN_PAIR = 0.6;

export interface AlternativesOptions {
  /** Entries to draw from; the one asked about may be among them. */
  pool: readonly PromptEntry[];
  alsoRight: AlsoRight;
  random: Random;
  /** Wrong alternatives wanted. */
  count: number;
  /** What this student gave for it before: slug → times. */
  confusions?: ReadonlyMap<string, number>;
  /** Entries this student has met; others are drawn only when these do not suffice. */
  met?: ReadonlySet<string>;
  /** Further condition, such as having a sign. */
  fits?: (entry: PromptEntry) => boolean;
}

/**
 * Wrong alternatives for an entry: the student's own confusions first, then entries alike, then
 * others of its kind and tier. None is also right, and no two of them mean the same.
 *
 * @returns at most `count`, fewer when the pool has no more
 * @see learning-guidance, rule 15 (Little et al. 2012; Rodriguez 2005)
 */
export function drawAlternatives(entry: PromptEntry, options: AlternativesOptions): PromptEntry[] {
  const { pool, alsoRight, random, count, confusions, met, fits } = options;
  const alikes = new Set(entry.alikes.map((a) => a.slug));
  const kin = new Set(KIN[entry.kind] ?? []);
  const rank = (other: PromptEntry): number => {
    const times = confusions?.get(other.slug) ?? 0;
    if (times > 0) return -times;
    const strange = met && !met.has(other.slug) ? 0.5 : 0;
    if (alikes.has(other.slug) || other.alikes.some((a) => a.slug === entry.slug))
      return 1 + strange;
    const away = other.kind === entry.kind ? 0 : 10;
    return 2 + away + strange + Math.abs(other.tier - entry.tier);
  };
  const able = shuffle(pool, random)
    .filter((other) => other.slug !== entry.slug && (fits?.(other) ?? true))
    .filter(
      (other) =>
        (confusions?.get(other.slug) ?? 0) > 0 || other.kind === entry.kind || kin.has(other.kind),
    )
    .filter((other) => !isAlsoRight(entry, other, alsoRight))
    .sort((a, b) => rank(a) - rank(b));
  const drawn: PromptEntry[] = [];
  for (const other of able) {
    if (drawn.length === count) break;
    if (drawn.some((d) => d.headword === other.headword || sameWords(wordsOf(d), wordsOf(other))))
      continue;
    drawn.push(other);
  }
  return drawn;
}

/**
 * Whether one entry could fairly be chosen for the other, so that it must not stand beside it.
 * Wide on purpose: a wrong alternative that is half right teaches the student to doubt.
 */
export function isAlsoRight(entry: PromptEntry, other: PromptEntry, alsoRight: AlsoRight): boolean {
  if (isSynonym(entry, other, alsoRight)) return true;
  const shared = sharedShare(wordsOf(entry), wordsOf(other));
  const paired =
    entry.alikes.some((a) => a.slug === other.slug) ||
    other.alikes.some((a) => a.slug === entry.slug);
  // A pair set side by side on purpose (soft, very soft) may share all words of the shorter.
  return paired ? shared.ofLonger >= TOO_NEAR_IN_PAIR : shared.ofShorter >= TOO_NEAR;
}

/** Whether both mean the same, so that either word answers the meaning. Narrow on purpose. */
export function isSynonym(entry: PromptEntry, other: PromptEntry, alsoRight: AlsoRight): boolean {
  return (
    entry.headword === other.headword ||
    alsoRight(entry, other) ||
    sameWords(wordsOf(entry), wordsOf(other))
  );
}

/** Content words of entries already looked at: one prompt compares hundreds of meanings. */
const looked = new WeakMap<PromptEntry, ReadonlySet<string>>();

function wordsOf(entry: PromptEntry): ReadonlySet<string> {
  const words = looked.get(entry) ?? keyWords(entry.meaning);
  looked.set(entry, words);
  return words;
}
