import { comparePlaces } from "@/lib/reading/place";
import type { Place } from "@/lib/reading/reading";
import type { Lane, LaneContext } from "./lane-context";
import { laneOf, wordItems, wordsWithHolds } from "./lane-context";
import { type Columns, PAD_LEFT, placeRow } from "./layout-columns";
import { isForStaff } from "./layout-dynamics";
import type { PrintedMark } from "./printed-marks";
import { num, type PathShape, type Shape } from "./shapes";
import { glyphBox } from "./text-width";

const WORDS_ROW = 24;
const SLURS_ROW = 15;
const NOTES_ROW = 28;
const EMPTY = 30;
const GLYPH_SIZE = 30;
/** Room a note with a sign takes, so that neighbours stay apart. */
const NOTE_ROOM = 12.5;
const DOT = 1.9;
const BAR_WIDTH = 9;
const STACK_GAP = 2.6;
/** Signs that stand after their note rather than over it. */
const AFTER_NOTE = new Set(["breath-mark", "caesura", "falloff", "doit"]);
/** From the note outwards. */
const ORDER = ["staccato", "tenuto", "detached-legato", "staccatissimo", "spiccato"];

/** What the lane holds, gathered once for its columns and its drawing. */
interface Articulation {
  words: PrintedMark[];
  /** Signs by the note they stand at, each kind once. */
  notes: { place: Place; signs: PrintedMark[] }[];
  slurs: { from: Place; to: Place }[];
}

export function gatherArticulation(context: LaneContext): Articulation {
  const { marks, staff, reading, partIndex } = context;
  const own = marks.filter((m) => laneOf(m, marks) === "articulation" && isForStaff(m, staff));
  const notes: Articulation["notes"] = [];
  for (const mark of own) {
    if (mark.sign === null || mark.sign === "slur") continue;
    const last = notes.at(-1);
    if (last && comparePlaces(last.place, mark) === 0) {
      if (!last.signs.some((s) => s.sign === mark.sign)) last.signs.push(mark);
    } else notes.push({ place: mark, signs: [mark] });
  }
  const slurs: Articulation["slurs"] = [];
  for (const span of reading.spans) {
    if (span.element !== "slur" || span.partIndex !== partIndex) continue;
    if (span.staff !== null && span.staff !== staff) continue;
    if (comparePlaces(span.from, span.to) >= 0) continue;
    if (slurs.some((s) => samePair(s, span))) continue;
    slurs.push({ from: span.from, to: span.to });
  }
  return { words: own.filter((m) => m.sign === null), notes, slurs };
}

function samePair(a: { from: Place; to: Place }, b: { from: Place; to: Place }): boolean {
  return comparePlaces(a.from, b.from) === 0 && comparePlaces(a.to, b.to) === 0;
}

/** Units each measure asks for so that the signs of its notes stand apart. */
export function articulationDemand({ notes }: Articulation, measures: number): number[] {
  const demand = new Array<number>(measures).fill(0);
  for (const { place } of notes) {
    demand[place.measureIndex] = (demand[place.measureIndex] ?? PAD_LEFT) + NOTE_ROOM;
  }
  return demand.map((d) => (d === 0 ? 0 : d + PAD_LEFT));
}

/** Articulation as the notes look: dots, bars, wedges and hats where they stand, slurs as arcs over them. */
export function layoutArticulation(
  context: LaneContext,
  columns: Columns,
  { words, notes, slurs }: Articulation,
): Lane {
  const shapes: Shape[] = [];
  let top = 0;
  const states = context.line?.articulation ?? [];
  if (words.length > 0 || states.length > 0) {
    const items = wordItems(words);
    const xs = placeRow(columns, items);
    shapes.push(...wordsWithHolds(items, xs, states, { columns, y: top + 17 }));
    top += WORDS_ROW;
  }
  if (slurs.length > 0) {
    for (const { from, to } of slurs) {
      shapes.push(arc(columns.x(from) - 1, columns.x(to) + 3, top + SLURS_ROW));
    }
    top += SLURS_ROW;
  }
  if (notes.length > 0) {
    for (const { place, signs } of notes) {
      shapes.push(...stack(signs, columns.x(place), top + NOTES_ROW - 8, context));
    }
    top += NOTES_ROW;
  }
  const nameAt = notes.length > 0 ? top - NOTES_ROW / 2 - 2 : slurs.length > 0 ? top - 6 : 13;
  // Under the name there is room for the word that is carried on.
  const least = Math.max(EMPTY, states.length > 0 ? nameAt + 29 : 0);
  return { height: Math.max(least, top + 6), nameAt, shapes };
}

