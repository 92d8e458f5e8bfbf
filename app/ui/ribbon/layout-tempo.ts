import { comparePlaces, samePlace } from "@/lib/reading/place";
import type { TempoState } from "@/lib/reading/reading";
import type { Lane, LaneContext } from "./lane-context";
import { laneOf, printedText } from "./lane-context";
import { type Columns, placeRow, type RowItem } from "./layout-columns";
import type { PrintedMark } from "./printed-marks";
import { num, type Shape } from "./shapes";
import { type TempoLevel, tempoLevels } from "./tempo-levels";
import { glyphWidth, textWidth } from "./text-width";

/** Highest and lowest the line stands, and the words' distance from it. */
const HIGH = 29;
const LOW = 69;
const ABOVE = 7;
const BELOW = 15;
const HEIGHT = 80;
/** A piece of one speed still leaves room for a rit. to sink: the scale covers at least so many steps. */
const LEAST_STEPS = 3.6;
const NOTE_SIZE = 17;
/** Between the note and its number. */
const NOTE_GAP = 4;

/** The metronome glyph of each MusicXML note type. */
export const BEAT_GLYPHS: Readonly<Record<string, string>> = {
  breve: "metNoteDoubleWhole",
  whole: "metNoteWhole",
  half: "metNoteHalfUp",
  quarter: "metNoteQuarterUp",
  eighth: "metNote8thUp",
  "16th": "metNote16thUp",
};

export interface TempoItem extends RowItem {
  text: string;
  lang: string;
  /** A new steady speed is set heavier than a change. */
  heavy: boolean;
  note: { glyph: string; dots: number; number: string } | null;
}

/** Words and numbers of the tempo lane, a word and the number beside it as one item. */
export function tempoItems({ reading, marks }: LaneContext): TempoItem[] {
  const words = marks.filter((m) => m.sign === null && laneOf(m, marks) === "tempo");
  const items: TempoItem[] = words.map((mark) => wordItem(mark));
  for (const state of reading.tempo) {
    const note = noteOf(state);
    if (!note || !marks.some((m) => m.sign === "metronome" && samePlace(m, state))) continue;
    const beside = items.find((item) => samePlace(item, state));
    if (beside) {
      beside.note = note;
      beside.width += noteWidth(note) + 6;
    } else {
      const { measureIndex, onset } = state;
      const width = noteWidth(note);
      items.push({ measureIndex, onset, width, text: "", lang: "en", heavy: false, note });
    }
  }
  return items.sort(comparePlaces);
}

function wordItem(mark: PrintedMark): TempoItem {
  const text = printedText(mark);
  const heavy = mark.kind === "tempo";
  const { measureIndex, onset } = mark;
  const width = textWidth(text, heavy ? "tempo" : "term");
  return { measureIndex, onset, width, text, lang: mark.head.lang, heavy, note: null };
}

function noteOf({ beat }: TempoState): TempoItem["note"] {
  const glyph = beat ? BEAT_GLYPHS[beat.unit] : undefined;
  const number = beat?.text ?? beat?.perMinute?.toString();
  if (!beat || !glyph || number === undefined) return null;
  return { glyph, dots: beat.dots, number: `= ${number}` };
}

function noteWidth(note: NonNullable<TempoItem["note"]>): number {
  const dots = note.dots * 5;
  return glyphWidth(note.glyph, NOTE_SIZE) + dots + NOTE_GAP + textWidth(note.number, "read");
}

/** Tempo as a line: height is speed, slowing sinks, a restored speed jumps back. */
export function layoutTempo(context: LaneContext, columns: Columns): Lane {
  const items = tempoItems(context);
  const xs = placeRow(columns, items);
  const states = context.reading.tempo;
  const levels = tempoLevels(states, context.marks, context.entryOf);
  const first = states.findIndex((s) => s.by !== "");
  const scale = scaleFor(first < 0 ? [] : levels.slice(first));
  const shapes: Shape[] = [];
  states.forEach((state, i) => {
    const level = levels[i];
    if (!level || first < 0 || i < first) return;
    const next = states[i + 1];
    const [x0, x1] = [columns.x(state), next ? columns.x(next) : columns.width];
    if (x1 <= x0) return;
    shapes.push({
      kind: "path",
      d: segment(x0, scale(level.from), x1, scale(level.to)),
      x0,
      x1,
      stroke: "ink",
      weight: 1.7,
      ...(state.free ? { dash: "5 4" } : {}),
    });
  });
  items.forEach((item, i) => {
    const at = states.findLastIndex((s) => comparePlaces(s, item) <= 0);
    const level = levels[at];
    const y = level && at >= first && first >= 0 ? scale(level.from) : scale(3);
    // Words stand on the side the line does not turn to.
    const rises = level !== undefined && level.to > level.from;
    shapes.push(...itemShapes(item, xs[i] ?? 0, rises ? y + BELOW : y - ABOVE));
  });
  return { height: HEIGHT, nameAt: HIGH + 4, shapes };
}

/** Flat first and flat last, as a change is felt. */
function segment(x0: number, y0: number, x1: number, y1: number): string {
  const start = `M${num(x0)} ${num(y0)}`;
  if (y0 === y1) return `${start}H${num(x1)}`;
  const third = (x1 - x0) * 0.42;
  return `${start}C${num(x0 + third)} ${num(y0)} ${num(x1 - third)} ${num(y1)} ${num(x1)} ${num(y1)}`;
}

/** The piece's own range of levels on the height there is; a narrow range stands high, since most changes sink. */
function scaleFor(levels: readonly TempoLevel[]): (level: number) => number {
  const all = levels.flatMap(({ from, to }) => [from, to]);
  const top = Math.max(...all, all.length === 0 ? 3 : Number.NEGATIVE_INFINITY);
  const bottom = Math.min(...all, top - LEAST_STEPS);
  return (level) => HIGH + ((top - level) / (top - bottom)) * (LOW - HIGH);
}

function itemShapes(item: TempoItem, x: number, y: number): Shape[] {
  const shapes: Shape[] = [];
  let at = x;
  if (item.text !== "") {
    const face = item.heavy ? "tempo" : "term";
    const width = textWidth(item.text, face);
    shapes.push({
      kind: "text",
      x,
      y,
      x0: x,
      x1: x + width,
      text: item.text,
      face,
      tone: "ink",
      lang: item.lang,
    });
    at += width + 6;
  }
  if (item.note) shapes.push(...noteShapes(item.note, at, y));
  return shapes;
}

function noteShapes(note: NonNullable<TempoItem["note"]>, x: number, y: number): Shape[] {
  const glyph = (name: string, at: number): Shape => {
    const width = glyphWidth(name, NOTE_SIZE);
    return {
      kind: "glyph",
      x: at,
      y: y - 1,
      x0: at,
      x1: at + width,
      name,
      size: NOTE_SIZE,
      tone: "ink",
    };
  };
  const shapes = [glyph(note.glyph, x)];
  let at = x + glyphWidth(note.glyph, NOTE_SIZE);
  for (let dot = 0; dot < note.dots; dot += 1) {
    shapes.push(glyph("metAugmentationDot", at + 1.5));
    at += 5;
  }
  at += NOTE_GAP;
  const width = textWidth(note.number, "read");
  shapes.push({
    kind: "text",
    x: at,
    y,
    x0: at,
    x1: at + width,
    text: note.number,
    face: "read",
    tone: "ink",
  });
  return shapes;
}
