import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { Prompt } from "@/lib/memory/prompts/build-prompt";
import type { Told } from "./mark-given";

/** A verdict: a sentence, which may end on the word asked for. */
export interface Verdict {
  text: string;
  /** Word to be set after the text, in its own language. */
  word: string | null;
}

/** The verdict in words; `word` is the one asked for. */
export function verdictOf(told: Told, word: string): Verdict {
  switch (told.outcome) {
    case "right":
      return { text: "Right.", word: null };
    case "slip":
      return { text: "Right. It is spelt", word: told.spelling ?? word };
    case "partly":
      return told.helped
        ? { text: "Right with help: it counts as partly.", word: null }
        : { text: "Right in sense. The word asked for is", word };
    case "missed":
      return {
        text: told.given === "shown" ? "Here it is; it comes again." : "Not yet.",
        word: null,
      };
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

/** What a screen reader says once the answer is given: the verdict and the right answer. */
export function spokenVerdict(told: Told, prompt: Prompt, headword: string): string {
  const { text, word } = verdictOf(told, headword);
  const verdict = word === null ? text : `${text} ${word}.`;
  if (told.outcome !== "missed") return verdict;
  const right = prompt.choices?.find((choice) => choice.right)?.text ?? headword;
  const letter = prompt.choices?.findIndex((choice) => choice.right) ?? -1;
  const which = prompt.kind === "name>sign" && letter >= 0 ? `drawing ${letter + 1}` : right;
  return `${verdict} The right answer is: ${which}.`;
}
