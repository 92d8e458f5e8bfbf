import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { forecastCurve, forecastNumbers } from "@/app/ui/forecast-curve";
import { stepWords } from "@/app/ui/step-words";
import type { ForecastDay } from "@/lib/memory/forecast";

const row = (date: string, recall: number, spread = 0.1): ForecastDay => ({
  day: 0,
  date,
  recall,
  low: Math.max(0, recall - spread),
  high: Math.min(1, recall + spread),
  ready: 0,
  unmet: 0,
});
const box = { width: 300, height: 60 };

describe("forecastCurve", () => {
  it("runs from today at the left to the date at the right, all known at the top", () => {
    const curve = forecastCurve(
      [row("2027-01-01", 0), row("2027-01-01", 0.5), row("2027-01-02", 1)],
      box,
    );
    expect(curve?.line).toBe("M0 60L150 30L300 0");
    expect(curve?.today).toEqual([0, 60]);
    expect(curve?.range.endsWith("Z")).toBe(true);
  });

  it("draws no curve through one point", () => {
    expect(forecastCurve([row("2027-01-01", 0.4)], box)).toBeNull();
    expect(forecastCurve([], box)).toBeNull();
  });

  it("keeps every point inside its box (property)", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 2 }),
        (recalls) => {
          const curve = forecastCurve(
            recalls.map((r) => row("2027-01-01", r)),
            box,
          );
          const numbers = `${curve?.line}${curve?.range}`.match(/[\d.]+ [\d.]+/g) ?? [];
          for (const pair of numbers) {
            const [x = -1, y = -1] = pair.split(" ").map(Number);
            expect(x >= 0 && x <= box.width && y >= 0 && y <= box.height).toBe(true);
          }
        },
      ),
    );
  });
});

describe("forecastNumbers", () => {
  it("counts whole entries, today and on the date", () => {
    const rows = [row("2027-02-04", 0.726), row("2027-02-04", 0.8), row("2027-02-05", 0.951, 0.04)];
    expect(forecastNumbers(rows, 84, "2027-02-06")).toEqual({
      of: 84,
      today: 61,
      onDate: 80,
      low: 77,
      high: 83,
      until: null,
    });
  });

  it("says how far it reaches when the date is farther off", () => {
    const rows = [row("2027-01-01", 0.1), row("2027-03-31", 0.9)];
    expect(forecastNumbers(rows, 10, "2027-12-01")?.until).toBe("2027-03-31");
  });

  it("is silent without entries", () => {
    expect(forecastNumbers([row("2027-01-01", 0)], 0, "2027-01-02")).toBeNull();
  });
});

describe("stepWords", () => {
  it("names the steps that are taken, the best first", () => {
    expect(stepWords({ ready: 19, nearly: 7, shaky: 0, "not met": 5 })).toBe(
      "19 ready, 7 nearly, 5 not met",
    );
  });
});
