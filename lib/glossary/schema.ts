import { z } from "zod";
import {
  AMOUNTS,
  ATTACKS,
  CHARACTERS,
  CONNECTIONS,
  KINDS,
  LANGUAGES,
  LENGTHS,
  LEVELS,
  MODIFIER_ROLES,
  PACES,
  RATES,
  ROAD_ACTIONS,
  SHAPES,
  STANDS,
  TECHNIQUE_GROUPS,
  TEMPO_CHANGES,
} from "./vocabulary";

/** Longest meaning, in words: what can be taken in at a glance with an instrument in hand. */
export const MEANING_WORDS = 12;

const slug = z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, "a slug: lower-case ASCII, hyphens");
const text = z.string().trim().min(1);
const spelling = text.max(60);

const tempoRange = z.strictObject({
  low: z.number().int().min(10).max(300).optional(),
  high: z.number().int().min(10).max(300).optional(),
  source: text,
});

/** What a marking asks, axis by axis. An axis that is not asked about is left out. */
export const asksSchema = z.strictObject({
  tempo: z
    .strictObject({
      pace: z.enum(PACES).optional(),
      /** Published metronome ranges in beats a minute, one row per source. */
      ranges: z.array(tempoRange).min(1).optional(),
      change: z.enum(TEMPO_CHANGES).optional(),
      rate: z.enum(RATES).optional(),
      amount: z.enum(AMOUNTS).optional(),
    })
    .optional(),
  dynamics: z
    .strictObject({
      level: z.enum(LEVELS).optional(),
      change: z.enum(["louder", "softer"]).optional(),
      rate: z.enum(RATES).optional(),
      amount: z.enum(AMOUNTS).optional(),
      /** Where the change leads, when the term itself says so (al niente). */
      toward: z.enum(LEVELS).optional(),
      /** Loudness of the first moment when it differs from the level that stays (fp: attack f, level p). */
      attack: z.enum([...LEVELS, "accent"]).optional(),
    })
    .optional(),
  articulation: z
    .strictObject({
      length: z.enum(LENGTHS).optional(),
      attack: z.enum(ATTACKS).optional(),
      connection: z.enum(CONNECTIONS).optional(),
    })
    .optional(),
  character: z.array(z.enum(CHARACTERS)).min(1).max(4).optional(),
  technique: z.strictObject({ name: slug, group: z.enum(TECHNIQUE_GROUPS) }).optional(),
  road: z
    .strictObject({
      action: z.enum(ROAD_ACTIONS),
      until: z.enum(["end", "fine", "coda", "sign"]).optional(),
    })
    .optional(),
});

const signSchema = z.strictObject({
  /** SMuFL glyph name, drawn from the music font; left out when the sign is a line drawn to measure. */
  glyph: z.string().optional(),
  /** MusicXML names that mean this sign: `staccato`, `wedge:crescendo`, `fermata:square`. */
  elements: z.array(z.string().regex(/^[a-z0-9-]+(?::[a-z0-9-]+)?$/)),
  shape: z.enum(SHAPES),
  stands: z.enum(STANDS),
  /** How someone who cannot name it would describe it. */
  looks: z.array(text.max(80)).min(1).max(8),
});

const howSchema = z.strictObject({
  all: text.max(200).optional(),
  winds: text.max(200).optional(),
  strings: text.max(200).optional(),
  percussion: text.max(200).optional(),
  voice: text.max(200).optional(),
  keyboard: text.max(200).optional(),
});

/** Front matter of one entry. Closed: a key not named here is a mistake. Keys stand in this order. */
export const frontMatterSchema = z.strictObject({
  headword: text.max(40),
  lang: z.enum(LANGUAGES),
  kind: z.enum(KINDS),
  tier: z.union([z.literal(1), z.literal(2), z.literal(3)]),
  spellings: z.array(spelling).optional(),
  abbreviations: z.array(spelling).optional(),
  inflections: z.array(spelling).optional(),
  /** Slugs of the parts a compound is read as; the reader finds those, not the compound. */
  composed: z.array(slug).min(2).optional(),
  sign: signSchema.optional(),
  /** A sign with a name of its own that means the same as this term (the dot means staccato). */
  means: slug.optional(),
  literal: text.max(90).optional(),
  meaning: text.refine((m) => m.split(/\s+/).length <= MEANING_WORDS, {
    message: `at most ${MEANING_WORDS} words`,
  }),
  asks: asksSchema,
  modifies: z.enum(MODIFIER_ROLES).optional(),
  how: howSchema.optional(),
  alikes: z
    .array(z.strictObject({ slug, difference: text.max(160) }))
    .max(5)
    .optional(),
  ipa: text.max(60).optional(),
  say: text.max(60).optional(),
  sources: z.array(z.strictObject({ key: slug, note: text.max(240).optional() })).min(1),
  /** How to decide where the sources disagree. */
  disagree: text.max(300).optional(),
  reviewed: z.string().regex(/^\d{4}-\d{2}-\d{2}$/),
});

export type Asks = z.infer<typeof asksSchema>;
export type SignInfo = z.infer<typeof signSchema>;
export type FrontMatter = z.infer<typeof frontMatterSchema>;

/** One term or sign of the glossary. `folder` is its language, or `signs`. */
export type Entry = FrontMatter & { slug: string; folder: string };
