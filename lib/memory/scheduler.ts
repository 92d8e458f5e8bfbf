import { type Candidate, createChooser, type Today } from "./choose";
import { createSessionClock, type Manner, type Moment, type Trial } from "./evidence";
import { createRandom } from "./random";
import { createStudent } from "./student";

/** An entry in one direction, as the harness names it. */
export interface SchedulerItem {
  id: string;
  kind: string;
  /** Items of one group are easily confused; null or undefined for none. */
  group?: string | null;
}

/** One attempt as the harness reports it. */
export interface SchedulerRow {
  id: string;
  /** Day number, 0 the first. */
  day: number;
  /** Seconds from the beginning of that day's session. */
  atSecond: number;
  grade: "correct" | "partial" | "wrong";
  latencyMs: number;
  /** Seconds the attempt took, feedback included. */
  seconds: number;
}

export interface SchedulerOptions {
  items: readonly SchedulerItem[];
  startDay: number;
  /** Day number of the audition, at 09:00. */
  deadline: number;
  /** Seconds of one day's session. */
  budgetSeconds: number;
  seed: number;
}

export interface Scheduler {
  plan(
    history: readonly SchedulerRow[],
    today: number,
    deadline: number,
    secondsLeft: number,
  ): string[];
  record(outcome: SchedulerRow): boolean;
}

/** Sessions are at 17:00, the audition at 09:00 (scheduler-interface of the reference). */
const SESSION_HOUR = 17 / 24;
const AUDITION_HOUR = 9 / 24;
/** Prompts handed out at once; a miss or an empty list asks again. */
const BATCH = 6;
/** Below this gain an attempt is not worth the student's time. */
const WORTHLESS = 1e-5;
/** Before any answer: seconds of a success and of a miss. */
const SECONDS = { right: 8, missed: 14 } as const;

/**
 * Chooses prompts by expected gain in recall at the date per second, under a mixture of memory
 * models with a belief about this student.
 *
 * The same calls give the same plans. Called in other steps over the same history, plans may differ
 * a little: on a new day only the most promising entries are judged anew at each call.
 *
 * @see reference memory/scheduler-interface.md
 */
export function createScheduler(options: SchedulerOptions): Scheduler {
  const random = createRandom(options.seed);
  // Equal gains (all entries never met) are taken in an order of this student's own.
  const jitter = new Map(options.items.map((item) => [item.id, random()]));
  let state = createState(options, jitter);
  return {
    plan(history, today, deadline, secondsLeft) {
      if (today >= deadline || secondsLeft <= 0) return [];
      if (!state.follows(history)) state = createState(options, jitter);
      state.take(history);
      return state.next(today, deadline);
    },
    record: (outcome) => outcome.grade !== "correct",
  };
}

function createState(options: SchedulerOptions, jitter: ReadonlyMap<string, number>) {
  const student = createStudent();
  const candidates = candidatesOf(options.items);
  const chooser = createChooser(student, candidates);
  const clock = createSessionClock();
  const pace = createPace(options.items);
  const rows: SchedulerRow[] = [];
  const days = new Set<number>();
  let day: DayLog = emptyDay(options.startDay);
  let now: Moment = { days: options.startDay + SESSION_HOUR, study: 0 };

  const takeRow = (row: SchedulerRow): void => {
    rows.push(row);
    days.add(row.day);
    if (row.day !== day.day) day = emptyDay(row.day);
    const when = row.day + SESSION_HOUR + row.atSecond / 86_400;
    now = { days: when, study: clock(when) };
    if (student.traces(row.id) === undefined) day.met.add(row.id);
    student.observe(trialOf(row, now));
    pace.add(row);
    for (const [id, since] of day.missed) day.missed.set(id, since + 1);
    day.missed.delete(row.id);
    if (row.grade === "correct") day.right.add(row.id);
    else day.missed.set(row.id, 0);
    day.recent = [...day.recent.slice(-7), row.id];
  };

  return {
    follows: (history: readonly SchedulerRow[]) =>
      history.length >= rows.length &&
      (rows.length === 0 || sameRow(history[rows.length - 1], rows.at(-1))),
    take(history: readonly SchedulerRow[]): void {
      for (const row of history.slice(rows.length)) takeRow(row);
    },
    next(today: number, deadline: number): string[] {
      if (today !== day.day || rows.length === 0) {
        day = emptyDay(today);
        now = { days: Math.max(now.days, today + SESSION_HOUR), study: now.study };
      }
      for (const candidate of candidates) candidate.seconds = pace.of(candidate.id);
      const elapsed = Math.max(1, today - options.startDay);
      const attended = [...days].filter((d) => d < today).length;
      // Two days of full attendance are supposed beforehand.
      const attendance = (attended + 2) / (elapsed + 2);
      const daysLeft = deadline - today;
      const ranked = chooser
        .rank({
          now,
          today: day,
          daysLeft,
          targetDays: deadline + AUDITION_HOUR,
          sessionsLeft: (daysLeft - 1) * Math.min(1, attendance),
          secondsADay: options.budgetSeconds,
        })
        .filter((choice) => choice.gain > WORTHLESS);
      ranked.sort((a, b) => b.score * nudge(jitter, b.id) - a.score * nudge(jitter, a.id));
      return ranked.slice(0, BATCH).map((choice) => choice.id);
    },
  };
}

