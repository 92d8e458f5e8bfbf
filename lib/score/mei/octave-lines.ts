import { compareFractions } from "../fraction";
import type { Mark, Note, ScorePart } from "../model";

/** An octave line and the marks that open and close it. */
export interface OctaveLine {
  part: ScorePart;
  start: Mark;
  stop: Mark;
}

/** Semitones from written to sounding: 8va is `down-8`, the way from sounding to written. */
function semitones(value: string | null): number {
  const match = /^(up|down)-(8|15|22)$/.exec(value ?? "");
  if (match === null) return 0;
  const octaves = { "8": 1, "15": 2, "22": 3 }[match[2] ?? ""] ?? 0;
  return 12 * octaves * (match[1] === "down" ? 1 : -1);
}

function isBefore(
  a: Pick<Note, "measureIndex" | "onset">,
  b: Pick<Note, "measureIndex" | "onset">,
): boolean {
  const measures = a.measureIndex - b.measureIndex;
  return measures < 0 || (measures === 0 && compareFractions(a.onset, b.onset) < 0);
}

/**
 * Moves notes under octave lines to where they sound, as MusicXML writes them.
 * Notes that state their sounding octave themselves are left.
 */
export function soundOctaveLines(lines: readonly OctaveLine[], stated: ReadonlySet<Note>): void {
  for (const { part, start, stop } of lines) {
    const shift = semitones(start.value);
    if (shift === 0) continue;
    for (const note of part.notes) {
      const inside = !isBefore(note, start) && isBefore(note, stop);
      const moves = inside && note.staff === start.staff && !stated.has(note);
      if (moves && note.pitch !== null) note.pitch += shift;
    }
  }
}
