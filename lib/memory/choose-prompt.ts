import type { PromptKind } from "./answer";
import type { EntryFold } from "./fold-log";

/**
 * Which direction to ask next. Recognition starts an entry, production follows; the direction a
 * panel uses comes most often (learning-guidance, rules 13 and 18).
 */
const FIRST: readonly PromptKind[] = [
  "sign>name",
  "word>meaning",
  "short>full",
  "name>sign",
  "heard>marking",
  "meaning>word",
  "passage>asks",
];
/** Right answers are shared out in these proportions; among equals the earlier row comes first. */
const SHARES: readonly (readonly [PromptKind, number])[] = [
  ["meaning>word", 2],
  ["sign>name", 3],
  ["word>meaning", 3],
  ["passage>asks", 1],
  ["heard>marking", 1],
  ["short>full", 1],
  ["name>sign", 1],
];
/** Below this chance of recall, producing the word would mostly fail and teach little. */
const TOO_WEAK_TO_PRODUCE = 0.35;

/**
 * @param entry what the log says of it; undefined when never met
 * @param asks kinds of prompt that can be built for it
 * @param recallNow chance of recall now, 0..1
 * @returns null when `asks` is empty
 */
export function choosePrompt(
  entry: EntryFold | undefined,
  asks: readonly PromptKind[],
  recallNow: number,
): PromptKind | null {
  const can = new Set(asks);
  if (!entry) return FIRST.find((kind) => can.has(kind)) ?? asks[0] ?? null;
  if (can.has("alike") && wasConfused(entry)) return "alike";
  let best: PromptKind | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const [kind, share] of SHARES) {
    if (!can.has(kind)) continue;
    const weak = kind === "meaning>word" && recallNow < TOO_WEAK_TO_PRODUCE;
    const done = (entry.rightBy.get(kind) ?? 0) / share + (weak ? 1000 : 0);
    if (done < least) {
      least = done;
      best = kind;
    }
  }
  return best ?? asks[0] ?? null;
}

/** The last answer named another entry: the two are then set side by side (rule 7). */
export function wasConfused(entry: EntryFold): boolean {
  return (
    entry.missedOn !== null &&
    entry.last.chose !== undefined &&
    entry.last.chose !== entry.last.entry
  );
}
