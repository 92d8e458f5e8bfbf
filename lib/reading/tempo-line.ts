import type { Glossary } from "../glossary/glossary";
import type { Asks } from "../glossary/schema";
import type { BeatUnit, Mark, Metronome, Score } from "../score/model";
import type { Demand } from "../words/compose";
import { hasRole } from "../words/compose";
import type { Phrase } from "./gather-phrases";
import { comparePlaces, placeKey, samePlace } from "./place";
import type { Place, TempoState } from "./reading";
import { dashesFor, type Spanners } from "./spanners";

/** Quarter notes in each MusicXML note type. */
const QUARTERS: Readonly<Record<string, number>> = {
  maxima: 32,
  long: 16,
  breve: 8,
  whole: 4,
  half: 2,
  quarter: 1,
  eighth: 1 / 2,
  "16th": 1 / 4,
  "32nd": 1 / 8,
  "64th": 1 / 16,
  "128th": 1 / 32,
};

/**
 * Words that hold the tempo back at once but only for the moment, until it is
 * restored; other words for an immediate change (meno mosso) set a new steady
 * tempo. Gehrkens 1914 and LilyPond's glossary tell ritenuto so apart.
 */
const HOLDS = new Set(["ritenuto", "ritenente", "trattenuto", "retenu", "retenez"]);

type TempoEvent = Place &
  (
    | { type: "words"; demand: Demand; asks: Asks; dashed: Place | null }
    | { type: "metronome"; metronome: Metronome; text: string }
    | { type: "sound"; bpm: number }
    | { type: "dashes-end" }
  );

/**
 * Tempo through the piece. Tempo is for all parts, though most files print it
 * in the first alone: the same mark at the same place counts once.
 */
export function tempoLine(
  score: Score,
  phrases: readonly (readonly Phrase[])[],
  spanners: readonly Spanners[],
  glossary: Glossary,
): TempoState[] {
  const states: TempoState[] = [];
  const memory: Memory = { steady: null, first: null };
  for (const event of collectEvents(score, phrases, spanners, glossary)) {
    const before = states.at(-1) ?? nothing();
    const next = step(before, event, memory);
    if (!next) continue;
    if (samePlace(before, event) && states.length > 0) states[states.length - 1] = next;
    else states.push(next);
    if (next.change === "none" && !next.settled && (next.word || next.quarterBpm)) {
      memory.steady = next;
      if (next.word || next.quarterBpm) memory.first ??= next;
      if (memory.first && samePlace(memory.first, next)) memory.first = next;
    }
  }
  return withSpans(states, score.measures.length);
}

interface Memory {
  steady: TempoState | null;
  first: TempoState | null;
}

function nothing(): TempoState {
  return {
    measureIndex: 0,
    onset: [0, 1],
    word: null,
    quarterBpm: null,
    change: "none",
    baseBpm: null,
    restoredFrom: null,
    belowBpm: null,
    aboveBpm: null,
    beat: null,
    span: null,
    settled: null,
    free: false,
    playbackBpm: null,
    by: "",
    slugs: [],
  };
}

