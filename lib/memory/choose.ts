import type { Moment } from "./evidence";
import { createAppraiser, type Horizon, spreadAhead, type Worth } from "./gain";
import type { Beliefs } from "./student";

/** One entry that may be asked. */
export interface Candidate {
  id: string;
  /** Ids easily confused with it. */
  alikes: ReadonlySet<string>;
  /** Expected seconds of an attempt that succeeds and of one that misses, feedback included. */
  seconds: { right: number; missed: number };
}

/** What today has brought so far. */
export interface Today {
  day: number;
  /** Entries first met today. */
  met: ReadonlySet<string>;
  /** Entries recalled today. */
  right: ReadonlySet<string>;
  /** Entries missed today and not yet recalled, with the number of prompts since. */
  missed: ReadonlyMap<string, number>;
  /** The last few entries asked, latest last. */
  recent: readonly string[];
}

export interface Situation {
  now: Moment;
  today: Today;
  /** Days from today to the date; 1 on the last evening. */
  daysLeft: number;
  /** Moment of the audition in days. */
  targetDays: number;
  /** Sessions still to be expected after today, missed days allowed for. */
  sessionsLeft: number;
  /** Seconds of one day's session. */
  secondsADay: number;
}

export interface Choice {
  id: string;
  /** Expected seconds. */
  seconds: number;
  recallNow: number;
  gain: number;
  isNew: boolean;
  /** Gain per second after the rules; the order of choices. */
  score: number;
  /** Reckoned on an earlier day. */
  stale: boolean;
}

/** Prompts between a miss and its repeat: long enough that it must be recalled, not echoed. */
export const MISS_LAG = 3;
/** A second success on one day teaches little and counts for no new day. */
const SAME_DAY = 0.5;
/** On the last evening an entry never met waits until what is within reach is safe. */
const LAST_EVENING_NEW = 0.25;
const WEEK = 7;
/** What was missed is wanted once right in the same session (learning-guidance, rules 5 and 10). */
const MISSED_TODAY = 1.2;
/** Entries judged anew for another day in one call, best first, so that a plan is quick on a phone. */
const REFRESH = 6;

export interface Chooser {
  /** Best first; entries that must wait (just asked, or alike to one first met today) are left out. */
  rank(situation: Situation): Choice[];
  /** Whether an entry never met must wait because one alike was first met today. */
  meetsAlike(id: string, situation: Situation): boolean;
}

/** Ranks what could be asked next by gain in recall on the date per second. */
export function createChooser(student: Beliefs, candidates: readonly Candidate[]): Chooser {
  const appraiser = createAppraiser(student);
  const byId = new Map(candidates.map((c) => [c.id, c]));
  return {
    rank(situation: Situation): Choice[] {
      const horizon = horizonOf(situation, candidates);
      const now = { at: situation.now, day: situation.today.day };
      const judge = (candidate: Candidate, fresh: boolean): Choice =>
        choiceOf(candidate, appraiser.worth(candidate.id, now, horizon, fresh), situation, student);
      const ready = candidates.filter((c) => !mustWait(c, situation, student, candidates));
      const choices = ready.map((c) => judge(c, false)).sort((a, b) => b.score - a.score);
      let left = REFRESH;
      for (const [i, choice] of choices.entries()) {
        if (left === 0) break;
        const candidate = choice.stale ? byId.get(choice.id) : undefined;
        if (!candidate) continue;
        choices[i] = judge(candidate, true);
        left -= 1;
      }
      return choices.sort((a, b) => b.score - a.score);
    },
    meetsAlike(id: string, situation: Situation): boolean {
      const candidate = byId.get(id);
      return candidate !== undefined && meetsAlikeToday(candidate, situation, student);
    },
  };
}

function horizonOf(situation: Situation, candidates: readonly Candidate[]): Horizon {
  const { now, targetDays, today, daysLeft } = situation;
  const perAttempt = candidates.reduce(
    (sum, c) => sum + (c.seconds.right + c.seconds.missed) / 2,
    0,
  );
  const ahead = (situation.sessionsLeft * situation.secondsADay) / Math.max(1, perAttempt);
  return {
    target: { days: targetDays, study: now.study },
    later: { days: targetDays + WEEK, study: now.study },
    ahead: spreadAhead({ at: now, day: today.day }, daysLeft, ahead),
  };
}

function choiceOf(
  candidate: Candidate,
  worth: Worth,
  situation: Situation,
  student: Beliefs,
): Choice {
  const { today, daysLeft } = situation;
  const { right, missed } = candidate.seconds;
  const seconds = worth.recallNow * right + (1 - worth.recallNow) * missed;
  const isNew = student.traces(candidate.id) === undefined;
  let score = worth.gain / seconds;
  if (today.missed.has(candidate.id)) score *= MISSED_TODAY;
  if (score > 0 && today.right.has(candidate.id)) score *= SAME_DAY;
  if (score > 0 && isNew && daysLeft <= 1) score *= LAST_EVENING_NEW;
  return {
    id: candidate.id,
    seconds,
    recallNow: worth.recallNow,
    gain: worth.gain,
    isNew,
    score,
    stale: worth.stale,
  };
}

function mustWait(
  candidate: Candidate,
  situation: Situation,
  student: Beliefs,
  all: readonly Candidate[],
): boolean {
  const { today } = situation;
  const since = today.missed.get(candidate.id);
  if (since !== undefined) return since < MISS_LAG && all.length > MISS_LAG;
  if (today.recent.slice(-MISS_LAG).includes(candidate.id) && all.length > MISS_LAG) return true;
  return (
    student.traces(candidate.id) === undefined && meetsAlikeToday(candidate, situation, student)
  );
}

/**
 * Near-synonyms are first met on different days (Tinkham 1997), as long as the days suffice.
 */
function meetsAlikeToday(candidate: Candidate, situation: Situation, student: Beliefs): boolean {
  let metToday = 0;
  let unmet = 1;
  for (const alike of candidate.alikes) {
    if (situation.today.met.has(alike)) metToday += 1;
    else if (student.traces(alike) === undefined) unmet += 1;
  }
  // Not on the last evening, and each first meeting should leave a day for a second.
  const days = Math.max(1, Math.min(situation.sessionsLeft + 1, situation.daysLeft) - 1);
  return metToday >= Math.ceil((unmet + metToday) / days);
}
