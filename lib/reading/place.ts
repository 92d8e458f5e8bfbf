import type { Fraction } from "../score/model";
import type { Place } from "./reading";

export function compareFractions(a: Fraction, b: Fraction): number {
  return a[0] * b[1] - b[0] * a[1];
}

export function comparePlaces(a: Place, b: Place): number {
  return a.measureIndex - b.measureIndex || compareFractions(a.onset, b.onset);
}

export function samePlace(a: Place, b: Place): boolean {
  return comparePlaces(a, b) === 0;
}

export function toNumber([n, d]: Fraction): number {
  return n / d;
}

/** The last of a list sorted by place that stands at or before the place, or -1. Binary search. */
export function lastAt(list: readonly Place[], place: Place): number {
  let low = 0;
  let high = list.length - 1;
  let found = -1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const item = list[middle];
    if (item && comparePlaces(item, place) <= 0) {
      found = middle;
      low = middle + 1;
    } else {
      high = middle - 1;
    }
  }
  return found;
}

/** One text for one place, for maps. Onsets are reduced fractions. */
export function placeKey({ measureIndex, onset }: Place): string {
  return `${measureIndex} ${onset[0]}/${onset[1]}`;
}
