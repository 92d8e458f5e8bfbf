import { scoreProblem } from "../limits";
import type { Measure, Score, TimeSignature } from "../model";
import { timeLength } from "../time-length";
import type { ReaderState } from "./reader-state";

/** Carries time and key through the measures and gives empty measures their time's length. */
function finishMeasures(state: ReaderState): Measure[] {
  let time: TimeSignature | null = null;
  let fifths: number | null = null;
  return state.measures.map((draft, index) => {
    const { measure } = draft;
    if (draft.time !== null) time = draft.time.value;
    if (draft.fifths !== null) fifths = draft.fifths.value;
    measure.time = time;
    measure.fifths = fifths;
    if (measure.length[0] === 0) measure.length = timeLength(time);
    if (state.repeatStarts.has(index)) measure.repeatStart = true;
    return measure;
  });
}

function checkParts(state: ReaderState): void {
  const add = (code: string, message: string, partId: string): void =>
    state.warnings.add({ code, message, measureNumber: null, partId });
  for (const { part, measures } of state.parts) {
    if (measures === state.measures.length) continue;
    const message = `This part has ${measures} of the score's ${state.measures.length} measures; the others are read without it.`;
    add("unequal-measures", message, part.id);
  }
  for (const { id } of state.declared) {
    if (state.parts.some((part) => part.declaredId === id)) continue;
    add("missing-part", "This part is listed but has no music.", id);
  }
}

/** Puts the pieces of a finished reading together. */
export function finishScore(state: ReaderState): Score {
  if (state.measures.length === 0) {
    throw scoreProblem(state.file, "no-measures", {
      found: "the score holds no measures",
      expected: "at least one measure of music",
      remedy: "Check that the music was exported, not an empty page.",
    });
  }
  const measures = finishMeasures(state);
  for (const mark of state.atRightBarline)
    mark.onset = measures[mark.measureIndex]?.length ?? mark.onset;
  checkParts(state);
  return {
    format: "musicxml",
    version: state.version,
    title: state.workTitle || state.movementTitle || null,
    parts: state.parts.map(({ part }) => part),
    measures,
    expansion: null,
    warnings: state.warnings.finish(),
  };
}
