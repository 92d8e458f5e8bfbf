import { DAYS_WANTED, STEPS, type Step, THRESHOLDS } from "@/lib/memory/readiness";

/** "19 ready, 7 nearly, 5 not met": steps with nobody on them are left out, the best first. */
export function stepWords(steps: Readonly<Record<Step, number>>): string {
  return [...STEPS]
    .reverse()
    .filter((step) => steps[step] > 0)
    .map((step) => `${steps[step]} ${step}`)
    .join(", ");
}

/** What each step means, in the numbers it is reckoned by. */
export const STEP_MEANINGS: readonly { step: Step; words: string }[] = [
  {
    step: "ready",
    words: `on the date known ${hundredths(THRESHOLDS.ready)} times in 100 or more`,
  },
  {
    step: "nearly",
    words: `${hundredths(THRESHOLDS.nearly)} to ${hundredths(THRESHOLDS.ready) - 1} times in 100`,
  },
  { step: "shaky", words: "less often than that" },
  { step: "not met", words: "not asked yet" },
];

export const DAYS_RULE = `Aim at a right answer on ${DAYS_WANTED} separate days. A right choice among four weighs less than a word you wrote: it may be luck.`;

function hundredths(share: number): number {
  return Math.round(share * 100);
}
