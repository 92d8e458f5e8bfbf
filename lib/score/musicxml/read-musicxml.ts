import type { ReadLimits } from "../limits";
import type { Score } from "../model";
import { type Attributes, type ElementTable, elementTable } from "../xml/elements";
import { walkXml, type XmlInput } from "../xml/walk-xml";
import { ATTRIBUTES } from "./attributes";
import { BARLINE } from "./barlines";
import { DIRECTION } from "./directions";
import { finishScore } from "./finish-score";
import { type Handler, textOf } from "./mark-handlers";
import { BACKUP, FORWARD, NOTE } from "./notes";
import { openPart, PART_LIST } from "./parts";
import { newPart, ReaderState } from "./reader-state";
import { SOUND_IN_MEASURE } from "./sounds";

/** What stands in a measure of one part, the same in partwise and timewise files. */
const MUSIC = elementTable<ReaderState>({
  note: NOTE,
  backup: BACKUP,
  forward: FORWARD,
  direction: DIRECTION,
  attributes: ATTRIBUTES,
  sound: SOUND_IN_MEASURE,
  barline: BARLINE,
});

function enter(state: ReaderState, attributes: Attributes, index: number): void {
  state.enterMeasure(index, attributes.number ?? "", attributes.implicit === "yes");
}

function startMusic(state: ReaderState): void {
  state.current.clock.startMeasure();
  state.barlineMarks = [];
}

function endMusic(state: ReaderState): void {
  const { current, measure } = state;
  current.measures++;
  if (measure === undefined) return;
  const length = current.clock.length();
  const longest = measure.measure.length;
  if (length[0] * longest[1] > longest[0] * length[1]) measure.measure.length = length;
}

const PARTWISE_PART: Handler = {
  open: (state, attributes) => {
    const id = attributes.id ?? "";
    const occurrence = state.parts.filter((part) => part.declaredId === id).length;
    state.measureIndex = -1;
    state.current = openPart(state, id, occurrence);
  },
  children: elementTable<ReaderState>({
    measure: {
      open: (state, attributes) => {
        enter(state, attributes, state.current.measures);
        startMusic(state);
      },
      close: endMusic,
      children: MUSIC,
    },
  }),
};

const TIMEWISE_MEASURE: Handler = {
  open: (state, attributes) => {
    state.current = newPart("", "", "");
    state.partsInMeasure = [];
    enter(state, attributes, state.measures.length);
  },
  children: elementTable<ReaderState>({
    part: {
      open: (state, attributes) => {
        const id = attributes.id ?? "";
        const occurrence = state.partsInMeasure.filter((other) => other === id).length;
        state.partsInMeasure.push(id);
        state.current = openPart(state, id, occurrence);
        // A part that joins late keeps its place among the measures.
        state.current.measures = state.measureIndex;
        startMusic(state);
      },
      close: endMusic,
      children: MUSIC,
    },
  }),
};

const HEADER = {
  work: {
    children: elementTable<ReaderState>({
      "work-title": textOf((state, text) => {
        state.workTitle = text;
      }),
    }),
  },
  "movement-title": textOf((state, text) => {
    state.movementTitle = text;
  }),
  "part-list": PART_LIST,
};

function root(children: ElementTable<ReaderState>): Handler {
  return {
    open: (state, attributes) => {
      state.version = attributes.version ?? null;
    },
    children,
  };
}

const DOCUMENT: ElementTable<ReaderState> = elementTable({
  "score-partwise": root(elementTable<ReaderState>({ ...HEADER, part: PARTWISE_PART })),
  "score-timewise": root(elementTable<ReaderState>({ ...HEADER, measure: TIMEWISE_MEASURE })),
});

/**
 * Reads MusicXML 1.0 to 4.0, partwise or timewise, in one pass.
 * Lyrics, credits, harmony, figured bass and layout make no marks.
 *
 * @throws ScoreReadError for broken XML, no measures, or a limit passed
 * @see MusicXML 4.0 score-partwise, score-timewise
 */
export function readMusicXml(xml: XmlInput, limits: ReadLimits): Score {
  const state = new ReaderState(xml.source.file, limits);
  walkXml(xml, DOCUMENT, state);
  return finishScore(state);
}
