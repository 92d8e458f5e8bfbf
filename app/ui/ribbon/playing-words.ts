/** Where playing goes from each measure, told from the playing order, in the words of the road lane. */
import type { Reading } from "@/lib/reading/reading";
import { measureName } from "./measure-name";

/** One way on: the measure index it leads to (null: the end), and how many times in a row. */
export interface WayOn {
  to: number | null;
  times: number;
}

/**
 * Measures after which playing does not always go to the next one.
 * @returns ways on in the order they are taken, equal ones in a row counted once
 */
export function waysOn({
  playingOrder,
  measures,
}: Pick<Reading, "playingOrder" | "measures">): Map<number, WayOn[]> {
  const ways = new Map<number, WayOn[]>();
  playingOrder.forEach((from, i) => {
    const to = playingOrder[i + 1] ?? null;
    const list = ways.get(from);
    const last = list?.at(-1);
    if (last && last.to === to) last.times += 1;
    else if (list) list.push({ to, times: 1 });
    else ways.set(from, [{ to, times: 1 }]);
  });
  for (const [from, list] of ways) {
    const isPlain = list.every(
      ({ to }) => to === from + 1 || (to === null && from === measures.length - 1),
    );
    if (isPlain) ways.delete(from);
  }
  return ways;
}

/**
 * Short words for the ways on from a measure.
 * @example "back to 9, then on"; "back to 1"; "last time, on to 60"; "last time, end"
 */
export function wayWords(
  from: number,
  ways: readonly WayOn[],
  measures: Reading["measures"],
): string {
  const [first] = ways;
  if (ways.length > 1 && first && first.to === from + 1) {
    const rest = ways.slice(1).map(({ to }) => goal(to));
    return `last time, ${rest.join(", then ")}`;
  }
  return ways.map(({ to }) => goal(to)).join(", then ");

  function goal(to: number | null): string {
    if (to === null) return "end";
    if (to === from + 1) return "on";
    return to <= from
      ? `back to ${measureName(measures, to)}`
      : `on to ${measureName(measures, to)}`;
  }
}

/**
 * How often a section is played where a repeat leads back to its first measure.
 * @returns by index of that first measure
 */
export function timesPlayed(
  ways: ReadonlyMap<number, readonly WayOn[]>,
  repeatEnds: ReadonlySet<number>,
): Map<number, number> {
  const times = new Map<number, number>();
  for (const [from, list] of ways) {
    const [first] = list;
    if (!repeatEnds.has(from) || !first || first.to === null || first.to > from) continue;
    times.set(first.to, Math.max(times.get(first.to) ?? 0, first.times + 1));
  }
  return times;
}

export function timesWords(times: number): string {
  return times === 2 ? "twice" : `${times} times`;
}
