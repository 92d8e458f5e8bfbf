/**
 * Simulated students for judging schedulers. Their memories follow four models, with numbers of
 * their own for each student and each entry, so that no planner can know them exactly.
 *
 * Sources: ../shared/reference/memory/memory-models.json (activation, half-life, multiscale
 * context) and fsrs6.json; spreads between students and entries are our own choice.
 */
import { createFsrs } from "@/lib/memory/fsrs";
import { ACTIVATION_2005, activationAt, recallOf } from "@/lib/memory/models/activation-model";
import { createRandom, type Random } from "@/lib/memory/random";
import type { Scheduler, SchedulerItem, SchedulerRow } from "@/lib/memory/scheduler";

export interface SimulatedStudent {
  /** Chance of recall at `days` (with fractions) after `study` seconds in sessions. */
  recall(id: string, days: number, study: number): number;
  practise(id: string, days: number, study: number, recalled: boolean): void;
}
export type StudentKind = "activation" | "hold" | "half-life" | "multiscale";

/** Normal deviate (Box and Muller). */
export function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

export function createSimulated(
  kind: StudentKind,
  items: readonly SchedulerItem[],
  random: Random,
): SimulatedStudent {
  const known = new Set(items.filter(() => random() < 0.15).map((item) => item.id));
  if (kind === "activation") return activationStudent(items, known, random);
  if (kind === "hold") return holdStudent(items, known, random);
  if (kind === "half-life") return halfLifeStudent(items, known, random);
  return multiscaleStudent(items, known, random);
}

function activationStudent(
  items: readonly SchedulerItem[],
  known: Set<string>,
  random: Random,
): SimulatedStudent {
  const p = { ...ACTIVATION_2005, a: ACTIVATION_2005.a * Math.exp(0.2 * normal(random)) };
  const mean = 0.25 + 0.2 * normal(random);
  const beta = new Map(items.map((i) => [i.id, mean + 0.15 * normal(random)]));
  const logs = new Map<string, { times: number[]; decays: number[] }>();
  const felt = (days: number, study: number) => p.h * days * 86_400 + (1 - p.h) * study;
  for (const id of known) {
    const times = [-9, -6, -4, -2].map((d) => felt(d, 0));
    logs.set(id, { times, decays: times.map(() => p.a) });
  }
  return {
    recall(id, days, study) {
      const log = logs.get(id);
      if (!log) return 0;
      return recallOf(
        activationAt(log.times, log.decays, felt(days, study)) + (beta.get(id) ?? 0),
        p,
      );
    },
    practise(id, days, study) {
      const log = logs.get(id) ?? { times: [], decays: [] };
      const now = felt(days, study);
      const before = log.times.length
        ? Math.exp(activationAt(log.times, log.decays, now) + (beta.get(id) ?? 0))
        : 0;
      log.times.push(now);
      log.decays.push(p.c * before + p.a);
      logs.set(id, log);
    },
  };
}

function holdStudent(
  items: readonly SchedulerItem[],
  known: Set<string>,
  random: Random,
): SimulatedStudent {
  const fsrs = createFsrs();
  const rate = 5 * Math.exp(0.8 * normal(random));
  const speed = new Map(items.map((i) => [i.id, rate * Math.exp(0.5 * normal(random))]));
  const holds = new Map<string, { holdsDays: number; hardness: number; days: number }>();
  for (const id of known) holds.set(id, { holdsDays: 60, hardness: 4, days: -5 });
  return {
    recall(id, days) {
      const hold = holds.get(id);
      return hold ? fsrs.recall((days - hold.days) * (speed.get(id) ?? rate), hold.holdsDays) : 0;
    },
    practise(id, days, _study, recalled) {
      const hold = holds.get(id) ?? null;
      const elapsed = hold
        ? (Math.floor(days) - Math.floor(hold.days)) * (speed.get(id) ?? rate)
        : 0;
      holds.set(id, { ...fsrs.next(hold, elapsed, recalled ? "right" : "missed"), days });
    },
  };
}

/** Half-life regression: the half-life depends on counts only (Settles & Meeder 2016). */
function halfLifeStudent(
  items: readonly SchedulerItem[],
  known: Set<string>,
  random: Random,
): SimulatedStudent {
  const base = -1.2 + 0.7 * normal(random);
  const gainRight = 0.9 + 0.15 * normal(random);
  const own = new Map(items.map((i) => [i.id, base + 0.5 * normal(random)]));
  const logs = new Map<string, { right: number; missed: number; days: number }>();
  for (const id of known) logs.set(id, { right: 6, missed: 0, days: -5 });
  return {
    recall(id, days) {
      const log = logs.get(id);
      if (!log) return 0;
      const half = 2 ** ((own.get(id) ?? base) + gainRight * log.right + 0.25 * log.missed);
      return 2 ** (-(days - log.days) / half);
    },
    practise(id, days, _study, recalled) {
      const log = logs.get(id) ?? { right: 0, missed: 0, days };
      logs.set(id, {
        right: log.right + (recalled ? 1 : 0),
        missed: log.missed + (recalled ? 0 : 1),
        days,
      });
    },
  };
}

