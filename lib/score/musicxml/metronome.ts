import type { BeatUnit, Metronome } from "../model";
import { readPerMinute } from "../per-minute";
import { elementTable } from "../xml/elements";
import { type Handler, textOf } from "./mark-handlers";
import type { MetronomeDraft, ReaderState } from "./reader-state";

function addUnit(state: ReaderState, unit: string): void {
  const draft = state.metronome;
  draft?.units.push({ beat: { unit, dots: 0 }, side: draft.side });
}

function lastUnit(state: ReaderState): BeatUnit | undefined {
  const units = state.metronome?.units ?? [];
  const last = units[units.length - 1]?.beat;
  return last?.tied?.[last.tied.length - 1] ?? last;
}

function addDot(state: ReaderState): void {
  const unit = lastUnit(state);
  if (unit !== undefined) unit.dots++;
}

const DOT: Handler = { open: addDot };

const BEAT_UNIT_TIED: Handler = {
  children: elementTable<ReaderState>({
    "beat-unit": textOf((state, unit) => {
      const units = state.metronome?.units ?? [];
      const beat = units[units.length - 1]?.beat;
      if (beat !== undefined) beat.tied = [...(beat.tied ?? []), { unit, dots: 0 }];
    }),
    "beat-unit-dot": DOT,
  }),
};

const CHILDREN = elementTable<ReaderState>({
  "beat-unit": textOf((state, unit) => {
    // A second beat unit is the right side of an equation: MusicXML prints old = new.
    const draft = state.metronome;
    if (draft !== null && draft.units.length > 0) draft.side = 1;
    addUnit(state, unit);
  }),
  "beat-unit-dot": DOT,
  "beat-unit-tied": BEAT_UNIT_TIED,
  "per-minute": textOf((state, text) => {
    if (state.metronome !== null) state.metronome.perMinuteText = text;
  }),
  "metronome-note": {
    open: (state) => {
      if (state.metronome !== null) state.metronome.rhythm = true;
    },
    children: elementTable<ReaderState>({
      "metronome-type": textOf(addUnit),
      "metronome-dot": DOT,
    }),
  },
  "metronome-relation": {
    open: (state) => {
      if (state.metronome !== null) state.metronome.side = 1;
    },
  },
});

/**
 * What a draft says, undefined when it is a rhythm of several notes, which no
 * beat unit can stand for.
 */
function metronomeOf({ units, perMinuteText }: MetronomeDraft): Metronome | undefined {
  const left = units.filter(({ side }) => side === 0);
  const right = units.filter(({ side }) => side === 1);
  const beat = left[0]?.beat;
  if (beat === undefined || left.length > 1 || right.length > 1) return undefined;
  const perMinute = perMinuteText === null ? null : readPerMinute(perMinuteText);
  return { beat, perMinute, perMinuteText, equals: right[0]?.beat ?? null, oldSide: "left" };
}

/** What kind of sign it is: null for a plain speed. */
function kindOf({ units, rhythm }: MetronomeDraft): "modulation" | "relation" | "rhythm" | null {
  const right = units.filter(({ side }) => side === 1).length;
  if (right === 1 && units.length === 2) return "modulation";
  if (right > 0) return "relation";
  return rhythm ? "rhythm" : null;
}

/**
 * `metronome`. Value `modulation` where one note value equals another, `relation`
 * where groups of notes do (swing), `rhythm` for a group of notes alone.
 */
export const METRONOME: Handler = {
  open: (state, attributes) => {
    // Not printed: only its sound counts.
    if (attributes["print-object"] === "no") return false;
    state.mark("metronome");
    state.metronome = { units: [], side: 0, perMinuteText: null, rhythm: false };
    return true;
  },
  close: (state) => {
    const { metronome: draft, lastMark: mark } = state;
    state.metronome = null;
    if (draft === null || mark === undefined) return;
    const metronome = metronomeOf(draft);
    if (metronome !== undefined) mark.metronome = metronome;
    else if (!draft.rhythm) state.warn("bad-metronome", "A metronome mark names no beat unit.");
    mark.value = kindOf(draft);
  },
  children: CHILDREN,
};
