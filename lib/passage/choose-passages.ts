import type { Reading } from "../reading/reading";
import type { Passage } from "./question";

export const SHORTEST = 2;
export const LONGEST = 8;
const USUAL = 8;

export interface Chosen extends Passage {
  /** How much it asks; larger first. Only for comparing. */
  score: number;
}

/**
 * Stretches worth asking about, the most telling first, cut where a player
 * would: at rehearsal marks, double bars, repeats and new tempo words.
 * @param weight how much an entry counts: more where the student is less sure
 */
export function choosePassages(
  reading: Reading,
  partIndex: number,
  weight: (slug: string) => number,
  staff = 1,
): Chosen[] {
  const cuts = findCuts(reading, partIndex);
  const passages: Chosen[] = [];
  for (let c = 0; c + 1 < cuts.length; c += 1) {
    const [from = 0, end = 0] = [cuts[c], cuts[c + 1]];
    for (const [a, b] of split(from, end - 1)) {
      passages.push({
        partIndex,
        staff,
        from: a,
        to: b,
        score: scoreOf(reading, partIndex, a, b, weight),
      });
    }
  }
  return passages
    .filter((p) => hasNotes(reading, p))
    .sort((a, b) => b.score - a.score || a.from - b.from);
}

/** Measures at which a new stretch begins, 0 and the end included. */
function findCuts(reading: Reading, partIndex: number): number[] {
  const cuts = new Set([0, reading.measures.length]);
  for (const f of reading.found) {
    if (f.partIndex !== partIndex && f.partIndex !== 0) continue;
    if (f.sign === "rehearsal" || f.sign === "segno" || f.sign === "repeat-forward")
      cuts.add(f.measureIndex);
    if (f.sign === "repeat-backward" || f.sign === "bar-style") cuts.add(f.measureIndex + 1);
    if (f.kind === "tempo" && f.sign === null && f.onset[0] === 0) cuts.add(f.measureIndex);
  }
  return [...cuts].filter((m) => m <= reading.measures.length).sort((a, b) => a - b);
}

/** Even stretches of at most LONGEST measures; a stub joins its neighbour where it fits. */
function split(from: number, to: number): [number, number][] {
  const length = to - from + 1;
  if (length <= LONGEST) return [[from, to]];
  const pieces = Math.ceil(length / USUAL);
  const size = Math.ceil(length / pieces);
  const out: [number, number][] = [];
  for (let a = from; a <= to; a += size) out.push([a, Math.min(to, a + size - 1)]);
  return out;
}

function scoreOf(
  reading: Reading,
  partIndex: number,
  from: number,
  to: number,
  weight: (slug: string) => number,
): number {
  const slugs = new Set<string>();
  const kinds = new Set<string>();
  for (const f of reading.found) {
    if (f.partIndex !== partIndex || f.measureIndex < from || f.measureIndex > to) continue;
    if (f.slug) slugs.add(f.slug);
    kinds.add(f.kind);
  }
  const short = to - from + 1 < SHORTEST ? 0.25 : 1;
  const forks = reading.playingOrder.some((m, i) => {
    const next = reading.playingOrder[i + 1];
    return m >= from && m <= to && next !== undefined && next !== m + 1;
  });
  let sum = kinds.size + (forks ? 2 : 0);
  for (const slug of slugs) sum += weight(slug);
  return sum * short;
}

function hasNotes(reading: Reading, { partIndex, from, to }: Passage): boolean {
  return reading.measures.slice(from, to + 1).some((m) => (m.notes[partIndex] ?? 0) > 0);
}

/**
 * A range as a player types it: "33-40", "33 – 40", "33".
 * @returns the passage, or one sentence saying what is wrong
 */
export function parseRange(text: string, reading: Reading, partIndex: number): Passage | string {
  const match = /^\s*(\S+?)\s*(?:[-–—]|to)\s*(\S+)\s*$/.exec(text) ?? /^\s*(\S+)\s*$/.exec(text);
  const indexOf = (number: string | undefined) =>
    reading.measures.findIndex((m) => m.number === number);
  const from = indexOf(match?.[1]);
  const to = match?.[2] === undefined ? from : indexOf(match[2]);
  const [first, last] = [reading.measures[0]?.number, reading.measures.at(-1)?.number];
  if (from < 0 || to < 0)
    return `No such measure: this piece runs from ${first} to ${last}. Write for example ${first}-${last}.`;
  if (to < from) return "The second measure comes before the first: swap them.";
  if (to - from + 1 > LONGEST)
    return `At most ${LONGEST} measures at a time: that is what one can hold in mind.`;
  return { partIndex, staff: 1, from, to };
}
