import { BY_THE_WAY, HOW_MUCH, SHAPE_CONCEPTS } from "./english-table";
import type { LookUpEntry } from "./look-up-index";
import { distinctSenses, readAsks, readEnglish, type Sense } from "./read-english";

/** A text that describes an entry: what it means, one way it looks, or all its looks together. */
interface Description {
  entry: number;
  by: "meaning" | "looks";
  modifies: boolean;
  /** The names of what it says first. */
  first: readonly string[];
  /** Highest score it may give. */
  most: number;
  /** 0 to 1: how much saying more than was asked counts against it. */
  strict: number;
  /** Sum of its weights times their rarity. */
  size: number;
}

export interface DescriptionIndex {
  texts: Description[];
  /** Concept to [text, weight, text, weight…]. */
  postings: ReadonlyMap<string, number[]>;
  /** How much a concept tells apart. */
  rarity: ReadonlyMap<string, number>;
}

export interface DescriptionMatch {
  /** Place of the entry in the index. */
  entry: number;
  /** 0 to 1: share of the query that the best text explains, less what it says besides. */
  score: number;
  by: "meaning" | "looks";
}

/** How much saying more than was asked counts against one text, and against all texts together. */
const STRICT = 0.4;
const LAX = 0.1;
/** A concept in fewer texts than these is rare enough. */
const FEW = 4;
/** What the entry's own data asks is surer than what its words seem to say. */
const GIST = 0.93;
const LITERAL = 0.9;
const NAME = 0.5;
const GIST_ALONE = 0.95;
const LITERAL_ALONE = 0.8;
const ALL_LOOKS = 0.8;
const EVERYTHING = 0.72;
/** What "above", say, adds when no look mentions the place. */
const PLACE = 0.4;
/** A query that names no shape describes no sign. */
const NO_SHAPE = 0.7;
/** A text whose first word is not what was asked. */
const NOT_FIRST = 0.94;
/** A query of nothing but how much, how soon, how often asks for a modifier. */
const NO_MODIFIER = 0.85;

/** Reads every meaning and look as concepts. Some tens of milliseconds for a thousand entries: build once. */
export function makeDescriptionIndex(entries: readonly LookUpEntry[]): DescriptionIndex {
  const texts: Description[] = [];
  const saids: Sense[][] = [];
  const postings = new Map<string, number[]>();
  const add = (
    text: Pick<Description, "entry" | "by" | "most" | "strict">,
    ...parts: readonly Sense[][]
  ) => {
    const said = distinctSenses(parts.flat());
    const modifies = entries[text.entry]?.kind === "modifier";
    const at = texts.push({ ...text, modifies, first: said[0]?.names ?? [], size: 0 }) - 1;
    saids.push(said);
    for (const [name, weight] of weights(said)) {
      const list = postings.get(name);
      if (list) list.push(at, weight);
      else postings.set(name, [at, weight]);
    }
  };
  entries.forEach((entry, at) => {
    const meaning = readMeaning(entry);
    add({ entry: at, by: "meaning", most: 1, strict: STRICT }, meaning);
    for (const [words, most] of shortMeanings(entry)) {
      add({ entry: at, by: "meaning", most, strict: STRICT }, readEnglish(words));
    }
    if (!entry.looks) return;
    const place = readPlace(entry);
    const looks = entry.looks.map(readLook);
    for (const look of looks) add({ entry: at, by: "looks", most: 1, strict: STRICT }, look, place);
    add({ entry: at, by: "looks", most: ALL_LOOKS, strict: LAX }, place, ...looks);
    add({ entry: at, by: "looks", most: EVERYTHING, strict: LAX }, place, meaning, ...looks);
  });
  const rarity = new Map<string, number>();
  for (const [name, list] of postings) {
    let holders = 0;
    let last = -1;
    for (let i = 0; i < list.length; i += 2) {
      const entry = texts[list[i] ?? 0]?.entry ?? -1;
      if (entry !== last) holders += 1;
      last = entry;
    }
    rarity.set(name, Math.log(1 + (2 * entries.length) / Math.max(FEW, holders)));
  }
  texts.forEach((text, at) => {
    for (const sense of saids[at] ?? []) {
      text.size += sense.weight * (sense.bulk ?? 1) * rarest(sense, rarity);
    }
  });
  return { texts, postings, rarity };
}

