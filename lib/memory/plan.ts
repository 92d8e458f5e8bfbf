import type { Answer, PromptKind } from "./answer";
import {
  type Candidate,
  type Choice,
  type Chooser,
  createChooser,
  type Situation,
  type Today,
} from "./choose";
import { choosePrompt, wasConfused } from "./choose-prompt";
import { DAY_MS, dayOf, momentOf, readDate } from "./day";
import type { LogFold } from "./fold-log";
import { THRESHOLDS } from "./readiness";

/** One entry of a set, as far as planning needs it. */
export interface PlanItem {
  slug: string;
  /** Entries easily confused with it. */
  alikes: readonly string[];
  /** Kinds of prompt that can be built for it. */
  asks: readonly PromptKind[];
}

export interface PlanOptions {
  /** The student's log; the call sheet takes further answers into it. */
  fold: LogFold;
  items: readonly PlanItem[];
  /** `YYYY-MM-DD` of the audition; null when the set has none. */
  date: string | null;
  /** Minutes of one day. */
  minutes: number;
}

/** A moment by the student's device. */
export interface Now {
  /** Milliseconds since 1970 UTC. */
  at: number;
  /** Minutes east of UTC. */
  offset: number;
}

/** `building` up to the day before; `last-evening` from then; `passed` after the date; `open` without one. */
export type Phase = "building" | "last-evening" | "passed" | "open";
export type Why = "new" | "missed today" | "confused" | "fading";

export interface SheetPrompt {
  slug: string;
  prompt: PromptKind;
  /** Expected seconds, reading the answer included. */
  seconds: number;
  /** Chance that it is recalled now, 0..1. */
  recallNow: number;
  why: Why;
}

/** Today's short plan for one set. */
export interface CallSheet {
  /** Best first. */
  prompts: SheetPrompt[];
  /** Expected seconds of all prompts; never more than what is left of today's minutes. */
  seconds: number;
  /** Seconds already given to this set today. */
  spent: number;
  /** Whole days to the date, 0 on the day itself; null without a date or after it. */
  daysLeft: number | null;
  phase: Phase;
  /** Entries of the set never met so far. */
  unmet: number;
}

/** Without a date, or after it, what is learnt is to last two weeks. */
const OPEN_DAYS = 14;
/** The last evening is short: what is within reach, then sleep (learning-guidance, rule 21). */
export const LAST_EVENING_SHARE = 0.5;
/** Not within reach on the last evening. */
const OUT_OF_REACH = 0.25;

export interface Planner {
  /** What to ask next, from this moment on. */
  sheet(now: Now): CallSheet;
  /** Takes the answer just given; then ask for the sheet again. */
  take(answer: Answer): void;
}

/**
 * Plans today's prompts for a set by gain in recall on the date per second.
 * An entry recalled today is not asked again today; a missed one comes back after three others;
 * new entries that are easily confused are not met on one day while days suffice.
 *
 * @throws RangeError when `date` is not a date or `minutes` is not above 0
 */
export function createPlanner(options: PlanOptions): Planner {
  const { fold, minutes } = options;
  const dateDay = options.date === null ? null : readDate(options.date);
  if (options.date !== null && dateDay === null) {
    throw new RangeError(
      `"${options.date}" is not a date; write year-month-day, as in 2027-03-05.`,
    );
  }
  if (!(minutes > 0))
    throw new RangeError(`${minutes} minutes a day leave no time to drill; choose 1 or more.`);
  const items = new Map(options.items.map((item) => [item.slug, item]));
  const candidates = candidatesOf(options.items);
  const chooser = createChooser(fold.student, candidates);
  return {
    take: (answer) => fold.take(answer),
    sheet(now) {
      const when = calendarOf(dateDay, now);
      const today = todayOf(fold, items, when.day);
      const spent = sum([...items.keys()].map((slug) => fold.secondsOn(when.day, slug)));
      const share = when.phase === "last-evening" ? LAST_EVENING_SHARE : 1;
      const budget = Math.max(0, minutes * 60 * share - spent);
      const moment = fold.moment(now.at);
      const kinds = kindsOf(fold, items, moment);
      for (const candidate of candidates) {
        const kind = kinds.get(candidate.id);
        if (kind) candidate.seconds = fold.pace.of(kind);
      }
      const situation: Situation = {
        now: moment,
        today,
        daysLeft: when.span,
        targetDays: when.targetDays,
        sessionsLeft: Math.max(0, when.span - 1),
        secondsADay: minutes * 60,
      };
      const prompts = fill({ chooser, situation, fold, kinds, budget, phase: when.phase });
      return {
        prompts,
        seconds: sum(prompts.map((p) => p.seconds)),
        spent,
        daysLeft: when.daysLeft,
        phase: when.phase,
        unmet: [...items.keys()].filter((slug) => !fold.entry(slug)).length,
      };
    },
  };
}

/** Today's call sheet in one step; see {@link createPlanner}. */
export function callSheet(options: PlanOptions & { now: Now }): CallSheet {
  return createPlanner(options).sheet(options.now);
}

