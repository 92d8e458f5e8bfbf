import type { Asks } from "./schema";
import {
  type AMOUNTS,
  type ATTACKS,
  AXES,
  type Axis,
  type CONNECTIONS,
  type LENGTHS,
  type Level,
  type Pace,
  type RATES,
  type ROAD_ACTIONS,
  type TECHNIQUE_GROUPS,
  type TEMPO_CHANGES,
} from "./vocabulary";

type Of<List extends readonly unknown[]> = List[number];
type Rate = Of<typeof RATES>;
type Amount = Of<typeof AMOUNTS>;

/** The axes as the questions a player asks of the page. */
export const AXIS_QUESTIONS: Readonly<Record<Axis, string>> = {
  tempo: "how fast and which way",
  dynamics: "how loud",
  articulation: "how notes are touched",
  character: "what mood",
  technique: "how to produce it",
  road: "where next",
};

const PACE_WORDS: Readonly<Record<Pace, string>> = {
  "very-slow": "very slow",
  slow: "slow",
  "moderately-slow": "moderately slow",
  moderate: "a middle speed",
  "moderately-fast": "moderately fast",
  fast: "fast",
  "very-fast": "very fast",
};

const LEVEL_WORDS: Readonly<Record<Level, string>> = {
  n: "nothing",
  pppppp: "the softest sound there is (six times p)",
  ppppp: "the softest sound there is (five times p)",
  pppp: "as soft as a sound can be",
  ppp: "extremely soft",
  pp: "very soft",
  p: "soft",
  mp: "moderately soft",
  mf: "moderately loud",
  f: "loud",
  ff: "very loud",
  fff: "extremely loud",
  ffff: "as loud as still sounds good",
  fffff: "all the sound there is (five times f)",
  ffffff: "all the sound there is (six times f)",
};

const LENGTH_WORDS: Readonly<Record<Of<typeof LENGTHS>, string>> = {
  "very-short": "as short as can be",
  short: "short",
  shortened: "a little shorter than written",
  full: "full length",
  long: "longer than written",
};

const ATTACK_WORDS: Readonly<Record<Of<typeof ATTACKS>, string>> = {
  soft: "soft start",
  firm: "firm start",
  accented: "stressed start",
  hard: "hard start",
};

const CONNECTION_WORDS: Readonly<Record<Of<typeof CONNECTIONS>, string>> = {
  joined: "joined to the next note",
  separated: "apart from the next note",
  break: "stop the sound before going on",
};

const TEMPO_CHANGE_WORDS: Readonly<
  Record<Exclude<Of<typeof TEMPO_CHANGES>, "slower" | "faster">, string>
> = {
  return: "back to the speed before",
  start: "back to the speed of the beginning",
  free: "free: the beat may bend",
  strict: "strictly in time",
  same: "the speed stays as it is",
  proportion: "new beat reckoned from the old one",
};

/** What the technique is about, for those whose name says little. */
const GROUP_WORDS: Readonly<Record<Of<typeof TECHNIQUE_GROUPS>, string>> = {
  "bow-or-pluck": "bow or finger",
  "bow-place": "where the bow goes",
  "bow-stroke": "how the bow moves",
  "bow-direction": "which way the bow goes",
  mute: "mute",
  string: "which string",
  players: "who plays",
  octave: "which octave",
  pedal: "pedal",
  hand: "which hand",
  tongue: "tongue",
  breath: "breath",
  voice: "voice",
  vibrato: "vibrato",
  harmonic: "harmonic",
  stopping: "hand in the bell",
  percussion: "stick or beater",
  fingering: "fingering",
  tuning: "tuning",
  other: "",
};

const ROAD_WORDS: Readonly<Record<Of<typeof ROAD_ACTIONS>, string>> = {
  "repeat-from": "a repeat starts here",
  "repeat-to": "go back to where the repeat starts",
  ending: "the ending for the time through that its number says",
  "to-start": "go back to the beginning",
  "to-sign": "go back to the sign",
  sign: "the place to come back to",
  "to-coda": "jump to the coda",
  coda: "the coda starts here",
  end: "the end",
  "go-on": "go straight on",
  hold: "hold longer than written",
  pause: "the beat waits",
  silence: "do not play",
  "same-way": "go on in the same way",
  place: "a place to find",
  count: "count these measures",
  "turn-page": "turn the page",
  section: "a new section starts here",
};

