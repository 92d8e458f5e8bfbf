import type { Mark } from "../model";
import type { XmlElement } from "../xml/element-tree";
import { endOf, idOf, placesOf } from "./control-places";
import { childrenOf, textOf } from "./editorial";
import type { MarkFields, MeiState, Place } from "./mei-state";
import { placementOf } from "./note-marks";
import { readAttacca, readDir, readDynam, readRepeatMark, readTempo } from "./word-events";

/** One event of a measure at one of its places. */
export interface ControlEvent {
  state: MeiState;
  event: XmlElement;
  place: Place;
  /** Measure the event is written in: its tstamp2 counts from there. */
  measureIndex: number;
  /** What every mark of it shares. */
  fields: MarkFields;
  /** False for the second and further staves of the same event. */
  first: boolean;
}

interface EventRule {
  /** The mark belongs to a note. */
  onNote?: boolean;
  read: (control: ControlEvent) => void;
}

/** A start here and a stop at the event's end; returns both where the end is given. */
function span(
  control: ControlEvent,
  element: string,
  fields: MarkFields & { after?: boolean } = {},
): { start: Mark; stop: Mark } | null {
  const { event, state, place, measureIndex } = control;
  const { after, ...startFields } = fields;
  const start = state.mark(place, element, { ...control.fields, ...startFields, role: "start" });
  const end = endOf(event, place, measureIndex, after);
  if (end !== null) {
    const stopFields = { ...control.fields, role: "stop" as const };
    return { start, stop: state.markAtEnd(place, end, { element, fields: stopFields }) };
  }
  state.warn("no-end", `A ${event.name} has no end; only its start is known.`, place.staff.part.id);
  return null;
}

function point(element: string, fieldsOf: (event: XmlElement) => MarkFields = () => ({})) {
  return ({ state, place, fields, event }: ControlEvent): void => {
    state.mark(place, element, { ...fields, ...fieldsOf(event) });
  };
}

function readHairpin(control: ControlEvent): void {
  const { event, state, place, measureIndex, fields } = control;
  const { form } = event.attributes;
  const value = form === "dim" ? "diminuendo" : "crescendo";
  if (form !== "dim" && form !== "cres") {
    const message = "A hairpin does not say which way it opens; it is read as getting louder.";
    state.warn("hairpin-without-form", message, place.staff.part.id);
  }
  const start = state.mark(place, "wedge", { ...fields, value, role: "start" });
  const end = endOf(event, place, measureIndex);
  const niente = event.attributes.niente === "true";
  if (niente && (value === "crescendo" || end === null)) start.niente = true;
  if (end === null) {
    state.warn("no-end", "A hairpin has no end; only its start is known.", place.staff.part.id);
    return;
  }
  const stop = state.markAtEnd(place, end, {
    element: "wedge",
    fields: { ...fields, role: "stop" },
  });
  if (niente && value === "diminuendo") stop.niente = true;
}

const SHAPES: Readonly<Record<string, string>> = { angular: "angled", square: "square" };

const readFermata = point("fermata", ({ attributes }) => ({
  value: SHAPES[attributes.shape ?? ""] ?? null,
  placement: attributes.form === "inv" ? "below" : placementOf(attributes.place),
}));

function readTrill(control: ControlEvent): void {
  const { event, state, place, fields, measureIndex } = control;
  state.mark(place, "trill-mark", fields);
  const end = endOf(event, place, measureIndex);
  if (end === null && event.attributes.extender !== "true") return;
  state.mark(place, "wavy-line", { ...fields, role: "start" });
  if (end !== null)
    state.markAtEnd(place, end, { element: "wavy-line", fields: { ...fields, role: "stop" } });
}

function readMordent({ state, place, fields, event }: ControlEvent): void {
  const { form, long } = event.attributes;
  if (form === undefined) {
    state.warn(
      "mordent-without-form",
      "A mordent does not say upper or lower; it is read as upper.",
      place.staff.part.id,
    );
  }
  const element = form === "lower" ? "mordent" : "inverted-mordent";
  state.mark(place, element, { ...fields, value: long === "true" ? "long" : null });
}

function readTurn({ state, place, fields, event }: ControlEvent): void {
  const { form, delayed } = event.attributes;
  const turn = form === "lower" || form === "inv" ? "inverted-turn" : "turn";
  state.mark(place, delayed === "true" ? `delayed-${turn}` : turn, fields);
}

function readArpeg({ state, place, fields, event }: ControlEvent): void {
  const { order } = event.attributes;
  if (order === "nonarp") state.mark(place, "non-arpeggiate", fields);
  else
    state.mark(place, "arpeggiate", {
      ...fields,
      value: order === "up" || order === "down" ? order : null,
    });
}

/** MEI names where the sign stands, MusicXML the way from sounding to written: 8va above is down. */
function readOctave(control: ControlEvent): void {
  const { dis, coll } = control.event.attributes;
  const below = control.event.attributes["dis.place"] === "below";
  if (coll === "coll") {
    span(control, "coll-octave", { value: dis ?? "8", after: true });
    return;
  }
  const value = `${below ? "up" : "down"}-${dis ?? "8"}`;
  const line = span(control, "octave-shift", { value, after: true });
  if (line !== null) control.state.octaveLines.push({ part: control.place.staff.part, ...line });
}

function readPedal({ state, place, fields, event }: ControlEvent): void {
  const { dir, func } = event.attributes;
  if (func === "soft") {
    state.mark(place, "sound", {
      ...fields,
      value: dir === "up" ? "soft-pedal-no" : "soft-pedal-yes",
    });
    return;
  }
  const kind = func === "sostenuto" || func === "silent" ? func : null;
  if (dir === "up") state.mark(place, "pedal", { ...fields, value: kind, role: "stop" });
  else if (dir === "bounce")
    state.mark(place, "pedal", { ...fields, value: "change", role: "continue" });
  else
    state.mark(place, "pedal", { ...fields, value: dir === "half" ? "half" : kind, role: "start" });
}

