import type { BeatUnit, Metronome } from "../model";
import { readPerMinute } from "../per-minute";
import { isDot, noteOfCharacter } from "./glyphs";

/** A beat drawn with note glyphs in a line of text, and where it ends. */
interface DrawnBeat {
  beat: BeatUnit;
  end: number;
}

function drawnBeat(characters: readonly string[], from: number): DrawnBeat | null {
  let at = from;
  while (characters[at] === " ") at++;
  const unit = noteOfCharacter(characters[at] ?? "");
  if (unit === null) return null;
  let dots = 0;
  at++;
  // A dot may stand apart from its note by a thin space.
  while (
    isDot(characters[at] ?? "") ||
    (characters[at] === " " && isDot(characters[at + 1] ?? ""))
  ) {
    if (isDot(characters[at] ?? "")) dots++;
    at++;
  }
  return { beat: { unit, dots }, end: at };
}

export interface TempoText {
  /** Words around the equation, trimmed; "" when there are none. */
  words: string;
  metronome: Metronome | null;
}

/**
 * Takes a drawn equation out of tempo text: "Allegro ♩ = 120" is the word
 * Allegro and a metronome mark. Text without a note glyph before "=" stays as it is.
 *
 * @param oldSide which side of an equation of note values is the old beat
 */
export function splitTempoText(text: string, oldSide: Metronome["oldSide"]): TempoText {
  const characters = [...text];
  const start = characters.findIndex((character) => noteOfCharacter(character) !== null);
  const left = start < 0 ? null : drawnBeat(characters, start);
  const equals = left === null ? -1 : nextSign(characters, left.end);
  if (left === null || equals < 0) return { words: text, metronome: null };
  const right = drawnBeat(characters, equals + 1);
  const before = characters.slice(0, start).join("");
  if (right !== null) {
    const metronome = {
      beat: left.beat,
      perMinute: null,
      perMinuteText: null,
      equals: right.beat,
      oldSide,
    };
    return { words: tidy(before, characters.slice(right.end).join("")), metronome };
  }
  const rest = characters.slice(equals + 1).join("");
  const speed = /^\s*((?:ca?\.?|circa|~)?\s*\d+(?:[.,]\d+)?(?:\s*[-\u2013]\s*\d+)?)/i.exec(
    rest,
  )?.[1];
  if (speed === undefined) return { words: text, metronome: null };
  const after = rest.slice(rest.indexOf(speed) + speed.length);
  const perMinute = readPerMinute(speed);
  const metronome = {
    beat: left.beat,
    perMinute,
    perMinuteText: speed.trim(),
    equals: null,
    oldSide,
  };
  return { words: tidy(before, after), metronome };
}

function nextSign(characters: readonly string[], from: number): number {
  let at = from;
  while (characters[at] === " ") at++;
  return characters[at] === "=" ? at : -1;
}

/** Joins what stood around an equation, without the brackets that held it. */
function tidy(before: string, after: string): string {
  const opened = before.replace(/[([]\s*$/, "");
  const closed = opened === before ? after : after.replace(/^\s*[)\]]/, "");
  return `${opened.trim()} ${closed.trim()}`.trim();
}
