/**
 * What a score says, whatever its format: the measures, and for each part its
 * notes and the marks printed with them, in document order. Both readers
 * (MusicXML, MEI) fill this one model; nothing here interprets a mark.
 */

/** Exact number of quarter notes, numerator and denominator, reduced, denominator above 0. */
export type Fraction = readonly [number, number];

export type ScoreFormat = "musicxml" | "mei" | "text";

export interface Score {
  format: ScoreFormat;
  /** Version the file declares ("4.0", "5.0"), null when it declares none. */
  version: string | null;
  title: string | null;
  parts: ScorePart[];
  measures: Measure[];
  /** Measure indices in playing order where the file spells it out (MEI expansion), else null. */
  expansion: number[] | null;
  warnings: ScoreWarning[];
}

export interface ScorePart {
  id: string;
  name: string;
  staves: number;
  /** Semitones from written to sounding pitch (B flat clarinet: -2). */
  transpose: number;
  /** By measure, then document order. */
  marks: Mark[];
  notes: Note[];
}

export interface TimeSignature {
  beats: string;
  beatType: number;
  symbol: "common" | "cut" | null;
}

/** One measure of the score, common to all parts. */
export interface Measure {
  /** From 0, in document order. */
  index: number;
  /** As printed or encoded; may be "0", "12a", "X1" or "". */
  number: string;
  /** A pickup or a split measure that does not count. */
  implicit: boolean;
  /** Longest part's content in quarter notes; the time signature's length when empty. */
  length: Fraction;
  /** In force here, null when the score gives none. */
  time: TimeSignature | null;
  /** Sharps positive, flats negative; of the first part, null when not given. */
  fifths: number | null;
  repeatStart: boolean;
  repeatEnd: RepeatEnd | null;
  /** Passes on which the bracket opening here is played. */
  endingStart: number[] | null;
  /** Printed text of that bracket when it is not just its numbers. */
  endingText: string | null;
  /** The bracket over this measure closes at its right barline. */
  endingStop: "stop" | "discontinue" | null;
  /** Right barline as MusicXML bar-style, null when plain or not given. */
  barStyle: string | null;
  /** A new movement begins here (MEI mdiv, or a da capo must not go further back). */
  movementStart: boolean;
  /** Playback jumps the file encodes beside what it prints. */
  jumps: SoundJump[];
}

export interface RepeatEnd {
  /** Plays in all; null when not given (2 by convention). */
  times: number | null;
  afterJump: boolean | null;
}

/** One attribute of MusicXML `sound`, or its MEI counterpart. */
export interface SoundJump {
  kind: "dacapo" | "dalsegno" | "tocoda" | "fine" | "segno" | "coda" | "forward-repeat";
  /** Name that pairs a jump with its target; "" when unnamed. */
  name: string;
  onset: Fraction;
  /** Passes on which it holds, null for the default. */
  timeOnly: number[] | null;
}

export type MarkRole = "point" | "start" | "stop" | "continue";

/** One printed sign or string of words. */
export interface Mark {
  /** MusicXML element name in both formats: `words`, `f`, `wedge`, `staccato`, `segno`, `metronome`… */
  element: string;
  /** The attribute or content that changes its meaning: wedge `crescendo`, fermata `square`, else null. */
  value: string | null;
  /** Printed text of words, rehearsal, other-dynamics and the like, else null. */
  text: string | null;
  role: MarkRole;
  /** Pairs start and stop of one kind, null when the file gives none. */
  number: string | null;
  measureIndex: number;
  /** From the barline. A wedge or dashes stop after the last note stands at the measure's length. */
  onset: Fraction;
  /** From 1 within the part; null when the file does not say (then it speaks for the whole part). */
  staff: number | null;
  voice: string | null;
  /** Index into `notes` of the note it is attached to, null for a direction. */
  note: number | null;
  /** Marks of one direction element share this number; -1 when attached to a note or barline. */
  group: number;
  placement: "above" | "below" | null;
  /** Ends in silence: wedge niente, dynamics `n`. */
  niente?: true;
  /** Words as SMuFL or formatting may matter: true when italic or bold is encoded. */
  emphasis?: true;
  metronome?: Metronome;
  /** Playback speed in quarter notes a minute that a `sound` gives at this place. */
  soundTempo?: number;
}

export interface BeatUnit {
  /** MusicXML note-type: `quarter`, `half`, `eighth`… */
  unit: string;
  dots: number;
  /** Note values tied on to it, in order: the beat is the sum of all. */
  tied?: BeatUnit[];
}

export interface Metronome {
  beat: BeatUnit;
  /** Beats a minute as a number, null when the print gives none or a range. */
  perMinute: number | null;
  /** As printed, e.g. "c. 66", "88-92", null for an equation of note values. */
  perMinuteText: string | null;
  /** Right side of an equation such as quarter = dotted quarter. */
  equals: BeatUnit | null;
  /** For an equation: which side is the old beat. MusicXML prints old = new. */
  oldSide: "left" | "right";
}

export interface Note {
  measureIndex: number;
  onset: Fraction;
  /** Sounding length in quarter notes; [0, 1] for a grace note. */
  duration: Fraction;
  /**
   * Written pitch as a MIDI number, null for a rest or an unpitched note. Under an
   * octave line it is the octave that sounds, as MusicXML writes it; quarter tones are halves.
   */
  pitch: number | null;
  rest: boolean;
  /** Sounds together with the note before it. */
  chord: boolean;
  grace: "slash" | "plain" | null;
  cue: boolean;
  voice: string;
  staff: number;
  tieStart: boolean;
  tieStop: boolean;
}

export interface ScoreWarning {
  code: string;
  /** One plain sentence: what and what was assumed. */
  message: string;
  measureNumber: string | null;
  partId: string | null;
}
