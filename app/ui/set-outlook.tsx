"use client";
import type { SetRecord } from "@/lib/store/records";
import { dateWords, daysWords } from "./date-words";
import { Forecast } from "./forecast";

/** How far a set will be by its date; nothing without a date, or once it is past. */
export function SetOutlook({ set }: { set: SetRecord | null }) {
  if (!set || set.date === null || daysWords(set.date) === "past") return null;
  return (
    <section aria-labelledby={`outlook-${set.id}`}>
      <h2 id={`outlook-${set.id}`}>By {dateWords(set.date)}</h2>
      <Forecast slugs={set.slugs} date={set.date} minutes={set.minutesADay} />
    </section>
  );
}
