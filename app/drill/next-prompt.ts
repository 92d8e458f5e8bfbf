import type { Outcome, PromptKind } from "@/lib/memory/answer";
import type { CallSheet } from "@/lib/memory/plan";

/** One answer of the session under way. */
export interface Asked {
  slug: string;
  outcome: Outcome;
  helped: boolean;
}

export interface Next {
  slug: string;
  kind: PromptKind;
  /** Missed earlier in this session. */
  again: boolean;
}

export interface SessionNow {
  /** The planner's sheet for this moment. */
  sheet: CallSheet;
  /** Answers of this session, in order. */
  asked: readonly Asked[];
  /** Seconds left of today's minutes. */
  secondsLeft: number;
  /** For an entry missed before: the kind of prompt to ask it by, and the seconds it may take. */
  again(slug: string): { kind: PromptKind; seconds: number } | null;
}

/** Others between a miss and its return, as the planner has it: recalled, not echoed. */
const LAG = 3;
/** An entry is not asked a fourth time in one session; tomorrow is better. */
const MOST_TIMES = 3;

/**
 * What to ask next: the planner's first, as long as time remains for what was missed;
 * then the missed ones once more, so that the session ends on them (learning-guidance, rule 10).
 * @returns null when the session is over
 */
export function nextPrompt({ sheet, asked, secondsLeft, again }: SessionNow): Next | null {
  const open = openMisses(asked).flatMap((miss) => {
    const how = again(miss.slug);
    return how === null ? [] : [{ ...miss, ...how }];
  });
  const times = (slug: string) => asked.filter((a) => a.slug === slug).length;
  const planned = sheet.prompts.find((prompt) => times(prompt.slug) < MOST_TIMES);
  const reserve = open.reduce((sum, miss) => sum + miss.seconds, 0);
  const returning = (slug: string) => open.some((miss) => miss.slug === slug);
  if (planned && (open.length === 0 || planned.seconds + reserve <= secondsLeft)) {
    return { slug: planned.slug, kind: planned.prompt, again: returning(planned.slug) };
  }
  // The longest ago first; near the end a shorter gap is better than none.
  const due = open.find((miss) => miss.since >= LAG) ?? open.find((miss) => miss.since > 0);
  if (due && due.seconds <= secondsLeft) return { slug: due.slug, kind: due.kind, again: true };
  return planned
    ? { slug: planned.slug, kind: planned.prompt, again: returning(planned.slug) }
    : null;
}

/** Entries missed in this session and not recalled since, the longest ago first. */
export function openMisses(asked: readonly Asked[]): { slug: string; since: number }[] {
  const last = new Map<string, { at: number; times: number; open: boolean }>();
  asked.forEach(({ slug, outcome, helped }, at) => {
    const times = (last.get(slug)?.times ?? 0) + 1;
    const recalled = !helped && (outcome === "right" || outcome === "slip");
    last.set(slug, { at, times, open: !recalled });
  });
  return [...last]
    .filter(([, { open, times }]) => open && times < MOST_TIMES)
    .sort(([, a], [, b]) => a.at - b.at)
    .map(([slug, { at }]) => ({ slug, since: asked.length - 1 - at }));
}

/** "about 4 min left"; it changes from prompt to prompt, never while one is open. */
export function minutesLeftWords(seconds: number): string {
  if (seconds < 45) return "nearly done";
  const minutes = Math.round(seconds / 60);
  return minutes <= 1 ? "about a minute left" : `about ${minutes} min left`;
}
