import { fraction, ZERO } from "../fraction";
import type { Fraction, Mark } from "../model";
import { elementTable } from "../xml/elements";
import { readDecimal, readNumber, readWhole } from "./decimal";
import { type Handler, type Table, textOf } from "./mark-handlers";
import { NOTATIONS } from "./notations";
import { type NoteDraft, type ReaderState, resetNote } from "./reader-state";

const STEPS: Readonly<Record<string, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };

/** Length of a note value in quarters, as MusicXML note-type names it. */
const NOTE_TYPES: Readonly<Record<string, Fraction>> = {
  maxima: [32, 1],
  long: [16, 1],
  breve: [8, 1],
  whole: [4, 1],
  half: [2, 1],
  quarter: [1, 1],
  eighth: [1, 2],
  "16th": [1, 4],
  "32nd": [1, 8],
  "64th": [1, 16],
  "128th": [1, 32],
  "256th": [1, 64],
  "512th": [1, 128],
  "1024th": [1, 256],
};

/** Length the printed note value gives, null when none is printed. */
function printedLength({ type, dots, actual, normal }: NoteDraft): Fraction | null {
  const value = NOTE_TYPES[type];
  if (value === undefined || actual <= 0 || normal <= 0 || dots > 8) return null;
  const dotted = 2 ** (dots + 1) - 1;
  return fraction(value[0] * dotted * normal, value[1] * 2 ** dots * actual);
}

/** Without divisions, the first note that has both a duration and a printed value tells them. */
function assumeDivisions(state: ReaderState, duration: Fraction): void {
  const printed = printedLength(state.note);
  if (printed === null || duration[0] <= 0) return;
  const divisions = fraction(duration[0] * printed[1], duration[1] * printed[0]);
  if (!state.current.clock.setDivisions(divisions)) return;
  const many = divisions[1] === 1 ? `${divisions[0]}` : `${divisions[0]}/${divisions[1]}`;
  state.warn(
    "assumed-divisions",
    `Divisions are missing: timing inside measures is assumed from the printed note values (${many} to a quarter note).`,
  );
}

function durationTicks(state: ReaderState): number {
  const { note, current } = state;
  if (note.grace !== null) return 0;
  if (note.duration === null) {
    state.warn("no-duration", "A note has no usable duration; it is given no length.");
    return 0;
  }
  if (!current.clock.known) assumeDivisions(state, note.duration);
  if (!current.clock.known) {
    state.warn("unknown-timing", "Divisions are missing: timing inside this measure is unknown.");
  }
  const ticks = current.clock.ticks(note.duration);
  if (ticks !== null) return Math.max(ticks, 0);
  state.warn("bad-duration", "A duration is too fine or too long to count; it is left out.");
  return 0;
}

function pitchOf(state: ReaderState): number | null {
  const { note } = state;
  if (note.rest || note.unpitched) return null;
  const step = STEPS[note.step];
  if (step !== undefined && note.octave !== null) return 12 * (note.octave + 1) + step + note.alter;
  state.warn("bad-pitch", "A note has no readable pitch; it is kept without one.");
  return null;
}

function settleMarks(marks: Mark[], note: NoteDraft, index: number, onset: Fraction): void {
  for (let i = note.firstMark; i < marks.length; i++) {
    const mark = marks[i];
    if (mark === undefined) continue;
    mark.note = index;
    mark.onset = onset;
    mark.staff = note.staff;
    mark.voice = note.voice;
    // Some files draw the tie and leave out the element that sounds it.
    if (mark.element === "tied" && mark.role === "start") note.tieStart = true;
    if (mark.element === "tied" && mark.role === "stop") note.tieStop = true;
  }
}

function endNote(state: ReaderState): void {
  const { note, current, measureIndex } = state;
  const { clock, part } = current;
  const ticks = durationTicks(state);
  const onset = clock.quarters(clock.placeNote(ticks, note.chord));
  settleMarks(part.marks, note, part.notes.length, onset);
  state.countSign();
  part.notes.push({
    measureIndex,
    onset,
    duration: ticks === 0 ? ZERO : clock.quarters(ticks),
    pitch: pitchOf(state),
    rest: note.rest,
    chord: note.chord,
    grace: note.grace,
    cue: note.cue,
    voice: note.voice ?? "1",
    staff: note.staff ?? 1,
    tieStart: note.tieStart,
    tieStop: note.tieStop,
  });
}

