import { fraction, isExact, multiplyFractions } from "../fraction";
import type { BeatUnit, Fraction } from "../model";

/** MEI data.DURATION.cmn longer than a whole note, in quarters. */
const LONG_VALUES: Readonly<Record<string, Fraction>> = {
  maxima: [32, 1],
  long: [16, 1],
  breve: [8, 1],
};

const UNIT_NAMES: Readonly<Record<string, string>> = {
  maxima: "maxima",
  long: "long",
  breve: "breve",
  "1": "whole",
  "2": "half",
  "4": "quarter",
  "8": "eighth",
  "16": "16th",
  "32": "32nd",
  "64": "64th",
  "128": "128th",
  "256": "256th",
  "512": "512th",
  "1024": "1024th",
};

const MAX_DOTS = 6;

/** Length of a written value such as "8" with dots in quarters, null when it is none. */
export function writtenLength(dur: string, dots: number): Fraction | null {
  if (dots < 0 || dots > MAX_DOTS) return null;
  const base = LONG_VALUES[dur] ?? shortValue(dur);
  if (base === null) return null;
  return fraction(base[0] * (2 ** (dots + 1) - 1), base[1] * 2 ** dots);
}

function shortValue(dur: string): Fraction | null {
  const value = Number(dur);
  const isPower = Number.isInteger(value) && value >= 1 && value <= 2048 && 2048 % value === 0;
  return isPower ? fraction(4, value) : null;
}

/** MusicXML name of an MEI duration value, as in "8" → eighth. */
export function unitName(dur: string): string | null {
  return UNIT_NAMES[dur] ?? null;
}

export function beatUnit(dur: string, dots: number): BeatUnit | null {
  const unit = unitName(dur);
  return unit === null ? null : { unit, dots };
}

/** Scales lengths inside a tuplet: `num` notes in the time of `numbase`. Null when it makes no sense. */
export function tupletScale(num: string | undefined, numbase: string | undefined): Fraction | null {
  const [actual, normal] = [Number(num), Number(numbase)];
  const usable = [actual, normal].every((n) => Number.isInteger(n) && n > 0 && n <= 1024);
  return usable ? fraction(normal, actual) : null;
}

/** Product, null once it can no longer be kept exactly. */
export function scaled(length: Fraction, scale: Fraction): Fraction | null {
  const product = multiplyFractions(length, scale);
  return isExact(product) ? product : null;
}

/** Largest denominator a rounded decimal such as 1.3333 is taken to stand for. */
const FINEST = 96;
const ROUNDING = 0.006;

/**
 * A beat position as an exact fraction. Binary decimals (2.25) are exact as they
 * stand; others are rounded thirds and the like, and become the simplest
 * fraction within the rounding.
 */
export function beatFraction(text: string): Fraction | null {
  const value = /^\s*\d+(?:\.\d+)?\s*$/.test(text) ? Number(text) : Number.NaN;
  if (!Number.isFinite(value) || value > 10_000) return null;
  if (Number.isInteger(value * 64)) return fraction(Math.round(value * 64), 64);
  for (let denominator = 3; denominator <= FINEST; denominator++) {
    const numerator = Math.round(value * denominator);
    if (Math.abs(numerator / denominator - value) < ROUNDING / denominator) {
      return fraction(numerator, denominator);
    }
  }
  return fraction(Math.round(value * 1000), 1000);
}
