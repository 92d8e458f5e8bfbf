import { ZERO } from "../fraction";
import { checkCount, type ReadLimits } from "../limits";
import type {
  Fraction,
  Mark,
  MarkRole,
  Measure,
  Note,
  ScorePart,
  SoundJump,
  TimeSignature,
} from "../model";
import { WarningList } from "../warnings";
import type { XmlElement } from "../xml/element-tree";
import type { Attributes } from "../xml/elements";
import type { SectionNode } from "./expansion";
import type { OctaveLine } from "./octave-lines";

/** A part and the staves it is written on. */
export interface StaffState {
  /** The staff's @n. */
  n: string;
  part: ScorePart;
  /** From 1 within the part. */
  index: number;
  time: TimeSignature | null;
  fifths: number | null;
  /** Note value where none is written (dur.default). */
  defaultDur: string | null;
  /** Pulses of dur.ppq to a quarter note. */
  pulses: number | null;
}

/** Where in the music something with an xml:id stands. */
export interface Target {
  staff: StaffState;
  /** Index into the part's notes, null for a space. */
  note: number | null;
  measureIndex: number;
  onset: Fraction;
  end: Fraction;
  voice: string;
}

/** Where a mark goes. */
export interface Place {
  staff: StaffState;
  measureIndex: number;
  onset: Fraction;
  note: number | null;
  voice: string | null;
}

/** End of a span, found once all measures are read. */
export type SpanEnd =
  | { kind: "target"; id: string; after: boolean }
  | { kind: "beat"; measureIndex: number; beat: Fraction }
  | { kind: "length"; measureIndex: number; onset: Fraction };

export interface MarkFields {
  value?: string | null;
  text?: string | null;
  role?: MarkRole;
  number?: string | null;
  placement?: "above" | "below" | null;
  group?: number;
}

/** All that is known while an MEI file is read. */
export class MeiState {
  tree: XmlElement[] = [];
  version: string | null = null;
  title = "";
  titlePart = "";
  readonly staves: StaffState[] = [];
  readonly parts: ScorePart[] = [];
  readonly measures: Measure[] = [];
  /** Beat type by measure, for beats counted from elsewhere. */
  readonly beatTypes: number[] = [];
  readonly targets = new Map<string, Target>();
  readonly pending: { mark: Mark; part: ScorePart; end: SpanEnd }[] = [];
  readonly warnings = new WarningList();
  /** Time signs printed at the next measure, by part. */
  readonly timeSigns: { part: ScorePart; symbol: string }[] = [];
  /** The measure read last ended with the start of a repeat. */
  repeatStartsNext = false;
  movementStarts = true;
  readonly octaveLines: OctaveLine[] = [];
  /** Notes that state their sounding octave. */
  readonly soundingOctaves = new Set<Note>();
  /** Repeat marks with func coda since the movement began. */
  codas: { jump: SoundJump; measure: Measure }[] = [];
  /** Root of each movement, for the playing order. */
  readonly movements: SectionNode[] = [];
  readonly openSections: SectionNode[] = [];
  /** Endings open now with their first measure. */
  readonly endings: { attributes: Attributes; first: number }[] = [];
  /** Ties and slurs written as attributes, so that an element for the same sign adds nothing. */
  readonly joined = new Set<string>();
  /** First note by measure, staff and onset, for marks placed by beat; made when first needed. */
  notesByPlace: Map<string, number[]> | null = null;
  groups = 0;
  private signs = 0;

  constructor(
    readonly file: string,
    readonly limits: ReadLimits,
  ) {}

  get measure(): Measure | undefined {
    return this.measures[this.measures.length - 1];
  }

  warn(code: string, message: string, partId: string | null = null): void {
    const measureNumber = this.measure?.number ?? null;
    this.warnings.add({ code, message, measureNumber, partId });
  }

  /** Counts a note or mark against the limit. */
  countSign(): void {
    const { signs } = this.limits;
    if (++this.signs > signs) {
      checkCount(this.file, this.signs, { limit: signs, things: "notes and marks" });
    }
  }

  joinKey(part: ScorePart, element: string, role: MarkRole, note: number): string {
    return `${part.id} ${element} ${role} ${note}`;
  }

  makeMark(place: Place, element: string, fields: MarkFields = {}): Mark {
    return {
      element,
      value: fields.value ?? null,
      text: fields.text ?? null,
      role: fields.role ?? "point",
      number: fields.number ?? null,
      measureIndex: place.measureIndex,
      onset: place.onset,
      staff: place.staff.index,
      voice: place.voice,
      note: place.note,
      group: fields.group ?? -1,
      placement: fields.placement ?? null,
    };
  }

  mark(place: Place, element: string, fields: MarkFields = {}): Mark {
    const mark = this.makeMark(place, element, fields);
    place.staff.part.marks.push(mark);
    this.countSign();
    return mark;
  }

  /** A mark whose place is the end of a span, which may lie measures ahead. */
  markAtEnd(place: Place, end: SpanEnd, mark: { element: string; fields: MarkFields }): Mark {
    const made = this.makeMark({ ...place, note: null }, mark.element, mark.fields);
    this.pending.push({ mark: made, part: place.staff.part, end });
    this.countSign();
    return made;
  }

  /** A mark of every part at the barline: it speaks for the whole part. */
  markAll(element: string, onset: Fraction, fields: MarkFields = {}): Mark[] {
    const measureIndex = this.measures.length - 1;
    return this.parts.flatMap((part) => {
      const staff = this.staves.find((candidate) => candidate.part === part);
      if (staff === undefined) return [];
      const place = { staff, measureIndex, onset, note: null, voice: null };
      const mark = this.mark(place, element, fields);
      mark.staff = null;
      return [mark];
    });
  }
}

export function newNote(measureIndex: number, onset: Fraction, voice: string, staff: number): Note {
  return {
    measureIndex,
    onset,
    duration: ZERO,
    pitch: null,
    rest: false,
    chord: false,
    grace: null,
    cue: false,
    voice,
    staff,
    tieStart: false,
    tieStop: false,
  };
}
