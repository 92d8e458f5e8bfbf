import type { Reading } from "../reading/reading";
import { IN_FORCE_POLICY, stateAt } from "../reading/state-at";

/** A command line that cannot be obeyed, in one sentence. */
export class BadArgument extends Error {}

export interface PlaceArgument {
  part: string;
  measure: string;
  /** From 1, in beats of the time signature; 2.5 is halfway through the second. */
  beat: number;
}

const USAGE = "npm run -s read -- FILE [--at PART:MEASURE:BEAT] [--staff N]";

export function parseReadArguments(argv: readonly string[]): {
  file: string;
  places: PlaceArgument[];
  staff: number | undefined;
} {
  const places: PlaceArgument[] = [];
  let file: string | undefined;
  let staff: number | undefined;
  for (let i = 0; i < argv.length; i += 1) {
    const arg = argv[i] ?? "";
    if (arg === "--at") places.push(parsePlace(argv[++i] ?? ""));
    else if (arg === "--staff") staff = parseStaff(argv[++i] ?? "");
    else if (arg.startsWith("--")) throw new BadArgument(`${arg}: unknown option; use ${USAGE}.`);
    else if (file === undefined) file = arg;
    else throw new BadArgument(`${arg}: one file at a time; use ${USAGE}.`);
  }
  if (!file) throw new BadArgument(`No file given; use ${USAGE}.`);
  return { file, places, staff };
}

function parsePlace(text: string): PlaceArgument {
  // A part id may hold a colon, a measure number may not.
  const match = /^(.+):([^:]*):(\d+(?:\.\d+)?)$/.exec(text);
  const beat = Number(match?.[3]);
  if (!match?.[1] || match[2] === undefined || !(beat >= 1)) {
    throw new BadArgument(`--at ${text}: expected PART:MEASURE:BEAT, such as P1:12:1.`);
  }
  return { part: match[1], measure: match[2], beat };
}

function parseStaff(text: string): number {
  const staff = Number(text);
  if (!Number.isInteger(staff) || staff < 1) {
    throw new BadArgument(`--staff ${text}: expected a whole number from 1.`);
  }
  return staff;
}

/** One line of `--at`: the fields of the contract. */
export function stateLine(
  reading: Reading,
  { part, measure, beat }: PlaceArgument,
  staff: number | undefined,
  file: string,
) {
  const partIndex = reading.parts.findIndex((p) => p.id === part);
  if (partIndex < 0) {
    const known = reading.parts.map((p) => p.id).join(", ");
    throw new BadArgument(`${file}: no part "${part}"; it has ${known}.`);
  }
  const place = reading.measures.find((m) => m.number === measure);
  if (!place) {
    throw new BadArgument(
      `${file}: no measure "${measure}"; its numbers run from "${reading.measures[0]?.number}" to "${reading.measures.at(-1)?.number}".`,
    );
  }
  const beatType = place.time?.beatType ?? 4;
  const onset = [Math.round((beat - 1) * 4 * 960), beatType * 960] as const;
  const state = stateAt(reading, partIndex, { measureIndex: place.index, onset }, staff ?? 1);
  const number = (index: number | null) =>
    index === null ? null : (reading.measures[index]?.number ?? null);
  const span = (pair: [number, number] | null) => (pair ? pair.map((i) => number(i)) : null);
  const { tempo, dynamic } = state;
  return {
    tempo: {
      word: tempo?.word ?? null,
      quarter_bpm: tempo?.quarterBpm ?? null,
      change: tempo?.change ?? "none",
      base_bpm: tempo?.baseBpm ?? null,
      restored_from: number(tempo?.restoredFrom ?? null),
      below_bpm: tempo?.belowBpm ?? null,
      above_bpm: tempo?.aboveBpm ?? null,
      beat: tempo?.beat
        ? { unit: tempo.beat.unit, dots: tempo.beat.dots, per_minute: tempo.beat.perMinute }
        : null,
      span: span(tempo?.span ?? null),
      slowed: tempo?.settled === "slowed",
      quickened: tempo?.settled === "quickened",
      free: tempo?.free ?? false,
      playback_bpm: tempo?.playbackBpm ?? null,
    },
    dynamic: {
      level: dynamic?.level ?? null,
      change: dynamic?.change ?? "none",
      toward: dynamic?.toward ?? null,
      span: span(dynamic?.span ?? null),
      sudden: dynamic?.sudden ?? false,
      persist: dynamic?.persist ?? false,
      attack: dynamic?.attack ?? null,
      louder_than: dynamic?.louderThan ?? false,
      softer_than: dynamic?.softerThan ?? false,
      source: number(dynamic?.source ?? null),
    },
    articulation: state.articulation.map((w) => w.text),
    technique: state.technique.map((w) => w.text),
    character: state.character.map((w) => w.text),
    policy: IN_FORCE_POLICY,
  };
}
