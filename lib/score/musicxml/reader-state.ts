import { ZERO } from "../fraction";
import { checkCount, type ReadLimits } from "../limits";
import type {
  BeatUnit,
  Fraction,
  Mark,
  MarkRole,
  Measure,
  ScorePart,
  SoundJump,
  TimeSignature,
} from "../model";
import { WarningList } from "../warnings";
import { Clock } from "./clock";

/** One part while it is read. In timewise files all parts are open at once. */
export interface PartState {
  part: ScorePart;
  /** Id as the file writes it; `part.id` may carry a suffix. */
  declaredId: string;
  clock: Clock;
  /** Measures read so far. */
  measures: number;
  /** Transposition has been read once. */
  transposed: boolean;
}

/** The note being read. Reset at each start tag; times in divisions. */
export interface NoteDraft {
  firstMark: number;
  chord: boolean;
  rest: boolean;
  unpitched: boolean;
  grace: "slash" | "plain" | null;
  cue: boolean;
  duration: Fraction | null;
  step: string;
  alter: number;
  octave: number | null;
  voice: string | null;
  staff: number | null;
  tieStart: boolean;
  tieStop: boolean;
  type: string;
  dots: number;
  actual: number;
  normal: number;
}

export interface SoundDraft {
  tempo: number | null;
  jumps: Omit<SoundJump, "onset">[];
  /** Playback instructions as marks: element, value, text. */
  extras: { element: string; value: string | null; text: string | null }[];
  offset: Fraction | null;
}

export interface DirectionDraft {
  firstMark: number;
  offset: Fraction | null;
  /** The offset moves what is heard, too. */
  offsetSounds: boolean;
  placement: "above" | "below" | null;
  staff: number | null;
  voice: string | null;
}

export interface MetronomeDraft {
  /** Note values in print order; `side` 1 is right of the equals sign. */
  units: { beat: BeatUnit; side: 0 | 1 }[];
  side: 0 | 1;
  perMinuteText: string | null;
  /** Written with metronome-note: a rhythm rather than a beat unit. */
  rhythm: boolean;
}

export interface BarlineDraft {
  firstMark: number;
  location: "left" | "right" | "middle";
}

export interface TimeDraft {
  pairs: { beats: string; beatType: string }[];
  symbol: string | undefined;
  staff: number | null;
}

/** A measure while it is read, with what must be told apart from "not given". */
export interface MeasureDraft {
  measure: Measure;
  time: { value: TimeSignature | null } | null;
  fifths: { value: number | null } | null;
}

export function newPart(declaredId: string, id: string, name: string): PartState {
  const part: ScorePart = { id, name, staves: 1, transpose: 0, marks: [], notes: [] };
  return { part, declaredId, clock: new Clock(), measures: 0, transposed: false };
}

/** All that is known while a MusicXML file is read. The handlers of this folder fill it. */
export class ReaderState {
  version: string | null = null;
  workTitle = "";
  movementTitle = "";
  readonly declared: { id: string; name: string; instrument: string }[] = [];
  readonly parts: PartState[] = [];
  readonly measures: MeasureDraft[] = [];
  readonly warnings = new WarningList();
  private readonly names = new Map<string, string>();
  /** Marks at a right barline; they move to the measure's length once that is known. */
  readonly atRightBarline: Mark[] = [];
  /** The part being read; a part of its own outside of any, so that it is never missing. */
  current: PartState = newPart("", "", "");
  measureIndex = -1;
  /** Part ids met in the timewise measure being read. */
  partsInMeasure: string[] = [];
  groups = 0;
  private signs = 0;

