import type { Given, Marked, Question } from "./question";

/**
 * Marks one answer. Choosing several: all and only the right ones is right,
 * at least half of them with no more wrong than right ones is partly right.
 */
export function markAnswer(question: Question, given: Given): Marked {
  return { question, given, outcome: outcomeOf(question, given) };
}

function outcomeOf(question: Question, given: Given): Marked["outcome"] {
  if (given === null) return "missed";
  switch (question.form) {
    case "one":
      return given === question.right ? "right" : "missed";
    case "number": {
      const value = Number(given);
      if (!Number.isFinite(value)) return "missed";
      const off = Math.abs(value - question.right);
      if (off <= question.tolerance) return "right";
      return off <= 2 * question.tolerance ? "partly" : "missed";
    }
    default:
      return bySet(new Set<string | number>(question.right), Array.isArray(given) ? given : []);
  }
}

function bySet(right: ReadonlySet<string | number>, given: readonly (string | number)[]) {
  const chosen = new Set(given);
  const hits = [...chosen].filter((g) => right.has(g)).length;
  const wrong = chosen.size - hits;
  if (hits === right.size && wrong === 0) return "right";
  return hits > 0 && hits * 2 >= right.size && wrong <= hits ? "partly" : "missed";
}