const UNTIL_WORDS = {
  end: "to the end",
  fine: "as far as fine",
  coda: "as far as the coda",
  sign: "as far as the sign",
} as const;

export interface AxisWords {
  axis: Axis;
  words: string;
}

/**
 * What an entry asks, in plain words, one line an axis, in the order of the ribbon.
 * Metronome ranges are left to the caller, since they may not stand without their source.
 * @example asksInWords({ dynamics: { level: "p", attack: "f", rate: "at-once" } })
 *   // [{ axis: "dynamics", words: "start loud, then at once soft" }]
 */
export function asksInWords(asks: Asks): AxisWords[] {
  return AXES.map((axis) => ({ axis, words: wordsFor(axis, asks) })).filter(
    ({ words }) => words !== "",
  );
}

function wordsFor(axis: Axis, asks: Asks): string {
  switch (axis) {
    case "tempo":
      return asks.tempo ? tempoWords(asks.tempo) : "";
    case "dynamics":
      return asks.dynamics ? dynamicsWords(asks.dynamics) : "";
    case "articulation":
      return asks.articulation ? articulationWords(asks.articulation) : "";
    case "character":
      return asks.character ? asks.character.join(", ") : "";
    case "technique":
      return asks.technique ? techniqueWords(asks.technique) : "";
    case "road":
      return asks.road ? roadWords(asks.road) : "";
  }
}

function tempoWords({ pace, change, rate, amount }: NonNullable<Asks["tempo"]>): string {
  const parts: string[] = [];
  const moves = change === "slower" || change === "faster";
  if (pace) {
    const slightly = amount === "slight" && !moves ? ", in a small degree" : "";
    parts.push(PACE_WORDS[pace] + slightly);
  }
  if (moves) parts.push(moveInWords(change, rate, amount));
  else if (change) {
    parts.push(TEMPO_CHANGE_WORDS[change] + (rate === "gradual" ? ", little by little" : ""));
  }
  return parts.join("; ");
}

function dynamicsWords(dynamics: NonNullable<Asks["dynamics"]>): string {
  const { level, change, rate, amount, toward, attack } = dynamics;
  const parts: string[] = [];
  if (attack) {
    const start = attack === "accent" ? "stress the start" : `start ${LEVEL_WORDS[attack]}`;
    if (level)
      parts.push(`${start}, then ${rate === "at-once" ? "at once " : ""}${LEVEL_WORDS[level]}`);
    else parts.push(rate === "one-note" ? `${start} of this one note` : start);
  } else if (level) {
    parts.push(LEVEL_WORDS[level] + (rate === "at-once" && !change ? ", at once" : ""));
  }
  if (change) {
    const target = toward
      ? `, ${toward === "n" ? "down to nothing" : `until ${LEVEL_WORDS[toward]}`}`
      : "";
    parts.push(moveInWords(change, rate, amount) + target);
  }
  return parts.join("; ");
}

/** "much slower, little by little": a move, its size, its rate. */
function moveInWords(move: string, rate: Rate | undefined, amount: Amount | undefined): string {
  const size = amount === "much" ? "much " : amount === "slight" ? "a little " : "";
  const how =
    rate === "gradual"
      ? ", little by little"
      : rate === "at-once"
        ? ", at once"
        : rate === "one-note"
          ? ", for one note"
          : "";
  return `${size}${move}${how}`;
}

function articulationWords({
  attack,
  length,
  connection,
}: NonNullable<Asks["articulation"]>): string {
  return [
    attack && ATTACK_WORDS[attack],
    length && LENGTH_WORDS[length],
    connection && CONNECTION_WORDS[connection],
  ]
    .filter(Boolean)
    .join(", ");
}

function techniqueWords({ name, group }: NonNullable<Asks["technique"]>): string {
  const words = name.replaceAll("-", " ");
  const about = GROUP_WORDS[group];
  return about === "" || words.includes(about) ? words : `${words} (${about})`;
}

function roadWords({ action, until }: NonNullable<Asks["road"]>): string {
  return until ? `${ROAD_WORDS[action]}, ${UNTIL_WORDS[until]}` : ROAD_WORDS[action];
}
