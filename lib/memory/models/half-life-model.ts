import type { Moment } from "../evidence";
import type { MemoryModel, Practice, Trace } from "./model";

/**
 * Half-life of a memory that depends on how often it was recalled and missed, not on the gaps.
 *
 * @see Settles & Meeder 2016, ACL P16-1174: p = 2^(-delta/h), h = 2^(theta·x). The weights below
 *   are our own supposition; the forgetting rate fits them to the student.
 */
export const HALF_LIFE = { base: -0.5, recalled: 0.9, missed: 0.2, known: 5, longest: 9 } as const;

/** Recall after `days` for a half-life in days. */
export function halfLifeRecall(days: number, halfLife: number): number {
  return 2 ** (-Math.max(0, days) / halfLife);
}

/** The half-life model with half-lives divided by `rate`. */
export function createHalfLifeModel(rate: number, prior: number): MemoryModel {
  const base = HALF_LIFE.base - Math.log2(rate);
  return {
    name: "half-life",
    rate,
    prior,
    // Right at the very first question: it was learnt before, so it holds longer.
    first: (p) =>
      new HalfLifeTrace(
        base + p.knew * HALF_LIFE.known + (1 - p.knew) * HALF_LIFE.missed,
        p.at.days,
      ),
  };
}

class HalfLifeTrace implements Trace {
  /** @param log2 logarithm of the half-life in days */
  constructor(
    private readonly log2: number,
    private readonly lastDays: number,
  ) {}

  recall(at: Moment): number {
    return halfLifeRecall(at.days - this.lastDays, 2 ** Math.min(HALF_LIFE.longest, this.log2));
  }

  after(p: Practice): Trace {
    const step = p.manner === "partial" ? HALF_LIFE.recalled / 2 : HALF_LIFE.recalled;
    return new HalfLifeTrace(
      this.log2 + p.knew * step + (1 - p.knew) * HALF_LIFE.missed,
      p.at.days,
    );
  }
}
