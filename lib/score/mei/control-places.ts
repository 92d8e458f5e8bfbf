import {
  addFractions,
  compareFractions,
  fraction,
  multiplyFractions,
  subtractFractions,
  ZERO,
} from "../fraction";
import type { Fraction, Mark } from "../model";
import type { XmlElement } from "../xml/element-tree";
import { beatFraction, writtenLength } from "./durations";
import type { MeiState, Place, SpanEnd, StaffState, Target } from "./mei-state";

/** Events printed once for everybody, usually above the first staff. */
const FOR_ALL = new Set(["tempo", "reh", "repeatMark", "attacca", "mNum"]);

export function idOf(reference: string | undefined): string | null {
  const first = reference?.trim().split(/\s+/)[0];
  return first === undefined || first === "" ? null : first.replace(/^#/, "");
}

function startTarget(state: MeiState, { attributes }: XmlElement): Target | undefined {
  const id = idOf(attributes.startid) ?? idOf(attributes.plist);
  return id === null ? undefined : state.targets.get(id);
}

/** Beat number in this beat type → quarters from the barline; beat 0 is the barline itself. */
function beatOnset(beat: Fraction, beatType: number): Fraction {
  const fromFirst = subtractFractions(beat, [1, 1]);
  return fromFirst[0] <= 0 ? ZERO : multiplyFractions(fromFirst, fraction(4, beatType));
}

function stavesOf(state: MeiState, event: XmlElement, target: Target | undefined): StaffState[] {
  const numbers = (event.attributes.staff ?? "").split(/[\s,]+/).filter((n) => n !== "");
  const named = state.staves.filter(({ n }) => numbers.includes(n));
  if (named.length > 0) return named;
  if (target !== undefined) return [target.staff];
  const [first] = state.staves;
  if (first === undefined) return [];
  if (!FOR_ALL.has(event.name) && state.parts.length > 1) {
    const message = `A ${event.name} names no staff; it is read as standing in the first part.`;
    state.warn("no-staff", message, first.part.id);
  }
  return [first];
}

function eventOnset(state: MeiState, event: XmlElement, staff: StaffState): Fraction {
  const { tstamp } = event.attributes;
  // A rehearsal mark without a beat stands at the barline.
  if (tstamp === undefined && event.name === "reh") return ZERO;
  const beat = tstamp === undefined ? null : beatFraction(tstamp);
  if (beat === null) {
    state.warn(
      "no-place",
      `A ${event.name} has no usable place in its measure; it is read at the barline.`,
      staff.part.id,
    );
    return ZERO;
  }
  const beatType = staff.time?.beatType ?? state.staves[0]?.time?.beatType;
  if (beatType === undefined) {
    state.warn(
      "assumed-beat",
      "Beats are counted in quarter notes, since no time signature is given.",
    );
  }
  const onset = beatOnset(beat, beatType ?? 4);
  const length = state.measure?.length ?? ZERO;
  if (length[0] === 0 || compareFractions(onset, length) <= 0) return onset;
  state.warn(
    "beat-outside-measure",
    `A ${event.name} stands past the end of its measure; it is read at its end.`,
    staff.part.id,
  );
  return length;
}

function placeKey(staff: number, [numerator, denominator]: Fraction): string {
  return `${staff} ${numerator}/${denominator}`;
}

/** Main notes and rests of the measure read last by part, staff and onset, as indices in reading order. */
function notesByPlace(state: MeiState): Map<string, number[]> {
  if (state.notesByPlace !== null) return state.notesByPlace;
  const places = new Map<string, number[]>();
  const measureIndex = state.measures.length - 1;
  for (const part of state.parts) {
    const { notes } = part;
    let first = notes.length;
    while (first > 0 && notes[first - 1]?.measureIndex === measureIndex) first--;
    for (let i = first; i < notes.length; i++) {
      const note = notes[i];
      if (note === undefined || note.chord || note.grace !== null) continue;
      const key = `${part.id} ${placeKey(note.staff, note.onset)}`;
      const there = places.get(key);
      if (there === undefined) places.set(key, [i]);
      else there.push(i);
    }
  }
  state.notesByPlace = places;
  return places;
}

/** The note of this staff and layer that starts here, for marks placed by beat; a rest if there is no note. */
function noteAt(state: MeiState, place: Place, layer: string | undefined): number | null {
  if (place.measureIndex !== state.measures.length - 1) return null;
  const { part, index } = place.staff;
  const there = notesByPlace(state).get(`${part.id} ${placeKey(index, place.onset)}`) ?? [];
  const fitting = layer === undefined ? there : there.filter((i) => part.notes[i]?.voice === layer);
  return fitting.find((i) => part.notes[i]?.rest === false) ?? fitting[0] ?? null;
}

/**
 * Where an event stands, one place for each staff it names: at its start note,
 * else at its beat. A start note that cannot be found is warned of.
 *
 * @param onNote whether the mark belongs to a note rather than to the measure
 */
export function placesOf(state: MeiState, event: XmlElement, onNote: boolean): Place[] {
  const target = startTarget(state, event);
  const { startid, layer } = event.attributes;
  if (startid !== undefined && target === undefined) {
    state.warn("missing-target", `A ${event.name} starts at "${startid}", which is not there.`);
  }
  return stavesOf(state, event, target).map((staff) => {
    const voice = layer ?? null;
    if (target !== undefined && (target.staff === staff || event.attributes.staff === undefined)) {
      const { measureIndex, onset, note } = target;
      return {
        staff: target.staff,
        measureIndex,
        onset,
        note: onNote ? note : null,
        voice: onNote ? target.voice : voice,
      };
    }
    const measureIndex = target?.measureIndex ?? state.measures.length - 1;
    const onset = target?.onset ?? eventOnset(state, event, staff);
    const place: Place = { staff, measureIndex, onset, note: null, voice };
    return onNote ? { ...place, note: noteAt(state, place, layer) } : place;
  });
}

/**
 * End of an event, null when it gives none.
 * @param after the span includes its last note
 */
export function endOf(
  event: XmlElement,
  place: Place,
  measureIndex: number,
  after = false,
): SpanEnd | null {
  const { endid, tstamp2, dur } = event.attributes;
  const id = idOf(endid);
  if (id !== null) return { kind: "target", id, after };
  const match = /^\s*(?:(\d{1,5})m\s*\+\s*)?(\d+(?:\.\d+)?)\s*$/.exec(tstamp2 ?? "");
  const beat = match === null ? null : beatFraction(match[2] ?? "");
  if (beat !== null)
    return { kind: "beat", measureIndex: measureIndex + Number(match?.[1] ?? 0), beat };
  const length =
    dur === undefined
      ? null
      : writtenLength(dur.replace(/\.+$/, ""), dur.match(/\.+$/)?.[0].length ?? 0);
  if (length === null) return null;
  return {
    kind: "length",
    measureIndex: place.measureIndex,
    onset: addFractions(place.onset, length),
  };
}

interface ResolvedEnd {
  measureIndex: number;
  onset: Fraction;
  target: Target | null;
}

function resolveEnd(state: MeiState, end: SpanEnd): ResolvedEnd | null {
  const last = state.measures.length - 1;
  if (end.kind === "target") {
    const target = state.targets.get(end.id);
    if (target === undefined) return null;
    const { measureIndex } = target;
    return {
      measureIndex,
      onset: end.after ? target.end : target.onset,
      target: end.after ? null : target,
    };
  }
  let { measureIndex } = end;
  if (measureIndex > last)
    return { measureIndex: last, onset: state.measures[last]?.length ?? ZERO, target: null };
  let onset =
    end.kind === "beat" ? beatOnset(end.beat, state.beatTypes[measureIndex] ?? 4) : end.onset;
  if (end.kind === "length") {
    for (;;) {
      const length = state.measures[measureIndex]?.length ?? ZERO;
      if (length[0] === 0 || compareFractions(onset, length) <= 0 || measureIndex === last) break;
      onset = subtractFractions(onset, length);
      measureIndex++;
    }
  }
  const length = state.measures[measureIndex]?.length ?? ZERO;
  if (length[0] > 0 && compareFractions(onset, length) > 0) onset = length;
  return { measureIndex, onset, target: null };
}

/** Elements whose stop belongs to the note it ends on. */
const ENDS_ON_NOTE = new Set(["slur", "tied", "glissando", "wavy-line", "tuplet"]);

function attach(mark: Mark, target: Target): void {
  mark.staff = target.staff.index;
  if (!ENDS_ON_NOTE.has(mark.element)) return;
  mark.note = target.note;
  mark.voice = target.voice;
  const note = target.note === null ? undefined : target.staff.part.notes[target.note];
  if (note !== undefined && mark.element === "tied") note.tieStop = true;
}

/** Places the ends of all spans and puts every part's marks in order of measures. */
export function finishMarks(state: MeiState): void {
  for (const { mark, part, end } of state.pending) {
    const resolved = resolveEnd(state, end);
    if (resolved === null) {
      const id = end.kind === "target" ? end.id : "";
      const measureNumber = state.measures[mark.measureIndex]?.number ?? null;
      const message = `A ${mark.element} ends at "${id}", which is not there; its end is not known.`;
      state.warnings.add({ code: "missing-target", message, measureNumber, partId: part.id });
      continue;
    }
    mark.measureIndex = resolved.measureIndex;
    mark.onset = resolved.onset;
    if (resolved.target !== null) attach(mark, resolved.target);
    const home = resolved.target !== null && mark.note !== null ? resolved.target.staff.part : part;
    home.marks.push(mark);
  }
  for (const part of state.parts) part.marks.sort((a, b) => a.measureIndex - b.measureIndex);
}
