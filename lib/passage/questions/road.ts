import { type Context, evidenceOf, numberOf } from "../context";
import type { Evidence, Option, Question } from "../question";

/** Where to play next: at the end of the passage, or at the first fork inside it. */
export function roadQuestions({ reading, passage }: Context): Question[] {
  const { playingOrder } = reading;
  const fork = firstFork(playingOrder, passage.from, passage.to);
  const last = fork ?? passage.to;
  const visits = playingOrder.flatMap((m, i) => (m === last ? [i] : []));
  const first = visits[0];
  if (first === undefined) return [];
  const next = playingOrder[first + 1];
  const right = next === undefined ? "end" : String(next);
  const measure = numberOf(reading, last);
  const options = optionsFor(reading, last, playingOrder, visits);
  if (options.length < 3) return [];
  const time = visits.length > 1 ? " the first time" : "";
  return [
    {
      id: "road-next",
      axis: "road",
      form: "one",
      prompt: `After measure ${measure}${time}, what do you play?`,
      options,
      right,
      evidence: evidenceFor(reading, last),
      slugs: slugsFor(reading, last),
      reason:
        next === undefined
          ? `The piece ends after measure ${measure}.`
          : next === last + 1
            ? `Straight on to measure ${numberOf(reading, next)}.`
            : `From measure ${measure} the road leads to measure ${numberOf(reading, next)}.`,
    },
  ];
}

function firstFork(order: readonly number[], from: number, to: number): number | null {
  for (let m = from; m <= to; m += 1) {
    const at = order.indexOf(m);
    if (at >= 0 && order[at + 1] !== m + 1) return m;
  }
  return null;
}

function optionsFor(
  reading: Context["reading"],
  last: number,
  order: readonly number[],
  visits: readonly number[],
): Option[] {
  const targets = new Set<number>();
  for (const i of visits) {
    const next = order[i + 1];
    if (next !== undefined) targets.add(next);
  }
  if (last + 1 < reading.measures.length) targets.add(last + 1);
  targets.add(0);
  for (const mark of reading.road) {
    if (mark.kind === "segno" || mark.kind === "coda") targets.add(mark.measureIndex);
  }
  for (let i = 1; i < order.length && targets.size < 4; i += 1) {
    const [a, b] = [order[i - 1], order[i]];
    if (a !== undefined && b !== undefined && b !== a + 1) targets.add(b);
  }
  if (last > 1) targets.add(Math.floor(last / 2));
  const options = [...targets]
    .slice(0, 4)
    .sort((a, b) => a - b)
    .map((m): Option => ({ id: String(m), text: `measure ${numberOf(reading, m)}`, lang: "en" }));
  return [...options, { id: "end", text: "nothing: the piece ends", lang: "en" }];
}

const ROAD_SIGNS = new Set([
  "repeat-backward",
  "repeat-forward",
  "ending",
  "segno",
  "coda",
  "bar-style",
]);

function evidenceFor(reading: Context["reading"], last: number): Evidence[] {
  const marks = reading.found.filter(
    (f) =>
      f.measureIndex === last &&
      f.kind === "navigation" &&
      (f.sign === null || ROAD_SIGNS.has(f.sign)),
  );
  const seen = new Set<string>();
  const evidence = marks.flatMap((f) => {
    if (seen.has(f.headword)) return [];
    seen.add(f.headword);
    return [evidenceOf(reading, last, f.text, f.slug, f.sign)];
  });
  return evidence.length > 0 ? evidence : [evidenceOf(reading, last, "no sign: play on")];
}

function slugsFor(reading: Context["reading"], last: number): string[] {
  return [...new Set(evidenceFor(reading, last).flatMap((e) => (e.slug ? [e.slug] : [])))];
}
