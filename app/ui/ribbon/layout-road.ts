import type { Place } from "@/lib/reading/reading";
import type { Lane, LaneContext } from "./lane-context";
import { isAtEnd, laneOf, printedText } from "./lane-context";
import type { Columns } from "./layout-columns";
import { isForStaff } from "./layout-dynamics";
import { timesPlayed, timesWords, waysOn, wayWords } from "./playing-words";
import type { PrintedMark } from "./printed-marks";
import { num, type Shape } from "./shapes";
import { glyphBox, glyphWidth, textWidth } from "./text-width";

/** Bracket over endings, then the signs and words, then what they come to. */
const BRACKET = 13;
const BARLINE_SIZE = 22;
const SIGN_SIZE = 22;
const GAP = 6;

/** Words that act at the end of their measure, wherever in it they are printed. */
const ACT_LAST = /^(?:da-capo|dal-segno|to-coda|al-coda|al-fine|fine)(?:-|$)/;
const BARLINES: Readonly<Record<string, string>> = {
  "double-barline": "barlineDouble",
  "final-barline": "barlineFinal",
  "dashed-barline": "barlineDashed",
};

type Piece = { width: number } & (
  | { kind: "glyph"; name: string; size: number }
  | { kind: "words"; text: string; lang: string }
  | { kind: "said"; text: string }
);

/** What stands at the left and at the right of one measure, in the order it is read. */
interface Stop {
  left: Piece[];
  /** Signs and words inside the measure. */
  inside: { place: Place; piece: Piece }[];
  /** Words that act at the end of the measure, where they lead, and its barline. */
  words: Piece[];
  ways: Piece[];
  barlines: Piece[];
}

export interface Road {
  stops: Map<number, Stop>;
  endings: { from: Place; to: Place; text: string }[];
}

export function gatherRoad(context: LaneContext): Road {
  const { marks, reading, staff } = context;
  const own = marks.filter((m) => laneOf(m, marks) === "road" && isForStaff(m, staff));
  const stops = new Map<number, Stop>();
  const stopAt = (measureIndex: number) => {
    const stop = stops.get(measureIndex) ?? {
      left: [],
      inside: [],
      words: [],
      ways: [],
      barlines: [],
    };
    stops.set(measureIndex, stop);
    return stop;
  };
  const repeatEnds = new Set(
    own.filter((m) => m.sign === "repeat-backward").map((m) => m.measureIndex),
  );
  const ways = waysOn(reading);
  const times = timesPlayed(ways, repeatEnds);
  for (const mark of own) place(mark, stopAt(mark.measureIndex), { context, repeatEnds });
  for (const [index, count] of times) stopAt(index).left.push(said(timesWords(count)));
  for (const [index, list] of ways) {
    const stop = stopAt(index);
    stop.ways.push(said(wayWords(index, list, reading.measures)));
  }
  for (const index of repeatEnds) stopAt(index).barlines = [barline("repeatRight")];
  const endings = reading.spans
    .filter((s) => s.element === "ending")
    .map(({ from, to, value }) => ({ from, to, text: value ?? "" }));
  return { stops, endings };
}

function place(
  mark: PrintedMark,
  stop: Stop,
  { context, repeatEnds }: { context: LaneContext; repeatEnds: ReadonlySet<number> },
): void {
  const { sign, head } = mark;
  if (sign === "ending" || sign === "repeat-backward") return;
  if (sign === "repeat-forward") {
    stop.left.unshift(barline("repeatLeft"));
    return;
  }
  if (sign === "bar-style") {
    const name = BARLINES[head.slug ?? ""];
    // A repeat sign is its own barline, and a left barline belongs to the sign that opens there.
    const isOwn = isAtEnd(mark, context.reading) && !repeatEnds.has(mark.measureIndex);
    if (name && isOwn) stop.barlines = [barline(name)];
    return;
  }
  const glyph = sign === null ? undefined : context.entryOf(head.slug)?.sign?.glyph;
  const piece: Piece =
    glyph !== undefined && glyphWidth(glyph, SIGN_SIZE) > 0
      ? { kind: "glyph", name: glyph, size: SIGN_SIZE, width: glyphWidth(glyph, SIGN_SIZE) }
      : words(mark);
  const actsLast = sign === null && ACT_LAST.test(head.slug ?? "");
  if (actsLast || isAtEnd(mark, context.reading)) stop.words.push(piece);
  else stop.inside.push({ place: mark, piece });
}

