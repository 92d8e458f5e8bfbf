import { SHELF_NAMES } from "@/lib/glossary/family-words";
import { AXES } from "@/lib/glossary/vocabulary";
import type { Reading, Unknown } from "@/lib/reading/reading";
import { type MeasureStretch, measureStretches } from "../ui/measure-stretches";
import { laneOf, printedText } from "../ui/ribbon/lane-context";
import { isTelling, type PrintedMark } from "../ui/ribbon/printed-marks";

/** One row of a piece's list: a mark and the run of measures in which it goes on being printed. */
export interface PrintedRow {
  mark: PrintedMark;
  /** Index of its first measure. */
  first: number;
  stretch: MeasureStretch;
}

/**
 * The marks of a part by measure; a sign repeated from measure to measure is
 * one row ("9–13"), and begins a new one after a measure without it.
 */
export function printedRowList(marks: readonly PrintedMark[], reading: Reading): PrintedRow[] {
  const runs: { mark: PrintedMark; first: number; last: number }[] = [];
  const open = new Map<string, { mark: PrintedMark; first: number; last: number }>();
  for (const mark of marks) {
    if (!isTelling(mark) || mark.sign === "bar-style") continue;
    const key = keyOf(mark);
    const run = open.get(key);
    if (run && mark.measureIndex <= run.last + 1) run.last = mark.measureIndex;
    else {
      const begun = { mark, first: mark.measureIndex, last: mark.measureIndex };
      open.set(key, begun);
      runs.push(begun);
    }
  }
  const axis = (mark: PrintedMark) => {
    const lane = laneOf(mark, marks);
    return lane === null ? AXES.length : AXES.indexOf(lane);
  };
  return runs
    .sort(
      (a, b) =>
        a.first - b.first || axis(a.mark) - axis(b.mark) || wordsFirst(a.mark) - wordsFirst(b.mark),
    )
    .flatMap(({ mark, first, last }) => {
      const indices = Array.from({ length: last - first + 1 }, (_, i) => first + i);
      const [stretch] = measureStretches(indices, reading.measures);
      return stretch ? [{ mark, first, stretch }] : [];
    });
}

/** "Allegro" stands before its number. */
function wordsFirst({ kind, sign }: PrintedMark): number {
  return kind === "form" && sign !== null ? 1 : 0;
}

/** A sign by its entry; words by how they are printed. */
function keyOf(mark: PrintedMark): string {
  if (mark.sign === null) return `words ${printedText(mark).toLowerCase()}`;
  return `${mark.sign} ${mark.head.slug ?? ""} ${mark.head.text}`;
}

export interface UnknownRow {
  /** The reader's best guess in words, marked as one; may be empty. */
  guess: string;
  text: string;
  stretches: MeasureStretch[];
}

/** Words no entry explains, each once with all its measures. */
export function unknownRowList(unknown: readonly Unknown[], reading: Reading): UnknownRow[] {
  const places = new Map<string, number[]>();
  for (const { text, measureIndex } of unknown) {
    const at = places.get(text);
    if (at) at.push(measureIndex);
    else places.set(text, [measureIndex]);
  }
  return [...places].map(([text, at]) => ({
    text,
    guess: guessWords(unknown.find((u) => u.text === text)?.guess),
    stretches: measureStretches(at, reading.measures),
  }));
}

/** "perhaps Italian, from dolce: the quality of being so"; empty when the reader has no guess. */
function guessWords(guess: Unknown["guess"] | undefined): string {
  if (!guess) return "";
  const { lang, root, ending } = guess;
  const from = root ? `from ${root.headword}` : "";
  const said = [lang ? SHELF_NAMES[lang] : "", from].filter(Boolean).join(", ");
  return `perhaps ${[said, ending ?? ""].filter(Boolean).join(": ")}`;
}
