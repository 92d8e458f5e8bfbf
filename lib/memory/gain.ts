import type { Moment } from "./evidence";
import type { MemoryModel, Practice, Trace } from "./models/model";
import { type Beliefs, easedRecall } from "./student";

/** When recall is wanted, and how much practice an entry may still hope for before. */
export interface Horizon {
  /** The audition. */
  target: Moment;
  /** A moment after it that counts a little too: what is learnt should not be gone a week later. */
  later: Moment;
  /** Practice that an entry will probably get between now and the audition anyway. */
  ahead: readonly When[];
}

export interface When {
  at: Moment;
  /** The student's own day number. */
  day: number;
}

/** Share of the value that lies in recall at `later`. */
const LATER_SHARE = 0.2;
/** More steps ahead cost time and change little. */
const MOST_AHEAD = 2;

/** What one attempt now is worth. */
export interface Worth {
  /** Chance of recall now, 0..1; for an entry never met, the chance that it is known already. */
  recallNow: number;
  /** Expected rise in the value of recall on the date, 0..1. */
  gain: number;
  /** Reckoned for another day than asked for. */
  stale: boolean;
}

/** Under one model: value without an attempt, after a right one, after a missed one. */
interface Prospect {
  without: number;
  right: number;
  missed: number;
}

interface Kept {
  day: number;
  traces: readonly Trace[] | undefined;
  prospects: readonly Prospect[];
}

export interface Appraiser {
  /**
   * Worth of practising `item` now. What was reckoned on an earlier day is used again, marked
   * `stale`, unless the entry was practised since or `fresh` is asked for.
   */
  worth(item: string, now: When, horizon: Horizon, fresh: boolean): Worth;
}

/**
 * Worth of attempts, kept per entry until it is practised or another day begins.
 * The gain is that of one attempt more, the practice still to come being the same with and without
 * it: judged alone, a first meeting far from the date would seem worth nothing.
 *
 * @see Pavlik & Anderson 2008, J Exp Psychol Applied 14(2):101-117 (gain per second at the date)
 */
export function createAppraiser(student: Beliefs): Appraiser {
  const held = new Map<string, Kept>();
  /** Entries never met are all alike. */
  let unmet: Kept | null = null;
  return {
    worth(item, now, horizon, fresh) {
      const traces = student.traces(item);
      let kept = traces ? held.get(item) : unmet;
      const usable = kept && kept.traces === traces && (kept.day === now.day || (traces && !fresh));
      if (!kept || !usable) {
        kept = { day: now.day, traces, prospects: prospectsOf(student, item, now, horizon) };
        if (traces) held.set(item, kept);
        else unmet = kept;
      }
      return { ...mix(student, item, kept, now.at), stale: kept.day !== now.day };
    },
  };
}

function mix(student: Beliefs, item: string, kept: Kept, at: Moment): Omit<Worth, "stale"> {
  const { weights } = student.posterior;
  const known = student.knownBefore();
  let recallNow = 0;
  let gain = 0;
  kept.prospects.forEach((prospect, i) => {
    const weight = weights[i] ?? 0;
    const trace = kept.traces?.[i];
    const recall = trace ? easedRecall(trace.recall(at), student.ease(i, item)) : known;
    recallNow += weight * recall;
    gain += weight * (recall * prospect.right + (1 - recall) * prospect.missed - prospect.without);
  });
  return { recallNow, gain };
}

function prospectsOf(student: Beliefs, item: string, now: When, horizon: Horizon): Prospect[] {
  const traces = student.traces(item);
  const known = student.knownBefore();
  return student.models.map((model, i) => {
    const course = { model, ease: student.ease(i, item), known, horizon };
    const trace = traces?.[i];
    const attempt = (knew: number): Trace => {
      const practice: Practice = { at: now.at, day: now.day, knew, manner: "plain" };
      return trace ? trace.after(practice) : model.first(practice);
    };
    return {
      without: valueOnDate(trace, course),
      right: valueOnDate(attempt(1), course),
      missed: valueOnDate(attempt(0), course),
    };
  });
}

interface Course {
  model: MemoryModel;
  ease: number;
  known: number;
  horizon: Horizon;
}

/** Value on the date if the practice ahead happens, each attempt going as it probably will. */
function valueOnDate(from: Trace | undefined, { model, ease, known, horizon }: Course): number {
  let trace = from;
  for (const step of horizon.ahead) {
    const knew = trace ? easedRecall(trace.recall(step.at), ease) : known;
    const practice: Practice = { at: step.at, day: step.day, knew, manner: "plain" };
    trace = trace ? trace.after(practice) : model.first(practice);
  }
  if (!trace) return known;
  const onDate = easedRecall(trace.recall(horizon.target), ease);
  const after = easedRecall(trace.recall(horizon.later), ease);
  return (1 - LATER_SHARE) * onDate + LATER_SHARE * after;
}

/**
 * Days of the practice ahead: evenly spread between today and the date, on whole days.
 *
 * @param daysLeft days from today to the date
 * @param count how many attempts an entry may hope for; fractions are rounded
 */
export function spreadAhead(now: When, daysLeft: number, count: number): When[] {
  const n = Math.max(0, Math.min(MOST_AHEAD, Math.round(count), daysLeft - 1));
  const ahead: When[] = [];
  for (let k = 1; k <= n; k += 1) {
    const days = Math.max(k, Math.round((k * daysLeft) / (n + 1)));
    ahead.push({ at: { days: now.at.days + days, study: now.at.study }, day: now.day + days });
  }
  return ahead;
}
