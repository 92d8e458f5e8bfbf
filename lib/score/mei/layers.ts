import { addFractions, multiplyFractions, ZERO } from "../fraction";
import type { Fraction, Note } from "../model";
import { timeLength } from "../time-length";
import type { XmlElement } from "../xml/element-tree";
import { scaled, tupletScale, writtenLength } from "./durations";
import { childrenOf } from "./editorial";
import { type MeiState, newNote, type Place, type StaffState } from "./mei-state";
import { markNote } from "./note-marks";
import { pitchOf } from "./pitch";
import { readFifths, signTime } from "./staves";

/** One layer while it is read. */
interface LayerReader {
  state: MeiState;
  staff: StaffState;
  voice: string;
  measureIndex: number;
  cursor: Fraction;
  /** Product of the tuplets around. */
  scale: Fraction;
  grace: "slash" | "plain" | null;
  cue: boolean;
  /** Scales by id from tupletSpan elements. */
  spans: ReadonlyMap<string, Fraction>;
  /** Notes that last the whole measure, whatever that turns out to be. */
  fullMeasure: Note[];
}

type EventReader = (layer: LayerReader, element: XmlElement) => void;

/** Length of an event in quarters; `outer` is the chord it belongs to. */
function lengthOf(layer: LayerReader, element: XmlElement): Fraction {
  const { state, staff } = layer;
  const { attributes } = element;
  if (layer.grace !== null || attributes.grace !== undefined) return ZERO;
  const dur = attributes.dur ?? staff.defaultDur;
  const dotChildren = childrenOf(element).filter(({ name }) => name === "dot").length;
  const dots = attributes.dots === undefined ? dotChildren : Number(attributes.dots);
  const written = dur === null ? null : writtenLength(dur, Number.isInteger(dots) ? dots : 0);
  const id = attributes["xml:id"];
  const span = id === undefined ? undefined : layer.spans.get(id);
  const scale = span === undefined ? layer.scale : multiplyFractions(layer.scale, span);
  const length = written === null ? null : scaled(written, scale);
  if (length !== null) return length;
  state.warn(
    "no-duration",
    `A ${element.name} has no usable duration; it is given no length.`,
    staff.part.id,
  );
  return ZERO;
}

function placeNow({ staff, measureIndex, cursor, voice }: LayerReader, note: number | null): Place {
  return { staff, measureIndex, onset: cursor, note, voice };
}

function remember(
  layer: LayerReader,
  element: XmlElement,
  note: number | null,
  length: Fraction,
): void {
  const id = element.attributes["xml:id"];
  if (id === undefined) return;
  const { staff, measureIndex, cursor: onset, voice } = layer;
  layer.state.targets.set(id, {
    staff,
    note,
    measureIndex,
    onset,
    end: addFractions(onset, length),
    voice,
  });
}

function advance(layer: LayerReader, length: Fraction): void {
  layer.cursor = addFractions(layer.cursor, length);
}

/** Staff within the part a cross-staff note is printed on. */
function printedStaff({ state, staff }: LayerReader, n: string | undefined): number {
  const other = n === undefined ? undefined : state.staves.find((candidate) => candidate.n === n);
  return other?.part === staff.part ? other.index : staff.index;
}

function graceOf(layer: LayerReader, element: XmlElement): Note["grace"] {
  const { grace } = element.attributes;
  if (grace === undefined && layer.grace === null) return null;
  if (grace === "unacc" || element.attributes["stem.mod"] === "1slash") return "slash";
  return layer.grace === "slash" && grace === undefined ? "slash" : "plain";
}

function addNote(
  layer: LayerReader,
  element: XmlElement,
  length: Fraction,
): { note: Note; index: number } {
  const { staff, measureIndex, cursor, voice } = layer;
  const note = newNote(measureIndex, cursor, voice, printedStaff(layer, element.attributes.staff));
  note.duration = length;
  note.cue = layer.cue || element.attributes.cue === "true" || element.attributes.size === "cue";
  staff.part.notes.push(note);
  const index = staff.part.notes.length - 1;
  note.pitch = pitchOf(element);
  if (element.attributes["oct.ges"] !== undefined) layer.state.soundingOctaves.add(note);
  remember(layer, element, index, length);
  return { note, index };
}

function readNote(layer: LayerReader, element: XmlElement): void {
  const length = lengthOf(layer, element);
  const { note, index } = addNote(layer, element, length);
  note.grace = graceOf(layer, element);
  markNote(layer.state, placeNow(layer, index), element, note);
  advance(layer, length);
}

