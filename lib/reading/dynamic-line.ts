import type { Measure } from "../score/model";
import { type DynamicEvent, LEVEL_ORDER } from "./dynamic-events";
import { comparePlaces, samePlace, toNumber } from "./place";
import type { DynamicState, Place } from "./reading";

/** A level printed within this many quarter notes of a hairpin's end is its goal. */
const GOAL_WITHIN = 1;

type Change = Extract<DynamicEvent, { type: "change" }>;

/**
 * Loudness through one staff: levels last until replaced, a change keeps the
 * level it started from until it is over, one-note marks leave it alone.
 * Where the goal is not written none is made up.
 */
export function dynamicLine(
  events: readonly DynamicEvent[],
  measures: readonly Measure[],
): DynamicState[] {
  const states: DynamicState[] = [];
  const starts = absoluteStarts(measures);
  const when = (p: Place) => (starts[p.measureIndex] ?? 0) + toNumber(p.onset);
  let open: (Change & { goal: DynamicEvent | null; over: Place | null }) | null = null;

  const push = (state: DynamicState) => {
    const last = states.at(-1);
    if (last && samePlace(last, state)) states[states.length - 1] = state;
    else states.push(state);
  };
  const closeBefore = (place: Place) => {
    if (!open?.over || comparePlaces(open.over, place) > 0) return;
    if (!open.goal) push(unaimedEnd(states.at(-1) ?? silence(), open, open.over));
    open = null;
  };

  events.forEach((event, i) => {
    if (open && !(open.goal === event)) closeBefore(event);
    const now = states.at(-1) ?? silence();
    if (event.type === "change") {
      // A hairpin under "cresc." only shows the same growth again.
      if (open && open.direction !== event.direction) push(unaimedEnd(now, open, event));
      const goal = goalOf(event, events.slice(i + 1), states.at(-1)?.level ?? null, when);
      const over = goal ?? event.end;
      open = { ...event, goal, over };
      push(inChange(states.at(-1) ?? silence(), event, goal, over, measures.length));
      return;
    }
    if (event.type === "attack") {
      push({ ...now, ...placeOf(event), attack: event.attack, by: event.by, slugs: event.slugs });
      return;
    }
    if (event.type === "relative") {
      const { direction } = event;
      open = null;
      push({
        ...steady(now, event),
        louderThan: direction === "rising",
        softerThan: direction === "falling",
      });
      return;
    }
    const dropped =
      open !== null && open.goal !== event && !agrees(open.direction, now.level, event.level);
    const reminder = event.persist && now.level === event.level && now.change === "none";
    open = null;
    push({
      ...steady(now, event),
      level: event.level,
      attack: event.attack,
      sudden: event.attack === null && (event.sudden || dropped),
      persist: event.persist,
      source: reminder ? now.source : event.measureIndex,
    });
  });
  if (open) closeBefore({ measureIndex: measures.length, onset: [0, 1] });
  return states;
}

function placeOf({ measureIndex, onset }: Place): Place {
  return { measureIndex, onset };
}

function silence(): DynamicState {
  return {
    measureIndex: 0,
    onset: [0, 1],
    level: null,
    change: "none",
    toward: null,
    span: null,
    sudden: false,
    persist: false,
    attack: null,
    louderThan: false,
    softerThan: false,
    source: null,
    by: "",
    slugs: [],
  };
}

function steady(now: DynamicState, event: DynamicEvent): DynamicState {
  return {
    ...silence(),
    ...placeOf(event),
    level: now.level,
    source: now.source,
    by: event.by,
    slugs: event.slugs,
  };
}

function inChange(
  now: DynamicState,
  event: Change,
  goal: DynamicEvent | null,
  over: Place | null,
  measures: number,
): DynamicState {
  return {
    ...now,
    ...placeOf(event),
    change: event.direction,
    toward: event.toward ?? (goal?.type === "level" ? goal.level : null),
    span: [event.measureIndex, over?.measureIndex ?? measures - 1],
    sudden: false,
    persist: false,
    attack: null,
    by: event.by,
    slugs: event.slugs,
  };
}

/** The change is over and no level says how far it went; towards silence it went all the way. */
function unaimedEnd(now: DynamicState, change: Change, at: Place): DynamicState {
  const base = {
    ...now,
    ...placeOf(at),
    change: "none" as const,
    toward: null,
    span: null,
    attack: null,
  };
  if (change.toward)
    return {
      ...base,
      level: change.toward,
      source: at.measureIndex,
      louderThan: false,
      softerThan: false,
    };
  return {
    ...base,
    louderThan: change.direction === "rising",
    softerThan: change.direction === "falling",
  };
}

/**
 * The level a change leads to: the next mark, if it is a level on the right
 * side of where the change began and stands at or straight after its end.
 */
function goalOf(
  change: Change,
  later: readonly DynamicEvent[],
  from: string | null,
  when: (place: Place) => number,
): DynamicEvent | null {
  if (change.toward) return null;
  const next = later.find((e) => e.type !== "attack" && comparePlaces(e, change) > 0);
  if (next?.type !== "level" || next.attack !== null || next.sudden) return null;
  if (!agrees(change.direction, from, next.level)) return null;
  if (
    change.end &&
    comparePlaces(next, change.end) > 0 &&
    when(next) - when(change.end) > GOAL_WITHIN
  ) {
    return null;
  }
  return next;
}

function agrees(direction: "rising" | "falling", from: string | null, to: string): boolean {
  if (from === null) return true;
  const step = LEVEL_ORDER.indexOf(to) - LEVEL_ORDER.indexOf(from);
  return direction === "rising" ? step > 0 : step < 0;
}

/** Quarter notes from the start of the score to each measure, in written order. */
export function absoluteStarts(measures: readonly Measure[]): number[] {
  const starts: number[] = [];
  let sum = 0;
  for (const measure of measures) {
    starts.push(sum);
    sum += toNumber(measure.length);
  }
  return starts;
}
