import { multiplyFractions, ZERO } from "../fraction";
import type { Fraction, Note } from "../model";
import { timeLength } from "../time-length";
import type { XmlElement } from "../xml/element-tree";
import { childrenOf } from "./editorial";
import {
  addNote,
  advance,
  type EventReader,
  type LayerReader,
  placeNow,
  readChord,
  readNote,
  readRest,
  readSpace,
} from "./events";
import type { MeiState, StaffState } from "./mei-state";
import {
  readFingeredTremolo,
  readGraceGroup,
  readInside,
  readRepeatedTremolo,
  readTuplet,
} from "./note-groups";
import { markNote } from "./note-marks";
import { readFifths, signTime } from "./staves";

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
      read: readEvents,
    };
    const events = childrenOf(child);
    // An empty layer is written as one space without a length.
    const isEmpty = events.length === 1 && events[0]?.name === "space" && !events[0].attributes.dur;
    if (!isEmpty) readEvents(layer, events);
    if (layer.cursor[0] * length[1] > length[0] * layer.cursor[1]) length = layer.cursor;
  }
  return { length, fullMeasure };
}
