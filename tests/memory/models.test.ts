import { describe, expect, it } from "vitest";
import { z } from "zod";
import { createEase } from "@/lib/memory/ease";
import {
  ACTIVATION_2005,
  activationAt,
  createActivationModel,
  decaysOf,
  recallOf,
} from "@/lib/memory/models/activation-model";
import { createHalfLifeModel, halfLifeRecall } from "@/lib/memory/models/half-life-model";
import { createHoldModel } from "@/lib/memory/models/hold-model";
import { createPosterior, weightedQuantile } from "@/lib/memory/posterior";
import { createStudent, standardModels } from "@/lib/memory/student";
import { readShared } from "./shared";

// Source: ../shared/reference/memory/memory-models.json; tolerances are the file's own.
const schema = z.object({
  pavlikAnderson2005: z.object({
    checks: z.object({
      tol: z.number(),
      cases: z.array(
        z.object({
          practiceTimes: z.array(z.number()),
          beta: z.number(),
          decays: z.array(z.number()),
          tests: z.array(z.object({ t: z.number(), m: z.number(), p: z.number() })),
        }),
      ),
    }),
  }),
  halfLifeRegression2016: z.object({
    checks: z.array(z.object({ delta: z.number(), h: z.number(), p: z.number() })),
    tol: z.number(),
  }),
});
const reference = readShared("memory-models.json", schema);

describe("activation model", () => {
  it("gives the reference decays, activations and recalls", () => {
    if (!reference) return;
    const { cases, tol } = reference.pavlikAnderson2005.checks;
    expect(cases.length).toBeGreaterThan(3);
    for (const row of cases) {
      const decays = decaysOf(row.practiceTimes, ACTIVATION_2005);
      for (const [i, d] of decays.entries()) {
        expect(Math.abs(d - (row.decays[i] ?? 0))).toBeLessThanOrEqual(tol);
      }
      for (const test of row.tests) {
        const m = activationAt(row.practiceTimes, decays, test.t) + row.beta;
        expect(Math.abs(m - test.m)).toBeLessThanOrEqual(tol);
        expect(Math.abs(recallOf(m, ACTIVATION_2005) - test.p)).toBeLessThanOrEqual(tol);
      }
    }
  });

  it("as a trace, agrees with the formulas it was made from", () => {
    const model = createActivationModel(1, 1);
    const at = (days: number) => ({ days, study: 0 });
    const practice = (days: number) => ({
      at: at(days),
      day: days,
      knew: 0,
      manner: "plain" as const,
    });
    const trace = model.first(practice(0)).after(practice(1)).after(practice(3));
    const times = [0, 1, 3].map((d) => d * 86_400 * ACTIVATION_2005.h);
    const m = activationAt(times, decaysOf(times, ACTIVATION_2005), 7 * 86_400 * ACTIVATION_2005.h);
    expect(trace.recall(at(7))).toBeCloseTo(recallOf(m, ACTIVATION_2005), 10);
  });
});

describe("half-life model", () => {
  it("halves in a half-life (reference checks)", () => {
    if (!reference) return;
    for (const { delta, h, p } of reference.halfLifeRegression2016.checks) {
      expect(Math.abs(halfLifeRecall(delta, h) - p)).toBeLessThanOrEqual(
        reference.halfLifeRegression2016.tol,
      );
    }
  });
});

describe("every model", () => {
  const models = [createHoldModel(4, 1), createActivationModel(1, 1), createHalfLifeModel(1, 1)];
  const practice = (days: number, knew: number) => ({
    at: { days, study: 0 },
    day: days,
    knew,
    manner: "plain" as const,
  });

  it("forgets as days pass, and practice helps", () => {
    for (const model of models) {
      const once = model.first(practice(0, 0));
      const recalls = [0.5, 1, 2, 5, 10].map((days) => once.recall({ days, study: 0 }));
      expect(
        [...recalls].sort((a, b) => b - a),
        model.name,
      ).toEqual(recalls);
      const target = { days: 10, study: 0 };
      expect(once.after(practice(2, 1)).recall(target), model.name).toBeGreaterThan(
        once.recall(target),
      );
    }
  });

  it("keeps a faster forgetter below a slower one", () => {
    const makers = [createHoldModel, createActivationModel, createHalfLifeModel];
    for (const make of makers) {
      const kept = (rate: number) =>
        make(rate, 1).first(practice(0, 1)).recall({ days: 6, study: 0 });
      expect(kept(1.5)).toBeLessThan(kept(0.7));
    }
  });
});

describe("standardModels", () => {
  it("has priors that sum to 1", () => {
    expect(standardModels().reduce((sum, m) => sum + m.prior, 0)).toBeCloseTo(1, 10);
  });
});

describe("createPosterior", () => {
  it("leans to what foretold the answers, and stays a distribution", () => {
    const posterior = createPosterior([0.5, 0.5]);
    for (let i = 0; i < 20; i += 1) posterior.update([0.9, 0.6]);
    expect(posterior.weights[0]).toBeGreaterThan(0.9);
    expect(posterior.weights[1]).toBeGreaterThanOrEqual(0.01);
    expect(posterior.weights.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 10);
  });
});

describe("weightedQuantile", () => {
  it("counts weights, not values", () => {
    expect(weightedQuantile([5, 1, 3], [0.2, 0.5, 0.3], 0.5)).toBe(1);
    expect(weightedQuantile([5, 1, 3], [0.2, 0.5, 0.3], 0.9)).toBe(5);
  });
});

describe("createEase", () => {
  it("shrinks one entry towards the student's mean", () => {
    const ease = createEase();
    for (let i = 0; i < 30; i += 1) ease.learn(`easy-${i % 10}`, 0.5, 1);
    ease.learn("hard", 0.5, 0);
    expect(ease.of("never seen")).toBeGreaterThan(0.5);
    expect(ease.of("hard")).toBeLessThan(ease.of("never seen"));
    expect(ease.of("hard")).toBeGreaterThan(0);
  });
});

describe("createStudent", () => {
  it("learns from misses that this student forgets faster", () => {
    const study = (got: number) => {
      const student = createStudent();
      for (let day = 0; day < 6; day += 1) {
        for (let i = 0; i < 8; i += 1) {
          student.observe({
            item: `e${i}`,
            at: { days: day, study: 0 },
            day,
            got,
            guess: 0,
            manner: "plain",
          });
        }
      }
      student.observe({
        item: "new",
        at: { days: 6, study: 0 },
        day: 6,
        got: 0,
        guess: 0,
        manner: "plain",
      });
      return student.recall("new", { days: 8, study: 0 }) ?? 0;
    };
    expect(study(0)).toBeLessThan(study(1));
  });
  it("imagines in a copy without changing its beliefs", () => {
    const student = createStudent();
    student.observe({
      item: "a",
      at: { days: 0, study: 0 },
      day: 0,
      got: 0,
      guess: 0,
      manner: "plain",
    });
    const before = student.recall("a", { days: 5, study: 0 });
    const copy = student.fork();
    copy.imagine("a", { at: { days: 1, study: 0 }, day: 1, knew: 1, manner: "plain" });
    expect(copy.recall("a", { days: 5, study: 0 })).toBeGreaterThan(before ?? 1);
    expect(student.recall("a", { days: 5, study: 0 })).toBe(before);
  });
});
