import type { Kind } from "../glossary/vocabulary";
import { type DescribedText, type DescriptionIndex, rarest } from "./description-index";
import { HOW_MUCH, LOUDNESS_CONCEPTS, SHAPE_CONCEPTS, SPEED_CONCEPTS } from "./english-table";
import type { Sense } from "./read-english";

export interface DescriptionMatch {
  /** Place of the entry in the index. */
  entry: number;
  /** 0 to 1: share of the query that the best text explains, less what it says besides. */
  score: number;
  by: "meaning" | "looks";
}

/** A query that names no shape describes no sign. */
const NO_SHAPE = 0.7;
/** A text whose first word is not what was asked. */
const NOT_FIRST = 0.94;
/** A query of nothing but how much, how soon, how often asks for a modifier. */
const NO_MODIFIER = 0.85;
const SPEED_KINDS: ReadonlySet<Kind> = new Set(["tempo", "tempo-change", "modifier"]);
const LOUDNESS_KINDS: ReadonlySet<Kind> = new Set(["dynamic", "dynamic-change", "modifier"]);
const OTHER_KIND = 0.95;
/** Sizes are in the eye of the beholder. */
const SIZES: ReadonlySet<string> = new Set(["small", "big", "short", "long"]);
const OF_A_SIZE = 0.5;

/** @returns the entries that a description may mean, best first, at most `limit` */
export function findDescribed(
  asked: readonly Sense[],
  index: DescriptionIndex,
  limit: number,
): DescriptionMatch[] {
  const { found, touched, total } = weighTexts(asked, index);
  const leaning = leanTo(asked);
  const best = new Map<number, DescriptionMatch>();
  for (const at of touched) {
    const text = index.texts[at];
    if (!text) continue;
    const hit = found[at] ?? 0;
    const exact = Math.sqrt(Math.min(1, hit / text.size));
    const fit = (hit / total) * (1 - text.strict + text.strict * exact);
    const score = fit * text.most * leaning(text);
    const known = best.get(text.entry);
    if (!known || score > known.score) {
      best.set(text.entry, { entry: text.entry, score, by: text.by });
    }
  }
  return [...best.values()].sort((a, b) => b.score - a.score).slice(0, limit);
}

/** What kind of text a query leans to: signs, speeds, loudness, modifiers, what says the asked thing first. */
function leanTo(asked: readonly Sense[]): (text: DescribedText) => number {
  const says = (names: ReadonlySet<string>) => (sense: Sense) =>
    sense.names.some((name) => names.has(name) || names.has(lastWord(name)));
  const main = asked.filter(({ weight }) => weight === 1);
  const mainNames = new Set(main.flatMap(({ names }) => names));
  const aboutLooks = asked.some(says(SHAPE_CONCEPTS));
  const aboutSpeed = main.some(says(SPEED_CONCEPTS));
  const aboutLoudness = main.some(says(LOUDNESS_CONCEPTS));
  const onlyHowMuch = asked.filter(({ weight }) => weight >= 0.5).every(says(HOW_MUCH));
  return ({ by, kind, first }) =>
    (by === "looks" && !aboutLooks ? NO_SHAPE : 1) *
    (aboutSpeed && !SPEED_KINDS.has(kind) ? OTHER_KIND : 1) *
    (aboutLoudness && !LOUDNESS_KINDS.has(kind) ? OTHER_KIND : 1) *
    (onlyHowMuch && kind !== "modifier" ? NO_MODIFIER : 1) *
    (first.some((name) => mainNames.has(name)) ? 1 : NOT_FIRST);
}

/** "very slow" is about slow. */
function lastWord(name: string): string {
  return name.slice(name.lastIndexOf(" ") + 1);
}

/** How much of what is asked each text says, in units of rarity. */
function weighTexts(asked: readonly Sense[], { texts, postings, rarity }: DescriptionIndex) {
  const found = new Float64Array(texts.length);
  const now = new Float64Array(texts.length);
  const touched: number[] = [];
  let total = 0;
  for (const sense of asked) {
    const rare = rarest(sense, rarity);
    if (rare === 0) {
      // A word that no text holds says that none fits well.
      if (sense.weight === 1) total += Math.log(1 + texts.length) * 0.5;
      continue;
    }
    const worth =
      rare * sense.weight * (sense.names.some((name) => SIZES.has(name)) ? OF_A_SIZE : 1);
    total += worth;
    const hits: number[] = [];
    for (const name of sense.names) {
      const list = postings.get(name) ?? [];
      for (let i = 0; i < list.length; i += 2) {
        const at = list[i] ?? 0;
        const share = Math.min(1, (list[i + 1] ?? 0) / sense.weight);
        if (now[at] === 0) hits.push(at);
        if (share > (now[at] ?? 0)) now[at] = share;
      }
    }
    for (const at of hits) {
      if (found[at] === 0) touched.push(at);
      found[at] = (found[at] ?? 0) + worth * (now[at] ?? 0);
      now[at] = 0;
    }
  }
  return { found, touched, total };
}
