import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { Axis, Kind } from "@/lib/glossary/vocabulary";
import { samePlace } from "@/lib/reading/place";
import type { MannerState, Place, Reading, StaffLine } from "@/lib/reading/reading";
import type { Columns, RowItem } from "./layout-columns";
import type { PrintedMark } from "./printed-marks";
import { type Face, line, type Shape } from "./shapes";
import { textWidth } from "./text-width";

/** All a lane is drawn from. */
export interface LaneContext {
  reading: Reading;
  partIndex: number;
  staff: number;
  line: StaffLine | null;
  marks: readonly PrintedMark[];
  entryOf(slug: string | null): ClientEntry | undefined;
}

/** One lane, drawn from its own top edge down. */
export interface Lane {
  height: number;
  /** The height at which its name stands: that of what it shows. */
  nameAt: number;
  shapes: Shape[];
}

/** Lane of a mark; null for what the ribbon does not draw (tuplets, noteheads, fingerings). */
export function laneOf(mark: PrintedMark, marks: readonly PrintedMark[]): Axis | null {
  if (mark.sign !== null && NOT_DRAWN.has(mark.sign)) return null;
  if (mark.sign === "metronome") return "tempo";
  // "sim." goes on with the manner of the notes before it.
  if (mark.head.slug === "simile") return "articulation";
  if (mark.kind === "modifier") {
    // "sempre" beside p, "subito" beside f: told with the loudness.
    const beside = marks.some((m) => m.kind === "dynamic" && samePlace(m, mark));
    return beside ? "dynamics" : "character";
  }
  if (mark.kind === "form") return mark.sign === null ? "character" : null;
  return LANES[mark.kind];
}

const LANES: Readonly<Record<Exclude<Kind, "modifier" | "form">, Axis>> = {
  tempo: "tempo",
  "tempo-change": "tempo",
  dynamic: "dynamics",
  "dynamic-change": "dynamics",
  articulation: "articulation",
  character: "character",
  technique: "technique",
  ornament: "technique",
  navigation: "road",
};

/** Said note by note; a lane of them would say nothing. */
const NOT_DRAWN = new Set([
  "fingering",
  "string",
  "pluck",
  "fret",
  "hole",
  "notehead",
  "stem",
  "cue",
  "tied",
  "time",
  "symbol",
  "rehearsal",
  "image",
]);

/** Printed words without the blanks that stretch them over a system. */
export function printedText(mark: PrintedMark): string {
  return (mark.text ?? mark.head.text).replace(/\s+/g, " ").trim();
}

export interface WordItem extends RowItem {
  mark: PrintedMark;
  text: string;
}

/** The words of a lane as items of one row. */
export function wordItems(marks: readonly PrintedMark[], face: Face = "term"): WordItem[] {
  return marks
    .filter((m) => m.sign === null)
    .map((mark) => {
      const text = printedText(mark);
      const { measureIndex, onset } = mark;
      return { mark, text, measureIndex, onset, width: textWidth(text, face) };
    });
}

interface Row {
  columns: Columns;
  /** Baseline of the words. */
  y: number;
}

/** Words and, after each, a hairline as long as it holds. */
export function wordsWithHolds(
  items: readonly WordItem[],
  xs: readonly number[],
  states: readonly MannerState[],
  { columns, y }: Row,
): Shape[] {
  const shapes: Shape[] = items.map((item, i) => wordShape(item, xs[i] ?? 0, y));
  states.forEach((state, i) => {
    if (state.words.length === 0) return;
    const next = states[i + 1];
    const to = (next ? columns.x(next) : columns.width) - 6;
    let from = columns.x(state);
    // The line begins after whatever words stand there and is broken by later ones of the lane.
    const inside = items
      .map((item, k) => ({ x: xs[k] ?? 0, width: item.width }))
      .filter(({ x }) => x >= from - 1 && x < to)
      .sort((a, b) => a.x - b.x);
    for (const { x, width } of inside) {
      if (x - 8 > from + 6) shapes.push(hold(from, x - 8, y));
      from = x + width + 8;
    }
    if (to > from + 6) shapes.push(hold(from, to, y));
  });
  return shapes;
}

export function wordShape(item: WordItem, x: number, y: number): Shape {
  return {
    kind: "text",
    x,
    y,
    x0: x,
    x1: x + item.width,
    text: item.text,
    face: "term",
    tone: "ink",
    lang: item.mark.head.lang,
  };
}

function hold(from: number, to: number, y: number): Shape {
  return line([from, y - 4.5], [to, y - 4.5], { stroke: "soft", weight: 0.8 });
}

/** The right edge of a place that ends something: a barline for the end of a measure. */
export function isAtEnd(place: Place, reading: Reading): boolean {
  const length = reading.measures[place.measureIndex]?.length;
  if (!length) return true;
  return place.onset[0] * length[1] >= length[0] * place.onset[1];
}
