import { stateAt } from "../../reading/state-at";
import {
  type Context,
  distractors,
  evidenceOf,
  foundIn,
  meaningOption,
  numberOf,
  shuffled,
} from "../context";
import type { Question } from "../question";

/** What the character and technique words ask, with near misses to choose from. */
export function wordQuestions(context: Context): Question[] {
  const { reading, passage, entries, random } = context;
  const start = { measureIndex: passage.from, onset: [0, 1] } as const;
  const { character, technique } = stateAt(reading, passage.partIndex, start, passage.staff);
  const carried = [
    ...character.map((w) => ({ ...w, axis: "character" as const })),
    ...technique.map((w) => ({ ...w, axis: "technique" as const })),
  ].filter((w) => w.source < passage.from);
  const printed = foundIn(context)
    .filter((f) => f.sign === null && (f.kind === "character" || f.kind === "technique"))
    .map((f) => ({
      text: f.text,
      slug: f.slug ?? "",
      source: f.measureIndex,
      axis: f.kind === "character" ? ("character" as const) : ("technique" as const),
    }));
  const seen = new Set<string>();
  const questions: Question[] = [];
  for (const word of [...carried, ...printed]) {
    const entry = entries.get(word.slug);
    if (!entry || seen.has(word.slug)) continue;
    seen.add(word.slug);
    const others = distractors(context, entry, 3);
    if (others.length < 2) continue;
    const measure = numberOf(reading, word.source);
    const still = word.source < passage.from;
    questions.push({
      id: `${word.axis}-${word.slug}`,
      axis: word.axis,
      form: "one",
      prompt: still
        ? `Nothing new is printed here: ${word.text}, from measure ${measure}, still holds. What does it ask?`
        : `Measure ${measure} says ${word.text}. What does it ask?`,
      options: shuffled([entry, ...others], random).map(meaningOption),
      right: entry.slug,
      evidence: [evidenceOf(reading, word.source, word.text, entry.slug)],
      slugs: [entry.slug],
      reason: `${entry.headword}: ${entry.meaning}.`,
    });
  }
  return questions;
}
