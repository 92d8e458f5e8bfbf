import { fraction } from "../fraction";
import type { Fraction } from "../model";

/** Whole number written in plain digits, null for anything else. Most numbers of a score are this. */
export function readWhole(text: string): number | null {
  let value = 0;
  let digits = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code >= 48 && code <= 57) {
      value = value * 10 + (code - 48);
      digits++;
    } else if (code > 32) {
      return null;
    } else if (digits > 0) {
      return text.trim().length === digits ? value : null;
    }
  }
  return digits > 0 && digits < 16 ? value : null;
}

/** Numbers longer than this are none; it also keeps the pattern below cheap. */
const MAX_LENGTH = 60;
const DECIMAL = /^\s*([+-]?)(\d*)(?:\.(\d*))?\s*$/;

/** An xs:decimal as an exact fraction, null when it is not one or too long to be exact. */
export function readDecimal(text: string): Fraction | null {
  const whole = readWhole(text);
  if (whole !== null) return [whole, 1];
  if (text.length > MAX_LENGTH) return null;
  const match = DECIMAL.exec(text);
  if (match === null) return null;
  const decimals = (match[3] ?? "").replace(/0+$/, "");
  const digits = (match[2] ?? "") + decimals;
  if (((match[2] ?? "") + (match[3] ?? "")).length === 0 || digits.length > 15) return null;
  const value = Number(digits) * (match[1] === "-" ? -1 : 1);
  return fraction(value, 10 ** decimals.length);
}

/** A plain number, null when it is not one. */
export function readNumber(text: string | undefined): number | null {
  if (text === undefined) return null;
  const value = readDecimal(text);
  return value === null ? null : value[0] / value[1];
}
