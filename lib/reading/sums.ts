import type { Note, ScorePart } from "../score/model";
import { compareFractions, toNumber } from "./place";
import type { Reading, TempoState } from "./reading";
import { quartersOf } from "./tempo-line";

/** Beats a minute in a beat unit, from quarters a minute: quarter = 120 is dotted quarter = 80. */
export function beatsPerMinute(quarterBpm: number, beat: { unit: string; dots: number }): number {
  return quarterBpm / quartersOf(beat);
}

export function quartersPerMinute(perMinute: number, beat: { unit: string; dots: number }): number {
  return perMinute * quartersOf(beat);
}

/** @param notesPerBeat notes on one beat, at `bpm` beats a minute */
export function notesPerSecond(bpm: number, notesPerBeat: number): number {
  return (bpm * notesPerBeat) / 60;
}

export interface Span {
  seconds: number;
  /** A change of speed or free time lies in the span: the sum is at the steady speed before it. */
  approximate: boolean;
}

/**
 * Seconds from one step of the playing order to another, both included.
 * @param chosen quarters a minute to reckon with instead of the printed tempo
 * @returns null where neither the score nor the caller gives a number
 */
export function secondsOf(
  reading: Reading,
  fromStep: number,
  toStep: number,
  chosen: number | null = null,
): Span | null {
  let seconds = 0;
  let approximate = false;
  for (let step = fromStep; step <= toStep; step += 1) {
    const measure = reading.measures[reading.playingOrder[step] ?? -1];
    if (!measure) return null;
    const end = toNumber(measure.length);
    const states = tempoWithin(reading, measure.index);
    for (let i = 0; i < states.length; i += 1) {
      const state = states[i];
      const from = i === 0 ? 0 : toNumber(state?.onset ?? [0, 1]);
      const to = i + 1 < states.length ? toNumber(states[i + 1]?.onset ?? [0, 1]) : end;
      const bpm = chosen ?? state?.quarterBpm ?? state?.baseBpm ?? null;
      if (bpm === null) return null;
      if (state && (state.change !== "none" || state.free || state.settled)) approximate = true;
      seconds += ((to - from) * 60) / bpm;
    }
  }
  return { seconds, approximate };
}

/** The state at the barline, then those that begin inside the measure. */
function tempoWithin(reading: Reading, measureIndex: number): (TempoState | null)[] {
  const before = reading.tempo.findLast(
    (t) => t.measureIndex < measureIndex || (t.measureIndex === measureIndex && t.onset[0] === 0),
  );
  const inside = reading.tempo.filter((t) => t.measureIndex === measureIndex && t.onset[0] !== 0);
  return [before ?? null, ...inside];
}

export interface Run {
  fromMeasure: number;
  toMeasure: number;
  notes: number;
  /** Quarter notes that one note of the run lasts. */
  noteLength: number;
  touch: "tongued" | "slurred";
}

/** Fewest notes in a row that make a run worth counting. */
const SHORTEST_RUN = 4;

/**
 * Runs of equal notes of at most an eighth, all tongued or all under slurs, in
 * one voice. Long enough ones decide which tonguing a speed needs.
 */
export function findRuns(part: ScorePart): Run[] {
  const slurred = slurredNotes(part);
  const runs: Run[] = [];
  let run: Run | null = null;
  let last: Note | null = null;
  const close = () => {
    if (run && run.notes >= SHORTEST_RUN) runs.push(run);
    run = null;
  };
  part.notes.forEach((note, i) => {
    if (note.chord || note.grace || note.cue) return;
    const length = toNumber(note.duration);
    if (note.rest || length > 0.5 || note.tieStop || (last && last.voice !== note.voice)) {
      close();
      last = note;
      return;
    }
    const touch = slurred.has(i) ? "slurred" : "tongued";
    const same =
      run && last && run.touch === touch && compareFractions(last.duration, note.duration) === 0;
    if (run && same) {
      run.notes += 1;
      run.toMeasure = note.measureIndex;
    } else {
      close();
      run = {
        fromMeasure: note.measureIndex,
        toMeasure: note.measureIndex,
        notes: 1,
        noteLength: length,
        touch,
      };
    }
    last = note;
  });
  close();
  return runs;
}

/** Notes begun under a slur: all but the first are not tongued anew. */
function slurredNotes(part: ScorePart): ReadonlySet<number> {
  const under = new Set<number>();
  const starts = new Map<string, number>();
  for (const mark of part.marks) {
    if (mark.element !== "slur" || mark.note === null) continue;
    const number = mark.number ?? "1";
    if (mark.role === "start") starts.set(number, mark.note);
    else if (mark.role === "stop") {
      const from = starts.get(number);
      starts.delete(number);
      if (from === undefined) continue;
      for (let i = from + 1; i <= mark.note; i += 1) under.add(i);
    }
  }
  return under;
}

/** Notes a second of a run at a speed. */
export function runSpeed(run: Pick<Run, "noteLength">, quarterBpm: number): number {
  return quarterBpm / 60 / run.noteLength;
}
