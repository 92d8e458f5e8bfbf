import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { measureStretches } from "@/app/ui/measure-stretches";

const measures = ["0", "1", "2", "2a", "", "4", "5"].map((number, index) => ({ index, number }));

describe("measureStretches", () => {
  it("joins neighbours and keeps printed numbers", () => {
    expect(measureStretches([3, 1, 2, 2, 6], measures)).toEqual([
      { number: "1", through: "2a" },
      { number: "5", through: "5" },
    ]);
  });

  it("brackets the place of an unnumbered measure", () => {
    expect(measureStretches([4], measures)).toEqual([{ number: "[5]", through: "[5]" }]);
  });

  it("covers exactly the measures given (property)", () => {
    const many = Array.from({ length: 40 }, (_, index) => ({ index, number: String(index) }));
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 39 })), (indices) => {
        const covered = measureStretches(indices, many).flatMap(({ number, through }) =>
          Array.from(
            { length: Number(through) - Number(number) + 1 },
            (_, i) => Number(number) + i,
          ),
        );
        expect(covered).toEqual([...new Set(indices)].sort((a, b) => a - b));
      }),
    );
  });
});
