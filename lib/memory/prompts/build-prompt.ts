import { type Random, shuffle } from "../random";
import { drawAlternatives, isAlsoRight, isSynonym } from "./alternatives";
import { foldSpelling } from "./mark-typed";
import type { AlsoRight, PromptEntry } from "./prompt-entry";

/** Kinds built from the glossary alone; the others need a piece or a sound. */
export const WORD_PROMPTS = [
  "word>meaning",
  "meaning>word",
  "sign>name",
  "name>sign",
  "short>full",
  "alike",
] as const;
export type WordPromptKind = (typeof WORD_PROMPTS)[number];

/** A text or sign to be shown; exactly what stands on the page or button. */
export interface Shown {
  text: string;
  /** BCP 47 tag of the text; null for the page's own language. */
  lang: string | null;
  /** Glyph to draw in place of the text, which then is its name for readers who cannot see it. */
  glyph: string | null;
}

export interface PromptChoice extends Shown {
  slug: string;
  right: boolean;
}

export interface Prompt {
  kind: WordPromptKind;
  /** Entry asked about. */
  slug: string;
  question: Shown;
  /** Alternatives in the order to be shown; null when the answer is typed. */
  choices: PromptChoice[] | null;
  /** First letters, where several words would answer and one of them is wanted. */
  hint: string | null;
  /** Entries that would answer too: right in sense, not the word asked for. */
  alsoRight: string[];
  /** What tells the two apart, shown after the answer; null but for `alike`. */
  difference: string | null;
}

/** Why a prompt cannot be built. */
export interface NoPrompt {
  reason: "no-sign" | "no-short-form" | "too-few-alternatives" | "no-alike";
}

export interface BuildOptions {
  pool: readonly PromptEntry[];
  alsoRight: AlsoRight;
  random: Random;
  /** For sign>name: typed or chosen; chosen when left out. */
  typed?: boolean;
  confusions?: ReadonlyMap<string, number>;
  met?: ReadonlySet<string>;
}

/** Wrong alternatives beside the right one: two suffice, three when there are as many. */
const WRONG = { least: 2, most: 3 } as const;

/**
 * Builds one prompt.
 *
 * @returns the prompt, or why the glossary does not allow it for this entry
 */
export function buildPrompt(
  kind: WordPromptKind,
  entry: PromptEntry,
  options: BuildOptions,
): Prompt | NoPrompt {
  return BUILDERS[kind](entry, options);
}

/** Kinds that can be built for an entry, for planning; the result does not depend on chance. */
export function promptKindsOf(
  entry: PromptEntry,
  options: Omit<BuildOptions, "random">,
): WordPromptKind[] {
  const random = () => 0;
  return WORD_PROMPTS.filter((kind) => isPrompt(buildPrompt(kind, entry, { ...options, random })));
}

export function isPrompt(built: Prompt | NoPrompt): built is Prompt {
  return "slug" in built;
}

type Builder = (entry: PromptEntry, options: BuildOptions) => Prompt | NoPrompt;