interface Calendar {
  day: number;
  daysLeft: number | null;
  /** Days planned for: at least 1. */
  span: number;
  /** Moment at which recall is wanted, in days since 1970 UTC. */
  targetDays: number;
  phase: Phase;
}

/** Where today stands before the date. */
export function calendarOf(dateDay: number | null, now: Now): Calendar {
  const day = dayOf(now);
  const at = dateDay === null ? null : momentOf(dateDay, now.offset);
  if (dateDay === null || at === null || dateDay < day) {
    const targetDays = now.at / DAY_MS + OPEN_DAYS;
    return {
      day,
      daysLeft: null,
      span: OPEN_DAYS,
      targetDays,
      phase: dateDay === null ? "open" : "passed",
    };
  }
  const daysLeft = dateDay - day;
  const targetDays = Math.max(at, now.at) / DAY_MS;
  return {
    day,
    daysLeft,
    span: Math.max(1, daysLeft),
    targetDays,
    phase: daysLeft <= 1 ? "last-evening" : "building",
  };
}

export function candidatesOf(items: readonly PlanItem[]): Candidate[] {
  const inSet = new Set(items.map((item) => item.slug));
  const alikes = new Map([...inSet].map((slug) => [slug, new Set<string>()]));
  for (const item of items) {
    for (const other of item.alikes) {
      if (other === item.slug || !inSet.has(other)) continue;
      // One page may name the other without being named back.
      alikes.get(item.slug)?.add(other);
      alikes.get(other)?.add(item.slug);
    }
  }
  return [...alikes].map(([id, own]) => ({ id, alikes: own, seconds: { right: 8, missed: 14 } }));
}

function todayOf(fold: LogFold, items: ReadonlyMap<string, PlanItem>, day: number): Today {
  const met = new Set<string>();
  const right = new Set<string>();
  const missed = new Map<string, number>();
  for (const slug of items.keys()) {
    const entry = fold.entry(slug);
    if (!entry) continue;
    if (entry.firstDay === day) met.add(slug);
    if (entry.rightDays.has(day)) right.add(slug);
    else if (entry.missedOn?.day === day) missed.set(slug, fold.count() - entry.missedOn.position);
  }
  // What was asked last on another day need not wait.
  const recent = fold.recent().filter((slug) => isLastAsked(fold, slug, day));
  return { day, met, right, missed, recent };
}

function isLastAsked(fold: LogFold, slug: string, day: number): boolean {
  const last = fold.entry(slug)?.last;
  return last !== undefined && dayOf(last) === day;
}

function kindsOf(
  fold: LogFold,
  items: ReadonlyMap<string, PlanItem>,
  moment: Situation["now"],
): Map<string, PromptKind> {
  const kinds = new Map<string, PromptKind>();
  for (const item of items.values()) {
    const recall = fold.student.recall(item.slug, moment) ?? fold.student.knownBefore();
    const kind = choosePrompt(fold.entry(item.slug), item.asks, recall);
    if (kind) kinds.set(item.slug, kind);
  }
  return kinds;
}

interface Filling {
  chooser: Chooser;
  situation: Situation;
  fold: LogFold;
  kinds: ReadonlyMap<string, PromptKind>;
  budget: number;
  phase: Phase;
}

/** Takes the best prompts that fit the seconds left. */
function fill({ chooser, situation, fold, kinds, budget, phase }: Filling): SheetPrompt[] {
  const { today } = situation;
  const prompts: SheetPrompt[] = [];
  const met = new Set(today.met);
  let left = budget;
  for (const choice of inOrder(chooser.rank(situation), phase, { fold, today })) {
    const prompt = kinds.get(choice.id);
    if (!prompt || today.right.has(choice.id) || choice.seconds > left) continue;
    if (choice.isNew && chooser.meetsAlike(choice.id, { ...situation, today: { ...today, met } }))
      continue;
    if (choice.isNew) met.add(choice.id);
    left -= choice.seconds;
    prompts.push({
      slug: choice.id,
      prompt,
      seconds: choice.seconds,
      recallNow: choice.recallNow,
      why: whyOf(choice, fold, today),
    });
  }
  return prompts;
}

/** On the last evening: what is within reach; new entries only when all that was met is safe. */
function inOrder(
  ranked: readonly Choice[],
  phase: Phase,
  { fold, today }: { fold: LogFold; today: Today },
): Choice[] {
  const useful = ranked.filter((choice) => choice.gain > 0);
  if (phase !== "last-evening") return useful;
  const within = useful.filter(
    (choice) => !choice.isNew && (choice.recallNow >= OUT_OF_REACH || today.missed.has(choice.id)),
  );
  const sure = ranked.every(
    ({ id, isNew, recallNow }) =>
      isNew || (recallNow >= THRESHOLDS.ready && fold.entry(id)?.missedOn === null),
  );
  return sure && today.missed.size === 0
    ? [...within, ...useful.filter((choice) => choice.isNew)]
    : within;
}

function whyOf(choice: Choice, fold: LogFold, today: Today): Why {
  const entry = fold.entry(choice.id);
  if (!entry) return "new";
  if (wasConfused(entry)) return "confused";
  return today.missed.has(choice.id) ? "missed today" : "fading";
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
