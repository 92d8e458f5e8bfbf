import type { TermMatch, WordsRead } from "./match-terms";

/** One thing asked: a term with the words that qualify it. */
export interface Demand {
  /** Null when modifiers stand alone ("sempre" before a printed p). */
  head: TermMatch | null;
  modifiers: TermMatch[];
  /** Head and modifiers as printed. */
  text: string;
}

/** Modifiers that follow what they qualify when nothing follows them. */
const TRAILING = new Set([
  "much",
  "not-too-much",
  "gradually",
  "slightly",
  "enough",
  "always",
  "again",
  "at-once",
]);

/**
 * Joins modifiers to the terms they qualify: "poco a poco più mosso, ma non
 * troppo" is one demand on the tempo with three modifiers.
 */
export function composeDemands(words: WordsRead): Demand[] {
  const demands: Demand[] = [];
  let waiting: TermMatch[] = [];
  const { matches, tokens } = words;
  matches.forEach((match, i) => {
    if (match.kind !== "modifier") {
      demands.push({ head: match, modifiers: waiting, text: "" });
      waiting = [];
      return;
    }
    const before = demands.at(-1);
    const next = matches.slice(i + 1).find((m) => m.kind !== "modifier");
    const cut = next !== undefined && breaksBetween(tokens, match.to, next.from);
    const role = match.role ?? "link";
    const backward =
      before?.head != null &&
      waiting.length === 0 &&
      (looksBack(match, tokens) || ((next === undefined || cut) && TRAILING.has(role)));
    if (backward) before.modifiers.push(match);
    else waiting.push(match);
  });
  if (waiting.length > 0) demands.push({ head: null, modifiers: waiting, text: "" });
  for (const demand of demands) demand.text = printedSpan(words, demand);
  return demands;
}

/** "Andante non troppo, dolce": it belongs to what went before even when a term follows. */
function looksBack(match: TermMatch, tokens: WordsRead["tokens"]): boolean {
  if (match.role !== "not-too-much" || match.lang !== "it") return false;
  return match.text.toLowerCase().startsWith("ma ") || !tokens[match.from]?.breakBefore;
}

function breaksBetween(tokens: WordsRead["tokens"], from: number, to: number): boolean {
  for (let k = from; k <= to; k += 1) if (tokens[k]?.breakBefore) return true;
  return false;
}

function printedSpan({ text, tokens }: WordsRead, { head, modifiers }: Demand): string {
  const parts = head ? [head, ...modifiers] : modifiers;
  const first = tokens[Math.min(...parts.map((p) => p.from))];
  const last = tokens[Math.max(...parts.map((p) => p.to)) - 1];
  if (!first || !last) return "";
  const stop = last.stop && !last.text.endsWith(".") ? "." : "";
  return text.slice(first.start, last.end).replace(/\s+/g, " ") + stop;
}

export function hasRole(demand: Demand, role: NonNullable<TermMatch["role"]>): boolean {
  return demand.modifiers.some((m) => m.role === role);
}
