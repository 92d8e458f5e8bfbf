import { addFractions, fraction, isExact, multiplyFractions, ZERO } from "../fraction";
import type { Fraction, Note } from "../model";
import type { XmlElement } from "../xml/element-tree";
import { scaled, writtenLength } from "./durations";
import { childrenOf } from "./editorial";
import { type MeiState, newNote, type Place, type StaffState } from "./mei-state";
import { markNote } from "./note-marks";
import { pitchOf } from "./pitch";

/** One layer while it is read. */
export interface LayerReader {
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
  /** Reads events in order, whatever they are. */
  read: (layer: LayerReader, elements: readonly XmlElement[]) => void;
}

export type EventReader = (layer: LayerReader, element: XmlElement) => void;

/** Length by dur.ppq, for events without a note value; it is the sounding length, tuplets included. */
function pulseLength({ pulses }: StaffState, { attributes }: XmlElement): Fraction | null {
  const count = Number(attributes["dur.ppq"]);
  const usable = pulses !== null && Number.isInteger(count) && count >= 0 && count < 2 ** 24;
  const length = usable ? fraction(count, pulses) : null;
  return length !== null && isExact(length) ? length : null;
}

/** Length of an event in quarters, 0 for a grace note; a chord's notes take the chord's. */
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
  const length = written === null ? pulseLength(staff, element) : scaled(written, scale);
  if (length !== null) return length;
  state.warn(
    "no-duration",
    `A ${element.name} has no usable duration; it is given no length.`,
    staff.part.id,
  );
  return ZERO;
}

export function placeNow(
  { staff, measureIndex, cursor, voice }: LayerReader,
  note: number | null,
): Place {
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

export function advance(layer: LayerReader, length: Fraction): void {
  const next = addFractions(layer.cursor, length);
  if (isExact(next)) {
    layer.cursor = next;
    return;
  }
  const { state, staff } = layer;
  const message = "The lengths in this measure are too fine to add up; one is left out.";
  state.warn("bad-duration", message, staff.part.id);
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

export function addNote(
  layer: LayerReader,
  element: XmlElement,
  length: Fraction,
): { note: Note; index: number } {
  const { staff, measureIndex, cursor, voice } = layer;
  const note = newNote(measureIndex, cursor, voice, printedStaff(layer, element.attributes.staff));
  note.duration = length;
  note.cue = layer.cue || element.attributes.cue === "true" || element.attributes.size === "cue";
  staff.part.notes.push(note);
  layer.state.countSign();
  const index = staff.part.notes.length - 1;
  note.pitch = pitchOf(element);
  if (element.attributes["oct.ges"] !== undefined) layer.state.soundingOctaves.add(note);
  remember(layer, element, index, length);
  return { note, index };
}

export function readNote(layer: LayerReader, element: XmlElement): void {
  const length = lengthOf(layer, element);
  const { note, index } = addNote(layer, element, length);
  note.grace = graceOf(layer, element);
  markNote(layer.state, placeNow(layer, index), element, note);
  advance(layer, length);
}

export function readChord(layer: LayerReader, element: XmlElement): void {
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

export function readRest(layer: LayerReader, element: XmlElement): void {
  const length = lengthOf(layer, element);
  const { note, index } = addNote(layer, element, length);
  note.rest = true;
  markNote(layer.state, placeNow(layer, index), element);
  advance(layer, length);
}

export function readSpace(layer: LayerReader, element: XmlElement): void {
  const length = lengthOf(layer, element);
  remember(layer, element, null, length);
  advance(layer, length);
}
