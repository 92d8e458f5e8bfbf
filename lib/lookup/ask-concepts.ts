import type { Asks, Entry } from "../glossary/schema";
import type { Level, Pace } from "../glossary/vocabulary";
import { isPlainEnglish } from "./english-phrases";

const PACE: Readonly<Record<Pace, readonly string[]>> = {
  "very-slow": ["very slow"],
  slow: ["slow"],
  "moderately-slow": ["moderate slow"],
  moderate: ["moderate"],
  "moderately-fast": ["moderate fast"],
  fast: ["fast"],
  "very-fast": ["very fast"],
};

const CHANGE = {
  slower: "slower",
  faster: "faster",
  return: "back-to-speed",
  start: "first-speed",
  free: "free-time",
  strict: "strict-time",
  same: "same-speed",
  proportion: "double-speed",
} as const;

const RATE = { gradual: "gradually", "at-once": "at-once", "one-note": "accented" } as const;
const AMOUNT = { slight: "slightly", much: "very" } as const;

const LEVEL: Readonly<Record<Level, readonly string[]>> = {
  n: ["nothing"],
  pppppp: ["most level-p"],
  ppppp: ["most level-p"],
  pppp: ["most level-p"],
  ppp: ["most level-p"],
  pp: ["very level-p"],
  p: ["level-p"],
  mp: ["moderate level-p"],
  mf: ["moderate level-f"],
  f: ["level-f"],
  ff: ["very level-f"],
  fff: ["most level-f"],
  ffff: ["most level-f"],
  fffff: ["most level-f"],
  ffffff: ["most level-f"],
};

const LENGTH = {
  "very-short": ["very short"],
  short: ["short"],
  shortened: ["shortened"],
  full: ["full-length"],
  long: ["long"],
} as const;

const ATTACK = {
  soft: "soft-start",
  firm: "accented",
  accented: "accented",
  hard: "hard-start",
} as const;

const ROAD: Readonly<Record<NonNullable<Asks["road"]>["action"], readonly string[]>> = {
  "repeat-from": ["repeat", "begin"],
  "repeat-to": ["repeat"],
  ending: ["ending"],
  "to-start": ["to-start"],
  "to-sign": ["to-sign"],
  sign: ["to-sign"],
  "to-coda": ["to-coda"],
  coda: ["ending"],
  end: ["end"],
  "go-on": ["go-on"],
  hold: ["pause"],
  pause: ["pause"],
  silence: ["silence"],
  "same-way": ["same-way"],
  place: [],
  count: ["count"],
  "turn-page": ["page"],
  section: [],
};

/** Modifier roles under the name of the concept of `english-table.ts`. */
const ROLE: Readonly<Record<string, string>> = {
  much: "very",
  "as-much-as-possible": "most",
  link: "",
  not: "without",
};

/** "no" and "at" of a technique's name say nothing alone. */
function says(word: string): boolean {
  return word.length > 3 && isPlainEnglish(word);
}

/**
 * What an entry asks, as concepts of plain English. "very slow" is one concept
 * made of two; see `joinConcepts`.
 */
export function askConcepts(entry: Pick<Entry, "asks" | "modifies">): string[] {
  const { tempo, dynamics, articulation, character, technique, road } = entry.asks;
  const all: (string | undefined)[] = [
    ...(tempo?.pace ? PACE[tempo.pace] : []),
    tempo?.change && CHANGE[tempo.change],
    tempo?.rate && RATE[tempo.rate],
    tempo?.amount && AMOUNT[tempo.amount],
    ...(dynamics?.level ? LEVEL[dynamics.level] : []),
    dynamics?.change,
    dynamics?.rate && RATE[dynamics.rate],
    dynamics?.amount && AMOUNT[dynamics.amount],
    ...(dynamics?.toward ? LEVEL[dynamics.toward] : []),
    ...(dynamics?.attack
      ? dynamics.attack === "accent"
        ? ["accented"]
        : LEVEL[dynamics.attack]
      : []),
    dynamics?.attack && dynamics.attack !== "accent" && dynamics.level
      ? `${LEVEL[dynamics.attack][0] ?? ""} then ${LEVEL[dynamics.level][0] ?? ""}`
      : undefined,
    ...(articulation?.length ? LENGTH[articulation.length] : []),
    articulation?.attack && ATTACK[articulation.attack],
    articulation?.connection,
    ...(character ?? []).map((c) => `=${c}`),
    ...(technique
      ? technique.name
          .split("-")
          .filter(says)
          .map((w) => `=${w}`)
      : []),
    ...(road ? ROAD[road.action] : []),
    entry.modifies && (ROLE[entry.modifies] ?? entry.modifies),
  ];
  return [...new Set(all.filter((c): c is string => c !== undefined && c !== ""))];
}
