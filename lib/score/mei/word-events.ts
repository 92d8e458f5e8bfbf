import { DYNAMIC_LETTERS } from "../dynamic-letters";
import type { BeatUnit, Mark, Metronome, SoundJump } from "../model";
import { readPerMinute } from "../per-minute";
import type { XmlElement } from "../xml/element-tree";
import type { ControlEvent } from "./control-events";
import { endOf } from "./control-places";
import { beatUnit } from "./durations";
import { childrenOf, symbolsIn, textOf } from "./editorial";
import { dynamicLetters, noteCharacter, spellDynamics } from "./glyphs";
import { splitTempoText } from "./tempo-equation";

const LETTERS = new Set(DYNAMIC_LETTERS);
/** Letter dynamics MusicXML has no element for, such as ffz. */
const OTHER_LETTERS = /^[pmfsrz]{2,8}$/;

function isEmphasised(element: XmlElement): boolean {
  const { fontstyle, fontweight } = element.attributes;
  if (fontstyle === "italic" || fontweight === "bold") return true;
  return childrenOf(element).some((child) => child.name === "rend" && isEmphasised(child));
}

function words({ event, state, place, fields }: ControlEvent, text: string): Mark | null {
  if (text === "") return null;
  const mark = state.mark(place, "words", { ...fields, text });
  if (isEmphasised(event)) mark.emphasis = true;
  return mark;
}

/** A word that lasts to an end point is drawn with dashes in MusicXML terms. */
function dashes(control: ControlEvent): void {
  const { event, state, place, fields, measureIndex } = control;
  const end = endOf(event, place, measureIndex);
  if (end === null) return;
  state.mark(place, "dashes", { ...fields, role: "start" });
  state.markAtEnd(place, end, { element: "dashes", fields: { ...fields, role: "stop" } });
}

/**
 * `dynam`: a letter dynamic is its MusicXML element, anything else is words. In
 * "p dolce" the level and the words are two marks; "più f" stays together.
 */
export function readDynam(control: ControlEvent): void {
  const { event, state, place, fields } = control;
  const whole = spellDynamics(textOf(event));
  const [, level = "", rest = ""] = /^(\S+) +(.*\p{L}{2}.*)$/u.exec(whole) ?? [];
  const splits = LETTERS.has(level);
  if (splits) state.mark(place, level, fields);
  const text = splits ? rest : whole;
  const letters = text.replace(/\s+/g, "");
  if (letters === "n") state.mark(place, "n", fields).niente = true;
  else if (LETTERS.has(letters)) state.mark(place, letters, fields);
  else if (OTHER_LETTERS.test(letters))
    state.mark(place, "other-dynamics", { ...fields, text: letters });
  else if (words(control, text) !== null) dashes(control);
}

const SIGNS: Readonly<Record<string, string>> = {
  segno: "segno",
  segnoSerpent1: "segno",
  segnoSerpent2: "segno",
  coda: "coda",
  codaSquare: "coda",
};

/** `dir` and other plain text: words, and each drawn symbol as a mark of its own. */
export function readDir(control: ControlEvent): void {
  const { event, state, place, fields } = control;
  const mark = words(control, textOf(event));
  for (const { attributes } of symbolsIn(event)) {
    const glyph = attributes["glyph.name"];
    if (glyph === undefined || noteCharacter(glyph) !== null || dynamicLetters(glyph) !== null)
      continue;
    const sign = SIGNS[glyph];
    if (sign !== undefined) state.mark(place, sign, fields);
    else state.mark(place, "symbol", { ...fields, text: glyph });
  }
  if (mark !== null) dashes(control);
}

function soundTempo({ attributes }: XmlElement): number | null {
  const bpm = Number(attributes["midi.bpm"]);
  if (bpm > 0) return bpm;
  const microseconds = Number(attributes["midi.mspb"]);
  return microseconds > 0 ? 60_000_000 / microseconds : null;
}