/** An engraved slur: thin at its ends, thickest in the middle, flatter the longer it is. */
function arc(x0: number, x1: number, y: number): PathShape {
  const width = Math.max(6, x1 - x0);
  const end = x0 + width;
  const rise = Math.min(13, 5.5 + width * 0.09);
  const lean = Math.min(width * 0.3, 26);
  const outer = `C${num(x0 + lean)} ${num(y - rise)} ${num(end - lean)} ${num(y - rise)} ${num(end)} ${num(y)}`;
  const inner = `C${num(end - lean)} ${num(y - rise + 2)} ${num(x0 + lean)} ${num(y - rise + 2)} ${num(x0)} ${num(y)}`;
  return { kind: "path", d: `M${num(x0)} ${num(y)}${outer}${inner}Z`, x0, x1: end, fill: "ink" };
}

/** The signs of one note from the note upwards. */
function stack(
  signs: readonly PrintedMark[],
  x: number,
  bottom: number,
  { entryOf }: LaneContext,
): Shape[] {
  const shapes: Shape[] = [];
  let y = bottom + 2;
  const rank = (m: PrintedMark) => {
    const at = ORDER.indexOf(m.sign ?? "");
    return at < 0 ? ORDER.length : at;
  };
  const middle = x + 4;
  for (const mark of [...signs].sort((a, b) => rank(a) - rank(b))) {
    if (mark.sign === "staccato") {
      shapes.push(dot(middle, y - DOT));
      y -= 2 * DOT + STACK_GAP;
      continue;
    }
    if (mark.sign === "tenuto") {
      shapes.push(bar(middle, y - 1));
      y -= 2 + STACK_GAP;
      continue;
    }
    const name = entryOf(mark.head.slug)?.sign?.glyph;
    const box = name ? glyphBox(name, GLYPH_SIZE) : null;
    if (!name || !box) continue;
    const width = box.right - box.left;
    if (AFTER_NOTE.has(mark.sign ?? "")) {
      shapes.push(glyph(name, middle + 9 - box.left, bottom - 6, [middle + 9, middle + 9 + width]));
      continue;
    }
    const left = middle - width / 2;
    shapes.push(glyph(name, left - box.left, y - box.bottom, [left, left + width]));
    y -= box.bottom - box.top + STACK_GAP;
  }
  return shapes;
}

function glyph(name: string, x: number, y: number, [x0, x1]: readonly [number, number]): Shape {
  return { kind: "glyph", name, size: GLYPH_SIZE, x, y, x0, x1, tone: "ink" };
}

function dot(x: number, y: number): PathShape {
  const d = `M${num(x - DOT)} ${num(y)}a${DOT} ${DOT} 0 1 0 ${2 * DOT} 0a${DOT} ${DOT} 0 1 0 ${-2 * DOT} 0Z`;
  return { kind: "path", d, x0: x - DOT, x1: x + DOT, fill: "ink" };
}

function bar(x: number, y: number): PathShape {
  const [x0, x1] = [x - BAR_WIDTH / 2, x + BAR_WIDTH / 2];
  return {
    kind: "path",
    d: `M${num(x0)} ${num(y)}H${num(x1)}`,
    x0,
    x1,
    stroke: "ink",
    weight: 1.8,
  };
}
