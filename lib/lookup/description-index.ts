import type { Kind } from "../glossary/vocabulary";
import { type Description, describeEntry } from "./describe-entry";
import type { LookUpEntry } from "./look-up-index";
import { distinctSenses, type Sense } from "./read-english";

/** One description of one entry, as the search weighs it. */
export interface DescribedText extends Omit<Description, "says"> {
  /** Place of the entry in the index. */
  entry: number;
  kind: Kind;
  /** The names of what it says first. */
  first: readonly string[];
  /** Sum of its weights times their rarity. */
  size: number;
}

export interface DescriptionIndex {
  texts: DescribedText[];
  /** Concept to [text, weight, text, weight…]. */
  postings: ReadonlyMap<string, readonly number[]>;
  /** How much a concept tells apart. */
  rarity: ReadonlyMap<string, number>;
}

/** A concept in fewer entries than these is rare enough. */
const FEW = 4;

/** Reads every meaning and look as concepts: build once. */
export function makeDescriptionIndex(entries: readonly LookUpEntry[]): DescriptionIndex {
  const texts: DescribedText[] = [];
  const saids: Sense[][] = [];
  const postings = new Map<string, number[]>();
  entries.forEach((entry, place) => {
    for (const { says, by, most, strict } of describeEntry(entry)) {
      const said = distinctSenses(says);
      const first = said[0]?.names ?? [];
      const at =
        texts.push({ entry: place, by, most, strict, kind: entry.kind, first, size: 0 }) - 1;
      saids.push(said);
      for (const { names, weight } of said) {
        for (const name of names) post(postings, name, at, weight);
      }
    }
  });
  const rarity = new Map<string, number>();
  for (const [name, list] of postings) {
    const holders = countEntries(list, texts);
    rarity.set(name, Math.log(1 + (2 * entries.length) / Math.max(FEW, holders)));
  }
  texts.forEach((text, at) => {
    for (const sense of saids[at] ?? []) {
      text.size += sense.weight * (sense.bulk ?? 1) * rarest(sense, rarity);
    }
  });
  return { texts, postings, rarity };
}

/** Of the names of a sense, how rare the rarest is; 0 when no text holds any. */
export function rarest({ names }: Sense, rarity: ReadonlyMap<string, number>): number {
  let most = 0;
  for (const name of names) most = Math.max(most, rarity.get(name) ?? 0);
  return most;
}

/** A name said twice in one text counts once, at its greater weight. */
function post(postings: Map<string, number[]>, name: string, at: number, weight: number): void {
  const list = postings.get(name);
  if (!list) postings.set(name, [at, weight]);
  else if (list[list.length - 2] !== at) list.push(at, weight);
  else if (weight > (list[list.length - 1] ?? 0)) list[list.length - 1] = weight;
}

/** The texts of one entry stand together. */
function countEntries(list: readonly number[], texts: readonly DescribedText[]): number {
  let count = 0;
  let last = -1;
  for (let i = 0; i < list.length; i += 2) {
    const entry = texts[list[i] ?? 0]?.entry ?? -1;
    if (entry !== last) count += 1;
    last = entry;
  }
  return count;
}
