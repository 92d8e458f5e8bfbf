import fc from "fast-check";
import { type Answer, OUTCOMES, PROMPT_KINDS } from "@/lib/memory/answer";

export const DAY = 86_400_000;
/** 17:00 UTC on 1 March 2027. */
export const START = Date.UTC(2027, 2, 1, 17);

let made = 0;
/** An answer with what matters given and the rest plain. */
export function answer(change: Partial<Answer> = {}): Answer {
  made += 1;
  return {
    id: `answer-${String(made).padStart(6, "0")}`,
    at: START,
    offset: 0,
    entry: "dolce",
    prompt: "meaning>word",
    outcome: "right",
    ms: 4000,
    help: false,
    ...change,
  };
}

const slugs = ["dolce", "fermata", "piu-mosso", "staccato", "tenuto"] as const;

export const answerArbitrary: fc.Arbitrary<Answer> = fc.record(
  {
    id: fc.integer({ min: 0, max: 30 }).map((n) => `id-${n}`),
    at: fc.integer({ min: START, max: START + 20 * DAY }),
    offset: fc.integer({ min: -720, max: 840 }),
    entry: fc.constantFrom(...slugs),
    prompt: fc.constantFrom(...PROMPT_KINDS),
    outcome: fc.constantFrom(...OUTCOMES),
    ms: fc.integer({ min: 0, max: 60_000 }),
    help: fc.boolean(),
    chose: fc.constantFrom(...slugs),
    options: fc.integer({ min: 2, max: 5 }),
  },
  { requiredKeys: ["id", "at", "offset", "entry", "prompt", "outcome", "ms", "help"] },
);

/** A log whose ids are all different. */
export const logArbitrary = (maxLength: number): fc.Arbitrary<Answer[]> =>
  fc
    .array(answerArbitrary, { maxLength })
    .map((log) => log.map((line, i) => ({ ...line, id: `line-${String(i).padStart(3, "0")}` })));
