import type { Entry } from "../glossary/schema";
import type { Found, Reading } from "../reading/reading";
import type { Evidence, Option, Passage } from "./question";

/** What a maker of questions works from. Chance is an argument. */
export interface Context {
  reading: Reading;
  passage: Passage;
  entries: ReadonlyMap<string, PassageEntry>;
  /** From 0 up to 1. */
  random: () => number;
}

export type PassageEntry = Pick<
  Entry,
  "slug" | "headword" | "lang" | "kind" | "meaning" | "asks" | "alikes" | "tier"
> & { sign?: Entry["sign"]; composed?: string[] };

/** The printed number; where it is missing or stands twice, the place in the score beside it. */
export function numberOf(reading: Reading, measureIndex: number): string {
  const number = reading.measures[measureIndex]?.number ?? "";
  if (number === "") return `no. ${measureIndex + 1}`;
  const twice = reading.measures.some((m) => m.number === number && m.index !== measureIndex);
  return twice ? `${number} (no. ${measureIndex + 1})` : number;
}

/** Marks of the passage's own staff, in order. */
export function foundIn({ reading, passage }: Context): Found[] {
  return reading.found.filter(
    (f) =>
      f.partIndex === passage.partIndex &&
      f.measureIndex >= passage.from &&
      f.measureIndex <= passage.to &&
      (f.staff === null || f.staff === passage.staff),
  );
}

export function evidenceOf(
  reading: Reading,
  measureIndex: number,
  text: string,
  slug: string | null = null,
  sign: string | null = null,
): Evidence {
  return { measureIndex, measureNumber: numberOf(reading, measureIndex), text, slug, sign };
}

/** A new order by the given chance (Fisher-Yates); the list itself is left alone. */
export function shuffled<T>(list: readonly T[], random: () => number): T[] {
  const out = [...list];
  for (let i = out.length - 1; i > 0; i -= 1) {
    const j = Math.floor(random() * (i + 1));
    const a = out[i];
    const b = out[j];
    if (a !== undefined && b !== undefined) {
      out[i] = b;
      out[j] = a;
    }
  }
  return out;
}

export function meaningOption(entry: PassageEntry): Option {
  return { id: entry.slug, text: entry.meaning, lang: "en", slug: entry.slug };
}

/** Could both answers be defended? Then they must not stand side by side. */
export function alsoRight(a: PassageEntry, b: PassageEntry): boolean {
  if (a.slug === b.slug || a.meaning === b.meaning) return true;
  if (a.composed?.includes(b.slug) || b.composed?.includes(a.slug)) return true;
  if (JSON.stringify(a.asks) === JSON.stringify(b.asks)) return true;
  const characters = new Set<string>(a.asks.character ?? []);
  if ((b.asks.character ?? []).some((c) => characters.has(c))) return true;
  const paces = [a.asks.tempo?.pace, b.asks.tempo?.pace];
  if (paces[0] !== undefined && paces[0] === paces[1]) return true;
  return sharedWords(a.meaning, b.meaning) >= 2;
}

const SMALL = new Set(
  "a an and as at be but by from in into is it its more not of on or the then to very with without".split(
    " ",
  ),
);

function sharedWords(a: string, b: string): number {
  const words = (text: string) =>
    text
      .toLowerCase()
      .match(/[a-z]{3,}/g)
      ?.filter((w) => !SMALL.has(w)) ?? [];
  const first = new Set(words(a));
  return new Set(words(b).filter((w) => first.has(w))).size;
}

/**
 * Alternatives that are plausible and wrong: the entry's own alikes first, then
 * others of its kind from the same piece, then of the glossary's commonest.
 */
export function distractors(context: Context, entry: PassageEntry, count: number): PassageEntry[] {
  const { entries, reading, random } = context;
  const near = (entry.alikes ?? []).map((a) => entries.get(a.slug));
  const inPiece = new Set(reading.found.map((f) => f.slug));
  const kin = [...entries.values()].filter((e) => e.kind === entry.kind && !e.composed);
  const pool = [
    ...shuffled(near, random),
    ...shuffled(
      kin.filter((e) => inPiece.has(e.slug)),
      random,
    ),
    ...shuffled(
      kin.filter((e) => e.tier === 1),
      random,
    ),
    ...shuffled(
      kin.filter((e) => e.tier === 2),
      random,
    ),
  ];
  const chosen: PassageEntry[] = [];
  for (const other of pool) {
    if (chosen.length >= count) break;
    if (!other || other.kind !== entry.kind || alsoRight(entry, other)) continue;
    if (chosen.some((c) => alsoRight(c, other))) continue;
    chosen.push(other);
  }
  return chosen;
}
