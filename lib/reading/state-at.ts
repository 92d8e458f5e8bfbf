import { lastAt, samePlace } from "./place";
import type { DynamicState, MannerWord, Place, Reading, TempoState } from "./reading";

/** What decides where the sources leave a choice; printed with every state. */
export const IN_FORCE_POLICY = [
  "character words hold until the next character or tempo word",
  "a change of speed ended by its dashes stays where it was left, unnumbered, until a mark restores it",
  "a change of loudness with no written goal ends louder (or softer) than it began, by an unnamed amount",
].join("; ");

/** Everything in force for one staff at one place. */
export interface InForce {
  tempo: TempoState | null;
  dynamic: DynamicState | null;
  articulation: MannerWord[];
  technique: MannerWord[];
  character: MannerWord[];
}

/**
 * The state after every mark at the place and before any later one.
 * @param staff from 1; the part's first when not given
 */
export function stateAt(reading: Reading, partIndex: number, place: Place, staff = 1): InForce {
  const line =
    reading.lines.find((l) => l.partIndex === partIndex && l.staff === staff) ??
    reading.lines.find((l) => l.partIndex === partIndex);
  const at = <T extends Place>(list: readonly T[] | undefined): T | null =>
    list?.[lastAt(list, place)] ?? null;
  const dynamic = at(line?.dynamics);
  return {
    tempo: at(reading.tempo),
    // A one-note effect is over as soon as its note is.
    dynamic: dynamic && !samePlace(dynamic, place) ? { ...dynamic, attack: null } : dynamic,
    articulation: [
      ...(at(line?.articulation)?.words ?? []),
      ...signsAt(reading, partIndex, place, staff),
    ],
    technique: at(line?.technique)?.words ?? [],
    character: at(line?.character)?.words ?? [],
  };
}

/** Articulation signs on the note at this very place. */
function signsAt(reading: Reading, partIndex: number, place: Place, staff: number): MannerWord[] {
  const words: MannerWord[] = [];
  for (const f of reading.found) {
    if (f.partIndex !== partIndex || f.sign === null || f.kind !== "articulation") continue;
    if (f.measureIndex !== place.measureIndex || !samePlace(f, place)) continue;
    if (f.staff !== null && f.staff !== staff) continue;
    if (["slur", "tied", "breath-mark", "caesura"].includes(f.sign)) continue;
    if (words.some((w) => w.text === f.headword)) continue;
    words.push({ text: f.headword, slug: f.slug ?? "", source: f.measureIndex });
  }
  return words;
}
