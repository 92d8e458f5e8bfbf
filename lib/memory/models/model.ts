import type { Manner, Moment } from "../evidence";

/** One attempt as a memory model takes it. */
export interface Practice {
  at: Moment;
  /** The student's own day number. */
  day: number;
  /** Probability that it was recalled, luck taken out. */
  knew: number;
  manner: Manner;
}

/** Memory of one entry under one model; never changed, only followed by another. */
export interface Trace {
  /** Chance of recall at a moment not before the last attempt. */
  recall(at: Moment): number;
  /** Memory after one more attempt, whose right answer was shown. */
  after(practice: Practice): Trace;
}

/** One supposition about how a student's memory works. */
export interface MemoryModel {
  name: string;
  /** How fast this student forgets, 1 the model's default. */
  rate: number;
  /** Weight before any answer; those of all models sum to 1. */
  prior: number;
  first(practice: Practice): Trace;
}