function readChord(layer: LayerReader, element: XmlElement): void {
  const length = lengthOf(layer, element);
  const grace = graceOf(layer, element);
  const first = layer.staff.part.notes.length;
  let chord = false;
  for (const child of childrenOf(element)) {
    if (child.name !== "note") continue;
    const { note, index } = addNote(layer, child, length);
    note.grace = grace;
    note.chord = chord;
    note.cue = note.cue || element.attributes.cue === "true";
    const place = placeNow(layer, index);
    if (!chord) markNote(layer.state, place, withoutTie(element), { ...note });
    markNote(layer.state, place, withTieOf(child, element), { ...note, grace: null, cue: false });
    setTies(note, child.attributes.tie ?? element.attributes.tie);
    chord = true;
  }
  if (chord) remember(layer, element, first, length);
  advance(layer, length);
}

/** A tie on the chord ties every note of it. */
function withTieOf(note: XmlElement, { attributes }: XmlElement): XmlElement {
  return {
    ...note,
    attributes: { ...note.attributes, tie: note.attributes.tie ?? attributes.tie },
  };
}

function withoutTie(element: XmlElement): XmlElement {
  return { ...element, attributes: { ...element.attributes, tie: undefined } };
}

function setTies(note: Note, tie: string | undefined): void {
  const letter = tie?.trim().charAt(0);
  if (letter === "i" || letter === "m") note.tieStart = true;
  if (letter === "t" || letter === "m") note.tieStop = true;
}

function readRest(layer: LayerReader, element: XmlElement): void {
  const length = lengthOf(layer, element);
  const { note, index } = addNote(layer, element, length);
  note.rest = true;
  markNote(layer.state, placeNow(layer, index), element);
  advance(layer, length);
}

function readSpace(layer: LayerReader, element: XmlElement): void {
  const length = lengthOf(layer, element);
  remember(layer, element, null, length);
  advance(layer, length);
}

function addFullMeasure(layer: LayerReader, element: XmlElement): number {
  const { note, index } = addNote(layer, element, ZERO);
  note.rest = true;
  layer.fullMeasure.push(note);
  return index;
}

const readMeasureRest: EventReader = (layer, element) => {
  const index = addFullMeasure(layer, element);
  markNote(layer.state, placeNow(layer, index), element);
};

const readMultiRest: EventReader = (layer, element) => {
  addFullMeasure(layer, element);
  layer.state.mark(placeNow(layer, null), "multiple-rest", {
    value: element.attributes.num ?? null,
  });
};

function measureRepeat(count: (element: XmlElement) => string | null): EventReader {
  return (layer, element) => {
    const value = count(element);
    layer.state.mark(placeNow(layer, null), "measure-repeat", { value, role: "start" });
  };
}

/** Moves on by part of the measure: one beat, or half of it. */
function partRepeat(name: string, length: (staff: StaffState) => Fraction): EventReader {
  return (layer) => {
    layer.state.mark(placeNow(layer, null), name, {
      role: name === "beat-repeat" ? "start" : "point",
    });
    advance(layer, length(layer.staff));
  };
}

function readInside(layer: LayerReader, element: XmlElement): void {
  readEvents(layer, childrenOf(element));
}

const readTuplet: EventReader = (layer, element) => {
  const { num, numbase } = element.attributes;
  const scale = tupletScale(num, numbase);
  if (scale === null) {
    layer.state.warn(
      "bad-tuplet",
      "A tuplet gives no usable ratio; its notes keep their written length.",
      layer.staff.part.id,
    );
  }
  const first = layer.staff.part.notes.length;
  const start = placeNow(layer, first);
  const outer = layer.scale;
  layer.scale = scale === null ? outer : multiplyFractions(outer, scale);
  const before = layer.staff.part.marks.length;
  readInside(layer, element);
  layer.scale = outer;
  const last = layer.staff.part.notes.length - 1;
  if (last < first) return;
  const value = scale === null ? null : `${num}:${numbase}`;
  const opening = layer.state.makeMark(start, "tuplet", { value, role: "start" });
  layer.staff.part.marks.splice(before, 0, opening);
  const onset = layer.staff.part.notes[last]?.onset ?? layer.cursor;
  layer.state.mark({ ...start, note: last, onset }, "tuplet", { role: "stop" });
};

const readGraceGroup: EventReader = (layer, element) => {
  const outer = layer.grace;
  layer.grace = element.attributes.grace === "unacc" ? "slash" : "plain";
  readInside(layer, element);
  layer.grace = outer;
};

/** Strokes that `unitdur` adds to the flags the note has itself, null when it does not say. */
function strokesOf({ attributes }: XmlElement, note: XmlElement | undefined): string | null {
  const mod = /^([1-6])slash$/.exec(note?.attributes["stem.mod"] ?? "")?.[1];
  if (mod !== undefined) return mod;
  if (/^[1-6]$/.test(attributes.beams ?? "")) return attributes.beams ?? null;
  const unit = Math.log2(Number(attributes.unitdur) / 4);
  const own = Math.max(0, Math.log2(Number(note?.attributes.dur ?? 4) / 4));
  return Number.isInteger(unit) && Number.isInteger(own) && unit > own ? `${unit - own}` : null;
}

