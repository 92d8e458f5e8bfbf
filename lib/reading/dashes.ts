import type { Mark } from "../score/model";
import type { Phrase } from "./gather-phrases";
import { comparePlaces, samePlace } from "./place";
import type { Place } from "./reading";

/**
 * Where the dashed line after some words ends: the line that starts in the
 * same direction, or at the same place of the same staff.
 * @param marks of the same part, in order
 * @returns null when no dashes belong to the words or they never stop
 */
export function dashesFor(marks: readonly Mark[], phrase: Phrase): Place | null {
  const start = marks.findIndex(
    (m) =>
      m.element === "dashes" &&
      m.role === "start" &&
      (phrase.groups.includes(m.group) || (samePlace(m, phrase) && m.staff === phrase.staff)),
  );
  const opened = marks[start];
  if (!opened) return null;
  const stop = marks.slice(start + 1).find((m) => isStopOf(m, opened));
  return stop ? { measureIndex: stop.measureIndex, onset: stop.onset } : null;
}

/** The stop that closes a start: same element, same number, same staff where both say so. */
export function isStopOf(mark: Mark, start: Mark): boolean {
  return (
    mark.element === start.element &&
    mark.role === "stop" &&
    (mark.number ?? "1") === (start.number ?? "1") &&
    (mark.staff === null || start.staff === null || mark.staff === start.staff) &&
    comparePlaces(mark, start) >= 0
  );
}
