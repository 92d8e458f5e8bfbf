import { scoreProblem } from "../limits";
import type { Fraction, Mark, Measure, Score, ScoreWarning } from "../model";

/** A measure typed by a person can be mistyped; no school part is longer. */
const MOST_TYPED_MEASURES = 2000;
const START: Fraction = [0, 1];
/** Where the length of a measure is not known, four quarters stand for it. */
const ASSUMED: Fraction = [4, 1];

const ITEM =
  /^\s*(?:m(?:m|easures?)?\.?\s*)?(\d{1,4}[a-z]?|pickup|upbeat)(?:\s*[-–—]\s*(\d{1,4}))?\s*[:.)]?\s+(\S.*?)\s*$/i;
/** A first line without a number is the title. */
const TITLE = /^(?!\s*(?:m(?:m|easures?)?\.?\s*)?\d)\s*(\S.*?)\s*$/;

interface Item {
  from: string;
  to: string | null;
  words: string;
  line: number;
}

/**
 * Reads words typed with their measure numbers: "12 cresc. | 17 subito p".
 * Items are parted by `|`, `;` or a new line; "12-16 cresc." lasts to measure
 * 16; "pickup" is the measure before 1. A first line without a number is the title.
 *
 * @throws ScoreReadError when no line begins with a measure number
 */
export function readText(text: string, fileName: string): Score {
  const items: Item[] = [];
  const warnings: ScoreWarning[] = [];
  let title: string | null = null;
  text.split(/\r?\n/).forEach((row, i) => {
    for (const piece of row.split(/[|;]/)) {
      if (piece.trim() === "") continue;
      const match = ITEM.exec(piece);
      if (match?.[1] && match[3]) {
        items.push({
          from: match[1].toLowerCase(),
          to: match[2] ?? null,
          words: match[3],
          line: i + 1,
        });
      } else if (items.length === 0 && title === null && TITLE.test(piece)) {
        title = piece.trim();
      } else {
        warnings.push({
          code: "no-measure-number",
          message: `Line ${i + 1}, "${piece.trim().slice(0, 40)}", has no measure number before its words and was left out; write for example "12 cresc.".`,
          measureNumber: null,
          partId: null,
        });
      }
    }
  });
  const numbers = items.flatMap((item) => [
    Number.parseInt(item.from, 10),
    Number(item.to ?? Number.NaN),
  ]);
  const last = Math.max(0, ...numbers.filter((n) => Number.isFinite(n)));
  if (items.length === 0 || last > MOST_TYPED_MEASURES) {
    throw scoreProblem(fileName, items.length === 0 ? "no-measures" : "bad-value", {
      found:
        items.length === 0 ? "no line begins with a measure number" : `measure ${last} is named`,
      expected: `words after their measure number, 1 to ${MOST_TYPED_MEASURES}`,
      remedy: 'Write for example "12 cresc. | 17 subito p".',
    });
  }
  const { measures, indexOf } = makeMeasures(items, last);
  warnings.push({
    code: "timing-unknown",
    message:
      "Typed words say the measure, not the beat: each is taken to stand at the start of its measure.",
    measureNumber: null,
    partId: null,
  });
  return {
    format: "text",
    version: null,
    title,
    parts: [
      {
        id: "P1",
        name: "Part",
        staves: 1,
        transpose: 0,
        marks: makeMarks(items, indexOf),
        notes: [],
      },
    ],
    measures,
    expansion: null,
    warnings,
  };
}

function makeMeasures(items: readonly Item[], last: number) {
  const labels = new Set<string>();
  for (let n = 1; n <= last; n += 1) labels.add(String(n));
  for (const { from } of items) labels.add(from === "upbeat" ? "pickup" : from);
  // "12a" stands right after 12, the pickup before all.
  const order = (label: string) => (label === "pickup" ? 0 : Number.parseInt(label, 10));
  const sorted = [...labels].sort((a, b) => order(a) - order(b) || (a < b ? -1 : 1));
  const measures = sorted.map(
    (number, index): Measure => ({
      index,
      number,
      implicit: number === "pickup",
      length: ASSUMED,
      time: null,
      fifths: null,
      repeatStart: false,
      repeatEnd: null,
      endingStart: null,
      endingText: null,
      endingStop: null,
      barStyle: null,
      movementStart: index === 0,
      jumps: [],
    }),
  );
  return { measures, indexOf: new Map(sorted.map((label, index) => [label, index])) };
}

function makeMarks(items: readonly Item[], indexOf: ReadonlyMap<string, number>): Mark[] {
  const marks = items.flatMap((item, group): Mark[] => {
    const from = indexOf.get(item.from === "upbeat" ? "pickup" : item.from) ?? 0;
    const base = {
      value: null,
      number: null,
      staff: null,
      voice: null,
      note: null,
      group,
      placement: null,
      measureIndex: from,
      onset: START,
    };
    const words: Mark = { ...base, element: "words", text: item.words, role: "point" };
    if (item.to === null) return [words];
    const to = indexOf.get(item.to) ?? from;
    const dashes = { ...base, element: "dashes", text: null, number: String(group + 1) };
    return [
      words,
      { ...dashes, role: "start" },
      { ...dashes, role: "stop", measureIndex: to, onset: ASSUMED },
    ];
  });
  return marks.sort((a, b) => a.measureIndex - b.measureIndex);
}
