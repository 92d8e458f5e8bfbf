/** Signs that reach from one note or barline to another: where each begins and ends. */
import type { Mark, Measure, Score, ScorePart } from "../score/model";
import { comparePlaces } from "./place";
import type { MarkSpan, Place } from "./reading";

/** Elements whose length is part of what they say. Hairpins are in the dynamics line. */
const SPANNING = new Set(["slur", "octave-shift", "pedal", "wavy-line", "bracket"]);

/**
 * Pairs the starts and stops of slurs, octave lines, pedals, trill lines and
 * brackets, and gives each numbered ending its measures. A start that is never
 * stopped is left out: how far it reaches is not in the file.
 * @returns by part, then place; endings once, for all parts (`partIndex` null)
 */
export function markSpans(score: Score): MarkSpan[] {
  return [
    ...endingSpans(score.measures),
    ...score.parts.flatMap((part, partIndex) => partSpans(part, partIndex)),
  ];
}

function partSpans(part: ScorePart, partIndex: number): MarkSpan[] {
  const marks = part.marks.filter((m) => SPANNING.has(m.element)).sort(comparePlaces);
  const stops = new Map<string, Mark[]>();
  for (const mark of marks) {
    if (mark.role !== "stop") continue;
    const list = stops.get(keyOf(mark));
    if (list) list.push(mark);
    else stops.set(keyOf(mark), [mark]);
  }
  return marks.flatMap((start): MarkSpan[] => {
    if (start.role !== "start") return [];
    const list = stops.get(keyOf(start)) ?? [];
    // A stop before every later start can close nothing any more.
    while (list[0] && comparePlaces(list[0], start) < 0) list.shift();
    const at = Math.max(
      0,
      list.findIndex((stop) => stop.voice === start.voice),
    );
    const [stop] = list.splice(at, 1);
    if (!stop) return [];
    const { element, value, staff } = start;
    return [{ element, value, partIndex, staff, from: placeOf(start), to: placeOf(stop) }];
  });
}

/** Starts and stops of one element and number pair in order; a slur may change staff. */
function keyOf(mark: Mark): string {
  return `${mark.element} ${mark.number ?? "1"}`;
}

function placeOf({ measureIndex, onset }: Place): Place {
  return { measureIndex, onset };
}

function endingSpans(measures: readonly Measure[]): MarkSpan[] {
  return measures.flatMap((measure, from): MarkSpan[] => {
    if (!measure.endingStart) return [];
    const closed = measures.findIndex(
      (m, i) => i >= from && (m.endingStop !== null || (measures[i + 1]?.endingStart ?? null)),
    );
    const last = closed < 0 ? measures.length - 1 : closed;
    return [
      {
        element: "ending",
        value: measure.endingText ?? measure.endingStart.map((pass) => `${pass}.`).join(" "),
        partIndex: null,
        staff: null,
        from: { measureIndex: from, onset: [0, 1] },
        to: { measureIndex: last, onset: measures[last]?.length ?? [0, 1] },
      },
    ];
  });
}
