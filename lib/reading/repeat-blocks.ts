import type { Measure } from "../score/model";

/** A section played more than once, with its endings. */
export interface RepeatBlock {
  start: number;
  /** Last measure that belongs to it, its last ending included. */
  end: number;
  /** Plays in all. */
  times: number;
  endings: Ending[];
  /** Brackets inside it that close with no repeat of their own: played on the passes they name. */
  inner: Ending[];
  afterJump: boolean;
  /** The forward sign is not printed: where it begins is a policy. */
  openStart: "none" | "movement" | "after-last";
}

export interface Ending {
  from: number;
  to: number;
  passes: number[];
}

/** More plays than any printed part asks for: a guard against hostile counts. */
export const MOST_TIMES = 99;

/**
 * Pairs every backward repeat with its beginning. A repeat without a forward
 * sign goes back to the end of the repeat before it, else to the start of the
 * movement (players' convention; MusicXML `sound/@forward-repeat` exists for
 * exactly this unprinted sign). A forward sign never closed has no effect.
 */
export function findRepeatBlocks(measures: readonly Measure[]): RepeatBlock[] {
  const endings = findEndings(measures);
  const blocks: RepeatBlock[] = [];
  const open: number[] = [];
  let movement = 0;
  let afterLast: number | null = null;
  measures.forEach((measure, i) => {
    if (measure.movementStart) {
      movement = i;
      afterLast = null;
      open.length = 0;
    }
    const forward = measure.repeatStart || measure.jumps.some((j) => j.kind === "forward-repeat");
    if (forward) open.push(i);
    const group = endings.find((g) => g.some((e) => e.from <= i && i <= e.to));
    if (measure.repeatEnd) {
      const shared = group && blocks.find((b) => b.endings === group);
      if (shared) return;
      const printed = open.pop();
      const start = printed ?? afterLast ?? movement;
      const times = Math.min(Math.max(measure.repeatEnd.times ?? 2, 1), MOST_TIMES);
      blocks.push({
        start,
        end: group?.at(-1)?.to ?? i,
        times: group ? Math.max(times, ...group.flatMap((e) => e.passes)) : times,
        endings: group ?? [],
        inner: [],
        afterJump: measure.repeatEnd.afterJump ?? false,
        openStart: printed !== undefined ? "none" : afterLast === null ? "movement" : "after-last",
      });
    }
    // Only a closed section, endings and all, stands for the missing sign of the next.
    const closed = blocks.find((b) => b.end === i);
    if (closed) afterLast = i + 1;
  });
  for (const group of endings) {
    if (blocks.some((b) => b.endings === group)) continue;
    const holder = blocks
      .filter((b) => group.every((e) => b.start <= e.from && e.to <= b.end))
      .sort((a, b) => a.end - a.start - (b.end - b.start))[0];
    if (!holder) continue;
    holder.inner.push(...group);
    holder.times = Math.max(holder.times, ...group.flatMap((e) => e.passes));
  }
  return blocks;
}

/** Brackets next to one another belong to one repeat. */
function findEndings(measures: readonly Measure[]): Ending[][] {
  const groups: Ending[][] = [];
  let current: Ending | null = null;
  measures.forEach((measure, i) => {
    if (measure.endingStart) {
      const before = groups.at(-1)?.at(-1);
      current = { from: i, to: i, passes: measure.endingStart };
      const continues = before && before.to === i - 1 && measures[before.to]?.repeatEnd;
      if (continues) groups.at(-1)?.push(current);
      else groups.push([current]);
    }
    if (current) current.to = i;
    if (measure.endingStop || measures[i + 1]?.endingStart) current = null;
  });
  for (const group of groups) {
    let next = 1;
    for (const ending of group) {
      if (ending.passes.length === 0) ending.passes = [next];
      ending.passes = ending.passes.filter((p) => p >= 1 && p <= MOST_TIMES);
      next = Math.max(next, ...ending.passes.map((p) => p + 1));
    }
  }
  return groups;
}
