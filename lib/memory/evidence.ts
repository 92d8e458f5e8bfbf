import type { Answer } from "./answer";
import { DAY_MS, dayOf } from "./day";

/**
 * What an answer shows about memory.
 * `quick` and `fragile` compare the time taken with the same student's own usual time for the
 * same kind of prompt; no student is measured against another.
 */
export type Manner = "plain" | "quick" | "fragile" | "partial";

/** A moment as memory feels it. */
export interface Moment {
  /** Days since 1970 UTC, with fractions. */
  days: number;
  /** Seconds spent in drill sessions up to then; time inside a session counts differently from time between. */
  study: number;
}

/** One attempt at one entry. */
export interface Trial {
  item: string;
  at: Moment;
  /** The student's own day number. */
  day: number;
  /** 1 recalled, 0.5 in part or with help, 0 missed. */
  got: number;
  /** Chance of being right without knowing: 1 / alternatives, 0 for an answer the student produced. */
  guess: number;
  manner: Manner;
}

/** Two attempts closer than this belong to one session. */
export const SESSION_GAP_DAYS = 20 / (24 * 60);
/** Right answers needed before a student's usual time is trusted. */
const USUAL_AFTER = 5;
const QUICK = 0.5;
const SLOW = 2;

/**
 * Turns a log into trials in order of time.
 *
 * @param log answers in order (at, id)
 */
export function trialsOf(log: readonly Answer[]): Trial[] {
  return log.map(createTrialReader());
}

/** Reads answers one by one, in order; it remembers sessions and the student's usual times. */
export function createTrialReader(): (answer: Answer) => Trial {
  const clock = createSessionClock();
  const usual = createUsual();
  return (answer) => {
    const days = answer.at / DAY_MS;
    const got = gotOf(answer);
    const manner: Manner = got === 0.5 ? "partial" : got === 1 ? usual.judge(answer) : "plain";
    if (got === 1) usual.add(answer);
    return {
      item: answer.entry,
      at: { days, study: clock(days) },
      day: dayOf(answer),
      got,
      guess: answer.options ? 1 / answer.options : 0,
      manner,
    };
  };
}

/** 1 recalled unaided (a misspelling included), 0.5 in part or with help, 0 missed. */
export function gotOf(answer: Answer): 0 | 0.5 | 1 {
  if (answer.outcome === "missed") return 0;
  return answer.help || answer.outcome === "partly" ? 0.5 : 1;
}

/** Adds up the time inside sessions; call it with moments in order. */
export function createSessionClock(): (days: number) => number {
  let last: number | null = null;
  let study = 0;
  return (days) => {
    if (last !== null) {
      const gap = days - last;
      if (gap > 0 && gap < SESSION_GAP_DAYS) study += gap * 86_400;
    }
    last = last === null ? days : Math.max(last, days);
    return study;
  };
}

/** A student's usual time for a right answer, per kind of prompt and way of answering. */
function createUsual() {
  const times = new Map<string, number[]>();
  const key = (a: Answer) => `${a.prompt}|${a.options ? "chosen" : "made"}`;
  return {
    add(answer: Answer): void {
      const list = times.get(key(answer)) ?? [];
      list.push(answer.ms);
      // The last twenty: a student gets used to the prompts.
      if (list.length > 20) list.shift();
      times.set(key(answer), list);
    },
    judge(answer: Answer): Manner {
      const list = times.get(key(answer));
      if (!list || list.length < USUAL_AFTER) return "plain";
      const usual = median(list);
      if (answer.ms > SLOW * usual) return "fragile";
      // A choice can be quick by luck; only an answer the student produced counts as quick.
      return !answer.options && answer.outcome === "right" && answer.ms < QUICK * usual
        ? "quick"
        : "plain";
    },
  };
}

/** Middle value; 0 for an empty list. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const mid = sorted.length >> 1;
  const high = sorted[mid] ?? 0;
  return sorted.length % 2 ? high : (high + (sorted[mid - 1] ?? 0)) / 2;
}
