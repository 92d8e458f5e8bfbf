import { describe, expect, it } from "vitest";
import { z } from "zod";
import { createFsrs, foldFsrs, knewIt, type Mark, recallOn } from "@/lib/memory/fsrs";
import { answer, DAY, START } from "./answers";
import { readShared } from "./shared";

// Source of the vectors: ../shared/reference/memory/fsrs6.json, from the tests of py-fsrs 6.3.1,
// ts-fsrs and fsrs-rs and from runs of ts-fsrs 5.4.2; each check's tolerance is the file's own.
const numbers = z.array(z.number());
const step = z.object({
  elapsedDays: z.number(),
  rating: z.number(),
  S: z.number(),
  D: z.number(),
});
const schema = z.object({
  w: numbers,
  checks: z.object({
    intervalsPublished: z.object({ ratings: numbers, expectDays: numbers }),
    memoStatePublished: z.object({
      ratings: numbers,
      elapsedDays: numbers,
      S: z.number(),
      D: z.number(),
      tol: z.number(),
    }),
    firstReview: z.object({ S: numbers, D: numbers, tol: z.number() }),
    retrievabilityRust: z.object({ t: numbers, S: numbers, R: numbers, tol: z.number() }),
    forgettingCurveS1: z.object({ t: numbers, R: numbers, tol: z.number() }),
    retrievabilityDecay02: z.object({ t: numbers, R: numbers, tol: z.number() }),
    sameDayStability: z.object({
      S: z.number(),
      rating: numbers,
      expect: numbers,
      tol: z.number(),
    }),
    nextDifficultyFrom5: z.object({ expect: numbers, tol: z.number() }),
    intervalContinuous: z.array(
      z.object({ S: z.number(), retention: z.number(), days: z.number(), tol: z.number() }),
    ),
    R_grid: z.array(z.object({ t: z.number(), S: z.number(), R: z.number(), tol: z.number() })),
    sequences: z.array(z.object({ name: z.string(), steps: z.array(step), tol: z.number() })),
    oneStep: z.object({
      cases: z.array(
        z.object({
          S: z.number(),
          D: z.number(),
          elapsedDays: z.number(),
          rating: z.number(),
          nextS: z.number(),
          nextD: z.number(),
        }),
      ),
      tol: z.number(),
    }),
  }),
});
const reference = readShared("fsrs6.json", schema);
const MARKS: readonly Mark[] = ["missed", "partly", "right", "quick"];
const markOf = (rating: number): Mark => MARKS[rating - 1] ?? "missed";
const near = (
  actual: number | undefined,
  expected: number | undefined,
  tol: number,
  what: string,
) => {
  expect(actual, what).toBeDefined();
  expect(Math.abs((actual ?? 0) - (expected ?? Number.NaN)), what).toBeLessThanOrEqual(tol);
};

