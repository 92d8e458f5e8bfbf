import type { Mark, ScorePart } from "../score/model";
import type { Phrase } from "./gather-phrases";
import { placeKey } from "./place";
import type { Place } from "./reading";

/** Hairpins and dashed lines of a part, each with its end. Built once, in one pass. */
export interface Spanners {
  stopOf: ReadonlyMap<Mark, Mark>;
  /** Dashed lines by the direction they start in, and by place. */
  dashesByGroup: ReadonlyMap<number, Mark>;
  dashesAt: ReadonlyMap<string, readonly Mark[]>;
}

export function findSpanners(part: ScorePart): Spanners {
  const stopOf = new Map<Mark, Mark>();
  const dashesByGroup = new Map<number, Mark>();
  const dashesAt = new Map<string, Mark[]>();
  const open: Mark[] = [];
  for (const mark of part.marks) {
    if (mark.element !== "wedge" && mark.element !== "dashes") continue;
    if (mark.role === "start") {
      open.push(mark);
      if (mark.element !== "dashes") continue;
      if (mark.group >= 0) dashesByGroup.set(mark.group, mark);
      const key = placeKey(mark);
      dashesAt.set(key, [...(dashesAt.get(key) ?? []), mark]);
    } else if (mark.role === "stop") {
      const at = open.findLastIndex((start) => isStopOf(mark, start));
      const start = open[at];
      if (!start) continue;
      stopOf.set(start, mark);
      open.splice(at, 1);
    }
  }
  return { stopOf, dashesByGroup, dashesAt };
}

/**
 * Where the dashed line after some words ends: the line that starts in the
 * same direction, or at the same place of the same staff.
 * @returns null when no dashes belong to the words or they never stop
 */
export function dashesFor(spanners: Spanners, phrase: Phrase): Place | null {
  const own = phrase.groups.map((g) => spanners.dashesByGroup.get(g)).find((m) => m !== undefined);
  const start =
    own ?? spanners.dashesAt.get(placeKey(phrase))?.find((m) => m.staff === phrase.staff);
  const stop = start && spanners.stopOf.get(start);
  return stop ? { measureIndex: stop.measureIndex, onset: stop.onset } : null;
}

/** The stop that closes a start: same element, same number, same staff where both say so. */
function isStopOf(mark: Mark, start: Mark): boolean {
  return (
    mark.element === start.element &&
    (mark.number ?? "1") === (start.number ?? "1") &&
    (mark.staff === null || start.staff === null || mark.staff === start.staff)
  );
}
