/** What is said of a piece in one line, reckoned from its reading. */
import { toNumber } from "@/lib/reading/place";
import type { Reading, TempoState } from "@/lib/reading/reading";
import { isTelling, printedMarks } from "./ribbon/printed-marks";

/** Entries a part asks, each once, in order of first appearance: what its set is made of. */
export function pieceSlugs(reading: Reading, partIndex: number): string[] {
  const slugs = new Set<string>();
  for (const mark of printedMarks(reading, partIndex)) {
    if (!isTelling(mark) || mark.sign === "bar-style") continue;
    for (const { slug } of mark.found) if (slug !== null) slugs.add(slug);
  }
  return [...slugs];
}

/** Name of a part, or its place where the file gives none. */
export function partName(reading: Reading, partIndex: number): string {
  return reading.parts[partIndex]?.name.trim() || `Part ${partIndex + 1}`;
}

export interface PlayingTime {
  /** Seconds with every repeat and jump. */
  seconds: number;
  /** Some of it slows, hurries or is free: the number is a guess there. */
  about: boolean;
}

/**
 * How long playing takes at the printed numbers, repeats included. During a
 * rit. or accel. the speed it starts from counts.
 * @returns null where any stretch has no printed number to go by
 */
export function playingTime(reading: Reading): PlayingTime | null {
  const tempi = reading.tempo.filter((t) => t.by !== "");
  const lengths = reading.measures.map(({ index, length }) =>
    measureSeconds(index, toNumber(length), tempi),
  );
  let seconds = 0;
  let about = false;
  for (const index of reading.playingOrder) {
    const part = lengths[index];
    if (!part) return null;
    seconds += part.seconds;
    about ||= part.about;
  }
  return reading.playingOrder.length === 0 ? null : { seconds, about };
}

function measureSeconds(
  index: number,
  length: number,
  tempi: readonly TempoState[],
): PlayingTime | null {
  const before = tempi.findLast((t) => t.measureIndex < index || isFirstOf(t, index));
  const inside = tempi.filter(
    (t) => t.measureIndex === index && t !== before && !isFirstOf(t, index),
  );
  const stretches = [before, ...inside];
  let seconds = 0;
  let about = false;
  for (let i = 0; i < stretches.length; i += 1) {
    const tempo = stretches[i];
    const from = i === 0 || !tempo ? 0 : toNumber(tempo.onset);
    const next = stretches[i + 1];
    const to = next ? Math.min(length, toNumber(next.onset)) : length;
    if (to <= from) continue;
    const bpm = tempo?.quarterBpm ?? (tempo && tempo.change !== "none" ? tempo.baseBpm : null);
    if (!tempo || !bpm) return null;
    seconds += ((to - from) * 60) / bpm;
    about ||= tempo.change !== "none" || tempo.free || tempo.settled !== null;
  }
  return { seconds, about };
}

function isFirstOf(tempo: TempoState, index: number): boolean {
  return tempo.measureIndex === index && tempo.onset[0] === 0;
}

/** "1 min 27 s", "45 s". */
export function durationWords(seconds: number): string {
  const whole = Math.round(seconds);
  const minutes = Math.floor(whole / 60);
  const rest = whole % 60;
  return [minutes > 0 ? `${minutes} min` : "", rest > 0 || minutes === 0 ? `${rest} s` : ""]
    .filter(Boolean)
    .join(" ");
}

/** "one measure", "64 measures". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return count === 1 ? `one ${one}` : `${count} ${many}`;
}
