import { asksInWords } from "@/lib/glossary/asks-words";
import type { Prompt } from "@/lib/memory/prompts/build-prompt";
import type { DrillEntry } from "./prompt-entries";

/** A help taken before the answer: the answer then counts as partly. */
export type Hint =
  | { form: "letters"; text: string }
  /** Half of what it asks, in plain words. */
  | { form: "sense"; text: string }
  /** Slugs of the alternatives laid aside. */
  | { form: "fewer"; aside: string[] };

/**
 * First letters for a word to be written; for a choice half of the sense, or, where the sense
 * has no halves, half of the wrong alternatives laid aside.
 * @returns null where a help would be the answer: two alternatives
 */
export function hintFor(prompt: Prompt, entry: DrillEntry): Hint | null {
  if (prompt.choices === null) {
    return { form: "letters", text: firstLetters(entry.headword, prompt.hint) };
  }
  const wrong = prompt.choices.filter((choice) => !choice.right);
  if (wrong.length < 2) return null;
  const half = prompt.kind === "word>meaning" ? halfSense(entry) : null;
  if (half !== null) return { form: "sense", text: half };
  return { form: "fewer", aside: wrong.slice(0, Math.ceil(wrong.length / 2)).map((w) => w.slug) };
}

/** A third of the word's letters, at least two, and more than the prompt itself gives. */
function firstLetters(word: string, given: string | null): string {
  const letters = [...word];
  const told = given === null ? 0 : [...given].length - 1;
  const count = Math.max(2, Math.round(letters.length / 3), told + 1);
  return `${letters.slice(0, Math.min(count, letters.length - 1)).join("")}…`;
}

/** The first half of the demands in words; null for an entry with a single one. */
function halfSense({ asks }: DrillEntry): string | null {
  const parts = asksInWords(asks).flatMap(({ axis, words }) =>
    axis === "character" ? words.split(", ") : [words],
  );
  return parts.length < 2 ? null : parts.slice(0, Math.floor(parts.length / 2)).join(", ");
}
