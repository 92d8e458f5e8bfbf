import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { Answer, PromptKind } from "@/lib/memory/answer";
import { choosePrompt } from "@/lib/memory/choose-prompt";
import { foldLog } from "@/lib/memory/fold-log";
import {
  type CallSheet,
  createPlanner,
  LAST_EVENING_SHARE,
  type Now,
  type PlanItem,
} from "@/lib/memory/plan";
import {
  buildPrompt,
  isPrompt,
  type Prompt,
  WORD_PROMPTS,
  type WordPromptKind,
} from "@/lib/memory/prompts/build-prompt";
import { indexSpellings, type SpellingIndex } from "@/lib/memory/prompts/mark-typed";
import type { Random } from "@/lib/memory/random";
import { type Asked, type Next, nextPrompt } from "./next-prompt";
import { alsoRightRules, type DrillEntry, drillEntries, kindsOf } from "./prompt-entries";

export interface SessionOptions {
  slugs: readonly string[];
  /** YYYY-MM-DD, or null. */
  date: string | null;
  minutes: number;
  answers: readonly Answer[];
  entries: ReadonlyMap<string, ClientEntry>;
  random: Random;
  /** Whether the page has a drawing for a sign that is no glyph. */
  isDrawn: (slug: string) => boolean;
}

/** A prompt as it is put. */
export interface Asking {
  prompt: Prompt;
  entry: DrillEntry;
  again: boolean;
  /** Seconds left of today's minutes when it is put. */
  secondsLeft: number;
}

/** One sitting: what is asked next follows from the log and from what this sitting has brought. */
export interface DrillSession {
  readonly asked: readonly Asked[];
  readonly index: SpellingIndex;
  /** What to ask at this moment; null when the session is over. */
  next(now: Now): Asking | null;
  /** Takes the answer just given. */
  take(answer: Answer): void;
  /** Whole days to the date, 0 on the day itself; null without one. */
  sheet(now: Now): CallSheet;
  addMinutes(minutes: number): void;
}

const USUAL_SHORT = 2;

export function createSession(options: SessionOptions): DrillSession {
  const { date, answers, random } = options;
  const pool = drillEntries(options.entries, options.isDrawn);
  const bySlug = new Map(pool.map((entry) => [entry.slug, entry]));
  const signs = pool.filter((entry) => entry.glyph !== null);
  const rules = alsoRightRules(pool);
  const items = new Map(
    options.slugs.flatMap((slug): [string, PlanItem][] => {
      const entry = bySlug.get(slug);
      if (!entry) return [];
      return [[slug, { slug, alikes: entry.alikes.map((a) => a.slug), asks: kindsOf(entry) }]];
    }),
  );
  const fold = foldLog(answers);
  const met = new Set([...options.slugs, ...answers.map((a) => a.entry)]);
  const asked: Asked[] = [];
  let minutes = options.minutes;
  const plan = () => createPlanner({ fold, items: [...items.values()], date, minutes });
  let planner = plan();

  const again = (slug: string, now: Now): { kind: PromptKind; seconds: number } | null => {
    const item = items.get(slug);
    if (!item) return null;
    const recall = fold.student.recall(slug, fold.moment(now.at)) ?? fold.student.knownBefore();
    const kind = choosePrompt(fold.entry(slug), item.asks, recall);
    if (kind === null) return null;
    const { right, missed } = fold.pace.of(kind);
    return { kind, seconds: recall * right + (1 - recall) * missed };
  };

  const build = (entry: DrillEntry, wanted: PromptKind): Prompt | null => {
    const held = fold.entry(entry.slug);
    const named = (held?.rightBy.get("sign>name") ?? 0) > 0 && held?.missedOn === null;
    const kinds = [wanted, ...kindsOf(entry)].filter(isWordKind);
    for (const kind of kinds) {
      const typedKind = kind === "meaning>word" || kind === "short>full" || kind === "alike";
      const built = buildPrompt(kind, kind === "short>full" ? usualShort(entry) : entry, {
        pool: kind === "sign>name" ? signs : pool,
        // Half right is no wrong alternative; to a typed word or a pair only the same demand is also right.
        alsoRight: typedKind ? rules.same : rules.implied,
        random,
        // A sign once named from a choice is next named without one.
        typed: named,
        ...(held ? { confusions: held.chose } : {}),
        met,
      });
      if (isPrompt(built)) return built;
    }
    return null;
  };

  return {
    asked,
    index: indexSpellings(pool),
    sheet: (now) => planner.sheet(now),
    next(now) {
      const sheet = planner.sheet(now);
      const share = sheet.phase === "last-evening" ? LAST_EVENING_SHARE : 1;
      const secondsLeft = Math.max(0, minutes * 60 * share - sheet.spent);
      const next: Next | null = nextPrompt({
        sheet,
        asked,
        secondsLeft,
        again: (slug) => again(slug, now),
      });
      const entry = next && bySlug.get(next.slug);
      const prompt = entry && build(entry, next.kind);
      if (next && entry && prompt) return { prompt, entry, again: next.again, secondsLeft };
      if (next === null) return null;
      // The glossary allows no prompt for it: it leaves the plan.
      items.delete(next.slug);
      planner = plan();
      return this.next(now);
    },
    take(answer) {
      planner.take(answer);
      met.add(answer.entry);
      asked.push({ slug: answer.entry, outcome: answer.outcome, helped: answer.help });
    },
    addMinutes(more) {
      minutes += more;
      planner = plan();
    },
  };
}

/** The glossary lists the usual short forms first; the odd ones are accepted, not asked. */
function usualShort(entry: DrillEntry): DrillEntry {
  return { ...entry, abbreviations: entry.abbreviations.slice(0, USUAL_SHORT) };
}

function isWordKind(kind: PromptKind): kind is WordPromptKind {
  return WORD_PROMPTS.some((known) => known === kind);
}
