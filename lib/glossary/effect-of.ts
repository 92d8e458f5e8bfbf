import type { Asks } from "./schema";
import { LEVELS } from "./vocabulary";

/** One word for what a term does to the playing, as reference lists put it. */
export type Effect =
  | "slower"
  | "much-slower"
  | "slower-at-once"
  | "held-back-at-once"
  | "faster"
  | "faster-at-once"
  | "tempo-return"
  | "louder"
  | "softer"
  | "louder-sudden"
  | "softer-sudden"
  | "louder-and-slower"
  | "softer-and-slower"
  | "short"
  | "connected"
  | "accented"
  | "accented-and-short"
  | "sustained"
  | "separated"
  | "none";

/**
 * The effects that can be read off what an entry asks, the most telling
 * first; a reference list names one of them. Steady levels are `none`.
 */
export function effectsOf(asks: Asks): Effect[] {
  const { tempo, dynamics, articulation, road } = asks;
  const effects: Effect[] = [];
  const slower = tempo?.change === "slower";
  if (slower && dynamics?.change === "louder") effects.push("louder-and-slower");
  if (slower && dynamics?.change === "softer") effects.push("softer-and-slower");
  if (slower) {
    if (tempo?.rate === "at-once") effects.push("slower-at-once", "held-back-at-once");
    else if (tempo?.amount === "much") effects.push("much-slower", "slower");
    else effects.push("slower");
  }
  if (tempo?.change === "faster") {
    effects.push(tempo.rate === "at-once" ? "faster-at-once" : "faster");
  }
  if (tempo?.change === "return" || tempo?.change === "start") effects.push("tempo-return");
  effects.push(...loudness(dynamics));
  if (articulation) {
    const { length, attack, connection } = articulation;
    const short = length === "short" || length === "very-short";
    const accented = attack === "accented" || attack === "hard";
    if (short && accented) effects.push("accented-and-short");
    if (short) effects.push("short");
    if (connection === "joined") effects.push("connected");
    if (accented) effects.push("accented");
    if (length === "full" || length === "long") effects.push("sustained");
    if (connection === "separated" || connection === "break") effects.push("separated");
  }
  if (road?.action === "hold" || road?.action === "pause") effects.push("sustained", "separated");
  return effects.length > 0 ? effects : ["none"];
}

function loudness(dynamics: Asks["dynamics"]): Effect[] {
  if (!dynamics) return [];
  const { change, rate, attack, level } = dynamics;
  const sudden = rate === "at-once" || rate === "one-note";
  if (attack === "accent")
    return [...(level ? (["softer-sudden"] as const) : []), "louder-sudden", "accented"];
  if (attack && level) {
    const falls = LEVELS.indexOf(level) < LEVELS.indexOf(attack);
    return [falls ? "softer-sudden" : "louder-sudden"];
  }
  if (change) return [sudden ? `${change}-sudden` : change, change];
  if (level && sudden) {
    return [LEVELS.indexOf(level) <= LEVELS.indexOf("mp") ? "softer-sudden" : "louder-sudden"];
  }
  return [];
}
