/** Days as text, YYYY-MM-DD, in the student's own calendar. */

const DAY = 86_400_000;

/** Whole days from one date to another; negative when it is over. */
export function daysUntil(date: string, today: string): number {
  return Math.round((Date.parse(`${date}T00:00:00Z`) - Date.parse(`${today}T00:00:00Z`)) / DAY);
}

/** "6 February", with the year when it is not this one. */
export function inWords(date: string, today?: string): string {
  const sameYear = today === undefined || date.slice(0, 4) === today.slice(0, 4);
  return new Date(`${date}T00:00:00Z`).toLocaleDateString("en-GB", {
    day: "numeric",
    month: "long",
    ...(sameYear ? {} : { year: "numeric" }),
    timeZone: "UTC",
  });
}