const PITCH: Handler = {
  children: elementTable<ReaderState>({
    step: textOf((state, text) => {
      state.note.step = text;
    }),
    alter: textOf((state, text) => {
      state.note.alter = readNumber(text) ?? 0;
    }),
    octave: textOf((state, text) => {
      state.note.octave = readWhole(text);
    }),
  }),
};

/** A head other than the ordinary one is a mark; round brackets about it are another. */
const NOTEHEAD: Handler = {
  open: (state, attributes) => {
    if (attributes.parentheses === "yes") state.mark("notehead", "parentheses");
    state.headGlyph = attributes.smufl ?? null;
  },
  text: (state, text) => {
    const head = text.trim();
    if (head === "" || head === "normal") return;
    state.mark("notehead", head).text = state.headGlyph;
  },
};

const TIE: Handler = {
  open: (state, attributes) => {
    if (attributes.type === "start") state.note.tieStart = true;
    else if (attributes.type === "stop") state.note.tieStop = true;
  },
};

const TIME_MODIFICATION: Handler = {
  children: elementTable<ReaderState>({
    "actual-notes": textOf((state, text) => {
      state.note.actual = readWhole(text) ?? 1;
    }),
    "normal-notes": textOf((state, text) => {
      state.note.normal = readWhole(text) ?? 1;
    }),
  }),
};

/** Playback of one note with a mute or the like. */
const PLAY: Handler = {
  children: elementTable<ReaderState>({
    mute: textOf((state, text) => {
      state.mark("mute", text);
    }),
    "other-play": textOf((state, text) => {
      state.mark("other-play", text);
    }),
  }),
};

const CHILDREN: Table = elementTable<ReaderState>({
  grace: {
    open: (state, attributes) => {
      state.note.grace = attributes.slash === "yes" ? "slash" : "plain";
      state.mark("grace", attributes.slash === "yes" ? "slash" : null);
    },
  },
  cue: {
    open: (state) => {
      state.note.cue = true;
      state.mark("cue");
    },
  },
  chord: {
    open: (state) => {
      state.note.chord = true;
    },
  },
  pitch: PITCH,
  unpitched: {
    open: (state) => {
      state.note.unpitched = true;
      state.mark("unpitched");
    },
  },
  rest: {
    open: (state) => {
      state.note.rest = true;
    },
  },
  duration: {
    text: (state, text) => {
      state.note.duration = readDecimal(text);
    },
  },
  tie: TIE,
  voice: textOf((state, text) => {
    state.note.voice = text;
  }),
  type: textOf((state, text) => {
    state.note.type = text;
  }),
  dot: {
    open: (state) => {
      state.note.dots++;
    },
  },
  "time-modification": TIME_MODIFICATION,
  stem: textOf((state, text) => {
    if (text === "none") state.mark("stem", "none");
  }),
  notehead: NOTEHEAD,
  staff: textOf((state, text) => {
    state.note.staff = readWhole(text);
  }),
  notations: {
    open: (_state, attributes) => attributes["print-object"] !== "no",
    children: NOTATIONS,
  },
  play: PLAY,
});

/**
 * `note`: its marks are everything in `notations`, and grace, cue, notehead and
 * stem where they ask something of the player. Loudness and timing numbers for
 * playback (dynamics, end-dynamics, attack, release) make no mark: nothing printed
 * stands behind them.
 */
export const NOTE: Handler = {
  open: (state, attributes) => {
    resetNote(state.note, state.marks.length);
    if (attributes.pizzicato !== undefined) state.mark("note", `pizzicato-${attributes.pizzicato}`);
    const timeOnly = attributes["time-only"];
    if (timeOnly !== undefined) state.mark("note", "time-only").text = timeOnly.trim();
  },
  close: endNote,
  children: CHILDREN,
};

function move(state: ReaderState, text: string, sign: 1 | -1): void {
  const { clock } = state.current;
  const duration = readDecimal(text);
  const ticks = duration === null ? null : clock.ticks(duration);
  if (ticks === null) {
    state.warn("bad-duration", `A duration of "${text.trim().slice(0, 40)}" is left out.`);
  } else if (!clock.move(sign * ticks)) {
    state.warn("backup-before-measure", "A backup leads before the barline; it stops there.");
  }
}

export const BACKUP: Handler = {
  children: elementTable<ReaderState>({
    duration: { text: (state, text) => move(state, text, -1) },
  }),
};

export const FORWARD: Handler = {
  children: elementTable<ReaderState>({
    duration: { text: (state, text) => move(state, text, 1) },
  }),
};
