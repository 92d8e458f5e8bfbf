import type { Mark, Measure } from "../model";
import { endingText, readPasses } from "../passes";
import { type Attributes, elementTable } from "../xml/elements";
import { readWhole } from "./decimal";
import { type Handler, markHandler, setContent, type Table } from "./mark-handlers";
import { FERMATA } from "./notations";
import type { ReaderState } from "./reader-state";
import { addJump } from "./sounds";

/** Measure whose right barline is meant by one placed here. */
function measureEndingAt(state: ReaderState): Measure | undefined {
  const index = state.measureIndex - (state.barline.location === "left" ? 1 : 0);
  return state.measures[index]?.measure;
}

function setRepeat(state: ReaderState, attributes: Attributes): void {
  const forward = attributes.direction === "forward";
  state.mark("repeat", forward ? "forward" : "backward");
  if (state.barline.location === "middle") {
    const message =
      "A repeat sign stands inside the measure; it is read as standing at its barline.";
    state.warn("repeat-inside-measure", message);
  }
  if (forward) {
    if (state.barline.location === "right") state.repeatStarts.add(state.measureIndex + 1);
    else if (state.measure !== undefined) state.measure.measure.repeatStart = true;
    return;
  }
  const measure = measureEndingAt(state);
  if (measure === undefined) return;
  const times = readWhole(attributes.times ?? "");
  const afterJump = attributes["after-jump"];
  measure.repeatEnd = {
    times: times ?? measure.repeatEnd?.times ?? null,
    afterJump:
      afterJump === undefined ? (measure.repeatEnd?.afterJump ?? null) : afterJump === "yes",
  };
}

/** Value is the list of passes as encoded; the printed text goes into `text`. */
const ENDING: Handler = {
  open: (state, attributes) => {
    const { type } = attributes;
    const number = (attributes.number ?? "").trim();
    const starts = type !== "stop" && type !== "discontinue";
    const value = type === "discontinue" ? "discontinue" : starts && number !== "" ? number : null;
    state.mark("ending", value, starts ? "start" : "stop");
    state.endingNumber = number;
    if (!starts) {
      const measure = measureEndingAt(state);
      if (measure !== undefined) measure.endingStop = type;
    }
  },
  text: (state, text) => {
    const mark = state.lastMark;
    setContent(mark, "text", text);
    const measure = state.measure?.measure;
    if (mark?.role !== "start" || measure === undefined) return;
    const fromNumber = readPasses(state.endingNumber);
    const passes = fromNumber.length > 0 ? fromNumber : readPasses(text);
    if (passes.length === 0) {
      state.warn(
        "ending-without-number",
        "An ending bracket names no pass; its order is not known.",
      );
    }
    measure.endingStart = passes;
    measure.endingText = measure.endingText ?? endingText(text);
  },
};

const BAR_STYLE: Handler = {
  text: (state, text) => {
    const style = text.trim();
    if (style === "" || style === "regular") return;
    state.mark("bar-style", style);
    const measure = state.measure?.measure;
    if (state.barline.location === "right" && measure !== undefined) {
      measure.barStyle = measure.barStyle ?? style;
    }
  },
};

const CHILDREN: Table = elementTable({
  "bar-style": BAR_STYLE,
  repeat: { open: setRepeat },
  ending: ENDING,
  segno: markHandler({ value: "smufl" }),
  coda: markHandler({ value: "smufl" }),
  fermata: FERMATA,
  "wavy-line": markHandler({ spans: true }),
});

/** Barline signs of one measure and part that later ones are compared with. */
const MAX_COMPARED = 50;

function isSame(a: Mark, b: Mark): boolean {
  return (
    a.element === b.element &&
    a.value === b.value &&
    a.role === b.role &&
    a.placement === b.placement
  );
}

/** Onset by location; a right barline waits for the measure's length. Repeats of one sign are dropped. */
function settleBarline(state: ReaderState): void {
  const { marks, current, barline, atRightBarline } = state;
  const fresh = marks.splice(barline.firstMark);
  const onset = current.clock.quarters(barline.location === "left" ? 0 : current.clock.here);
  for (const mark of fresh) {
    mark.onset = onset;
    const twin = state.barlineMarks.find(
      (other) => isSame(other.mark, mark) && other.location === barline.location,
    );
    if (twin !== undefined) continue;
    if (state.barlineMarks.length < MAX_COMPARED) {
      state.barlineMarks.push({ mark, location: barline.location });
    }
    marks.push(mark);
    if (barline.location === "right") atRightBarline.push(mark);
  }
}

export const BARLINE: Handler = {
  open: (state, attributes) => {
    const { location, segno, coda } = attributes;
    state.barline = {
      firstMark: state.marks.length,
      location: location === "left" || location === "middle" ? location : "right",
    };
    const { clock } = state.current;
    const onset = clock.quarters(state.barline.location === "left" ? 0 : clock.here);
    if (segno !== undefined) addJump(state, { kind: "segno", name: segno, onset, timeOnly: null });
    if (coda !== undefined) addJump(state, { kind: "coda", name: coda, onset, timeOnly: null });
  },
  close: settleBarline,
  children: CHILDREN,
};