  readonly note: NoteDraft = freshNote();
  direction: DirectionDraft | null = null;
  sound: SoundDraft | null = null;
  directionSound: SoundDraft | null = null;
  metronome: MetronomeDraft | null = null;
  barline: BarlineDraft = { firstMark: 0, location: "right" };
  /** Barline marks of this part in this measure, to keep each sign once. */
  barlineMarks: { mark: Mark; location: BarlineDraft["location"] }[] = [];
  /** Measures after a right barline with a forward repeat. */
  readonly repeatStarts = new Set<number>();
  endingNumber = "";
  timeDraft: TimeDraft = { pairs: [], symbol: undefined, staff: null };
  /** First mark of the attributes element being read. */
  attributesMark = 0;
  measureStyleStaff: number | null = null;
  dynamicsMark = 0;
  dynamicsPlacement: "above" | "below" | null = null;
  /** Text pieces of an element told by its children (scordatura, harp pedals, percussion). */
  pieces: string[] = [];
  chromatic = 0;
  headGlyph: string | null = null;

  constructor(
    readonly file: string,
    readonly limits: ReadLimits,
  ) {}

  get marks(): Mark[] {
    return this.current.part.marks;
  }

  /** Adds a mark at the barline, not yet attached to anything; whoever opened it settles it. */
  mark(element: string, value: string | null = null, role: MarkRole = "point"): Mark {
    const mark: Mark = {
      element: this.ownName(element),
      value,
      text: null,
      role,
      number: null,
      measureIndex: this.measureIndex,
      onset: ZERO,
      staff: null,
      voice: null,
      note: null,
      group: -1,
      placement: null,
    };
    this.current.part.marks.push(mark);
    this.countSign();
    return mark;
  }

  /** Counts a note or mark against the limit. */
  countSign(): void {
    const { signs } = this.limits;
    if (++this.signs > signs) {
      checkCount(this.file, this.signs, { limit: signs, things: "notes and marks" });
    }
  }

  /** One string for every use of a name: a name cut from the file would keep a piece of it in memory. */
  private ownName(name: string): string {
    const known = this.names.get(name);
    if (known !== undefined) return known;
    this.names.set(name, name);
    return name;
  }

  /** The mark added last; what is read inside an element belongs to it. */
  get lastMark(): Mark | undefined {
    const { marks } = this.current.part;
    return marks[marks.length - 1];
  }

  get measure(): MeasureDraft | undefined {
    return this.measures[this.measureIndex];
  }

  warn(code: string, message: string): void {
    const measureNumber = this.measure?.measure.number ?? null;
    this.warnings.add({ code, message, measureNumber, partId: this.current.part.id || null });
  }

  /** Opens measure `index`, shared by all parts; the first part to reach it names it. */
  enterMeasure(index: number, number: string, implicit: boolean): void {
    this.measureIndex = index;
    if (index < this.measures.length) {
      if (number !== this.measure?.measure.number) {
        const message = `Parts number this measure differently; "${number}" is read as the same measure.`;
        this.warn("measure-numbers-differ", message);
      }
      return;
    }
    checkCount(this.file, index + 1, { limit: this.limits.measures, things: "measures" });
    this.measures.push({
      measure: freshMeasure(index, number, implicit),
      time: null,
      fifths: null,
    });
  }
}

function freshMeasure(index: number, number: string, implicit: boolean): Measure {
  return {
    index,
    number,
    implicit: implicit || (index === 0 && number === "0"),
    length: ZERO,
    time: null,
    fifths: null,
    repeatStart: false,
    repeatEnd: null,
    endingStart: null,
    endingText: null,
    endingStop: null,
    barStyle: null,
    movementStart: index === 0,
    jumps: [],
  };
}

/** Blank draft; one object serves every note of a file. */
function freshNote(): NoteDraft {
  return {
    firstMark: 0,
    chord: false,
    rest: false,
    unpitched: false,
    grace: null,
    cue: false,
    duration: null,
    step: "",
    alter: 0,
    octave: null,
    voice: null,
    staff: null,
    tieStart: false,
    tieStop: false,
    type: "",
    dots: 0,
    actual: 1,
    normal: 1,
  };
}

/** Makes the draft blank again for the note that starts here. */
export function resetNote(note: NoteDraft, firstMark: number): void {
  Object.assign(note, BLANK_NOTE);
  note.firstMark = firstMark;
}

const BLANK_NOTE: Readonly<NoteDraft> = freshNote();
