/**
 * All that a piece asks, measure by measure: the terms and signs found, what
 * is in force, the order of playing. Facts only, never the page itself, and
 * plain JSON, so that it can be kept, sent and shared.
 */
import type { Kind, Language } from "../glossary/vocabulary";
import type { Fraction, ScoreFormat, ScoreWarning, TimeSignature } from "../score/model";
import type { UnknownGuess } from "../words/explain-unknown";

/** A place in written order. */
export interface Place {
  measureIndex: number;
  /** Quarter notes from the barline. */
  onset: Fraction;
}

export interface Reading {
  version: 1;
  format: ScoreFormat;
  title: string | null;
  parts: ReadingPart[];
  measures: ReadingMeasure[];
  found: Found[];
  unknown: Unknown[];
  /** Tempo for all parts. */
  tempo: TempoState[];
  /** One line for each staff of each part. */
  lines: StaffLine[];
  road: RoadMark[];
  /** Signs with a length: slurs, octave lines, pedals, endings. */
  spans: MarkSpan[];
  playingOrder: number[];
  playingPolicy: string;
  warnings: ScoreWarning[];
}

export interface ReadingPart {
  id: string;
  name: string;
  staves: number;
}

export interface ReadingMeasure {
  index: number;
  number: string;
  implicit: boolean;
  length: Fraction;
  time: TimeSignature | null;
  fifths: number | null;
  /** Sounding notes that begin here, by part, in the parts' order. */
  notes: number[];
}

/** One term or sign where it stands. */
export interface Found extends Place {
  /** Null for a sign that the glossary only names. */
  slug: string | null;
  headword: string;
  kind: Kind;
  lang: Language;
  /** As printed; the sign's name for a symbol. */
  text: string;
  /** MusicXML element name (wedges and repeats with their type), null for words. */
  sign: string | null;
  partIndex: number;
  measureNumber: string;
  staff: number | null;
  /** Words only: 0 to 1, and how it was recognised. */
  sure?: number;
  how?: string;
  also?: string[];
}

export interface Unknown extends Place {
  text: string;
  /** The reader's best guess, null when nothing can be said. */
  guess: UnknownGuess | null;
  partIndex: number;
  measureNumber: string;
}

export interface TempoState extends Place {
  word: string | null;
  quarterBpm: number | null;
  change: "none" | "slowing" | "speeding";
  baseBpm: number | null;
  restoredFrom: number | null;
  /** Relative words: slower, or faster, than this many quarters a minute. */
  belowBpm: number | null;
  aboveBpm: number | null;
  beat: { unit: string; dots: number; perMinute: number | null; text: string | null } | null;
  /** First measure of a change and the one where it is over, as indices. */
  span: [number, number] | null;
  /** A change ended with no word to restore the speed. */
  settled: "slowed" | "quickened" | null;
  /** Time is the player's or the soloist's (ad lib., colla voce, rubato). */
  free: boolean;
  /** Speed the file gives for playback only, quarters a minute. */
  playbackBpm: number | null;
  /** The printed mark that made this state. */
  by: string;
  slugs: string[];
}

export interface StaffLine {
  partIndex: number;
  staff: number;
  dynamics: DynamicState[];
  articulation: MannerState[];
  technique: MannerState[];
  character: MannerState[];
}

export interface DynamicState extends Place {
  /** Last stable level; inside a change the level it started from; null before the first mark. */
  level: string | null;
  change: "none" | "rising" | "falling";
  toward: string | null;
  span: [number, number] | null;
  sudden: boolean;
  persist: boolean;
  /** One-note effect, only at this very place. */
  attack: string | null;
  louderThan: boolean;
  softerThan: boolean;
  /** Measure index that set the level, null before the first mark. */
  source: number | null;
  by: string;
  slugs: string[];
}

/** Articulation, technique or character words holding from this place on. */
export interface MannerState extends Place {
  words: MannerWord[];
}

export interface MannerWord {
  text: string;
  slug: string;
  source: number;
}

/** A jump or its target, in the words of the standard. */
export interface RoadMark extends Place {
  kind: "dacapo" | "dalsegno" | "tocoda" | "fine" | "segno" | "coda";
  until: "end" | "fine" | "coda";
  name: string;
  /** From the file's playback data rather than the print. */
  encoded: boolean;
  timeOnly: number[] | null;
}

/** A sign that reaches from one place to another, the note it ends on included. */
export interface MarkSpan {
  /** MusicXML element name. */
  element: string;
  /** Type of the sign, or the printed text of an ending. */
  value: string | null;
  /** Null where it is for all parts (endings). */
  partIndex: number | null;
  staff: number | null;
  from: Place;
  to: Place;
}
