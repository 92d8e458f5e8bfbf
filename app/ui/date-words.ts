import { dateOfDay, dayOf, readDate } from "@/lib/memory/day";
import { stampNow } from "@/lib/store/clock";

const MONTHS =
  "January February March April May June July August September October November December".split(
    " ",
  );

/** "6 February"; the year only where it is not this one. */
export function dateWords(date: string, today = dateOfDay(todayNumber())): string {
  const [year = "", month = "", day = ""] = date.split("-");
  const name = MONTHS[Number(month) - 1] ?? month;
  return `${Number(day)} ${name}${today.startsWith(year) ? "" : ` ${year}`}`;
}

/** "today", "tomorrow", "in 23 days", "past". */
export function daysWords(date: string, today = todayNumber()): string {
  const day = readDate(date);
  if (day === null) return "";
  const left = day - today;
  if (left < 0) return "past";
  return ["today", "tomorrow"][left] ?? `in ${left} days`;
}

/** The student's own day by this device. */
export function todayNumber(): number {
  return dayOf(stampNow());
}
