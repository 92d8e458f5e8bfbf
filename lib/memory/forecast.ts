import { type Choice, type Chooser, createChooser, type Situation } from "./choose";
import { choosePrompt } from "./choose-prompt";
import { dateOfDay, readDate } from "./day";
import type { PromptSeconds } from "./pace";
import { calendarOf, candidatesOf, LAST_EVENING_SHARE, type Now, type PlanOptions } from "./plan";
import { shareRange, stepOf } from "./readiness";

/** Expected readiness of a set if the plan is kept up to and including one day, and nothing after it. */
export interface ForecastDay {
  /** The student's own day number and its date; the first row is now, before any practice. */
  day: number;
  date: string;
  /** Expected share of the set recalled on the audition date, 0..1. */
  recall: number;
  /** Range of that share, 10 % to 90 %. */
  low: number;
  high: number;
  /** Entries expected to stand on `ready`. */
  ready: number;
  /** Entries not met by then. */
  unmet: number;
}

/** A farther date is not forecast day by day; the rows end here. */
const LONGEST_DAYS = 90;

/**
 * Plays the plan forward, day by day, each prompt going as it probably will.
 * No chance is drawn: the same log and moment give the same rows.
 *
 * @param options as for the call sheet, with a date not passed
 * @returns rows from today to the evening before the date; one row when nothing can be planned
 * @throws RangeError when the date cannot be read
 */
export function forecast(options: PlanOptions & { date: string; now: Now }): ForecastDay[] {
  const dateDay = readDate(options.date);
  if (dateDay === null) {
    throw new RangeError(
      `"${options.date}" is not a date; write year-month-day, as in 2027-03-05.`,
    );
  }
  const { fold, items, now, minutes } = options;
  const calendar = calendarOf(dateDay, now);
  const slugs = [...new Set(items.map((item) => item.slug))];
  const student = fold.student.fork();
  const from = fold.moment(now.at);
  const target = { days: Math.max(from.days, calendar.targetDays), study: from.study };
  const rightOnce = new Set(slugs.filter((slug) => (fold.entry(slug)?.rightDays.size ?? 0) > 0));
  const step = (slug: string) => stepOf(student.recall(slug, target), rightOnce.has(slug) ? 1 : 0);
  const row = (day: number): ForecastDay => ({
    day,
    date: dateOfDay(day),
    ...shareRange(student, slugs, target),
    ready: slugs.filter((slug) => step(slug) === "ready").length,
    unmet: slugs.filter((slug) => student.traces(slug) === undefined).length,
  });
  const rows = [row(calendar.day)];
  if (calendar.daysLeft === null) return rows;

  const candidates = candidatesOf(items);
  for (const candidate of candidates) candidate.seconds = secondsOf(candidate.id, options);
  const chooser = createChooser(student, candidates);
  const evenings = Math.min(LONGEST_DAYS, calendar.daysLeft);
  for (let k = 0; k < evenings; k += 1) {
    const day = calendar.day + k;
    const daysLeft = calendar.daysLeft - k;
    const situation: Situation = {
      now: { days: from.days + k, study: from.study },
      today: { day, met: new Set(), right: new Set(), missed: new Map(), recent: [] },
      daysLeft,
      targetDays: target.days,
      sessionsLeft: daysLeft - 1,
      secondsADay: minutes * 60,
    };
    const spent = slugs.reduce((sum, slug) => sum + fold.secondsOn(day, slug), 0);
    const budget = minutes * 60 * (daysLeft <= 1 ? LAST_EVENING_SHARE : 1) - spent;
    const doneToday = (slug: string) => fold.entry(slug)?.rightDays.has(day) ?? false;
    for (const choice of keepEvening({ chooser, situation, budget, doneToday })) {
      const { now: at } = situation;
      student.imagine(choice.id, { at, day, knew: choice.recallNow, manner: "plain" });
      rightOnce.add(choice.id);
    }
    rows.push(row(day));
  }
  return rows;
}

interface Evening {
  chooser: Chooser;
  situation: Situation;
  budget: number;
  doneToday: (slug: string) => boolean;
}

/** What one evening's plan would take up. */
function keepEvening({ chooser, situation, budget, doneToday }: Evening): Choice[] {
  const taken: Choice[] = [];
  const met = new Set<string>();
  const today = { ...situation.today, met };
  let left = budget;
  for (const choice of chooser.rank(situation)) {
    if (choice.seconds > left || choice.gain <= 0 || doneToday(choice.id)) continue;
    if (choice.isNew && situation.daysLeft <= 1) continue;
    if (choice.isNew && chooser.meetsAlike(choice.id, { ...situation, today })) continue;
    if (choice.isNew) met.add(choice.id);
    left -= choice.seconds;
    taken.push(choice);
  }
  return taken;
}

/** Seconds of the kind of prompt asked next, or of choosing a meaning. */
function secondsOf(slug: string, { fold, items }: PlanOptions): PromptSeconds {
  const asks = items.find((item) => item.slug === slug)?.asks ?? [];
  return fold.pace.of(choosePrompt(fold.entry(slug), asks, 0.5) ?? "word>meaning");
}
