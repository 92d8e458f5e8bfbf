import { isFiller, type Phrase, phrasesFrom } from "./english-phrases";
import { splitEnglish } from "./split-english";
import { stem } from "./stem";

/**
 * One thing a text says: a concept (`slower`, `very slow`, `without mute`) or
 * a bare stem (`~bridg`). Of several names any one may be meant.
 */
export interface Sense {
  names: readonly string[];
  /** 0 to 1. */
  weight: number;
  /** Share of it that counts as said besides, when it was not asked for; 1 if left out. */
  bulk?: number;
}

/** One word or phrase of the text, as what it may mean. */
interface Item {
  concepts: string[];
  stems: string[];
}

/** Weight of a word's own stem when the table knows what it means; a phrase shares a little more. */
const STEM_BESIDE_CONCEPT = 0.2;
const STEMS_OF_PHRASE = 0.1;
/** Weight of a word inside a joined pair: "very slow" is also, less, slow. */
const INSIDE_PAIR = 0.7;
/** "With movement" is con moto rather than moto. */
const WITH = 0.3;
const HEDGED = 0.75;
/** "Very marked" is marked first. */
const EMPHASIS = 0.5;
const INSIDE_NEGATION = 0.2;
/** "As fast as possible" is at least very fast. */
const AT_LEAST = 0.4;

const BESIDE_PAIR = 0.3;
/** A degree that qualifies a scale, by the name it has in the pair. */
const DEGREES: Readonly<Record<string, string>> = {
  very: "very",
  most: "most",
  moderate: "moderate",
  rather: "moderate",
};
/** Steps along a scale: less fast is slower. */
const STEPS: Readonly<Record<string, string>> = {
  "less fast": "slower",
  "less slow": "faster",
  "more fast": "faster",
  "more slow": "slower",
  "less level-f": "softer",
  "less level-p": "louder",
  "more level-f": "louder",
  "more level-p": "softer",
};
/** "A little broad" is not quite broad. */
const HEDGES = new Set(["slightly", "almost"]);
const SCALES = new Set(["slow", "fast", "level-p", "level-f", "short"]);
/** A number that is a count of beats or measures; 2, 3, 8 or 15 may stand for a sign of its own. */
const BIG_NUMBER = /^(?:1[79]|1[0-46-9]|[2-9]\d|\d{3})$/;
const NUMBER = /^\d+$/;
const SUPERLATIVE = /^(?:loud|soft|quiet|slow|fast|quick|short|strong|long|light|heavi)est$/;

/**
 * What a text in plain English says. A text of nothing but filler ("with") is read word by word.
 * @example readEnglish("get slower bit by bit") // slower 1, ~slower .25, gradually 1, …
 */
export function readEnglish(text: string | readonly string[]): Sense[] {
  const words = typeof text === "string" ? splitEnglish(text) : text;
  const senses = distinctSenses(joinItems(readItems(words)));
  if (senses.length > 0) return senses;
  return words.map((word) => ({ names: [`~${stem(word)}`], weight: 1 }));
}

const words = new Map<string, Sense[]>();

/** The same few characters are read for hundreds of entries. */
function readWord(word: string): Sense[] {
  let known = words.get(word);
  if (!known) {
    known = readEnglish(word);
    words.set(word, known);
  }
  return known;
}

function readItems(words: readonly string[]): Item[] {
  const stems = words.map(stem);
  const items: Item[] = [];
  for (let i = 0; i < words.length; ) {
    const word = words[i] ?? "";
    if (SUPERLATIVE.test(word)) {
      items.push({ concepts: ["most"], stems: [] });
      stems[i] = stem(word.replace(/est$/, "").replace(/i$/, "y"));
    }
    const phrase = phrasesFrom(stems[i] ?? "").find((p) => fits(p, stems, i));
    if (phrase) {
      items.push({
        concepts: phrase.concepts,
        stems: phrase.stems.filter((s, k) => !isFiller(words[i + k] ?? s)),
      });
      i += phrase.stems.length;
      continue;
    }
    if (BIG_NUMBER.test(word)) items.push({ concepts: ["number"], stems: [] });
    else if (NUMBER.test(word)) items.push({ concepts: [`~${word}`], stems: ["number"] });
    else if (!isFiller(word)) items.push({ concepts: [], stems: [stems[i] ?? word] });
    i += 1;
  }
  return items;
}

