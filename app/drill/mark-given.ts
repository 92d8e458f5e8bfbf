import type { Answer, Outcome } from "@/lib/memory/answer";
import type { Prompt } from "@/lib/memory/prompts/build-prompt";
import { markTyped, type SpellingIndex } from "@/lib/memory/prompts/mark-typed";
import type { Stamp } from "@/lib/store/clock";
import type { DrillEntry } from "./prompt-entries";

/** What the student did: chose a row, wrote a word, or asked to be shown. */
export type Given = { chose: string } | { wrote: string } | "shown";

export interface Told {
  given: Given;
  outcome: Outcome;
  /** Slug given instead of the one asked for. */
  instead: string | null;
  /** The right spelling, where it was misspelt. */
  spelling: string | null;
  helped: boolean;
}

interface MarkContext {
  entry: DrillEntry;
  index: SpellingIndex;
  helped: boolean;
}

/** Marks what was given. With help nothing counts for more than partly. */
export function markGiven(
  prompt: Prompt,
  given: Given,
  { entry, index, helped }: MarkContext,
): Told {
  const told = (outcome: Outcome, more: Partial<Told> = {}): Told => ({
    given,
    outcome: helped && outcome !== "missed" ? "partly" : outcome,
    instead: null,
    spelling: null,
    helped,
    ...more,
  });
  if (given === "shown") return told("missed");
  if ("chose" in given) {
    const right = prompt.choices?.some((c) => c.slug === given.chose && c.right) ?? false;
    return right ? told("right") : told("missed", { instead: given.chose });
  }
  const mark = markTyped(given.wrote, entry, {
    index,
    // The full word is what is asked: for the letters p the name is piano, not p.
    fullOnly: prompt.kind !== "meaning>word",
    alsoRight: prompt.alsoRight,
  });
  return told(mark.outcome, {
    instead: mark.chose ?? null,
    spelling: mark.outcome === "slip" ? mark.nearest : null,
  });
}

/** One line of the log from one marked prompt. */
export function answerOf(
  prompt: Prompt,
  told: Told,
  { id, stamp, shownAt }: { id: string; stamp: Stamp; shownAt: number },
): Answer {
  return {
    id,
    at: stamp.at,
    offset: stamp.offset,
    entry: prompt.slug,
    prompt: prompt.kind,
    outcome: told.outcome,
    // A clock set back while the prompt stood there must not make a negative time.
    ms: Math.max(0, stamp.at - shownAt),
    help: told.helped,
    ...(told.instead !== null && told.instead !== prompt.slug ? { chose: told.instead } : {}),
    ...(prompt.choices ? { options: prompt.choices.length } : {}),
  };
}