describe("createFsrs", () => {
  if (!reference) {
    it("has no vectors here", () => expect(reference).toBeNull());
    return;
  }
  const { checks, w } = reference;
  const fsrs = createFsrs(w);

  it("begins as published (firstReview)", () => {
    MARKS.forEach((mark, i) => {
      const hold = fsrs.next(null, 0, mark);
      near(hold.holdsDays, checks.firstReview.S[i], checks.firstReview.tol, `S ${mark}`);
      near(hold.hardness, checks.firstReview.D[i], checks.firstReview.tol, `D ${mark}`);
    });
  });

  it("reaches the published memory state (memoStatePublished)", () => {
    const { ratings, elapsedDays, S, D, tol } = checks.memoStatePublished;
    let hold: ReturnType<typeof fsrs.next> | null = null;
    ratings.forEach((rating, i) => {
      hold = fsrs.next(hold, elapsedDays[i] ?? 0, markOf(rating));
    });
    near((hold as { holdsDays: number } | null)?.holdsDays, S, tol, "S");
    near((hold as { hardness: number } | null)?.hardness, D, tol, "D");
  });

  it("follows the worked sequences (sequences A, B)", () => {
    for (const { name, steps, tol } of checks.sequences) {
      let hold: ReturnType<typeof fsrs.next> | null = null;
      steps.forEach((row, i) => {
        hold = fsrs.next(hold, row.elapsedDays, markOf(row.rating));
        near(hold.holdsDays, row.S, tol, `${name} S ${i}`);
        near(hold.hardness, row.D, tol, `${name} D ${i}`);
      });
    }
  });

  it("takes one step as published (oneStep, sameDayStability, nextDifficultyFrom5)", () => {
    for (const row of checks.oneStep.cases) {
      const hold = fsrs.next(
        { holdsDays: row.S, hardness: row.D },
        row.elapsedDays,
        markOf(row.rating),
      );
      near(hold.holdsDays, row.nextS, checks.oneStep.tol, `S ${JSON.stringify(row)}`);
      near(hold.hardness, row.nextD, checks.oneStep.tol, `D ${JSON.stringify(row)}`);
    }
    const { S, rating, expect: expected, tol } = checks.sameDayStability;
    rating.forEach((r, i) => {
      near(
        fsrs.next({ holdsDays: S, hardness: 5 }, 0, markOf(r)).holdsDays,
        expected[i],
        tol,
        `same day ${r}`,
      );
      const next = fsrs.next({ holdsDays: S, hardness: 5 }, 1, markOf(r));
      near(
        next.hardness,
        checks.nextDifficultyFrom5.expect[i],
        checks.nextDifficultyFrom5.tol,
        `D ${r}`,
      );
    });
  });

  it("forgets as published (retrievabilityRust, forgettingCurveS1, R_grid, decay 0.2)", () => {
    const rust = checks.retrievabilityRust;
    rust.t.forEach((t, i) => {
      near(fsrs.recall(t, rust.S[i] ?? 1), rust.R[i], rust.tol, `rust ${i}`);
    });
    const one = checks.forgettingCurveS1;
    one.t.forEach((t, i) => {
      near(fsrs.recall(t, 1), one.R[i], one.tol, `S=1 ${t}`);
    });
    for (const row of checks.R_grid)
      near(fsrs.recall(row.t, row.S), row.R, row.tol, JSON.stringify(row));
    const steep = createFsrs([...w.slice(0, 20), 0.2]);
    const two = checks.retrievabilityDecay02;
    two.t.forEach((t, i) => {
      near(steep.recall(t, 1), two.R[i], two.tol, `decay 0.2 ${t}`);
    });
  });

  it("finds the day of a wanted recall (intervalContinuous)", () => {
    for (const row of checks.intervalContinuous) {
      near(fsrs.daysUntil(row.retention, row.S), row.days, row.tol, JSON.stringify(row));
    }
  });

  it("gives the published intervals at 90 % (intervalsPublished, exact)", () => {
    // Learning steps of the source: after the first answer and after a miss the next comes the same day.
    const { ratings, expectDays } = checks.intervalsPublished;
    let hold: ReturnType<typeof fsrs.next> | null = null;
    let wait = 0;
    let learning = true;
    const days = ratings.map((rating, i) => {
      hold = fsrs.next(hold, wait, markOf(rating));
      learning = i === 0 || rating === 1;
      wait = learning ? 0 : Math.max(1, Math.round(fsrs.daysUntil(0.9, hold.holdsDays)));
      return wait;
    });
    expect(days).toEqual(expectDays);
  });
});

describe("foldFsrs", () => {
  it("knows nothing of an entry without answers", () => {
    expect(foldFsrs([])).toBeNull();
    expect(recallOn(null, START)).toBe(0);
  });

  it("trusts a produced answer more than a right choice, and a choice of two least", () => {
    const at = START + 5 * DAY;
    const recall = (options?: number) => recallOn(foldFsrs([answer({ options })]), at);
    const missed = recallOn(foldFsrs([answer({ outcome: "missed", options: 4 })]), at);
    expect(recall()).toBeGreaterThan(recall(4));
    expect(recall(4)).toBeGreaterThan(recall(2));
    expect(recall(2)).toBeGreaterThan(missed);
  });

  it("counts a misspelling as right, help as less", () => {
    const at = START + 5 * DAY;
    const of = (change: Parameters<typeof answer>[0]) => recallOn(foldFsrs([answer(change)]), at);
    expect(of({ outcome: "slip" })).toBe(of({}));
    expect(of({ help: true })).toBeLessThan(of({}));
    expect(of({ outcome: "partly" })).toBeGreaterThan(of({ outcome: "missed" }));
  });

  it("parts same-day from next-day by the student's own calendar", () => {
    // 23:30 and 00:30 by UTC; one evening where the clock stands five hours behind.
    const evening = { at: Date.UTC(2027, 2, 1, 23, 30), offset: -300 };
    const later = { at: Date.UTC(2027, 2, 2, 0, 30), offset: -300 };
    const here = foldFsrs([answer(evening), answer(later)]);
    const utc = foldFsrs([answer({ ...evening, offset: 0 }), answer({ ...later, offset: 0 })]);
    expect(here?.holdsDays).toBeCloseTo(2.3065, 4);
    expect(utc?.holdsDays).toBeGreaterThan(2.5);
  });

  it("does not let memory run backwards when a device's clock does", () => {
    const state = foldFsrs([answer()]);
    expect(recallOn(state, START - DAY)).toBe(1);
  });
});

describe("knewIt", () => {
  it("takes luck out by Bayes (derived)", () => {
    expect(knewIt(1, 0.25, 0.5)).toBeCloseTo(0.8, 10);
    expect(knewIt(1, 0, 0.1)).toBe(1);
    expect(knewIt(0, 0.25, 0.9)).toBe(0);
  });
});
