import { ZERO } from "../fraction";
import type { Fraction, Measure } from "../model";
import { endingText, readPasses } from "../passes";
import type { XmlElement } from "../xml/element-tree";
import type { MeiState } from "./mei-state";

/** MEI data.BARRENDITION as MusicXML bar-style; what MusicXML lacks keeps its MEI name. */
const STYLES: Readonly<Record<string, string>> = {
  dbl: "light-light",
  end: "light-heavy",
  heavy: "heavy",
  dblheavy: "heavy-heavy",
  dashed: "dashed",
  dbldashed: "dbldashed",
  dotted: "dotted",
  dbldotted: "dbldotted",
  invis: "none",
};

function markSigns(state: MeiState, rendition: string, onset: Fraction): void {
  const style = STYLES[rendition];
  if (style !== undefined) state.markAll("bar-style", onset, { value: style });
  if (rendition === "segno" || rendition === "dblsegno") state.markAll("segno", onset);
}

/** Left barline; a repeat that ends there ends the measure before. */
export function markLeftBarline(
  state: MeiState,
  measure: Measure,
  { attributes }: XmlElement,
): void {
  const left = attributes.left ?? "";
  markSigns(state, left, ZERO);
  if (left === "rptend" || left === "rptboth") {
    const before = state.measures[measure.index - 1];
    if (before !== undefined) before.repeatEnd ??= { times: null, afterJump: null };
    state.markAll("repeat", ZERO, { value: "backward" });
  }
  if (left !== "rptstart" && left !== "rptboth") return;
  measure.repeatStart = true;
  state.markAll("repeat", ZERO, { value: "forward" });
}

/** Right barline; a repeat that starts there starts with the next measure. */
export function markBarline(state: MeiState, measure: Measure, { attributes }: XmlElement): void {
  const right = attributes.right ?? "";
  markSigns(state, right, measure.length);
  measure.barStyle = STYLES[right] ?? null;
  if (right === "rptend" || right === "rptboth") {
    measure.repeatEnd = { times: null, afterJump: null };
    measure.barStyle = "light-heavy";
    state.markAll("repeat", measure.length, { value: "backward" });
  }
  if (right !== "rptstart" && right !== "rptboth") return;
  state.repeatStartsNext = true;
  state.markAll("repeat", measure.length, { value: "forward" });
}

/** Measures of an ending, from `first` to the last one read: the bracket opens and closes. */
export function markEnding(state: MeiState, ending: XmlElement["attributes"], first: number): void {
  const start = state.measures[first];
  const stop = state.measure;
  if (start === undefined || stop === undefined) return;
  const number = (ending.n ?? "").trim();
  const label = (ending.label ?? "").trim();
  const passes = readPasses(number).length > 0 ? readPasses(number) : readPasses(label);
  if (passes.length === 0) {
    state.warn("ending-without-number", "An ending names no pass; its order is not known.");
  }
  start.endingStart = passes;
  start.endingText = endingText(label) ?? endingText(number);
  stop.endingStop = ending.lendsym === "none" ? "discontinue" : "stop";
  const value = number === "" ? null : number;
  for (const mark of state.markAll("ending", ZERO, { value, text: label || null, role: "start" })) {
    mark.measureIndex = first;
  }
  const stopValue = stop.endingStop === "discontinue" ? "discontinue" : null;
  state.markAll("ending", stop.length, { value: stopValue, role: "stop" });
}
