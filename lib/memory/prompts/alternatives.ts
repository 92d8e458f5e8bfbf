import { type Random, shuffle } from "../random";
import { sameKeyWords, sharedKeyWords } from "./meaning-words";
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
    if (drawn.some((d) => d.headword === other.headword || sameKeyWords(d.meaning, other.meaning)))
      continue;
    drawn.push(other);
  }
  return drawn;
}

/** Whether one entry could fairly be given for the other. */
export function isAlsoRight(entry: PromptEntry, other: PromptEntry, alsoRight: AlsoRight): boolean {
  if (entry.headword === other.headword || alsoRight(entry, other)) return true;
  // A pair set side by side on purpose (allegro, allegretto) shares words and yet differs.
  const paired =
    entry.alikes.some((a) => a.slug === other.slug) ||
    other.alikes.some((a) => a.slug === entry.slug);
  if (paired) return sameKeyWords(entry.meaning, other.meaning);
  return sharedKeyWords(entry.meaning, other.meaning) >= TOO_NEAR;
}
