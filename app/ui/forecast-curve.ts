import type { ForecastDay } from "@/lib/memory/forecast";

/** A drawing in a box of `width` × `height`, top left at 0 0. */
export interface Curve {
  /** Path of the expected curve. */
  line: string;
  /** Path round the range, closed. */
  range: string;
  /** Where today stands: the left end. */
  today: [number, number];
}

interface Box {
  width: number;
  height: number;
}

/**
 * The rows of a forecast as one curve from today to the date, nothing known at the foot, all at the top.
 * @returns null with fewer than two rows: a point is no curve
 */
export function forecastCurve(rows: readonly ForecastDay[], { width, height }: Box): Curve | null {
  const first = rows[0];
  if (!first || rows.length < 2) return null;
  const x = (i: number) => round((width * i) / (rows.length - 1));
  const y = (share: number) => round(height * (1 - Math.min(1, Math.max(0, share))));
  const path = (points: readonly (readonly [number, number])[]) =>
    points.map(([px, py], i) => `${i === 0 ? "M" : "L"}${px} ${py}`).join("");
  const high = rows.map((row, i) => [x(i), y(row.high)] as const);
  const low = rows.map((row, i) => [x(i), y(row.low)] as const);
  return {
    line: path(rows.map((row, i) => [x(i), y(row.recall)] as const)),
    range: `${path([...high, ...low.reverse()])}Z`,
    today: [x(0), y(first.recall)],
  };
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

/** What a forecast says, in whole entries. */
export interface ForecastNumbers {
  /** Entries of the set. */
  of: number;
  /** Expected on the date if nothing more is done. */
  today: number;
  /** Expected on the date if the plan is kept, with its range, 10 % to 90 %. */
  onDate: number;
  low: number;
  high: number;
  /** Last day of drilling reckoned with, where the date lies farther off; null when all days are. */
  until: string | null;
}

/**
 * @param rows of the forecast
 * @param of entries of the set
 * @param date of the audition
 * @returns null without rows
 */
export function forecastNumbers(
  rows: readonly ForecastDay[],
  of: number,
  date: string,
): ForecastNumbers | null {
  const first = rows[0];
  const last = rows.at(-1);
  if (!first || !last || of === 0) return null;
  const whole = (share: number) => Math.round(share * of);
  // The last row is the evening before; a long way off, the forecast ends earlier.
  const dayAfter = nextDate(last.date);
  return {
    of,
    today: whole(first.recall),
    onDate: whole(last.recall),
    low: whole(last.low),
    high: whole(last.high),
    until: rows.length === 1 || dayAfter >= date ? null : last.date,
  };
}

function nextDate(date: string): string {
  const next = new Date(`${date}T00:00:00Z`);
  next.setUTCDate(next.getUTCDate() + 1);
  return next.toISOString().slice(0, 10);
}
