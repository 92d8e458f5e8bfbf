import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foldLog } from "@/lib/memory/fold-log";
import { foldFsrs, recallOn } from "@/lib/memory/fsrs";
import { mergeLogs } from "@/lib/memory/log";
import { readiness, STEPS, stepOf, THRESHOLDS } from "@/lib/memory/readiness";
import { answer, DAY, logArbitrary, START } from "./answers";

const of = (log: Parameters<typeof foldLog>[0], slug: string, on: number) => {
  const entry = readiness(foldLog(log), [slug], on).entries[0];
  if (!entry) throw new Error("no entry came back");
  return entry;
};

describe("stepOf", () => {
  it("has the four steps at their stated thresholds", () => {
    expect(STEPS).toEqual(["not met", "shaky", "nearly", "ready"]);
    expect(stepOf(null, 0)).toBe("not met");
    expect(stepOf(THRESHOLDS.nearly - 0.001, 1)).toBe("shaky");
    expect(stepOf(THRESHOLDS.nearly, 1)).toBe("nearly");
    expect(stepOf(THRESHOLDS.ready, 1)).toBe("ready");
  });
  it("leaves an entry never right on shaky", () => {
    expect(stepOf(0.95, 0)).toBe("shaky");
  });
});

describe("readiness", () => {
  it("shows an entry never met as not met, and an empty set as nothing", () => {
    expect(of([], "dolce", START)).toMatchObject({
      recall: 0,
      step: "not met",
      days: 0,
      lastAt: null,
    });
    expect(readiness(foldLog([]), [], START)).toMatchObject({
      recall: 0,
      low: 0,
      high: 0,
      entries: [],
    });
  });

  it("counts separate days with a right answer, without help", () => {
    const log = [
      answer(),
      answer({ at: START + 1000 }),
      answer({ at: START + DAY, outcome: "slip" }),
      answer({ at: START + 2 * DAY, help: true }),
      answer({ at: START + 3 * DAY, outcome: "missed" }),
      answer({ at: START + 4 * DAY, outcome: "partly" }),
    ];
    expect(of(log, "dolce", START + 9 * DAY).days).toBe(2);
  });

  it("rises through the steps with right answers on separate days", () => {
    const on = START + 12 * DAY;
    const days = [0, 2, 5, 9].map((d) => answer({ at: START + d * DAY }));
    const recalls = days.map((_, i) => of(days.slice(0, i + 1), "dolce", on).recall);
    expect([...recalls].sort((a, b) => a - b)).toEqual(recalls);
    expect(of(days, "dolce", on).step).toBe("ready");
  });

  it("trusts a right choice less than a produced answer, and says so", () => {
    const on = START + 4 * DAY;
    const chosen = of([answer({ prompt: "word>meaning", options: 4 })], "dolce", on);
    const made = of([answer()], "dolce", on);
    expect(chosen.recall).toBeLessThan(made.recall);
    expect([chosen.chosenOnly, made.chosenOnly]).toEqual([true, false]);
  });

  it("never falls when an answer is right, by the published weights (property)", () => {
    fc.assert(
      fc.property(logArbitrary(12), fc.integer({ min: 0, max: 10 * DAY }), (lines, wait) => {
        const log = mergeLogs(lines).map((line) => ({ ...line, entry: "dolce", offset: 0 }));
        const at = (log.at(-1)?.at ?? START) + 1;
        const more = [...log, answer({ id: "zz", at, ms: 4000 })];
        const on = at + wait;
        expect(recallOn(foldFsrs(more), on)).toBeGreaterThanOrEqual(
          recallOn(foldFsrs(log), on) - 1e-9,
        );
      }),
    );
  });

  it("never falls when an answer is right, over all models (property)", () => {
    fc.assert(
      fc.property(logArbitrary(12), fc.integer({ min: 0, max: 10 * DAY }), (lines, wait) => {
        const log = mergeLogs(lines).map((line) => ({ ...line, offset: 0 }));
        const at = (log.at(-1)?.at ?? START) + 1;
        const more = [...log, answer({ id: "zz", at, entry: "dolce", ms: 4000 })];
        const on = at + wait;
        expect(of(more, "dolce", on).recall).toBeGreaterThanOrEqual(
          of(log, "dolce", on).recall - 1e-9,
        );
      }),
    );
  });

  it("keeps every figure inside 0..1 and the range around it (property)", () => {
    fc.assert(
      fc.property(logArbitrary(25), fc.integer({ min: 0, max: 400 * DAY }), (log, wait) => {
        const all = readiness(
          foldLog(log),
          ["dolce", "fermata", "tenuto", "staccato"],
          START + 20 * DAY + wait,
        );
        for (const one of [all, ...all.entries]) {
          expect(one.low).toBeGreaterThanOrEqual(0);
          expect(one.high).toBeLessThanOrEqual(1);
          expect(one.recall).toBeGreaterThanOrEqual(0);
          expect(one.recall).toBeLessThanOrEqual(1);
        }
        expect(all.low).toBeLessThanOrEqual(all.recall);
        expect(all.high).toBeGreaterThanOrEqual(all.recall);
        expect(Object.values(all.steps).reduce((a, b) => a + b, 0)).toBe(4);
      }),
    );
  });

  it("is the same whichever device told first (property)", () => {
    fc.assert(
      fc.property(logArbitrary(20), (log) => {
        const on = START + 30 * DAY;
        expect(readiness(foldLog([...log].reverse()), ["dolce"], on)).toEqual(
          readiness(foldLog(log), ["dolce"], on),
        );
      }),
    );
  });
});