const BUILDERS: Readonly<Record<WordPromptKind, Builder>> = {
  "word>meaning": (entry, options) =>
    chosen("word>meaning", entry, { question: wordOf(entry), show: meaningOf }, options),
  "meaning>word": (entry, options) =>
    typed("meaning>word", entry, meaningOf(entry), synonyms(entry, options)),
  "sign>name": (entry, options) => {
    if (entry.glyph === null) return { reason: "no-sign" };
    const question = unnamedSign(entry);
    return options.typed
      ? typed("sign>name", entry, question, [])
      : chosen("sign>name", entry, { question, show: wordOf }, options);
  },
  "name>sign": (entry, options) => {
    if (entry.glyph === null) return { reason: "no-sign" };
    const fits = (other: PromptEntry) => other.glyph !== null && other.glyph !== entry.glyph;
    return chosen("name>sign", entry, { question: wordOf(entry), show: signOf, fits }, options);
  },
  "short>full": (entry, { pool, random }) => {
    const short = pick(entry.abbreviations, random);
    if (short === null) return { reason: "no-short-form" };
    const key = foldSpelling(short);
    const same = pool.filter(
      (other) =>
        other.slug !== entry.slug && other.abbreviations.some((a) => foldSpelling(a) === key),
    );
    return typed("short>full", entry, { text: short, lang: entry.lang, glyph: null }, same);
  },
  alike: (entry, { pool, alsoRight, random, confusions }) => {
    const bySlug = new Map(pool.map((other) => [other.slug, other]));
    const pairs = entry.alikes.flatMap(({ slug, difference }) => {
      const other = bySlug.get(slug);
      return other && !isAlsoRight(entry, other, alsoRight) ? [{ other, difference }] : [];
    });
    // The one this student took for it comes before a pair of chance.
    const order = shuffle(pairs, random).sort(
      (a, b) => (confusions?.get(b.other.slug) ?? 0) - (confusions?.get(a.other.slug) ?? 0),
    );
    const pair = order[0];
    if (!pair) return { reason: "no-alike" };
    const choices = shuffle(
      [choiceOf(entry, wordOf, true), choiceOf(pair.other, wordOf, false)],
      random,
    );
    return {
      kind: "alike",
      slug: entry.slug,
      question: meaningOf(entry),
      choices,
      hint: null,
      alsoRight: [],
      difference: pair.difference,
    };
  },
};

interface Showing {
  question: Shown;
  show: (entry: PromptEntry) => Shown;
  fits?: (entry: PromptEntry) => boolean;
}

function chosen(
  kind: WordPromptKind,
  entry: PromptEntry,
  showing: Showing,
  options: BuildOptions,
): Prompt | NoPrompt {
  const { question, show, fits } = showing;
  const wrong = drawAlternatives(entry, { ...options, count: WRONG.most, fits });
  if (wrong.length < WRONG.least) return { reason: "too-few-alternatives" };
  const choices = [
    choiceOf(entry, show, true),
    ...wrong.map((other) => choiceOf(other, show, false)),
  ];
  return {
    kind,
    slug: entry.slug,
    question,
    choices: shuffle(choices, options.random),
    hint: null,
    alsoRight: [],
    difference: null,
  };
}

function typed(
  kind: WordPromptKind,
  entry: PromptEntry,
  question: Shown,
  same: readonly PromptEntry[],
): Prompt {
  return {
    kind,
    slug: entry.slug,
    question,
    choices: null,
    hint: same.length > 0 ? hintFor(entry, same) : null,
    alsoRight: same.map((other) => other.slug),
    difference: null,
  };
}

function synonyms(entry: PromptEntry, { pool, alsoRight }: BuildOptions): PromptEntry[] {
  return pool.filter((other) => other.slug !== entry.slug && isSynonym(entry, other, alsoRight));
}

/** As many first letters as set the word apart from the others of this meaning. */
function hintFor(entry: PromptEntry, others: readonly PromptEntry[]): string {
  for (let n = 1; n < entry.headword.length; n += 1) {
    const start = entry.headword.slice(0, n);
    if (!others.some((other) => other.headword.startsWith(start))) return `${start}…`;
  }
  return `${entry.headword.slice(0, 1)}…`;
}

function wordOf(entry: PromptEntry): Shown {
  return { text: entry.headword, lang: entry.lang, glyph: null };
}

function meaningOf(entry: PromptEntry): Shown {
  return { text: entry.meaning, lang: null, glyph: null };
}

function signOf(entry: PromptEntry): Shown {
  return { text: entry.headword, lang: entry.lang, glyph: entry.glyph };
}

/** A sign to be named: its name must not be read out before the answer. */
function unnamedSign(entry: PromptEntry): Shown {
  return { text: "", lang: null, glyph: entry.glyph };
}

function choiceOf(
  entry: PromptEntry,
  show: (entry: PromptEntry) => Shown,
  right: boolean,
): PromptChoice {
  return { slug: entry.slug, right, ...show(entry) };
}

function pick<T>(items: readonly T[], random: Random): T | null {
  return items[Math.floor(random() * items.length)] ?? null;
}
