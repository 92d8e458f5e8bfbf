/** The log of answers: what the student did, never who the student is. */

export const PROMPT_KINDS = [
  "word>meaning",
  "meaning>word",
  "short>full",
  "sign>name",
  "name>sign",
  "heard>marking",
  "alike",
  "passage>asks",
] as const;
/** One question about one entry in one direction. */
export type PromptKind = (typeof PROMPT_KINDS)[number];

/** `slip`: right with a misspelling. `partly`: some of it, or right with help. */
export const OUTCOMES = ["right", "slip", "partly", "missed"] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** One line of the append-only log. Everything shown is folded from these. */
export interface Answer {
  /** Made on the device that wrote it; the union of two logs is by this id. */
  id: string;
  /** When it was given, milliseconds since 1970 UTC, by the device's clock. */
  at: number;
  /** Minutes east of UTC on that device then, so that "today" is the student's own day. */
  offset: number;
  /** Slug of the entry asked about. */
  entry: string;
  prompt: PromptKind;
  outcome: Outcome;
  /** From the prompt shown to the answer given. */
  ms: number;
  help: boolean;
  /** Slug of the entry chosen or typed instead, when the answer named one. */
  chose?: string;
  /** How many alternatives stood there, for prompts that offer some. */
  options?: number;
}
