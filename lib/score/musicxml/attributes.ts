import type { TimeSignature } from "../model";
import { elementTable } from "../xml/elements";
import { readDecimal, readNumber, readWhole } from "./decimal";
import { type Handler, roleOf, setContent, type Table, textOf } from "./mark-handlers";
import type { ReaderState, TimeDraft } from "./reader-state";

function setDivisions(state: ReaderState, text: string): void {
  const { clock } = state.current;
  const divisions = readDecimal(text);
  if (divisions !== null && divisions[0] > 0 && clock.setDivisions(divisions)) return;
  clock.forgetDivisions();
  state.warn(
    "bad-divisions",
    `Divisions is "${text.trim().slice(0, 40)}", not a usable number above 0: timing inside measures is unknown unless the note values give it.`,
  );
}

/** Fractions in one time signature. */
const MAX_PAIRS = 16;

/** Several fractions become one over their finest beat type: 3/8 + 2/4 is 3+4 over 8. */
function timeOf({ pairs, symbol }: TimeDraft): TimeSignature | null {
  if (pairs.length > MAX_PAIRS) return null;
  const types = pairs.map((pair) => readWhole(pair.beatType) ?? 0);
  const beatType = Math.max(...types);
  if (pairs.length === 0 || types.some((type) => type <= 0 || beatType % type !== 0)) return null;
  const beats = pairs.flatMap(({ beats }, i) => {
    const scale = beatType / (types[i] ?? beatType);
    return beats.split("+").map((part) => (readWhole(part) ?? Number.NaN) * scale);
  });
  if (beats.some((count) => !(count > 0))) return null;
  const known = symbol === "common" || symbol === "cut" ? symbol : null;
  return { beats: beats.join("+"), beatType, symbol: known };
}

const TIME: Handler = {
  open: (state, attributes) => {
    const staff = readWhole(attributes.number ?? "");
    state.timeDraft = { pairs: [], symbol: attributes.symbol, staff };
  },
  close: (state) => {
    const { timeDraft, measure } = state;
    const value = timeOf(timeDraft);
    if (value === null && timeDraft.pairs.length > 0) {
      state.warn(
        "bad-time",
        "The time signature is not readable; the measure is taken as unmetered.",
      );
    }
    if (measure !== undefined && measure.time === null) measure.time = { value };
    if (value === null || value.symbol === null) return;
    state.mark("time", value.symbol).staff = timeDraft.staff;
  },
  children: elementTable<ReaderState>({
    beats: textOf((state, beats) => {
      state.timeDraft.pairs.push({ beats, beatType: "" });
    }),
    "beat-type": textOf((state, text) => {
      const pair = state.timeDraft.pairs[state.timeDraft.pairs.length - 1];
      if (pair !== undefined) pair.beatType = text;
    }),
  }),
};

/** Only the first part's key counts; a key of single accidentals has no number of fifths. */
const KEY: Handler = {
  open: (state) => {
    const { measure } = state;
    if (state.current !== state.parts[0] || measure === undefined || measure.fifths !== null)
      return false;
    measure.fifths = { value: null };
    return true;
  },
  children: elementTable<ReaderState>({
    fifths: textOf((state, text) => {
      const fifths = readNumber(text);
      const key = state.measure?.fifths;
      if (key !== null && key !== undefined && Number.isInteger(fifths)) key.value = fifths;
    }),
  }),
};

const TRANSPOSE: Handler = {
  open: (state) => {
    state.chromatic = 0;
  },
  close: (state) => {
    const { current } = state;
    if (current.transposed && current.part.transpose !== state.chromatic) {
      state.warn("transposition-changes", "The part changes transposition; the first one is used.");
    }
    if (!current.transposed) current.part.transpose = state.chromatic;
    current.transposed = true;
  },
  children: elementTable<ReaderState>({
    chromatic: textOf((state, text) => {
      state.chromatic += readNumber(text) ?? 0;
    }),
    "octave-change": textOf((state, text) => {
      state.chromatic += 12 * (readNumber(text) ?? 0);
    }),
  }),
};

/** A measure style; the number of measures is its value, what starts and stops its role. */
const STYLE: Handler = {
  open: (state, attributes, name) => {
    state.mark(name, null, roleOf(attributes.type)).staff = state.measureStyleStaff;
  },
  text: (state, text) => setContent(state.lastMark, "value", text),
};

const MEASURE_STYLE: Handler = {
  open: (state, attributes) => {
    state.measureStyleStaff = readWhole(attributes.number ?? "");
  },
  children: elementTable({
    "multiple-rest": STYLE,
    "measure-repeat": STYLE,
    "beat-repeat": STYLE,
    slash: STYLE,
  }),
};

const CHILDREN: Table = elementTable({
  divisions: { text: setDivisions },
  key: KEY,
  time: TIME,
  staves: textOf((state, text) => {
    const { part } = state.current;
    part.staves = Math.max(part.staves, Math.min(readWhole(text) ?? 1, 100));
  }),
  transpose: TRANSPOSE,
  "measure-style": MEASURE_STYLE,
});

export const ATTRIBUTES: Handler = {
  open: (state) => {
    state.attributesMark = state.marks.length;
  },
  close: (state) => {
    const { marks, current } = state;
    if (marks.length === state.attributesMark) return;
    const onset = current.clock.quarters(current.clock.here);
    for (let i = state.attributesMark; i < marks.length; i++) {
      const mark = marks[i];
      if (mark !== undefined) mark.onset = onset;
    }
  },
  children: CHILDREN,
};
