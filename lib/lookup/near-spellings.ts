import Fuse from "fuse.js";
import { foldTight } from "../glossary/fold";
import { editDistance } from "../words/edit-distance";
import type { LookUpEntry } from "./look-up-index";
import { codeOf, type SoundCode, soundLikeness } from "./sound-distance";
import { skeleton, soundOfEnglish, soundOfWord } from "./sound-key";
import { keysOf } from "./spelling-book";

/** A spelling that a misspelt word may have meant. */
interface Target {
  entry: number;
  /** Folded, without spaces. */
  text: string;
  words: string[];
  sound: SoundCode;
}

export interface NearBook {
  targets: Target[];
  /** Slug of each entry, by its place. */
  slugs: string[];
  /** Two neighbouring letters, word ends as `^` and `$`, to the targets that hold them. */
  pairs: ReadonlyMap<string, number[]>;
  /** Consonant skeletons, whole and with one consonant left out, to targets. */
  skeletons: ReadonlyMap<string, number[]>;
  /** First letter and the next, to targets: for words broken off. */
  starts: ReadonlyMap<string, number[]>;
}

export interface NearMatch {
  entry: number;
  /** 0 to 1. */
  likeness: number;
  by: "misspelling" | "sound" | "beginning";
}

/** Shortest abbreviation that may be misspelt. */
const SHORT = 4;
const BY_PAIRS = 24;
/** Least share of letter pairs, of both words' pairs together. */
const LEAST_PAIRS = 0.15;
/** Sounds further apart in length are not compared. */
const LENGTH_APART = 2;
const MOST_SLIPS = 3;
/** A piece of a word counts by how much of the word it is: from this, to this and the rest. */
const PIECE = { least: 0.5, rest: 0.45 };
const BEGINNING = { least: 0.6, rest: 0.35 };
const BY_COVER = 16;
const LEAST_COVER = 0.6;
/** The same sound is a little less than the same spelling. */
const AS_HEARD = 0.97;
const LEAST = 0.5;
const OTHER_WORD = 0.8;
const OTHER_COUNT = 0.93;
const DYNAMIC = /^[fmpsz]{1,4}$/;

/** Headwords, spellings and longer abbreviations; inflections are reached through their headword, plain English through its meaning. */
export function makeNearBook(entries: readonly LookUpEntry[]): NearBook {
  const targets: Target[] = [];
  const pairs = new Map<string, number[]>();
  const skeletons = new Map<string, number[]>();
  const starts = new Map<string, number[]>();
  entries.forEach((entry, at) => {
    if (entry.isPlain) return;
    const seen = new Set<string>();
    const add = (text: string, sound: string | undefined) => {
      const tight = foldTight(text);
      if (tight.length < 2 || seen.has(tight)) return;
      seen.add(tight);
      const words = keysOf(text);
      const heard = sound ?? words.map((word) => soundOfWord(word, entry.lang)).join("");
      const place = targets.push({ entry: at, text: tight, words, sound: codeOf(heard) }) - 1;
      for (const pair of pairsOf(tight)) push(pairs, pair, place);
      for (const bones of fewer(skeleton(heard))) push(skeletons, bones, place);
      push(starts, tight.slice(0, 2), place);
    };
    add(entry.headword, entry.sound);
    for (const s of entry.spellings ?? []) add(s, undefined);
    for (const s of entry.abbreviations ?? []) if (foldTight(s).length >= SHORT) add(s, undefined);
  });
  return { targets, slugs: entries.map((e) => e.slug), pairs, skeletons, starts };
}

function push(map: Map<string, number[]>, key: string, value: number): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}

function pairsOf(text: string): string[] {
  const edged = `^${text}$`;
  return Array.from({ length: edged.length - 1 }, (_, i) => edged.slice(i, i + 2));
}

function fewer(bones: string): Set<string> {
  const all = new Set([bones]);
  if (bones.length < 3) return all;
  for (let i = 0; i < bones.length; i += 1) all.add(bones.slice(0, i) + bones.slice(i + 1));
  return all;
}

/**
 * Entries whose spelling or sound is near the words. A small set of candidates
 * is taken from the letter pairs, the consonant skeleton and the first letters.
 * Of these Fuse.js finds the words that the query is a piece of, slips and all
 * ("alegr"); edit distance and `soundLikeness` compare whole words.
 * @param keys folded words, compared as one
 */
