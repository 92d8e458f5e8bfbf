import { fraction, ZERO } from "./fraction";
import type { Fraction, TimeSignature } from "./model";

/** Quarters in a measure of this time, 0 when there is none. */
export function timeLength(time: TimeSignature | null): Fraction {
  if (time === null) return ZERO;
  const beats = time.beats.split("+").reduce((sum, count) => sum + Number(count), 0);
  return fraction(beats * 4, time.beatType);
}
