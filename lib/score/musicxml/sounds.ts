import type { Fraction, Mark, SoundJump } from "../model";
import { type Attributes, elementTable } from "../xml/elements";
import { readDecimal, readNumber } from "./decimal";
import { type Handler, textOf } from "./mark-handlers";
import type { ReaderState, SoundDraft } from "./reader-state";

const JUMPS: readonly SoundJump["kind"][] = [
  "dacapo",
  "dalsegno",
  "tocoda",
  "fine",
  "segno",
  "coda",
  "forward-repeat",
];

/** Attributes that only say yes; their content is no name. */
const YES_ONLY = new Set<SoundJump["kind"]>(["dacapo", "fine", "forward-repeat"]);

/** Playback attributes kept as marks when nothing is printed beside them. */
const PLAYED = ["pizzicato", "damper-pedal", "soft-pedal", "sostenuto-pedal", "dynamics"] as const;

/** Passes of a time-only list such as "1,2", null when none is given. */
export function readTimeOnly(text: string | undefined): number[] | null {
  const passes = text?.match(/\d+/g)?.map(Number);
  return passes === undefined ? null : passes;
}

/** Jumps kept in one measure. */
const MAX_JUMPS = 100;

/** One jump unless it is there already; every part of a score may repeat the same one. */
export function addJump(state: ReaderState, jump: SoundJump): void {
  const jumps = state.measure?.measure.jumps;
  const same = (other: SoundJump): boolean =>
    other.kind === jump.kind &&
    other.name === jump.name &&
    other.onset[0] === jump.onset[0] &&
    other.onset[1] === jump.onset[1];
  if (jumps === undefined || jumps.some(same)) return;
  if (jumps.length < MAX_JUMPS) jumps.push(jump);
  else state.warn("many-jumps", `Of the jumps in this measure only ${MAX_JUMPS} are kept.`);
}

function startSound(state: ReaderState, attributes: Attributes): void {
  const draft: SoundDraft = { tempo: null, jumps: [], extras: [], offset: null };
  if (attributes.tempo !== undefined) {
    const tempo = readNumber(attributes.tempo);
    if (tempo !== null && tempo > 0) draft.tempo = tempo;
    else state.warn("bad-tempo", `A playback tempo of "${attributes.tempo}" is left out.`);
  }
  const timeOnly = readTimeOnly(attributes["time-only"]);
  for (const kind of JUMPS) {
    const value = attributes[kind];
    if (value === undefined || (YES_ONLY.has(kind) && value === "no")) continue;
    draft.jumps.push({ kind, name: YES_ONLY.has(kind) ? "" : value, timeOnly });
  }
  for (const name of PLAYED) {
    const value = attributes[name];
    if (value !== undefined)
      draft.extras.push({ element: "sound", value: `${name}-${value}`, text: null });
  }
  if (timeOnly !== null && draft.jumps.length === 0) {
    draft.extras.push({ element: "sound", value: "time-only", text: timeOnly.join(", ") });
  }
  state.sound = draft;
}

function addExtra(state: ReaderState, element: string, value: string | null): void {
  state.sound?.extras.push({ element, value, text: null });
}

const SWING = elementTable<ReaderState>({
  straight: { open: (state) => addExtra(state, "straight", null) },
  first: textOf((state, text) => {
    state.pieces = [text];
  }),
  second: textOf((state, text) => {
    state.sound?.extras.push({ element: "swing", value: null, text: `${state.pieces[0]}:${text}` });
  }),
});

/** Children of `play`, which stands in a sound or in a note. */
export const PLAY_IN_SOUND: Handler = {
  children: elementTable<ReaderState>({
    mute: textOf((state, text) => addExtra(state, "mute", text)),
    "other-play": textOf((state, text) => addExtra(state, "other-play", text)),
  }),
};

const CHILDREN = elementTable<ReaderState>({
  offset: textOf((state, text) => {
    if (state.sound !== null) state.sound.offset = readDecimal(text);
  }),
  swing: { children: SWING },
  play: PLAY_IN_SOUND,
});

/** Ticks of an offset at the present place, 0 when none or not countable. */
export function offsetTicks(state: ReaderState, offset: Fraction | null): number {
  if (offset === null) return 0;
  return state.current.clock.ticks(offset) ?? 0;
}

/** Onset `ticks` away from the present place, at the barline when that would be before it. */
export function onsetAt(state: ReaderState, ticks: number): Fraction {
  const { clock } = state.current;
  const at = clock.here + ticks;
  if (at < 0)
    state.warn("offset-before-measure", "An offset leads before the barline; the barline is used.");
  return clock.quarters(Math.max(at, 0));
}

/**
 * Applies a sound: jumps go to the measure, the tempo to the printed tempo marks
 * of the same direction. Only a sound without any print makes marks of its own:
 * element `sound` with value `tempo`, `pizzicato-yes`…, or `mute`, `swing`, `straight`.
 *
 * @param printed marks of the direction the sound stands in
 */
export function applySound(
  state: ReaderState,
  sound: SoundDraft,
  printed: readonly Mark[],
  shift: number,
): void {
  const onset = onsetAt(state, shift + offsetTicks(state, sound.offset));
  for (const jump of sound.jumps) addJump(state, { ...jump, onset });
  if (printed.length > 0) {
    if (sound.tempo !== null) giveTempo(printed, sound.tempo);
    return;
  }
  if (sound.tempo !== null) {
    const mark = state.mark("sound", "tempo");
    mark.soundTempo = sound.tempo;
    mark.onset = onset;
  }
  for (const { element, value, text } of sound.extras) {
    const mark = state.mark(element, value);
    mark.text = text;
    mark.onset = onset;
  }
}

function giveTempo(printed: readonly Mark[], tempo: number): void {
  const carriers = printed.filter(({ element }) => element === "metronome" || element === "words");
  for (const mark of carriers.length > 0 ? carriers : printed.slice(0, 1)) mark.soundTempo = tempo;
}

/** `sound` inside a direction: kept until the direction ends. */
export const SOUND_IN_DIRECTION: Handler = {
  open: startSound,
  close: (state) => {
    state.directionSound = state.sound;
    state.sound = null;
  },
  children: CHILDREN,
};

/** `sound` standing in the measure itself. */
export const SOUND_IN_MEASURE: Handler = {
  open: startSound,
  close: (state) => {
    const { sound } = state;
    state.sound = null;
    if (sound !== null) applySound(state, sound, [], 0);
  },
  children: CHILDREN,
};