interface DayLog extends Today {
  met: Set<string>;
  right: Set<string>;
  missed: Map<string, number>;
  recent: string[];
}

function emptyDay(day: number): DayLog {
  return { day, met: new Set(), right: new Set(), missed: new Map(), recent: [] };
}

/** At most a thousandth: breaks ties, changes no judgement. */
function nudge(jitter: ReadonlyMap<string, number>, id: string): number {
  return 1 + (jitter.get(id) ?? 0) / 1000;
}

function sameRow(a: SchedulerRow | undefined, b: SchedulerRow | undefined): boolean {
  return (
    a !== undefined &&
    b !== undefined &&
    a.id === b.id &&
    a.day === b.day &&
    a.atSecond === b.atSecond
  );
}

function trialOf(row: SchedulerRow, at: Moment): Trial {
  const got = row.grade === "correct" ? 1 : row.grade === "partial" ? 0.5 : 0;
  const manner: Manner = got === 0.5 ? "partial" : "plain";
  return { item: row.id, at, day: row.day, got, guess: 0, manner };
}

function candidatesOf(items: readonly SchedulerItem[]): Candidate[] {
  const groups = new Map<string, Set<string>>();
  for (const item of items) {
    if (item.group === null || item.group === undefined || item.group === "") continue;
    const group = groups.get(item.group) ?? new Set();
    group.add(item.id);
    groups.set(item.group, group);
  }
  return items.map((item) => {
    const alikes = new Set(groups.get(item.group ?? "") ?? []);
    alikes.delete(item.id);
    return { id: item.id, alikes, seconds: { ...SECONDS } };
  });
}

/** Seconds of an attempt by kind of item, from this student's own attempts. */
function createPace(items: readonly SchedulerItem[]) {
  const kinds = new Map(items.map((item) => [item.id, item.kind]));
  const sums = new Map<string, { right: [number, number]; missed: [number, number] }>();
  const of = (id: string) => {
    const sum = sums.get(kinds.get(id) ?? "");
    // Three attempts at the usual pace are supposed beforehand.
    const mean = (seen: [number, number] | undefined, usual: number) =>
      (3 * usual + (seen?.[0] ?? 0)) / (3 + (seen?.[1] ?? 0));
    return { right: mean(sum?.right, SECONDS.right), missed: mean(sum?.missed, SECONDS.missed) };
  };
  return {
    of,
    add(row: SchedulerRow): void {
      const kind = kinds.get(row.id) ?? "";
      const sum = sums.get(kind) ?? { right: [0, 0], missed: [0, 0] };
      const seen = row.grade === "correct" ? sum.right : sum.missed;
      seen[0] += row.seconds;
      seen[1] += 1;
      sums.set(kind, sum);
    },
  };
}
