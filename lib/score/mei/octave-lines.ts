import { compareFractions } from "../fraction";
import type { Mark, Note, ScorePart } from "../model";

/** An octave line and the marks that open and close it. */
export interface OctaveLine {
  part: ScorePart;
  start: Mark;
  stop: Mark;
}

/** Octave lines followed in one score. */
const MAX_LINES = 1000;

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

function notesUnder({ part, start, stop }: OctaveLine): Note[] {
  return part.notes.filter(
    (note) => note.staff === start.staff && !isBefore(note, start) && isBefore(note, stop),
  );
}

/**
 * Moves notes under octave lines to where they sound, as MusicXML writes them.
 * A line with any note that states its sounding octave itself is left as it is.
 */
export function soundOctaveLines(lines: readonly OctaveLine[], stated: ReadonlySet<Note>): void {
  for (const line of lines.slice(0, MAX_LINES)) {
    const shift = semitones(line.start.value);
    const notes = shift === 0 ? [] : notesUnder(line);
    if (notes.some((note) => stated.has(note))) continue;
    for (const note of notes) if (note.pitch !== null) note.pitch += shift;
  }
}