const HARP_ACCIDENTALS: Readonly<Record<string, string>> = { f: "b", s: "#" };

const readHarpPedal = point("harp-pedals", ({ attributes }) => ({
  text: ["d", "c", "b", "e", "f", "g", "a"]
    .map((step) => step.toUpperCase() + (HARP_ACCIDENTALS[attributes[step] ?? "n"] ?? ""))
    .join(" "),
}));

/** Slurs and ties written both on the note and as an element are one sign. */
function readJoin(control: ControlEvent, element: "slur" | "tied"): void {
  const { state, place, event, measureIndex, fields } = control;
  const { part } = place.staff;
  if (place.note === null || !state.joined.has(state.joinKey(part, element, "start", place.note))) {
    state.mark(place, element, { ...fields, role: "start" });
  }
  const note = place.note === null ? undefined : part.notes[place.note];
  if (note !== undefined && element === "tied") note.tieStart = true;
  const end = endOf(event, place, measureIndex);
  const target = end?.kind === "target" ? state.targets.get(end.id) : undefined;
  const known =
    target?.note != null &&
    state.joined.has(state.joinKey(target.staff.part, element, "stop", target.note));
  if (end !== null && !known)
    state.markAtEnd(place, end, { element, fields: { ...fields, role: "stop" } });
}

/** Tuplet written over notes rather than around them; their lengths are scaled where they are read. */
function readTupletSpan(control: ControlEvent): void {
  const { num, numbase } = control.event.attributes;
  span(control, "tuplet", {
    value: num !== undefined && numbase !== undefined ? `${num}:${numbase}` : null,
  });
}

const textField = (event: XmlElement): MarkFields => ({ text: textOf(event) || null });

/** Rules by MEI element name; marks carry MusicXML names. */
const RULES: ReadonlyMap<string, EventRule> = new Map<string, EventRule>([
  ["dynam", { read: readDynam }],
  ["tempo", { read: readTempo }],
  ["dir", { read: readDir }],
  ["anchoredText", { read: readDir }],
  ["attacca", { read: readAttacca }],
  ["repeatMark", { read: readRepeatMark }],
  ["reh", { read: point("rehearsal", textField) }],
  ["cpMark", { read: point("cpMark", textField) }],
  ["hairpin", { read: readHairpin }],
  ["octave", { read: readOctave }],
  ["pedal", { read: readPedal }],
  ["harpPedal", { read: readHarpPedal }],
  ["bracketSpan", { read: (control) => span(control, "bracket") }],
  ["fermata", { onNote: true, read: readFermata }],
  ["breath", { onNote: true, read: point("breath-mark", () => ({ value: "comma" })) }],
  ["caesura", { onNote: true, read: point("caesura") }],
  ["trill", { onNote: true, read: readTrill }],
  ["mordent", { onNote: true, read: readMordent }],
  ["turn", { onNote: true, read: readTurn }],
  ["ornam", { onNote: true, read: point("other-ornament", textField) }],
  ["arpeg", { onNote: true, read: readArpeg }],
  [
    "gliss",
    { onNote: true, read: (control) => span(control, "glissando", textField(control.event)) },
  ],
  ["bend", { onNote: true, read: point("bend") }],
  ["fing", { onNote: true, read: point("fingering", textField) }],
  ["lv", { onNote: true, read: point("tied", () => ({ value: "let-ring" })) }],
  ["slur", { onNote: true, read: (control) => readJoin(control, "slur") }],
  ["phrase", { onNote: true, read: (control) => readJoin(control, "slur") }],
  ["tie", { onNote: true, read: (control) => readJoin(control, "tied") }],
  ["tupletSpan", { onNote: true, read: readTupletSpan }],
]);

/** Parts of a measure that are no marks of a player's own part, or are read elsewhere. */
const PASSED_OVER = new Set(
  "staff staffDef scoreDef harm fb annot ossia beamSpan sb pb cb lyrics verse mNum line curve symbol oStaff div".split(
    " ",
  ),
);

/** Reads one control event into marks, one set for each staff it names. */
export function readControlEvent(state: MeiState, event: XmlElement): void {
  if (PASSED_OVER.has(event.name)) return;
  if (event.name === "fingGrp") {
    for (const child of childrenOf(event)) {
      readControlEvent(state, {
        ...child,
        attributes: { ...event.attributes, ...child.attributes },
      });
    }
    return;
  }
  const rule = RULES.get(event.name);
  const { startid, tstamp, plist, place: where } = event.attributes;
  const measureIndex = state.measures.length - 1;
  const isPlaced = startid !== undefined || tstamp !== undefined || idOf(plist) !== null;
  if (rule === undefined && !isPlaced) return;
  const placement = placementOf(where);
  let first = true;
  for (const place of placesOf(state, event, rule?.onNote === true)) {
    const group = rule?.onNote === true ? -1 : state.groups++;
    const fields: MarkFields = { placement, group };
    if (rule !== undefined) rule.read({ state, event, place, measureIndex, fields, first });
    else keepUnknown({ state, event, place, measureIndex, fields, first });
    first = false;
  }
}

function keepUnknown({ state, event, place, fields }: ControlEvent): void {
  state.mark(place, event.name, { ...fields, ...textField(event) });
  state.warn(
    "unknown-element",
    `"${event.name}" is not known; it is kept by its name.`,
    place.staff.part.id,
  );
}