/** Metronome mark of the mm attributes, null when there are none. */
function metronomeOf({ event, state, place }: ControlEvent): Metronome | null {
  const { mm } = event.attributes;
  if (mm === undefined) return null;
  const unit = event.attributes["mm.unit"];
  const dots = Number(event.attributes["mm.dots"] ?? 0);
  let beat: BeatUnit | null = unit === undefined ? null : beatUnit(unit, dots);
  if (beat === null) {
    state.warn(
      "assumed-beat-unit",
      "A metronome mark names no beat unit; the quarter note is assumed.",
      place.staff.part.id,
    );
    beat = { unit: "quarter", dots: 0 };
  }
  return {
    beat,
    perMinute: readPerMinute(mm),
    perMinuteText: mm.trim(),
    equals: null,
    oldSide: "left",
  };
}

/** `tempo`: words, then a metronome mark from its attributes or drawn in its text. */
export function readTempo(control: ControlEvent): void {
  const { event, state, place, fields } = control;
  const oldSide = event.attributes.func === "precedente" ? "right" : "left";
  const drawn = splitTempoText(textOf(event), oldSide);
  const mark = words(control, drawn.words);
  const metronome = metronomeOf(control) ?? drawn.metronome;
  const carriers = mark === null ? [] : [mark];
  if (metronome !== null) {
    const metronomeMark = state.mark(place, "metronome", fields);
    metronomeMark.metronome = metronome;
    if (metronome.equals !== null) metronomeMark.value = "modulation";
    carriers.push(metronomeMark);
  }
  const tempo = soundTempo(event);
  if (tempo !== null && carriers.length === 0) {
    carriers.push(state.mark(place, "sound", { ...fields, value: "tempo" }));
  }
  if (tempo !== null) for (const carrier of carriers) carrier.soundTempo = tempo;
  if (mark !== null) dashes(control);
}

interface RepeatMarkRule {
  /** Sign printed, null for words. */
  sign: "segno" | "coda" | null;
  /** Words printed when the element holds none. */
  text: string;
  jump: SoundJump["kind"];
}

const REPEAT_MARKS: Readonly<Record<string, RepeatMarkRule>> = {
  segno: { sign: "segno", text: "", jump: "segno" },
  coda: { sign: "coda", text: "", jump: "coda" },
  dalSegno: { sign: null, text: "D.S.", jump: "dalsegno" },
  dalSegnoAlFine: { sign: null, text: "D.S. al Fine", jump: "dalsegno" },
  dalSegnoAlCoda: { sign: null, text: "D.S. al Coda", jump: "dalsegno" },
  daCapo: { sign: null, text: "D.C.", jump: "dacapo" },
  daCapoAlFine: { sign: null, text: "D.C. al Fine", jump: "dacapo" },
  daCapoAlCoda: { sign: null, text: "D.C. al Coda", jump: "dacapo" },
  fine: { sign: null, text: "Fine", jump: "fine" },
};

/**
 * `repeatMark`: the sign or the words, and the jump it states. MEI has no value
 * for the departure to a coda: of several coda marks the first is taken as that.
 */
export function readRepeatMark(control: ControlEvent): void {
  const { event, state, place, fields, first } = control;
  const { func } = event.attributes;
  const measure = state.measures[place.measureIndex];
  if (func === "repeatLeft" || func === "repeatRight") {
    state.mark(place, "repeat", { value: func === "repeatLeft" ? "forward" : "backward" });
    if (measure === undefined) return;
    if (func === "repeatLeft") measure.repeatStart = true;
    else measure.repeatEnd ??= { times: null, afterJump: null };
    return;
  }
  const rule = REPEAT_MARKS[func ?? ""];
  if (rule?.sign) state.mark(place, rule.sign, fields);
  words(control, textOf(event) || (rule?.text ?? ""));
  if (rule === undefined) {
    state.warn(
      "unknown-element",
      `A repeat mark "${func ?? ""}" is not known; only its text is kept.`,
    );
    return;
  }
  if (measure === undefined || !first) return;
  const jump: SoundJump = { kind: rule.jump, name: "", onset: place.onset, timeOnly: null };
  measure.jumps.push(jump);
  if (rule.jump === "coda") state.codas.push({ jump, measure });
}

export function readAttacca(control: ControlEvent): void {
  words(control, textOf(control.event) || "attacca");
}