function words(mark: PrintedMark): Piece {
  const text = printedText(mark);
  return { kind: "words", text, lang: mark.head.lang, width: textWidth(text, "term") };
}

function said(text: string): Piece {
  return { kind: "said", text, width: textWidth(text, "read") };
}

function barline(name: string): Piece {
  return { kind: "glyph", name, size: BARLINE_SIZE, width: glyphWidth(name, BARLINE_SIZE) };
}

/** Units each measure asks for so that its signs and words stand inside it. */
export function roadDemand({ stops }: Road, measures: number): number[] {
  const demand = new Array<number>(measures).fill(0);
  for (const [index, stop] of stops) {
    const pieces = [...stop.left, ...stop.inside.map(({ piece }) => piece), ...atRight(stop)];
    const words = pieces.reduce((sum, { width }) => sum + width + GAP, 0);
    demand[index] = words + 10;
  }
  return demand;
}

function atRight({ words, ways, barlines }: Stop): Piece[] {
  return [...words, ...ways, ...barlines];
}

/** The road: barlines and repeats where they stand, endings as brackets, every jump with where it leads. */
export function layoutRoad({ stops, endings }: Road, columns: Columns): Lane {
  const shapes: Shape[] = [];
  const top = endings.length > 0 ? BRACKET + 4 : 0;
  const base = top + 27;
  for (const { from, to, text } of endings) {
    shapes.push(...bracket(columns.x({ ...from, onset: [0, 1] }), columns.x(to), text));
  }
  for (const [index, stop] of stops) {
    const [left, right] = [columns.edges[index] ?? 0, columns.edges[index + 1] ?? 0];
    let x = left;
    for (const piece of stop.left) {
      shapes.push(pieceShape(piece, x + (piece.kind === "said" ? 4 : 0), base));
      x += piece.width + GAP;
    }
    for (const { place, piece } of stop.inside) {
      x = Math.max(x, columns.x(place));
      shapes.push(pieceShape(piece, x, base));
      x += piece.width + GAP;
    }
    let end = right;
    for (const piece of atRight(stop).reverse()) {
      const start = end - piece.width - (piece.kind === "glyph" && end === right ? 0 : 4);
      shapes.push(pieceShape(piece, start, base));
      end = start - 2;
    }
  }
  return { height: top + 38, nameAt: base - 5, shapes };
}

function pieceShape(piece: Piece, x: number, base: number): Shape {
  const reach = { x0: x, x1: x + piece.width };
  if (piece.kind === "glyph") {
    const box = glyphBox(piece.name, piece.size);
    const middle = box ? (box.top + box.bottom) / 2 : 0;
    const left = x - (box?.left ?? 0);
    const { name, size } = piece;
    return { kind: "glyph", name, size, x: left, y: base - 5 - middle, tone: "ink", ...reach };
  }
  if (piece.kind === "words") {
    return {
      kind: "text",
      x,
      y: base,
      text: piece.text,
      face: "term",
      tone: "ink",
      lang: piece.lang,
      ...reach,
    };
  }
  return { kind: "text", x, y: base - 0.5, text: piece.text, face: "read", tone: "ink", ...reach };
}

function bracket(x0: number, x1: number, text: string): Shape[] {
  const left = x0 - 6;
  const right = x1 - 4;
  const d = `M${num(left)} ${BRACKET}V3H${num(right)}V${BRACKET}`;
  const width = textWidth(text, "read");
  return [
    { kind: "path", d, x0: left, x1: right, stroke: "ink", weight: 1 },
    {
      kind: "text",
      x: left + 5,
      y: BRACKET + 2,
      x0: left + 5,
      x1: left + 5 + width,
      text,
      face: "read",
      tone: "ink",
    },
  ];
}
