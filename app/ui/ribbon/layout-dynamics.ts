import type { DynamicState } from "@/lib/reading/reading";
import type { Lane, LaneContext } from "./lane-context";
import { laneOf, type WordItem, wordItems, wordShape } from "./lane-context";
import { type Columns, placeRow, type RowItem } from "./layout-columns";
import type { PrintedMark } from "./printed-marks";
import { num, type PathShape, type Shape } from "./shapes";
import { glyphBox, glyphWidth, textWidth } from "./text-width";

/** Middle of the band, the baseline of the letters, and the lane's height. */
const MIDDLE = 25;
const LETTERS = 68;
const HEIGHT = 78;
const GLYPH_SIZE = 23;

/** Thickness of the band by level: even steps to the eye, thin enough at the soft end to tell them apart. */
const THICKNESS: Readonly<Record<string, number>> = {
  n: 0.6,
  pppppp: 1,
  ppppp: 1.4,
  pppp: 2,
  ppp: 3,
  pp: 5,
  p: 9.5,
  mp: 15,
  mf: 21.5,
  f: 29,
  ff: 36.5,
  fff: 42,
  ffff: 45,
  fffff: 47,
  ffffff: 48,
};
const LEVELS = Object.keys(THICKNESS);
/** How the first moment of a one-note mark sounds: as loud as this level. */
const ATTACKS: Readonly<Record<string, string>> = {
  p: "p",
  f: "f",
  sf: "f",
  sfz: "f",
  fz: "f",
  rf: "f",
  rfz: "f",
  sffz: "ff",
};
/** An attack stands out from the band by at least so much, and is over within this width. */
const LEAST_SPIKE = 13;
const SPIKE_WIDTH = 13;

export interface LetterItem extends RowItem {
  word: WordItem | null;
  /** SMuFL name of the letters, null for words. */
  glyph: string | null;
}

/** Letters and words under the band. Hairpins are the band itself. */
export function dynamicItems({ marks, entryOf, staff }: LaneContext): LetterItem[] {
  return marks
    .filter((m) => laneOf(m, marks) === "dynamics" && m.sign !== "wedge-crescendo")
    .filter((m) => m.sign !== "wedge-diminuendo" && isForStaff(m, staff))
    .map((mark): LetterItem => {
      const { measureIndex, onset } = mark;
      const glyph = mark.sign === null ? null : (entryOf(mark.head.slug)?.sign?.glyph ?? null);
      if (glyph !== null) {
        return { measureIndex, onset, width: glyphWidth(glyph, GLYPH_SIZE), word: null, glyph };
      }
      // Letters the font has no sign for are set as words.
      const [word] = wordItems([{ ...mark, sign: null }]);
      const width = word?.width ?? textWidth(mark.head.text, "term");
      return { measureIndex, onset, width, word: word ?? null, glyph: null };
    });
}

/** A mark that names no staff is for all of the part. */
export function isForStaff(mark: PrintedMark, staff: number): boolean {
  return mark.found.some((f) => f.staff === null || f.staff === staff);
}

/**
 * Loudness as a band: thickness is the level, hairpins taper to their goal,
 * a level without a hairpin is a step, one-note marks are spikes. Where the
 * page does not say how far a change went, only the outline is drawn.
 */
export function layoutDynamics(context: LaneContext, columns: Columns): Lane {
  const states = context.line?.dynamics ?? [];
  const shapes: Shape[] = [];
  for (const piece of bandPieces(states, columns)) shapes.push(bandShape(piece));
  for (const state of states) {
    const spike = spikeOf(state, states, columns);
    if (spike) shapes.push(spike);
  }
  const items = dynamicItems(context);
  const xs = placeRow(columns, items);
  items.forEach((item, i) => {
    const x = xs[i] ?? 0;
    if (item.glyph === null) {
      if (item.word) shapes.push(wordShape(item.word, x, LETTERS));
      return;
    }
    const box = glyphBox(item.glyph, GLYPH_SIZE);
    shapes.push({
      kind: "glyph",
      name: item.glyph,
      size: GLYPH_SIZE,
      x: x - (box?.left ?? 0),
      y: LETTERS,
      x0: x,
      x1: x + item.width,
      tone: "ink",
    });
  });
  return { height: HEIGHT, nameAt: MIDDLE, shapes };
}

interface BandPiece {
  x0: number;
  x1: number;
  from: number;
  to: number;
  /** The amount is the page's own, not ours. */
  sure: boolean;
}

