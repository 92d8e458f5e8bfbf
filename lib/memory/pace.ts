import type { Answer, PromptKind } from "./answer";
import { gotOf } from "./evidence";

/** Seconds of one prompt that is answered right and of one that is missed, reading the answer included. */
export interface PromptSeconds {
  right: number;
  missed: number;
}

/** Supposed before a student's own times are known; our own estimates, replaced as answers come. */
const USUAL: Readonly<Record<PromptKind, PromptSeconds>> = {
  "word>meaning": { right: 8, missed: 14 },
  "meaning>word": { right: 13, missed: 20 },
  "short>full": { right: 9, missed: 15 },
  "sign>name": { right: 8, missed: 14 },
  "name>sign": { right: 8, missed: 14 },
  "heard>marking": { right: 12, missed: 18 },
  alike: { right: 9, missed: 15 },
  "passage>asks": { right: 20, missed: 30 },
};
/** Seconds for looking at the result: short when right, long enough to read when missed. */
const LOOKING: PromptSeconds = { right: 2, missed: 7 };
/** A phone put down is not time spent on a prompt. */
const LONGEST = 60;
/** The usual time counts as so many answers. */
const USUAL_COUNTS = 3;

export interface Pace {
  of(prompt: PromptKind): PromptSeconds;
  /** @returns the seconds this answer is taken to have cost */
  add(answer: Answer): number;
}

/** A student's own seconds by kind of prompt. */
export function createPace(): Pace {
  const sums = new Map<string, { seconds: number; count: number }>();
  const mean = (prompt: PromptKind, side: keyof PromptSeconds): number => {
    const sum = sums.get(`${prompt} ${side}`) ?? { seconds: 0, count: 0 };
    return (USUAL_COUNTS * USUAL[prompt][side] + sum.seconds) / (USUAL_COUNTS + sum.count);
  };
  return {
    of: (prompt) => ({ right: mean(prompt, "right"), missed: mean(prompt, "missed") }),
    add(answer) {
      const side = gotOf(answer) === 1 ? "right" : "missed";
      const seconds = Math.min(LONGEST, answer.ms / 1000) + LOOKING[side];
      const key = `${answer.prompt} ${side}`;
      const sum = sums.get(key) ?? { seconds: 0, count: 0 };
      sums.set(key, { seconds: sum.seconds + seconds, count: sum.count + 1 });
      return seconds;
    },
  };
}
