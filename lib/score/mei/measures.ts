import { compareFractions, multiplyFractions, ZERO } from "../fraction";
import { checkCount } from "../limits";
import type { Fraction, Measure, Note } from "../model";
import { timeLength } from "../time-length";
import type { XmlElement } from "../xml/element-tree";
import { markBarline, markLeftBarline } from "./barlines";
import { readControlEvent } from "./control-events";
import { idOf } from "./control-places";
import { tupletScale } from "./durations";
import { childrenOf } from "./editorial";
import { readStaff } from "./layers";
import type { MeiState } from "./mei-state";
import { staffNumbered } from "./staves";

function addMeasure(state: MeiState, { attributes }: XmlElement): Measure {
  const index = state.measures.length;
  checkCount(state.file, index + 1, { limit: state.limits.measures, things: "measures" });
  const number = attributes.n ?? attributes.label ?? "";
  const measure: Measure = {
    index,
    number,
    implicit: attributes.metcon === "false" || (state.movementStarts && number === "0"),
    length: ZERO,
    time: null,
    fifths: null,
    repeatStart: state.repeatStartsNext,
    repeatEnd: null,
    endingStart: null,
    endingText: null,
    endingStop: null,
    barStyle: null,
    movementStart: state.movementStarts,
    jumps: [],
  };
  state.measures.push(measure);
  state.openSections[state.openSections.length - 1]?.items.push(index);
  state.notesByPlace = null;
  state.movementStarts = false;
  state.repeatStartsNext = false;
  return measure;
}

function printTimeSigns(state: MeiState): void {
  for (const { part, symbol } of state.timeSigns.splice(0)) {
    const staff = state.staves.find((candidate) => candidate.part === part);
    if (staff === undefined) continue;
    const measureIndex = state.measures.length - 1;
    const place = { staff, measureIndex, onset: ZERO, note: null, voice: null };
    state.mark(place, "time", { value: symbol }).staff = null;
  }
}

const TIMED = new Set(["note", "chord", "rest", "space"]);

/** Ids of the events of a layer in order; chord notes count with their chord. */
function eventIds(element: XmlElement): string[] {
  return childrenOf(element).flatMap((child) => {
    if (!TIMED.has(child.name)) return eventIds(child);
    const id = child.attributes["xml:id"];
    return id === undefined ? [] : [id];
  });
}

/** Tuplet spans followed in one measure. */
const MAX_SPANS = 500;

/** Scale of every event under a tupletSpan of this measure, by id. */
function spanScales(measure: XmlElement): Map<string, Fraction> {
  const scales = new Map<string, Fraction>();
  const children = childrenOf(measure);
  const spans = children.filter(({ name }) => name === "tupletSpan");
  if (spans.length === 0) return scales;
  const layers = children
    .filter(({ name }) => name === "staff")
    .flatMap(childrenOf)
    .map(eventIds);
  const places = new Map(layers.flatMap((ids) => ids.map((id, at) => [id, { ids, at }] as const)));
  for (const { attributes } of spans.slice(0, MAX_SPANS)) {
    const scale = tupletScale(attributes.num, attributes.numbase);
    const start = places.get(idOf(attributes.startid) ?? "");
    const end = places.get(idOf(attributes.endid) ?? "");
    if (scale === null || start === undefined || end?.ids !== start.ids) continue;
    for (const id of start.ids.slice(start.at, end.at + 1)) {
      scales.set(id, multiplyFractions(scales.get(id) ?? [1, 1], scale));
    }
  }
  return scales;
}

function readStaves(state: MeiState, element: XmlElement, measure: Measure): void {
  const spans = spanScales(element);
  const fullMeasure: Note[] = [];
  for (const child of childrenOf(element)) {
    if (child.name !== "staff") continue;
    const staff = staffNumbered(state, child.attributes.n ?? "1");
    const content = readStaff(state, { staff, element: child, spans });
    fullMeasure.push(...content.fullMeasure);
    if (compareFractions(content.length, measure.length) > 0) measure.length = content.length;
  }
  const [first] = state.staves;
  measure.time = first?.time ?? null;
  measure.fifths = first?.fifths ?? null;
  if (measure.length[0] === 0) measure.length = timeLength(measure.time);
  for (const note of fullMeasure) note.duration = measure.length;
  state.beatTypes.push(measure.time?.beatType ?? 4);
}

/** Reads one measure: barline, staves, then the events written beside them. */
export function readMeasure(state: MeiState, element: XmlElement): void {
  const measure = addMeasure(state, element);
  markLeftBarline(state, measure, element);
  printTimeSigns(state);
  readStaves(state, element, measure);
  for (const child of childrenOf(element)) readControlEvent(state, child);
  markBarline(state, measure, element);
}