function rarest({ names }: Sense, rarity: ReadonlyMap<string, number>): number {
  return names.reduce((most, name) => Math.max(most, rarity.get(name) ?? 0), 0);
}

function weights(senses: readonly Sense[]): Map<string, number> {
  const out = new Map<string, number>();
  for (const { names, weight } of senses) {
    for (const name of names) out.set(name, Math.max(weight, out.get(name) ?? 0));
  }
  return out;
}

/** What follows the first comma or semicolon explains; the gist stands before it. */
const AFTER_GIST = 0.7;
const GIST_ENDS = /[;:]|,(?! (?:then|and|but|or|yet)\b)/;

function readMeaning(entry: LookUpEntry): Sense[] {
  const [gist = "", ...rest] = entry.meaning.split(GIST_ENDS);
  const named = entry.lang === "en" || entry.isSign;
  return [
    ...scaled(readEnglish(gist), GIST),
    ...scaled(readEnglish(rest.join(",")), AFTER_GIST, 0.5),
    ...scaled(readEnglish(entry.literal ?? ""), LITERAL, 0.5),
    ...readAsks(entry.asks ?? []),
    ...scaled(named ? readEnglish(entry.headword) : [], NAME),
  ];
}

/** The gist and each literal sense by itself, so that asking for just that fits wholly. */
function shortMeanings({ meaning, literal }: LookUpEntry): [string, number][] {
  const gist = meaning.split(GIST_ENDS)[0] ?? "";
  const senses = (literal ?? "").split(/[,;(]/).filter((words) => words.trim() !== "");
  return [[gist, GIST_ALONE], ...senses.map((words): [string, number] => [words, LITERAL_ALONE])];
}

function readPlace({ stands, shape }: LookUpEntry): Sense[] {
  return scaled(readEnglish(`${stands?.replaceAll("-", " ") ?? ""} ${shape ?? ""}`), PLACE);
}

function scaled(senses: readonly Sense[], share: number, bulk?: number): Sense[] {
  return senses.map((sense) => ({ ...sense, weight: sense.weight * share, bulk }));
}

/** Sizes and sides of a sign are mentioned or not as it happens. */
function readLook(look: string): Sense[] {
  return readEnglish(look).map((sense) =>
    sense.names.some((name) => BY_THE_WAY.has(name)) ? { ...sense, bulk: 0.4 } : sense,
  );
}

/** @returns the entries that a description may mean, best first, at most `limit` */
export function findDescribed(
  asked: readonly Sense[],
  index: DescriptionIndex,
  limit: number,
): DescriptionMatch[] {
  const { found, touched, total } = weighTexts(asked, index);
  const looksAsked = asked.some(({ names }) => names.some((name) => SHAPE_CONCEPTS.has(name)));
  const onlyHowMuch = asked.every(
    ({ names, weight }) => weight < 0.5 || names.some((name) => HOW_MUCH.has(name)),
  );
  const main = new Set(asked.flatMap(({ names, weight }) => (weight === 1 ? names : [])));
  const best = new Map<number, DescriptionMatch>();
  for (const at of touched) {
    const text = index.texts[at];
    if (!text) continue;
    const share =
      (text.by === "looks" && !looksAsked ? NO_SHAPE : 1) *
      (onlyHowMuch && !text.modifies ? NO_MODIFIER : 1) *
      (text.first.some((name) => main.has(name)) ? 1 : NOT_FIRST);
    const hit = found[at] ?? 0;
    const exact = Math.sqrt(Math.min(1, hit / text.size));
    const score = (hit / total) * (1 - text.strict + text.strict * exact) * text.most * share;
    const known = best.get(text.entry);
    if (!known || score > known.score) {
      best.set(text.entry, { entry: text.entry, score, by: text.by });
    }
  }
  return [...best.values()].sort((a, b) => b.score - a.score).slice(0, limit);
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
    const worth = rare * sense.weight;
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