const readRepeatedTremolo: EventReader = (layer, element) => {
  const [inside] = childrenOf(element).filter(({ name }) => name === "note" || name === "chord");
  const place = placeNow(layer, layer.staff.part.notes.length);
  const value = element.attributes.form === "unmeas" ? "unmeasured" : "single";
  if (inside !== undefined) {
    layer.state.mark(place, "tremolo", { value, text: strokesOf(element, inside) });
  }
  const quiet = childrenOf(element).map((child) => ({
    ...child,
    attributes: { ...child.attributes, "stem.mod": undefined },
  }));
  readEvents(layer, quiet);
};

/** Two notes each written with the length of both together. */
const readFingeredTremolo: EventReader = (layer, element) => {
  const { part } = layer.staff;
  const first = part.notes.length;
  const before = part.marks.length;
  const start = placeNow(layer, first);
  const outer = layer.scale;
  layer.scale = multiplyFractions(outer, [1, 2]);
  readInside(layer, element);
  layer.scale = outer;
  let last = part.notes.length - 1;
  while (last > first && part.notes[last]?.chord === true) last--;
  if (last < first) return;
  const [inside] = childrenOf(element);
  const text = strokesOf(element, inside);
  part.marks.splice(before, 0, layer.state.makeMark(start, "tremolo", { role: "start", text }));
  const onset = part.notes[last]?.onset ?? layer.cursor;
  layer.state.mark({ ...start, note: last, onset }, "tremolo", { role: "stop", text });
};

const readMeterSign: EventReader = (layer, element) => {
  const time = signTime(element, "");
  if (time === undefined) return;
  layer.staff.time = time;
  if (time.symbol !== null) layer.state.mark(placeNow(layer, null), "time", { value: time.symbol });
};

const EVENTS: ReadonlyMap<string, EventReader> = new Map<string, EventReader>([
  ["note", readNote],
  ["chord", readChord],
  ["rest", readRest],
  ["space", readSpace],
  ["mRest", readMeasureRest],
  ["multiRest", readMultiRest],
  ["mRpt", measureRepeat(() => "1")],
  ["mRpt2", measureRepeat(() => "2")],
  ["multiRpt", measureRepeat(({ attributes }) => attributes.num ?? null)],
  ["beatRpt", partRepeat("beat-repeat", ({ time }) => [4, time?.beatType ?? 4])],
  [
    "halfmRpt",
    partRepeat("half-measure-repeat", ({ time }) => multiplyFractions(timeLength(time), [1, 2])),
  ],
  ["beam", readInside],
  ["tuplet", readTuplet],
  ["graceGrp", readGraceGroup],
  ["bTrem", readRepeatedTremolo],
  ["fTrem", readFingeredTremolo],
  ["meterSig", readMeterSign],
  [
    "keySig",
    (layer, element) => {
      const fifths = readFifths(element.attributes.sig);
      if (fifths !== undefined) layer.staff.fifths = fifths;
    },
  ],
]);

function readEvents(layer: LayerReader, elements: readonly XmlElement[]): void {
  for (const element of elements) EVENTS.get(element.name)?.(layer, element);
}

/** What one staff of a measure holds. */
export interface StaffContent {
  length: Fraction;
  fullMeasure: Note[];
}

/** Reads all layers of a staff element into its part. */
export function readStaff(
  state: MeiState,
  options: { staff: StaffState; element: XmlElement; spans: ReadonlyMap<string, Fraction> },
): StaffContent {
  const { staff, element, spans } = options;
  const measureIndex = state.measures.length - 1;
  const fullMeasure: Note[] = [];
  let length = ZERO;
  let count = 0;
  for (const child of childrenOf(element)) {
    if (child.name !== "layer") continue;
    count++;
    const layer: LayerReader = {
      state,
      staff,
      voice: child.attributes.n ?? `${count}`,
      measureIndex,
      cursor: ZERO,
      scale: [1, 1],
      grace: null,
      cue: child.attributes.cue === "true",
      spans,
      fullMeasure,
    };
    const events = childrenOf(child);
    // An empty layer is written as one space without a length.
    const isEmpty = events.length === 1 && events[0]?.name === "space" && !events[0].attributes.dur;
    if (!isEmpty) readEvents(layer, events);
    if (layer.cursor[0] * length[1] > length[0] * layer.cursor[1]) length = layer.cursor;
  }
  return { length, fullMeasure };
}
