import { z } from "zod";
import { type Answer, OUTCOMES, PROMPT_KINDS } from "./answer";

/** Farthest moments a `Date` can hold, in milliseconds. */
const LAST_MOMENT = 8.64e15;
/** A question left open overnight is no measure; the log still keeps it, up to a week. */
const LONGEST_MS = 7 * 86_400_000;

const slug = z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, "expected a slug");

/** Shape of one line of the log. Keys not named here are dropped, so that nothing else travels with it. */
export const answerSchema = z.object({
  id: z.string().min(1).max(100),
  at: z.number().int().min(0).max(LAST_MOMENT),
  offset: z.number().int().min(-900).max(900),
  entry: slug.max(100),
  prompt: z.enum(PROMPT_KINDS),
  outcome: z.enum(OUTCOMES),
  ms: z.number().min(0).max(LONGEST_MS),
  help: z.boolean(),
  chose: slug.max(100).optional(),
  options: z.number().int().min(2).max(50).optional(),
});

/** One line that could not be taken into the log, and why. */
export interface RefusedAnswer {
  /** Position in the list read, from 0. */
  index: number;
  /** Its id when it had one. */
  id: string | null;
  /** One plain sentence. */
  reason: string;
}

export interface ParsedLog {
  answers: Answer[];
  refused: RefusedAnswer[];
}

/** Order of the log: by moment, then by id, so that two devices show one story. */
export function compareAnswers(a: Answer, b: Answer): number {
  return a.at - b.at || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
}

/**
 * Union of logs by id, in order. Order, repeats and grouping of the arguments do not matter.
 * Two different lines under one id cannot both be true; the one whose text sorts first is kept,
 * on every device the same.
 */
export function mergeLogs(...logs: readonly (readonly Answer[])[]): Answer[] {
  const byId = new Map<string, Answer>();
  for (const log of logs) {
    for (const answer of log) {
      const held = byId.get(answer.id);
      if (!held || (held !== answer && canonical(answer) < canonical(held))) {
        byId.set(answer.id, answer);
      }
    }
  }
  return [...byId.values()].sort(compareAnswers);
}

/** One text for one content, whatever the order of its keys. */
function canonical(answer: Answer): string {
  const { id, at, offset, entry, prompt, outcome, ms, help, chose, options } = answer;
  return JSON.stringify([
    id,
    at,
    offset,
    entry,
    prompt,
    outcome,
    ms,
    help,
    chose ?? null,
    options ?? null,
  ]);
}

/**
 * Reads a log out of unknown JSON, line by line: a bad line is refused by name and the rest is kept.
 *
 * @param input a list of answers, or an object holding one under `answers`
 * @returns answers merged and in order; `refused` in the order read. Never throws.
 */
export function parseLog(input: unknown): ParsedLog {
  const list = listOf(input);
  if (!list) {
    return {
      answers: [],
      refused: [
        {
          index: 0,
          id: null,
          reason: "This is no list of answers; choose a file saved by this site.",
        },
      ],
    };
  }
  const answers: Answer[] = [];
  const refused: RefusedAnswer[] = [];
  list.forEach((line: unknown, index) => {
    const parsed = answerSchema.safeParse(line);
    if (parsed.success) answers.push(parsed.data);
    else refused.push({ index, id: idOf(line), reason: sentence(index, parsed.error) });
  });
  return { answers: mergeLogs(answers), refused };
}

function listOf(input: unknown): unknown[] | null {
  if (Array.isArray(input)) return input;
  if (
    typeof input === "object" &&
    input !== null &&
    "answers" in input &&
    Array.isArray(input.answers)
  ) {
    return input.answers;
  }
  return null;
}

function idOf(line: unknown): string | null {
  if (typeof line !== "object" || line === null || !("id" in line)) return null;
  return typeof line.id === "string" ? line.id.slice(0, 100) : null;
}

function sentence(index: number, error: z.ZodError): string {
  const first = error.issues[0];
  const where = first && first.path.length > 0 ? `, ${first.path.join(".")}` : "";
  return `Answer ${index + 1}${where}: ${first?.message ?? "not readable"}; this line was left out.`;
}
