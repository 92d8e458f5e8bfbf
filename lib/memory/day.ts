/** Days and moments, without a clock: the student's own day is reckoned from `at` and `offset`. */

export const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;

/** Hour of the audition on its date when no hour is known; see scheduler-interface of the reference. */
export const AUDITION_HOUR = 9;

/**
 * The student's own day of a moment: whole days since 1970-01-01 on that device's calendar.
 *
 * @param stamp `at` in milliseconds since 1970 UTC, `offset` in minutes east of UTC
 * @example dayOf({ at: Date.UTC(2027, 0, 1, 23, 30), offset: 60 }) // the day of 2 January 2027
 */
export function dayOf(stamp: { at: number; offset: number }): number {
  return Math.floor((stamp.at + stamp.offset * MINUTE_MS) / DAY_MS);
}

/**
 * Day number of a calendar date written `YYYY-MM-DD`.
 *
 * @returns null when the text is not a date that exists (2027-02-30)
 */
export function readDate(text: string): number | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!match) return null;
  const day = Math.round(
    Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3])) / DAY_MS,
  );
  return dateOfDay(day) === text ? day : null;
}

/** `YYYY-MM-DD` of a day number. */
export function dateOfDay(day: number): string {
  return new Date(day * DAY_MS).toISOString().slice(0, 10);
}

/**
 * The moment of an hour on a student's own day.
 *
 * @param day day number as of {@link dayOf}
 * @param offset minutes east of UTC
 * @returns milliseconds since 1970 UTC
 */
export function momentOf(day: number, offset: number, hour: number = AUDITION_HOUR): number {
  return day * DAY_MS - offset * MINUTE_MS + hour * 60 * MINUTE_MS;
}
