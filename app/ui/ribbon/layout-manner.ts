import { samePlace } from "@/lib/reading/place";
import type { Lane, LaneContext } from "./lane-context";
import { laneOf, type WordItem, wordItems, wordsWithHolds } from "./lane-context";
import { type Columns, placeRow, type RowItem } from "./layout-columns";
import { isForStaff } from "./layout-dynamics";
import type { PrintedMark } from "./printed-marks";
import { line, type Shape } from "./shapes";
import { glyphBox, glyphWidth } from "./text-width";

const WORDS_ROW = 26;
const SIGNS_ROW = 30;
const EMPTY = 30;
/** A lane that carries words on has its name and the carried word under one another. */
const CARRIES = 44;
const GLYPH_SIZE = 25;
/** Tall signs (an arpeggio is five spaces high) are drawn smaller, to stay in their row. */
const MOST_HEIGHT = 21;
/** Signs with a beginning and an end are drawn with a line to it. */
const SPANNING = new Set(["octave-shift", "pedal", "wavy-line"]);

/** Character words and, after each, a hairline as long as it holds. */
export function characterItems({ marks, staff }: LaneContext): WordItem[] {
  return wordItems(marks.filter((m) => laneOf(m, marks) === "character" && isForStaff(m, staff)));
}

export function layoutCharacter(context: LaneContext, columns: Columns): Lane {
  const items = characterItems(context);
  const states = context.line?.character ?? [];
  const xs = placeRow(columns, items);
  const shapes = wordsWithHolds(items, xs, states, { columns, y: 20 });
  return { height: items.length > 0 || states.length > 0 ? CARRIES : EMPTY, nameAt: 15, shapes };
}

export interface TechniqueItems {
  words: WordItem[];
  signs: (RowItem & { mark: PrintedMark; glyph: string; size: number })[];
}

/** Words of technique, and below them the signs over single notes (bowings, trills, octave lines). */
export function techniqueItems({ marks, staff, entryOf }: LaneContext): TechniqueItems {
  const own = marks.filter((m) => laneOf(m, marks) === "technique" && isForStaff(m, staff));
  return {
    words: wordItems(own),
    signs: own.flatMap((mark) => {
      const glyph = mark.sign === null ? undefined : entryOf(mark.head.slug)?.sign?.glyph;
      if (glyph === undefined) return [];
      const { measureIndex, onset } = mark;
      const box = glyphBox(glyph, GLYPH_SIZE);
      if (!box) return [];
      const size = GLYPH_SIZE * Math.min(1, MOST_HEIGHT / (box.bottom - box.top));
      return [{ mark, glyph, size, measureIndex, onset, width: glyphWidth(glyph, size) }];
    }),
  };
}

export function layoutTechnique(
  context: LaneContext,
  columns: Columns,
  { words, signs }: TechniqueItems,
): Lane {
  const shapes: Shape[] = [];
  let top = 0;
  const states = context.line?.technique ?? [];
  if (words.length > 0 || states.length > 0) {
    const xs = placeRow(columns, words);
    shapes.push(...wordsWithHolds(words, xs, states, { columns, y: 20 }));
    top += WORDS_ROW;
  }
  if (signs.length > 0) {
    const xs = placeRow(columns, signs);
    signs.forEach(({ glyph, size, mark, width }, i) => {
      const x = xs[i] ?? 0;
      const box = glyphBox(glyph, size);
      const y = top + SIGNS_ROW - 8 - (box?.bottom ?? 0);
      const left = x - (box?.left ?? 0);
      shapes.push({
        kind: "glyph",
        name: glyph,
        size,
        x: left,
        y,
        x0: x,
        x1: x + width,
        tone: "ink",
      });
      const end = spanEnd(mark, context, columns);
      if (end !== null && end > x + width + 8) {
        const at = top + SIGNS_ROW - 12;
        shapes.push(
          line([x + width + 4, at], [end, at], { stroke: "soft", weight: 1, dash: "4 3" }),
        );
      }
    });
    top += SIGNS_ROW;
  }
  const least = states.length > 0 ? CARRIES : EMPTY;
  return { height: Math.max(least, top + 6), nameAt: 15, shapes };
}

function spanEnd(
  mark: PrintedMark,
  { reading, partIndex }: LaneContext,
  columns: Columns,
): number | null {
  if (mark.sign === null || !SPANNING.has(mark.sign)) return null;
  const span = reading.spans.find(
    (s) => s.element === mark.sign && s.partIndex === partIndex && samePlace(s.from, mark),
  );
  return span ? columns.x(span.to) + 4 : null;
}
