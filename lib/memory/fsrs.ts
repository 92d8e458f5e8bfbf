/**
 * Adapter of FSRS-6 (ts-fsrs). The library's own words stay inside this file; outside, a memory
 * has `holdsDays` and `hardness`.
 *
 * @see reference memory/fsrs6.json: weights, formulas and vectors of three implementations
 */
import { default_w, FSRSAlgorithm } from "ts-fsrs";
import type { Answer } from "./answer";
import { DAY_MS } from "./day";
import { type Manner, type Trial, trialsOf } from "./evidence";

/** Memory of one entry. */
export interface Hold {
  /** Days until recall falls to 90 %. */
  holdsDays: number;
  /** 1 (easy) to 10 (hard). */
  hardness: number;
}

/** Memory of one entry as its log leaves it. */
export interface FsrsState extends Hold {
  /** Moment of the last answer, milliseconds since 1970 UTC. */
  lastAt: number;
  /** The student's own day of the last answer. */
  lastDay: number;
  /** Answers folded in. */
  count: number;
}

/** How well an attempt went, worst first. */
export type Mark = "missed" | "partly" | "right" | "quick";
const RATING = { missed: 1, partly: 2, right: 3, quick: 4 } as const satisfies Record<Mark, number>;

/** Prior chance that an entry never met is known already, for judging a first lucky choice. */
const KNOWN_BEFORE = 0.2;

export interface Fsrs {
  /**
   * Memory after an attempt.
   *
   * @param hold memory before, null at the first attempt
   * @param elapsedDays whole days since the last attempt, 0 on the same day; fractions are allowed
   *   where a student forgets faster or slower than the default
   * @param mark how the attempt went
   */
  next(hold: Hold | null, elapsedDays: number, mark: Mark): Hold;
  /** Chance of recall after so many days, fractions included. */
  recall(elapsedDays: number, holdsDays: number): number;
  /** Days after which recall has fallen to `recall`. */
  daysUntil(recall: number, holdsDays: number): number;
}

/**
 * FSRS-6 with given weights.
 *
 * @param weights 21 numbers; the published defaults when left out
 */
export function createFsrs(weights: readonly number[] = default_w): Fsrs {
  const algorithm = new FSRSAlgorithm({ w: [...weights], enable_fuzz: false });
  // FSRS-6 takes the curve's exponent from the last weight and fixes R(holdsDays) = 0.9.
  const decay = -(algorithm.parameters.w[20] ?? 0.1542);
  const factor = 0.9 ** (1 / decay) - 1;
  return {
    next(hold, elapsedDays, mark) {
      const before = hold && { stability: hold.holdsDays, difficulty: hold.hardness };
      const after = algorithm.next_state(before, elapsedDays, RATING[mark]);
      return { holdsDays: after.stability, hardness: after.difficulty };
    },
    recall: (elapsedDays, holdsDays) =>
      (1 + (factor * Math.max(0, elapsedDays)) / holdsDays) ** decay,
    daysUntil: (recall, holdsDays) => (holdsDays / factor) * (recall ** (1 / decay) - 1),
  };
}

const standard = createFsrs();

/** The mark of an attempt that was not missed. */
export function markOf(manner: Manner): Mark {
  if (manner === "quick") return "quick";
  // Slow for this student: right, but fragile (learning-guidance, rule 20).
  return manner === "plain" ? "right" : "partly";
}

/**
 * How far an attempt counts as recall: a right choice among n may be luck.
 *
 * @param got 1 right, 0.5 in part, 0 missed
 * @param guess chance of being right without knowing
 * @param before chance of recall just before the attempt
 * @returns 0..1 by Bayes; an attempt in part counts as recalled, its mark already being lower
 */
export function knewIt(got: number, guess: number, before: number): number {
  if (got === 0) return 0;
  if (got < 1) return 1;
  return before / (before + (1 - before) * guess);
}

/** Memory after an attempt of which it is only probable that it was recalled. */
export function blendNext(
  fsrs: Fsrs,
  hold: Hold | null,
  elapsedDays: number,
  knew: number,
  mark: Mark,
): Hold {
  if (knew >= 1) return fsrs.next(hold, elapsedDays, mark);
  const missed = fsrs.next(hold, elapsedDays, "missed");
  if (knew <= 0) return missed;
  const recalled = fsrs.next(hold, elapsedDays, mark);
  return {
    // Days multiply along a learning history, so the mean is taken of their logarithms.
    holdsDays: recalled.holdsDays ** knew * missed.holdsDays ** (1 - knew),
    hardness: knew * recalled.hardness + (1 - knew) * missed.hardness,
  };
}

/**
 * Folds the answers to one entry, in order of time.
 *
 * @param answers answers to one entry in order (at, id)
 * @returns null when there are none
 */
export function foldFsrs(answers: readonly Answer[]): FsrsState | null {
  let state: FsrsState | null = null;
  for (const trial of trialsOf(answers)) state = nextState(state, trial);
  return state;
}

function nextState(state: FsrsState | null, trial: Trial): FsrsState {
  const elapsed = state ? Math.max(0, trial.day - state.lastDay) : 0;
  const before = state ? standard.recall(elapsed, state.holdsDays) : KNOWN_BEFORE;
  const knew = knewIt(trial.got, trial.guess, before);
  const hold = blendNext(standard, state, elapsed, knew, markOf(trial.manner));
  return {
    ...hold,
    lastAt: trial.at.days * DAY_MS,
    lastDay: trial.day,
    count: (state?.count ?? 0) + 1,
  };
}

/**
 * Chance that the entry is recalled at a moment, by the published default weights.
 *
 * @param when milliseconds since 1970 UTC; before the last answer it counts as that moment
 * @returns 0..1, 0 for an entry never met
 */
export function recallOn(state: FsrsState | null, when: number): number {
  if (!state) return 0;
  return standard.recall((when - state.lastAt) / DAY_MS, state.holdsDays);
}
