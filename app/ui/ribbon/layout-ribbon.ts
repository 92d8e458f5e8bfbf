import type { ClientEntry } from "@/lib/glossary/client-entry";
import { AXES, type Axis } from "@/lib/glossary/vocabulary";
import type { Reading } from "@/lib/reading/reading";
import type { Lane, LaneContext } from "./lane-context";
import { articulationDemand, gatherArticulation, layoutArticulation } from "./layout-articulation";
import { type Columns, layoutColumns } from "./layout-columns";
import { dynamicItems, layoutDynamics } from "./layout-dynamics";
import { characterItems, layoutCharacter, layoutTechnique, techniqueItems } from "./layout-manner";
import { gatherRoad, layoutRoad, roadDemand } from "./layout-road";
import { layoutTempo, tempoItems } from "./layout-tempo";
import { type PrintedMark, printedMarks } from "./printed-marks";
import { num, type PathShape, type Shape } from "./shapes";
import { textWidth } from "./text-width";

export type LaneName = Axis | "marks";
export const LANES: readonly LaneName[] = [...AXES, "marks"];

export interface PlacedLane extends Lane {
  name: LaneName;
  /** From the top of the ribbon. */
  top: number;
}

/** A whole ribbon, ready to be drawn. Lengths in ribbon units. */
export interface Ribbon {
  width: number;
  height: number;
  columns: Columns;
  lanes: PlacedLane[];
  /** Rehearsal marks beside the measure numbers. */
  heads: Shape[];
  /** Barlines through all lanes, broken where words stand across them. */
  rules: PathShape[];
}

export const HEAD_HEIGHT = 24;
const MARKS_HEIGHT = 30;
/** What a line of words covers over and under its baseline. */
const TEXT_UP = 13;
const TEXT_DOWN = 5;

interface RibbonOptions {
  partIndex: number;
  /** From 1. */
  staff: number;
  /** Least width of a measure in units: 72 in the hand, more on a desk. */
  least: number;
  entryOf(slug: string | null): ClientEntry | undefined;
}

/**
 * Draws a reading: one lane an axis in one order, one column a measure.
 * @param reading of the whole piece; the ribbon shows one staff of one part
 * @returns shapes only; the same reading gives the same ribbon
 */
export function layoutRibbon(reading: Reading, options: RibbonOptions): Ribbon {
  const { partIndex, staff, least, entryOf } = options;
  const marks = printedMarks(reading, partIndex);
  const line =
    reading.lines.find((l) => l.partIndex === partIndex && l.staff === staff) ??
    reading.lines.find((l) => l.partIndex === partIndex) ??
    null;
  const context: LaneContext = { reading, partIndex, staff, line, marks, entryOf };
  const articulation = gatherArticulation(context);
  const technique = techniqueItems(context);
  const road = gatherRoad(context);
  const count = reading.measures.length;
  const own = articulationDemand(articulation, count);
  const onRoad = roadDemand(road, count);
  const columns = layoutColumns(reading.measures, least, {
    demand: own.map((units, i) => Math.max(units, onRoad[i] ?? 0)),
    rows: [
      tempoItems(context),
      dynamicItems(context),
      characterItems(context),
      technique.words,
      technique.signs,
    ],
  });
  const lanes: Record<LaneName, Lane> = {
    tempo: layoutTempo(context, columns),
    dynamics: layoutDynamics(context, columns),
    articulation: layoutArticulation(context, columns, articulation),
    character: layoutCharacter(context, columns),
    technique: layoutTechnique(context, columns, technique),
    road: layoutRoad(road, columns),
    marks: { height: MARKS_HEIGHT, nameAt: 15, shapes: [] },
  };
  let top = HEAD_HEIGHT;
  const placed = LANES.map((name): PlacedLane => {
    const lane = { name, top, ...lanes[name] };
    top += lane.height;
    return lane;
  });
  let reach = columns.width;
  for (const { shapes } of placed) for (const { x1 } of shapes) reach = Math.max(reach, x1);
  return {
    width: reach + 12,
    height: top,
    columns,
    lanes: placed,
    heads: rehearsalShapes(marks, columns),
    rules: barlines(columns, placed, top),
  };
}

/** A barline through all lanes; words that run across one keep their own paper. */
function barlines({ edges }: Columns, lanes: readonly PlacedLane[], bottom: number): PathShape[] {
  const gaps = new Map<number, (readonly [number, number])[]>();
  for (const { top, shapes } of lanes) {
    for (const shape of shapes) {
      if (shape.kind !== "text") continue;
      const gap = [top + shape.y - TEXT_UP, top + shape.y + TEXT_DOWN] as const;
      for (let i = firstFrom(edges, shape.x0 - 2); (edges[i] ?? Infinity) < shape.x1 + 2; i += 1) {
        gaps.set(i, [...(gaps.get(i) ?? []), gap]);
      }
    }
  }
  return edges.slice(1).map((x, i): PathShape => {
    let d = "";
    let y = HEAD_HEIGHT - 3;
    for (const [from, to] of (gaps.get(i + 1) ?? []).sort((a, b) => a[0] - b[0])) {
      if (from > y) d += `M${num(x)} ${num(y)}V${num(from)}`;
      y = Math.max(y, to);
    }
    if (bottom > y) d += `M${num(x)} ${num(y)}V${num(bottom)}`;
    return { kind: "path", d, x0: x, x1: x, stroke: "rule", weight: 1 };
  });
}

/** Index of the first edge at or after a place. */
function firstFrom(edges: readonly number[], x: number): number {
  let [low, high] = [0, edges.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((edges[middle] ?? 0) < x) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Rehearsal letters in their box, after the measure's number. */
function rehearsalShapes(marks: readonly PrintedMark[], columns: Columns): Shape[] {
  return marks
    .filter((m) => m.sign === "rehearsal")
    .map((mark): Shape => {
      const x = columns.x({ measureIndex: mark.measureIndex, onset: [0, 1] }) + 24;
      const text = mark.head.text;
      return {
        kind: "text",
        x,
        y: 15,
        x0: x,
        x1: x + textWidth(text, "mark"),
        text,
        face: "mark",
        tone: "ink",
      };
    });
}