/** Cascade of leaky integrators (Mozer et al. 2009; form from memory, numbers our own). */
function multiscaleStudent(
  items: readonly SchedulerItem[],
  known: Set<string>,
  random: Random,
): SimulatedStudent {
  const scale = 2 * Math.exp(0.5 * normal(random));
  const taus = [0.02, 0.1, 0.5, 2.5, 12, 60].map((tau) => tau * scale);
  const shares = [0.3, 0.25, 0.18, 0.13, 0.09, 0.05];
  const step = new Map(
    items.map((i) => [i.id, Math.min(0.9, 0.3 * Math.exp(0.3 * normal(random)))]),
  );
  const logs = new Map<string, { levels: number[]; days: number }>();
  for (const id of known) logs.set(id, { levels: taus.map(() => 0.95), days: -1 });
  const levelsAt = (id: string, days: number): number[] => {
    const log = logs.get(id);
    return taus.map((tau, i) =>
      log ? (log.levels[i] ?? 0) * Math.exp(-(days - log.days) / tau) : 0,
    );
  };
  const strengths = (levels: readonly number[]): number[] => {
    let sum = 0;
    let weight = 0;
    return levels.map((level, i) => {
      sum += (shares[i] ?? 0) * level;
      weight += shares[i] ?? 0;
      return sum / weight;
    });
  };
  return {
    recall: (id, days) => Math.min(1, 2.4 * (strengths(levelsAt(id, days)).at(-1) ?? 0)),
    practise(id, days, _study, recalled) {
      const levels = levelsAt(id, days);
      const held = strengths(levels);
      const size = (step.get(id) ?? 0.3) * (recalled ? 2.5 : 1);
      const next = levels.map((level, i) =>
        Math.min(1, level + Math.min(1, size) * (1 - (held[i] ?? 0))),
      );
      logs.set(id, { levels: next, days });
    },
  };
}

export interface Course {
  items: readonly SchedulerItem[];
  deadline: number;
  budgetSeconds: number;
  seed: number;
  kind: StudentKind;
  /** Chance that a day's session happens. */
  attendance: number;
}

export interface Result {
  onDate: number;
  weekLater: number;
  /** Slowest call of plan(), milliseconds, and the mean. */
  slowest: number;
  mean: number;
}

/** Takes one student through to the date as scheduler-interface.md says. */
export function runCourse(course: Course, make: (course: Course) => Scheduler): Result {
  const random = createRandom(`student ${course.kind} ${course.seed}`);
  const student = createSimulated(course.kind, course.items, random);
  const scheduler = make(course);
  const history: SchedulerRow[] = [];
  const calls: number[] = [];
  let study = 0;
  for (let day = 0; day < course.deadline; day += 1) {
    if (random() > course.attendance) continue;
    let second = 0;
    let queue: string[] = [];
    while (second < course.budgetSeconds) {
      if (queue.length === 0) {
        const began = performance.now();
        queue = [...scheduler.plan(history, day, course.deadline, course.budgetSeconds - second)];
        calls.push(performance.now() - began);
      }
      const id = queue.shift();
      if (id === undefined) break;
      const days = day + 17 / 24 + second / 86_400;
      const recalled = random() < student.recall(id, days, study);
      const seconds = (recalled ? 7 : 13) * (0.8 + 0.4 * random());
      student.practise(id, days, study, recalled);
      const row: SchedulerRow = {
        id,
        day,
        atSecond: second,
        grade: recalled ? "correct" : "wrong",
        latencyMs: seconds * 600,
        seconds,
      };
      history.push(row);
      second += seconds;
      study += seconds;
      if (scheduler.record(row)) queue = [];
    }
  }
  const at = (days: number) =>
    course.items.reduce((sum, item) => sum + student.recall(item.id, days, study), 0) /
    course.items.length;
  return {
    onDate: at(course.deadline + 9 / 24),
    weekLater: at(course.deadline + 7 + 9 / 24),
    slowest: Math.max(0, ...calls),
    mean: calls.reduce((sum, ms) => sum + ms, 0) / Math.max(1, calls.length),
  };
}

/** Plain rotation: the list from the top, again and again. */
export function rotation(course: Course): Scheduler {
  let place = 0;
  return {
    plan: () => {
      const item = course.items[place % course.items.length];
      place += 1;
      return item ? [item.id] : [];
    },
    record: () => false,
  };
}

/** Boxes: a right answer moves up, a miss back to the first; box k every 2^(k-1) days (Leitner 1972, from memory). */
export function boxes(course: Course): Scheduler {
  const box = new Map<string, { level: number; due: number }>();
  let last = "";
  return {
    plan: (_history, today) => {
      const due = course.items
        .filter((i) => (box.get(i.id)?.due ?? 0) <= today && i.id !== last)
        .sort((a, b) => (box.get(b.id)?.level ?? -1) - (box.get(a.id)?.level ?? -1));
      // Nothing due: the lowest box is taken ahead of time rather than wasting the evening.
      const spare = [...course.items]
        .filter((i) => i.id !== last)
        .sort((a, b) => (box.get(a.id)?.due ?? 0) - (box.get(b.id)?.due ?? 0));
      const next = due[0] ?? spare[0];
      return next ? [next.id] : [];
    },
    record: (row) => {
      last = row.id;
      const level = row.grade === "correct" ? (box.get(row.id)?.level ?? 0) + 1 : 1;
      box.set(row.id, { level, due: row.day + (row.grade === "correct" ? 2 ** (level - 1) : 0) });
      return false;
    },
  };
}

export function makeItems(count: number): SchedulerItem[] {
  const kinds = ["term>meaning", "meaning>term", "symbol>name", "hear>marking"] as const;
  return Array.from({ length: count }, (_, i) => ({
    id: `item-${i}`,
    kind: kinds[i % 4] ?? "term>meaning",
    group: i % 3 === 0 ? null : `group-${Math.floor(i / 4)}`,
  }));
}
