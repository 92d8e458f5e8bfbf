import type { Moment } from "./evidence";
import type { LogFold } from "./fold-log";
import { weightedQuantile } from "./posterior";
import type { Beliefs } from "./student";

/** The four steps in which readiness is shown. */
export const STEPS = ["not met", "shaky", "nearly", "ready"] as const;
export type Step = (typeof STEPS)[number];

/**
 * Expected recall on the date from which a step is reached. Our own judgement, stated wherever the
 * steps are shown: `ready` fails less than one time in seven, `shaky` fails one time in three or more.
 */
export const THRESHOLDS = { nearly: 0.65, ready: 0.85 } as const;
/** Separate days with a right answer that the drill aims at (Rawson & Dunlosky 2011). */
export const DAYS_WANTED = 3;

export interface EntryReadiness {
  slug: string;
  /** Expected recall on the date, 0..1; 0 when never met, since nothing was shown yet. */
  recall: number;
  /** Range of it over what is believed of the student, 10 % to 90 %. */
  low: number;
  high: number;
  step: Step;
  /** Separate days with a right answer, without help. */
  days: number;
  answers: number;
  /** All right answers were chosen among alternatives; none was produced. */
  chosenOnly: boolean;
  /** Milliseconds since 1970 UTC; null when never met. */
  lastAt: number | null;
}

export interface SetReadiness {
  entries: EntryReadiness[];
  /** Expected share of the set that will be recalled on the date, 0..1; 0 for an empty set. */
  recall: number;
  /** Range of that share, 10 % to 90 %. */
  low: number;
  high: number;
  /** How many entries stand on each step. */
  steps: Record<Step, number>;
}

/**
 * The step of an expected recall. An entry never right so far stays shaky, however good the rest
 * of the student's log makes its chances look.
 *
 * @param recall 0..1; null for an entry never met
 * @param days separate days with a right answer
 */
export function stepOf(recall: number | null, days: number): Step {
  if (recall === null) return "not met";
  if (days === 0) return "shaky";
  if (recall >= THRESHOLDS.ready) return "ready";
  return recall >= THRESHOLDS.nearly ? "nearly" : "shaky";
}

/**
 * Readiness of a set on a date.
 * A right choice among n alternatives counts only as far as it was not luck (1/n).
 *
 * @param fold the student's whole log: other entries too tell how this student forgets
 * @param slugs entries of the set, in the order wanted back; repeats count once
 * @param on milliseconds since 1970 UTC; a moment before the last answer counts as that one
 */
export function readiness(fold: LogFold, slugs: readonly string[], on: number): SetReadiness {
  const at = fold.moment(on);
  const entries = [...new Set(slugs)].map((slug) => entryReadiness(fold, slug, at));
  const steps: Record<Step, number> = { "not met": 0, shaky: 0, nearly: 0, ready: 0 };
  for (const entry of entries) steps[entry.step] += 1;
  return {
    entries,
    steps,
    ...shareRange(
      fold.student,
      entries.map((e) => e.slug),
      at,
    ),
  };
}

function entryReadiness(fold: LogFold, slug: string, at: Moment): EntryReadiness {
  const held = fold.entry(slug);
  const recalls = fold.student.recalls(slug, at);
  const recall = fold.student.recall(slug, at);
  const { weights } = fold.student.posterior;
  return {
    slug,
    recall: recall ?? 0,
    low: recalls ? weightedQuantile(recalls, weights, 0.1) : 0,
    high: recalls ? weightedQuantile(recalls, weights, 0.9) : 0,
    step: stepOf(recall, held?.rightDays.size ?? 0),
    days: held?.rightDays.size ?? 0,
    answers: held?.answers ?? 0,
    chosenOnly: held?.chosenOnly ?? false,
    lastAt: held?.last.at ?? null,
  };
}

/** z of 90 % of a normal distribution. */
const Z90 = 1.2816;

/**
 * Expected share recalled, with its range: what is not known of the student (the models' spread)
 * and what chance decides on the day (each entry recalled or not).
 */
export function shareRange(
  student: Beliefs,
  slugs: readonly string[],
  at: Moment,
): { recall: number; low: number; high: number } {
  const { weights } = student.posterior;
  const n = slugs.length;
  if (n === 0) return { recall: 0, low: 0, high: 0 };
  const means = weights.map(() => 0);
  let chance = 0;
  for (const slug of slugs) {
    const recalls = student.recalls(slug, at);
    const recall = student.recall(slug, at) ?? 0;
    chance += (recall * (1 - recall)) / (n * n);
    recalls?.forEach((r, i) => {
      means[i] = (means[i] ?? 0) + r / n;
    });
  }
  const recall = means.reduce((sum, mean, i) => sum + mean * (weights[i] ?? 0), 0);
  const spread = means.reduce((sum, mean, i) => sum + (weights[i] ?? 0) * (mean - recall) ** 2, 0);
  const reach = Z90 * Math.sqrt(chance + spread);
  return { recall, low: Math.max(0, recall - reach), high: Math.min(1, recall + reach) };
}
