import type { ClientEntry } from "@/lib/glossary/client-entry";
import { PACES } from "@/lib/glossary/vocabulary";
import { samePlace } from "@/lib/reading/place";
import type { TempoState } from "@/lib/reading/reading";
import type { PrintedMark } from "./printed-marks";

/** Height of the line through one state: where it begins and where it has come to at its end. */
export interface TempoLevel {
  from: number;
  to: number;
}

/** How far a change without a number moves the line, in steps of the pace scale. */
const CHANGE = 2;
const RELATIVE = 1;
/**
 * Beats a minute at the lowest and highest step, for setting a printed number
 * beside printed words. Only a scale of the drawing: no word is given a number.
 */
const SLOWEST = 40;
const FASTEST = 168;
const MIDDLE = 3;

/**
 * Heights for the tempo line, in steps of the seven paces (0 very slow, 6 very
 * fast). A printed number counts before the word beside it; a change or a
 * relative word goes from where the line is; a restored speed goes back to it.
 */
export function tempoLevels(
  states: readonly TempoState[],
  marks: readonly PrintedMark[],
  entryOf: (slug: string | null) => ClientEntry | undefined,
): TempoLevel[] {
  const levels: TempoLevel[] = [];
  const levelAt = (state: TempoState, i: number): TempoLevel => {
    const now = levels.at(-1)?.to ?? MIDDLE;
    const head = entryOf(state.slugs[0] ?? null)?.asks.tempo;
    if (state.restoredFrom !== null) {
      const at = states.findIndex(
        (s, k) => k < i && s.measureIndex === state.restoredFrom && s.change === "none",
      );
      return steady(levels[at]?.to ?? now);
    }
    if (state.change !== "none") {
      // "colla parte" inside a rit. neither slows further nor stops it.
      const moves = head?.change === "slower" || head?.change === "faster";
      const step = state.change === "slowing" ? -CHANGE : CHANGE;
      return { from: now, to: moves ? now + step : now };
    }
    if (state.settled) return steady(now);
    if (state.beat?.perMinute && state.quarterBpm !== null) {
      return steady(levelOfNumber(state.beat.perMinute));
    }
    const relative = relativeStep(state, head, marks, entryOf);
    if (relative !== 0) return steady(now + relative * RELATIVE);
    const pace = state.slugs
      .map((slug) => entryOf(slug)?.asks.tempo?.pace)
      .findLast((p) => p !== undefined);
    return steady(pace ? PACES.indexOf(pace) : now);
  };
  states.forEach((state, i) => {
    levels.push(levelAt(state, i));
  });
  return levels;
}

function steady(level: number): TempoLevel {
  return { from: level, to: level };
}

function levelOfNumber(perMinute: number): number {
  const share = Math.log(perMinute / SLOWEST) / Math.log(FASTEST / SLOWEST);
  return Math.max(-0.5, Math.min(PACES.length - 0.5, share * (PACES.length - 1)));
}

/** 1 faster, -1 slower than before, 0 when the word stands for itself. */
function relativeStep(
  state: TempoState,
  head: ClientEntry["asks"]["tempo"],
  marks: readonly PrintedMark[],
  entryOf: (slug: string | null) => ClientEntry | undefined,
): number {
  if (state.aboveBpm !== null) return 1;
  if (state.belowBpm !== null) return -1;
  if (head?.change === "faster") return 1;
  if (head?.change === "slower") return -1;
  const mark = marks.find(
    (m) => m.sign === null && samePlace(m, state) && state.slugs.includes(m.head.slug ?? ""),
  );
  const roles = (mark?.found ?? []).map((f) => entryOf(f.slug)?.modifies);
  const more = roles.includes("more") ? 1 : roles.includes("less") ? -1 : 0;
  const slow = head?.pace !== undefined && PACES.indexOf(head.pace) < MIDDLE;
  return more === 0 ? 0 : slow ? -more : more;
}
