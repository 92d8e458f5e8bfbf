/** An entry of the glossary, as far as prompts need it. */
export interface PromptEntry {
  slug: string;
  headword: string;
  /** BCP 47 tag of the headword, so that it is spoken aloud rightly. */
  lang: string;
  /** tempo, dynamic, articulation… */
  kind: string;
  meaning: string;
  spellings: readonly string[];
  /** Standard short forms: rit., D.C. */
  abbreviations: readonly string[];
  inflections: readonly string[];
  alikes: readonly { slug: string; difference: string }[];
  /** Name of the sign's glyph in the music font; null for a word. */
  glyph: string | null;
  tier: 1 | 2 | 3;
}

/** Tells whether `b` would be a right answer where `a` is asked for (their demands on the player are equal). */
export type AlsoRight = (a: PromptEntry, b: PromptEntry) => boolean;
