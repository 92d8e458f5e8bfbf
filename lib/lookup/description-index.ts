import type { LookUpEntry } from "./look-up-index";
import { SHAPE_CONCEPTS } from "./english-table";
import { type Meaning, readAsks, readEnglish } from "./read-english";

/** A text that describes an entry: what it means, one way it looks, or all its looks together. */
interface Description {
  entry: number;
  by: "meaning" | "looks";
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

const LITERAL = 0.8;
const NAME = 0.5;
const ALL_LOOKS = 0.9;
const EVERYTHING = 0.85;
/** What "above", say, adds when no look mentions the place. */
const PLACE = 0.4;
/** A query that names no shape describes no sign. */
const NO_SHAPE = 0.7;

/** Reads every meaning and look as concepts. Some tens of milliseconds for a thousand entries: build once. */
export function makeDescriptionIndex(entries: readonly LookUpEntry[]): DescriptionIndex {
  const texts: Description[] = [];
  const postings = new Map<string, number[]>();
  const add = (text: Omit<Description, "size">, meaning: Meaning) => {
    const at = texts.push({ ...text, size: 0 }) - 1;
    for (const [name, weight] of meaning) {
      const list = postings.get(name);
      if (list) list.push(at, weight);
      else postings.set(name, [at, weight]);
    }
  };
  entries.forEach((entry, at) => {
    const meaning = readMeaning(entry);
    add({ entry: at, by: "meaning", most: 1, strict: 0.35 }, meaning);
    if (!entry.looks) return;
    const place = readPlace(entry);
    const looks = entry.looks.map((look) => merge([readEnglish(look), 1], [place, 1]));
    for (const look of looks) add({ entry: at, by: "looks", most: 1, strict: 0.25 }, look);
    const all = merge(...looks.map((look): [Meaning, number] => [look, 1]));
    add({ entry: at, by: "looks", most: ALL_LOOKS, strict: 0.1 }, all);
    const everything = merge([all, 1], [meaning, 1]);
    add({ entry: at, by: "looks", most: EVERYTHING, strict: 0.1 }, everything);
  });
  const rarity = new Map<string, number>();
  for (const [name, list] of postings) {
    const rare = Math.log(1 + (2 * texts.length) / list.length);
    rarity.set(name, rare);
    for (let i = 0; i < list.length; i += 2) {
      const text = texts[list[i] ?? 0];
      if (text) text.size += rare * (list[i + 1] ?? 0);
    }
  }
  return { texts, postings, rarity };
}

/** What follows the first comma or semicolon explains; the gist stands before it. */
const AFTER_GIST = 0.7;

function readMeaning(entry: LookUpEntry): Meaning {
  const name = entry.lang === "en" || entry.isSign ? readEnglish(entry.headword) : new Map();
  const [gist = "", ...rest] = entry.meaning.split(/[,;]/);
  return merge(
    [readEnglish(gist), 1],
    [readEnglish(rest.join(",")), AFTER_GIST],
    [readEnglish(entry.literal ?? ""), LITERAL],
    [readAsks(entry.asks ?? []), 1],
    [name, NAME],
  );
}

function readPlace(entry: LookUpEntry): Meaning {
  const where = readEnglish(`${entry.stands?.replaceAll("-", " ") ?? ""} ${entry.shape ?? ""}`);
  return new Map([...where].map(([name, weight]) => [name, weight * PLACE]));
}

function merge(...parts: readonly [Meaning, number][]): Meaning {
  const out: Meaning = new Map();
  for (const [meaning, share] of parts) {
    for (const [name, weight] of meaning) {
      out.set(name, Math.max(out.get(name) ?? 0, weight * share));
    }
  }
  return out;
}

/** @returns the entries that a description may mean, best first, at most `limit` */
export function findDescribed(
  asked: Meaning,
  index: DescriptionIndex,
  limit: number,
): DescriptionMatch[] {
  const found = new Float64Array(index.texts.length);
  const touched: number[] = [];
  const unknown = Math.log(1 + index.texts.length);
  let total = 0;
  for (const [name, weight] of asked) {
    const list = index.postings.get(name);
    if (!list) {
      // A concept's own stem stands beside it; only words wholly unknown weigh.
      if (weight === 1) total += unknown * 0.5;
      continue;
    }
    const rare = index.rarity.get(name) ?? 0;
    total += rare * weight;
    for (let i = 0; i < list.length; i += 2) {
      const at = list[i] ?? 0;
      const before = found[at] ?? 0;
      if (before === 0) touched.push(at);
      found[at] = before + rare * Math.min(weight, list[i + 1] ?? 0);
    }
  }
  const looksAsked = [...asked.keys()].some((name) => SHAPE_CONCEPTS.has(name));
  const best = new Map<number, DescriptionMatch>();
  for (const at of touched) {
    const text = index.texts[at];
    if (!text) continue;
    const share = text.by === "looks" && !looksAsked ? NO_SHAPE : 1;
    const hit = found[at] ?? 0;
    const exact = Math.sqrt(hit / text.size);
    const score = (hit / total) * (1 - text.strict + text.strict * exact) * text.most * share;
    const known = best.get(text.entry);
    if (!known || score > known.score) {
      best.set(text.entry, { entry: text.entry, score, by: text.by });
    }
  }
  return [...best.values()].sort((a, b) => b.score - a.score).slice(0, limit);
}