function collectEvents(
  score: Score,
  phrases: readonly (readonly Phrase[])[],
  spanners: readonly Spanners[],
  glossary: Glossary,
): TempoEvent[] {
  const events: TempoEvent[] = [];
  const seen = new Set<string>();
  const once = (place: Place, what: string) => {
    const key = `${placeKey(place)} ${what}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  };
  score.parts.forEach((part, p) => {
    const own = spanners[p];
    for (const phrase of phrases[p] ?? []) {
      for (const demand of phrase.demands) {
        const asks = demand.head && glossary.bySlug.get(demand.head.slug)?.asks;
        if (!demand.head || !asks?.tempo || !once(phrase, demand.text.toLowerCase())) continue;
        const at = { measureIndex: phrase.measureIndex, onset: phrase.onset };
        const dashed = own ? dashesFor(own, phrase) : null;
        events.push({ ...at, type: "words", demand, asks, dashed });
        if (dashed && asks.tempo.change) events.push({ ...dashed, type: "dashes-end" });
      }
    }
    for (const mark of part.marks) pushSigns(events, mark, once);
  });
  // At one place words come first, then their number; a change's end before what follows it.
  const rank = { "dashes-end": 0, words: 1, metronome: 2, sound: 3 };
  return events.sort((a, b) => comparePlaces(a, b) || rank[a.type] - rank[b.type]);
}

function pushSigns(
  events: TempoEvent[],
  mark: Mark,
  once: (place: Place, what: string) => boolean,
): void {
  const at = { measureIndex: mark.measureIndex, onset: mark.onset };
  if (mark.metronome && once(mark, `metronome ${JSON.stringify(mark.metronome)}`)) {
    events.push({ ...at, type: "metronome", metronome: mark.metronome, text: mark.text ?? "" });
  }
  if (mark.soundTempo !== undefined && once(mark, `sound ${mark.soundTempo}`)) {
    events.push({ ...at, type: "sound", bpm: mark.soundTempo });
  }
}

function step(now: TempoState, event: TempoEvent, memory: Memory): TempoState | null {
  const at = { measureIndex: event.measureIndex, onset: event.onset };
  if (event.type === "sound") return { ...now, ...at, playbackBpm: event.bpm };
  if (event.type === "dashes-end") {
    if (now.change === "none") return null;
    const settled = now.change === "slowing" ? "slowed" : "quickened";
    return { ...now, ...at, change: "none", settled, span: null };
  }
  if (event.type === "metronome") return withMetronome(now, event.metronome, at, event.text);
  return withWords(now, event, memory, at);
}

function withMetronome(now: TempoState, m: Metronome, at: Place, text: string): TempoState {
  const beatQuarters = quartersOf(m.beat);
  const fresh = samePlace(now, at) && now.by !== "";
  const base: TempoState = {
    ...(fresh ? now : { ...now, restoredFrom: null, belowBpm: null, aboveBpm: null }),
    ...at,
    change: "none",
    settled: null,
    span: null,
    by: fresh ? now.by : text || "metronome",
    slugs: [...new Set([...(fresh ? now.slugs : []), "metronome-mark"])],
  };
  if (m.equals) {
    const [oldBeat, newBeat] = m.oldSide === "left" ? [m.beat, m.equals] : [m.equals, m.beat];
    const quarters = now.quarterBpm;
    const perMinute = quarters === null ? null : round(quarters / quartersOf(oldBeat));
    return {
      ...base,
      quarterBpm: perMinute === null ? null : round(perMinute * quartersOf(newBeat)),
      baseBpm: perMinute === null ? null : round(perMinute * quartersOf(newBeat)),
      beat: { unit: newBeat.unit, dots: newBeat.dots, perMinute, text: null },
    };
  }
  const quarterBpm = m.perMinute === null ? null : round(m.perMinute * beatQuarters);
  return {
    ...base,
    quarterBpm,
    baseBpm: quarterBpm,
    beat: { unit: m.beat.unit, dots: m.beat.dots, perMinute: m.perMinute, text: m.perMinuteText },
  };
}

function withWords(
  now: TempoState,
  { demand, asks }: Extract<TempoEvent, { type: "words" }>,
  memory: Memory,
  at: Place,
): TempoState | null {
  const { head } = demand;
  const tempo = asks.tempo;
  if (!head || !tempo) return null;
  const base = now.quarterBpm ?? now.baseBpm;
  const mark = { ...at, by: demand.text, slugs: [head.slug], span: null, settled: null };
  const quiet = { restoredFrom: null, belowBpm: null, aboveBpm: null };
  const comparison = hasRole(demand, "more") ? 1 : hasRole(demand, "less") ? -1 : 0;
  if (hasRole(demand, "not") && tempo.change) return null;

  if (tempo.pace && !tempo.change) {
    const words =
      samePlace(now, at) && now.word && now.by ? `${now.word} ${demand.text}` : demand.text;
    const steady = { ...now, ...mark, ...quiet, word: words, change: "none" as const, free: false };
    const slugs = samePlace(now, at) ? [...now.slugs, head.slug] : [head.slug];
    const direction = comparison * (isSlow(tempo.pace) ? -1 : 1);
    return {
      ...steady,
      slugs,
      quarterBpm: null,
      baseBpm: comparison === 0 ? null : base,
      beat: comparison === 0 ? null : now.beat,
      ...(direction > 0 ? { aboveBpm: base } : direction < 0 ? { belowBpm: base } : {}),
    };
  }
  switch (tempo.change) {
    case "slower":
    case "faster": {
      const slower = tempo.change === "slower";
      if (tempo.rate === "at-once" && !HOLDS.has(head.slug)) {
        return {
          ...now,
          ...mark,
          ...quiet,
          word: demand.text,
          quarterBpm: null,
          baseBpm: base,
          change: "none",
          ...(slower ? { belowBpm: base } : { aboveBpm: base }),
        };
      }
      return {
        ...now,
        ...mark,
        ...quiet,
        quarterBpm: null,
        baseBpm: base,
        change: slower ? "slowing" : "speeding",
      };
    }
    case "return":
      return memory.steady
        ? restored(memory.steady, now, mark)
        : { ...now, ...mark, change: "none", free: false };
    case "start":
      return memory.first
        ? restored(memory.first, now, mark)
        : { ...now, ...mark, change: "none", free: false };
    case "free":
      return { ...now, ...mark, free: true };
    case "strict":
      return { ...now, ...mark, change: "none", free: false };
    case "proportion": {
      const doubled = base === null ? null : base * 2;
      return { ...now, ...mark, ...quiet, quarterBpm: doubled, baseBpm: doubled, change: "none" };
    }
    default:
      return { ...now, ...mark };
  }
  function restored(from: TempoState, current: TempoState, by: object): TempoState {
    return {
      ...from,
      ...by,
      restoredFrom: from.restoredFrom ?? from.measureIndex,
      playbackBpm: current.playbackBpm,
      change: "none",
      free: false,
    };
  }
}

function isSlow(pace: string): boolean {
  return pace === "slow" || pace === "very-slow" || pace === "moderately-slow";
}

export function quartersOf({ unit, dots }: BeatUnit): number {
  const plain = QUARTERS[unit] ?? 1;
  return plain * (2 - 0.5 ** dots);
}

function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}

/** A change holds until the next state that is none of it. */
function withSpans(states: TempoState[], measures: number): TempoState[] {
  return states.map((state, i) => {
    if (state.change === "none") return state;
    const end = states.slice(i + 1).find((s) => s.change !== state.change || s.by !== state.by);
    return { ...state, span: [state.measureIndex, end?.measureIndex ?? measures - 1] };
  });
}
