import type { Axis, Language } from "../glossary/vocabulary";

/** A stretch of one staff, whole measures, both ends included. */
export interface Passage {
  partIndex: number;
  staff: number;
  from: number;
  to: number;
}

/** The printed mark that makes an answer right, and where it stands. */
export interface Evidence {
  measureIndex: number;
  measureNumber: string;
  /** As printed, or the sign's name. */
  text: string;
  slug: string | null;
  sign: string | null;
}

export interface Option {
  id: string;
  text: string;
  lang: Language;
  /** SMuFL glyph to draw before the text. */
  glyph?: string;
  /** Entry the option stands for, so that a wrong choice names its confusion. */
  slug?: string;
}

interface Asked {
  id: string;
  axis: Axis;
  prompt: string;
  evidence: Evidence[];
  /** Entries the answer shows to be known or not. */
  slugs: string[];
  /** One sentence, said after the answer. */
  reason: string;
}

/** One question about a passage; every right answer is computed from the reading. */
export type Question = Asked &
  (
    | { form: "one"; options: Option[]; right: string }
    | { form: "many"; options: Option[]; right: string[] }
    /** Tap the measures: measure indices. */
    | { form: "measures"; right: number[] }
    /** Right within `tolerance` of `right`, in `unit`. */
    | { form: "number"; right: number; tolerance: number; unit: string }
  );

export type Given = string | string[] | number[] | number | null;

export interface Marked {
  question: Question;
  given: Given;
  outcome: "right" | "partly" | "missed";
}
