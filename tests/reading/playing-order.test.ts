import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { MOST_PLAYED, playingOrder } from "../../lib/reading/playing-order";
import type { RoadMark } from "../../lib/reading/reading";
import type { Measure, Score } from "../../lib/score/model";

const SEED = 4711;

function measure(index: number, own: Partial<Measure> = {}): Measure {
  return {
    index,
    number: String(index + 1),
    implicit: false,
    length: [4, 1],
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
    ...own,
  };
}

function score(measures: Measure[]): Score {
  return {
    format: "musicxml",
    version: null,
    title: null,
    parts: [],
    measures,
    expansion: null,
    warnings: [],
  };
}

const mark = (
  measureIndex: number,
  kind: RoadMark["kind"],
  until: RoadMark["until"] = "end",
): RoadMark => ({
  measureIndex,
  onset: [0, 1],
  kind,
  until,
  name: "",
  encoded: false,
  timeOnly: null,
});

const numbers = (s: Score, road: RoadMark[] = []) => playingOrder(s, road).order.map((i) => i + 1);

describe("playingOrder", () => {
  it("plays straight through where nothing says otherwise", () => {
    expect(numbers(score([measure(0), measure(1), measure(2)]))).toEqual([1, 2, 3]);
  });
  it("lets a forward repeat that is never closed have no effect (LilyPond test 45g)", () => {
    expect(numbers(score([measure(0), measure(1, { repeatStart: true }), measure(2)]))).toEqual([
      1, 2, 3,
    ]);
  });
  it("takes repeats again after a jump only where the file says so", () => {
    const again = score([measure(0, { repeatEnd: { times: null, afterJump: true } }), measure(1)]);
    expect(numbers(again, [mark(1, "dacapo")])).toEqual([1, 1, 2, 1, 1, 2]);
  });
  it("warns when D.S. finds no segno and To Coda no coda, and plays on", () => {
    const s = score([measure(0), measure(1), measure(2)]);
    const { order, warnings } = playingOrder(s, [mark(1, "dalsegno", "coda")]);
    expect(order).toEqual([0, 1, 2]);
    expect(warnings.map((w) => w.code)).toEqual(["no-segno"]);
  });
  it("follows an expansion the file spells out, whatever is printed", () => {
    const s = {
      ...score([measure(0, { repeatEnd: { times: 9, afterJump: null } }), measure(1)]),
      expansion: [1, 0, 1],
    };
    expect(playingOrder(s, []).order).toEqual([1, 0, 1]);
  });
  it("caps a hostile count and says so", () => {
    const many = Array.from({ length: 3000 }, (_, i) => measure(i));
    const s = score(
      many.map((m, i) => (i === 2999 ? { ...m, repeatEnd: { times: 1e9, afterJump: null } } : m)),
    );
    const { order, warnings } = playingOrder(s, []);
    expect(order.length).toBe(MOST_PLAYED);
    expect(warnings.map((w) => w.code)).toEqual(["playing-order-cut"]);
  });

  const anyMeasure = fc.record({
    repeatStart: fc.boolean(),
    repeatEnd: fc.option(
      fc.record({
        times: fc.option(fc.integer({ min: 1, max: 5 })),
        afterJump: fc.option(fc.boolean()),
      }),
    ),
    endingStart: fc.option(fc.array(fc.integer({ min: 0, max: 4 }), { maxLength: 3 })),
    endingStop: fc.option(fc.constantFrom("stop" as const, "discontinue" as const)),
  });
  const anyRoad = fc.array(
    fc.record({
      at: fc.nat(11),
      kind: fc.constantFrom("dacapo", "dalsegno", "tocoda", "fine", "segno", "coda" as const),
      until: fc.constantFrom("end", "fine", "coda" as const),
    }),
    { maxLength: 6 },
  );
  it("always ends and stays inside the score, whatever the file says (property)", () => {
    fc.assert(
      fc.property(
        fc.array(anyMeasure, { minLength: 1, maxLength: 12 }),
        anyRoad,
        (shapes, road) => {
          const s = score(shapes.map((shape, i) => measure(i, shape)));
          const marks = road
            .filter(({ at }) => at < shapes.length)
            .map(({ at, kind, until }) =>
              mark(at, kind as RoadMark["kind"], until as RoadMark["until"]),
            );
          const { order } = playingOrder(s, marks);
          expect(order.length).toBeLessThanOrEqual(MOST_PLAYED);
          for (const index of order) expect(index >= 0 && index < shapes.length).toBe(true);
        },
      ),
      { seed: SEED, numRuns: 2000 },
    );
  });
});