function fits(phrase: Phrase, stems: readonly string[], at: number): boolean {
  return phrase.stems.every((s, k) => stems[at + k] === s);
}

/** Pairs that mean one thing: a degree with a scale, a denial with what it denies. */
function joinItems(items: readonly Item[]): Sense[] {
  const out: Sense[] = [];
  for (let i = 0; i < items.length; i += 1) {
    const item = items[i];
    const next = items[i + 1];
    if (!item) continue;
    const scale = next?.concepts.find((c) => SCALES.has(c));
    const degree = item.concepts.map((c) => DEGREES[c]).find((d) => d !== undefined);
    const step = item.concepts
      .map((c) => STEPS[`${c} ${scale ?? ""}`])
      .find((d) => d !== undefined);
    if (next?.concepts.includes("then") && levelOf(item)) {
      const after = items.slice(i + 2, i + 4).find(levelOf);
      if (after) out.push({ names: [`${levelOf(item)} then ${levelOf(after)}`], weight: 1 });
      out.push(...sensesOf(item, 1));
      i += 1;
    } else if (degree && scale && next) {
      out.push({ names: [`${degree} ${scale}`], weight: 1 }, ...sensesOf(next, INSIDE_PAIR));
      out.push({ names: [degree], weight: BESIDE_PAIR });
      if (degree === "most") out.push({ names: [`very ${scale}`], weight: AT_LEAST });
      i += 1;
    } else if (step && next) {
      out.push({ names: [step], weight: 1 }, ...sensesOf(item, HEDGED));
      i += 1;
    } else if (item.concepts.includes("without") && next) {
      const denied = next.concepts.length > 0 ? next.concepts : next.stems.map((s) => `~${s}`);
      out.push({ names: denied.map((c) => `without ${c}`), weight: 1 });
      out.push({ names: ["without"], weight: 0.5 }, ...sensesOf(next, INSIDE_NEGATION));
      i += 1;
    } else if (next && item.concepts.some((c) => HEDGES.has(c))) {
      out.push(...sensesOf(item, 1), ...sensesOf(next, HEDGED));
      i += 1;
    } else if (next && item.concepts.includes("very")) {
      out.push(...sensesOf(item, EMPHASIS));
    } else out.push(...sensesOf(item, 1));
  }
  return out;
}

function levelOf({ concepts }: Item): string | undefined {
  return concepts.find((c) => c === "level-p" || c === "level-f");
}

function sensesOf({ concepts, stems }: Item, weight: number): Sense[] {
  const own =
    concepts.length === 0
      ? stems[0] === "with"
        ? WITH
        : 1
      : stems.length > 1
        ? STEMS_OF_PHRASE / stems.length
        : STEM_BESIDE_CONCEPT;
  const words = stems.map((s) => ({ names: [`~${s}`], weight: weight * own }));
  return concepts.length === 0 ? words : [{ names: concepts, weight }, ...words];
}

/** Each sense once, with its greatest weight. */
export function distinctSenses(senses: readonly Sense[]): Sense[] {
  const out = new Map<string, Sense>();
  for (const sense of senses) {
    const key = sense.names.length === 1 ? (sense.names[0] ?? "") : sense.names.join();
    const known = out.get(key);
    if (!known || sense.weight > known.weight) out.set(key, sense);
  }
  return [...out.values()];
}

/** What an entry asks (see `ask-concepts.ts`) in the same form; `=word` is read as English. */
export function readAsks(asks: readonly string[]): Sense[] {
  return asks.flatMap((ask): Sense[] => {
    if (ask.startsWith("=")) return readWord(ask.slice(1));
    const [degree = "", scale = ""] = ask.split(" ");
    const whole = { names: [ask], weight: 1 };
    return DEGREES[degree] && SCALES.has(scale)
      ? [whole, { names: [scale], weight: INSIDE_PAIR }]
      : [whole];
  });
}