/** The band from state to state; thickness in units. */
export function bandPieces(states: readonly DynamicState[], columns: Columns): BandPiece[] {
  const pieces: BandPiece[] = [];
  let now: number | null = null;
  let i = 0;
  while (i < states.length) {
    const state = states[i];
    if (!state) break;
    // A one-note mark inside a hairpin does not interrupt it.
    let last = i + 1;
    while (last < states.length && continuesChange(states[last], state)) last += 1;
    const next = states[last];
    const [x0, x1] = [columns.x(state), next ? columns.x(next) : columns.width];
    const at = thicknessOf(state);
    if (state.change === "none") {
      if (at !== null) {
        const sure = !state.louderThan && !state.softerThan;
        pieces.push({ x0, x1, from: at, to: at, sure });
      }
      now = at;
    } else {
      const from: number = now ?? at ?? THICKNESS[state.change === "rising" ? "p" : "f"] ?? 0;
      const goal = state.toward === null ? null : (THICKNESS[state.toward] ?? null);
      const to = goal ?? stepped(from, state.change === "rising" ? 1 : -1);
      pieces.push({ x0, x1, from, to, sure: goal !== null && (now ?? at) !== null });
      now = to;
    }
    i = last;
  }
  return pieces.filter(({ x0, x1 }) => x1 > x0);
}

function continuesChange(next: DynamicState | undefined, change: DynamicState): boolean {
  return (
    next !== undefined &&
    change.change !== "none" &&
    next.change === change.change &&
    next.attack !== null &&
    next.span?.[0] === change.span?.[0]
  );
}

function thicknessOf(state: DynamicState): number | null {
  if (state.level === null) return null;
  const level = THICKNESS[state.level];
  if (level === undefined) return null;
  if (state.louderThan) return stepped(level, 1);
  return state.softerThan ? stepped(level, -1) : level;
}

/** One level louder or softer than a thickness, wherever it lies. */
function stepped(from: number, step: 1 | -1): number {
  const steps = LEVELS.map((level) => THICKNESS[level] ?? 0);
  if (step === 1) return steps.find((t) => t > from + 0.4) ?? from;
  return steps.findLast((t) => t < from - 0.4) ?? from;
}

function bandShape({ x0, x1, from, to, sure }: BandPiece): PathShape {
  const [a, b] = [from / 2, to / 2];
  // A hair longer than it is, so that no seam shows before the next piece.
  const d = `M${num(x0)} ${num(MIDDLE - a)}L${num(x1)} ${num(MIDDLE - b)}h0.6V${num(MIDDLE + b)}h-0.6L${num(x0)} ${num(MIDDLE + a)}Z`;
  if (sure) return { kind: "path", d, x0, x1, fill: "band" };
  // Open ends: two edges, no sides.
  const edges = `M${num(x0)} ${num(MIDDLE - a)}L${num(x1)} ${num(MIDDLE - b)}M${num(x0)} ${num(MIDDLE + a)}L${num(x1)} ${num(MIDDLE + b)}`;
  return { kind: "path", d: edges, x0, x1, stroke: "ink", weight: 1.1, dash: "3 3" };
}

function spikeOf(
  state: DynamicState,
  states: readonly DynamicState[],
  columns: Columns,
): PathShape | null {
  if (state.attack === null) return null;
  const before = states.findLast((s) => s !== state && s.change === "none" && s.level !== null);
  const after = thicknessOf(state) ?? (before ? thicknessOf(before) : null) ?? 0;
  const level = ATTACKS[state.attack.toLowerCase().replace(/[^a-z]/g, "")] ?? "f";
  const height = Math.max(THICKNESS[level] ?? 0, after + LEAST_SPIKE) / 2;
  const x = columns.x(state);
  const base = after / 2;
  // Two thorns, up and down: a stroke that is over at once. They reach into the band, so that no seam shows.
  const thorn = (side: 1 | -1) =>
    `M${num(x)} ${num(MIDDLE + side * height)}Q${num(x + 2.5)} ${num(MIDDLE + side * (base + 1))} ${num(x + SPIKE_WIDTH)} ${num(MIDDLE + side * base)}L${num(x)} ${num(MIDDLE + side * Math.max(0, base - 1))}Z`;
  const d = thorn(-1) + thorn(1);
  return { kind: "path", d, x0: x, x1: x + SPIKE_WIDTH, fill: "band" };
}
