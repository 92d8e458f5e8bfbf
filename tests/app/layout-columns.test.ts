import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { GAP, layoutColumns, MOST_COLUMN, placeRow } from "@/app/ui/ribbon/layout-columns";
import type { Place, ReadingMeasure } from "@/lib/reading/reading";

const measures = (count: number): ReadingMeasure[] =>
  Array.from({ length: count }, (_, index) => ({
    index,
    number: String(index + 1),
    implicit: false,
    length: [4, 1],
    time: null,
    fifths: null,
    notes: [4],
  }));
const none = { demand: [], rows: [] };
const at = (measureIndex: number, quarter = 0): Place => ({ measureIndex, onset: [quarter, 1] });

describe("layoutColumns", () => {
  it("gives every measure the least width and stands onsets in order inside it", () => {
    const columns = layoutColumns(measures(3), 72, none);
    expect(columns.edges).toEqual([0, 72, 144, 216]);
    const xs = [0, 1, 2, 3].map((q) => columns.x(at(1, q)));
    expect([...xs].sort((a, b) => a - b)).toEqual(xs);
    expect(xs[0]).toBeGreaterThan(72);
    expect(xs[3]).toBeLessThan(144);
  });

  it("puts the end of a measure on its barline, and what lies past the piece at its end", () => {
    const columns = layoutColumns(measures(2), 72, none);
    expect(columns.x(at(0, 4))).toBe(72);
    expect(columns.x(at(7))).toBe(144);
  });

  it("widens a measure whose word would run into the next one, up to the most", () => {
    const row = (width: number) => [
      { ...at(0), width },
      { ...at(1), width: 10 },
    ];
    const wider = layoutColumns(measures(2), 72, { demand: [], rows: [row(100)] });
    expect(wider.x(at(1)) - wider.x(at(0))).toBeGreaterThanOrEqual(100 + GAP - 0.001);
    const widest = layoutColumns(measures(2), 72, { demand: [], rows: [row(900)] });
    expect(widest.edges[1]).toBe(MOST_COLUMN);
  });

  it("reckons words at one place together", () => {
    const row = [
      { ...at(0), width: 60 },
      { ...at(0), width: 60 },
      { ...at(1), width: 10 },
    ];
    const columns = layoutColumns(measures(2), 72, { demand: [], rows: [row] });
    expect(placeRow(columns, row)[2]).toBeCloseTo(columns.x(at(1)), 5);
  });

  it("never lets two items of a row touch, wherever they stand", () => {
    const item = fc.record({
      measureIndex: fc.nat(5),
      onset: fc.nat(4).map((q) => [q, 1] as const),
      width: fc.integer({ min: 1, max: 400 }),
    });
    fc.assert(
      fc.property(fc.array(item, { maxLength: 12 }), (items) => {
        const row = items.sort(
          (a, b) => a.measureIndex - b.measureIndex || a.onset[0] - b.onset[0],
        );
        const columns = layoutColumns(measures(6), 72, { demand: [], rows: [row] });
        const xs = placeRow(columns, row);
        return xs.every((x, i) => i === 0 || x >= (xs[i - 1] ?? 0) + (row[i - 1]?.width ?? 0));
      }),
    );
  });
});
