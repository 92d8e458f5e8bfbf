import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { Prompt } from "@/lib/memory/prompts/build-prompt";
import type { Told } from "./mark-given";

/** The verdict in words; `word` is the one asked for. */
export function verdictWords(told: Told, word: string): string {
  switch (told.outcome) {
    case "right":
      return "Right.";
    case "slip":
      return `Right. It is spelt ${told.spelling ?? word}.`;
    case "partly":
      return told.helped
        ? "Right with help: it counts as partly."
        : `Right in sense. The word asked for is ${word}.`;
    case "missed":
      return told.given === "shown" ? "Here it is. It comes once more." : "Not yet.";
  }
}

/** What sets the answer given apart from the right one. */
export interface Contrast {
  slug: string;
  headword: string;
  lang: string;
  /** A sentence that tells the two apart, or what the other means. */
  text: string;
  isDifference: boolean;
}

/**
 * The contrast with what was given instead: the glossary's own sentence on the pair, from
 * whichever of the two pages has it, else the meaning of the other.
 */
export function contrastWith(
  slug: string,
  instead: string | null,
  entries: ReadonlyMap<string, ClientEntry>,
): Contrast | null {
  const other = instead === null ? undefined : entries.get(instead);
  if (!other || other.slug === slug) return null;
  const difference =
    entries.get(slug)?.alikes?.find((a) => a.slug === other.slug)?.difference ??
    other.alikes?.find((a) => a.slug === slug)?.difference;
  return {
    slug: other.slug,
    headword: other.headword,
    lang: other.lang,
    text: difference ?? other.meaning,
    isDifference: difference !== undefined,
  };
}

/** What is asked about the thing shown. */
export const QUESTIONS: Readonly<Record<Prompt["kind"], string>> = {
  "word>meaning": "What does it ask?",
  "meaning>word": "Which word asks for this?",
  "short>full": "Which word is it short for?",
  "sign>name": "What is this sign called?",
  "name>sign": "How is it drawn?",
  alike: "Which of the two asks for this?",
};
