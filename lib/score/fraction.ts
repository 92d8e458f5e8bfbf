import type { Fraction } from "./model";

export const ZERO: Fraction = [0, 1];

export function greatestCommonDivisor(a: number, b: number): number {
  let x = Math.abs(a);
  let y = Math.abs(b);
  // Not "!== 0": what is no number must end, too.
  while (y > 0) {
    const rest = x % y;
    x = y;
    y = rest;
  }
  return x;
}

/** Reduced fraction with a denominator above 0. Both arguments are integers, `denominator` is not 0. */
export function fraction(numerator: number, denominator: number): Fraction {
  if (numerator === 0) return ZERO;
  const divisor = greatestCommonDivisor(numerator, denominator) * (denominator < 0 ? -1 : 1);
  return [numerator / divisor, denominator / divisor];
}

export function addFractions(a: Fraction, b: Fraction): Fraction {
  return fraction(a[0] * b[1] + b[0] * a[1], a[1] * b[1]);
}

export function subtractFractions(a: Fraction, b: Fraction): Fraction {
  return fraction(a[0] * b[1] - b[0] * a[1], a[1] * b[1]);
}

export function multiplyFractions(a: Fraction, b: Fraction): Fraction {
  return fraction(a[0] * b[0], a[1] * b[1]);
}

/** Below 0 when a comes first, 0 when equal, above 0 when b comes first. */
export function compareFractions(a: Fraction, b: Fraction): number {
  return a[0] * b[1] - b[0] * a[1];
}

/** Bounds within which sums and products of two fractions are exact in a 53-bit number. */
const MAX_NUMERATOR = 2 ** 31;
const MAX_DENOMINATOR = 2 ** 20;

/** True while arithmetic on it stays exact. */
export function isExact([numerator, denominator]: Fraction): boolean {
  return (
    Number.isInteger(numerator) &&
    Number.isInteger(denominator) &&
    Math.abs(numerator) <= MAX_NUMERATOR &&
    denominator <= MAX_DENOMINATOR
  );
}
