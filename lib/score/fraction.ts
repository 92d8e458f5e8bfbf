import type { Fraction } from "./model";

export const ZERO: Fraction = [0, 1];

export function greatestCommonDivisor(a: number, b: number): number {
  let x = Math.abs(a);
  let y = Math.abs(b);
  while (y !== 0) {
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

/** True while exact arithmetic on it stays within the integers a number can hold. */
export function isExact([numerator, denominator]: Fraction): boolean {
  return (
    Number.isSafeInteger(numerator) && Number.isSafeInteger(denominator) && denominator <= 2 ** 30
  );
}