export function findNear(keys: readonly string[], book: NearBook): NearMatch[] {
  const text = keys.join("");
  if (text.length < 2) return [];
  const heard = keys.map(soundOfEnglish).join("");
  const sound = codeOf(heard);
  const places = candidates(text, heard, book);
  if (places.length === 0) return [];
  const fuse = new Fuse(
    places.map((place) => book.targets[place]?.text ?? ""),
    { includeScore: true, threshold: 0.6, distance: 20, ignoreFieldNorm: true, shouldSort: false },
  );
  const judged = new Map(
    fuse.search(text).map(({ refIndex, score }) => [refIndex, 1 - (score ?? 1)]),
  );
  const best = new Map<number, NearMatch>();
  places.forEach((place, i) => {
    const target = book.targets[place];
    if (!target) return;
    const match = judge(text, sound, target, judged.get(i) ?? 0);
    match.likeness *= agreement(keys, target.words);
    if (match.likeness < LEAST) return;
    const known = best.get(target.entry);
    if (!known || match.likeness > known.likeness) best.set(target.entry, match);
  });
  return [...best.values()].sort((a, b) => b.likeness - a.likeness);
}

/**
 * How well the words agree one by one: a phrase of as many words has none
 * that is quite another ("pp subito" is not "p subito").
 */
function agreement(keys: readonly string[], words: readonly string[]): number {
  if (keys.length !== words.length) return OTHER_COUNT;
  if (keys.length === 1) return 1;
  const agree = keys.every((key, i) => {
    const word = words[i] ?? "";
    if (key === word) return true;
    if (DYNAMIC.test(key) || DYNAMIC.test(word)) return false;
    if (editDistance(key, word, 2) <= Math.max(key.length, word.length) * 0.4) return true;
    return soundLikeness(codeOf(soundOfEnglish(key)), codeOf(soundOfEnglish(word))) >= 0.6;
  });
  return agree ? 1 : OTHER_WORD;
}

function candidates(text: string, heard: string, book: NearBook): number[] {
  const { targets, pairs, skeletons, starts } = book;
  if (text.length === 2) return [...(starts.get(text) ?? [])];
  const shared = new Uint8Array(targets.length);
  const touched: number[] = [];
  for (const pair of pairsOf(text)) {
    for (const place of pairs.get(pair) ?? []) {
      const before = shared[place] ?? 0;
      if (before === 0) touched.push(place);
      if (before < 255) shared[place] = before + 1;
    }
  }
  const all = new Set<number>();
  for (const place of mostShared(text, touched, shared, targets)) all.add(place);
  for (const bones of fewer(skeleton(heard))) {
    for (const place of skeletons.get(bones) ?? []) {
      const length = targets[place]?.sound.length ?? 0;
      if (Math.abs(length - heard.length) <= LENGTH_APART) all.add(place);
    }
  }
  for (const place of starts.get(text.slice(0, 2)) ?? []) {
    if (targets[place]?.text.startsWith(text)) all.add(place);
  }
  return [...all];
}

/** The places that share most of their letter pairs with the text, or hold most of the text's. */
function mostShared(
  text: string,
  touched: readonly number[],
  shared: Uint8Array,
  targets: readonly Target[],
): number[] {
  const whole: { place: number; share: number }[] = [];
  const piece: { place: number; share: number }[] = [];
  for (const place of touched) {
    const pairs = shared[place] ?? 0;
    const length = targets[place]?.text.length ?? 0;
    const share = pairs / (text.length + length + 2);
    if (share >= LEAST_PAIRS) whole.push({ place, share });
    const cover = pairs / (text.length + 1);
    if (length > text.length && cover >= LEAST_COVER) {
      piece.push({ place, share: cover - length / 100 });
    }
  }
  const best = (list: typeof whole, most: number) =>
    list.sort((a, b) => b.share - a.share).slice(0, most);
  return [...best(whole, BY_PAIRS), ...best(piece, BY_COVER)].map(({ place }) => place);
}

/** @param fuse how well the text fits some piece of the target, by Fuse.js; 0 to 1 */
function judge(text: string, sound: SoundCode, target: Target, fuse: number): NearMatch {
  const { entry } = target;
  const length = target.text.length;
  const slips = editDistance(text, target.text, MOST_SLIPS);
  const spelt = slips > MOST_SLIPS ? 0 : 1 - slips / Math.max(text.length, length);
  const heard = soundLikeness(sound, target.sound) * AS_HEARD;
  const cover = text.length / length;
  const begun = target.text.startsWith(text) ? BEGINNING.least + BEGINNING.rest * cover : 0;
  const piece = cover < 1 ? fuse * (PIECE.least + PIECE.rest * cover) : 0;
  const likeness = Math.max(spelt, heard, begun, piece);
  if (likeness === begun) return { entry, likeness, by: "beginning" };
  return { entry, likeness, by: likeness === heard ? "sound" : "misspelling" };
}
