/** One measure in one sentence: what a player thinks before its downbeat. */
import { asksInWords } from "@/lib/glossary/asks-words";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import { LEVELS, type Level } from "@/lib/glossary/vocabulary";
import type { DynamicState, Reading, TempoState } from "@/lib/reading/reading";
import type { InForce } from "@/lib/reading/state-at";
import { measureName } from "./measure-name";

interface SentenceContext {
  reading: Reading;
  entryOf(slug: string | null): ClientEntry | undefined;
}

export function measureSentence(index: number, force: InForce, context: SentenceContext): string {
  const clauses = [
    [loudness(index, force.dynamic), ...moods(force, context)].filter(Boolean).join(", "),
    speed(index, force.tempo, context),
  ].filter((clause) => clause !== "");
  if (clauses.length === 0) return "Nothing is printed for this measure, nor carried into it.";
  const text = clauses.join("; ");
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function loudness(index: number, dynamic: DynamicState | null): string {
  if (!dynamic) return "";
  const { level, change, measureIndex } = dynamic;
  const isNew = measureIndex === index;
  if (change !== "none") {
    const way = change === "rising" ? "growing louder" : "growing softer";
    const goal =
      dynamic.toward === null
        ? ""
        : dynamic.toward === "n"
          ? " down to nothing"
          : ` towards ${levelWords(dynamic.toward)}`;
    return `${isNew ? "" : "still "}${way}${level === null ? "" : ` from ${levelWords(level)}`}${goal}`;
  }
  if (level === null) return "";
  if (dynamic.louderThan) return `louder than ${levelWords(level)}, how much is not printed`;
  if (dynamic.softerThan) return `softer than ${levelWords(level)}, how much is not printed`;
  const words = levelWords(level);
  const start = dynamic.attack === null ? "" : ", the first note struck harder";
  if (!isNew || dynamic.source !== index) return `still ${words}${start}`;
  return `${dynamic.sudden ? "all at once " : ""}${words}${dynamic.sudden ? "" : " from here"}${start}`;
}

/** At most three qualities, of the latest words first. */
function moods({ character }: InForce, { entryOf }: SentenceContext): string[] {
  const words = character.flatMap((w) => entryOf(w.slug)?.asks.character ?? []);
  return [...new Set(words)].slice(0, 3);
}

function speed(
  index: number,
  tempo: TempoState | null,
  { reading, entryOf }: SentenceContext,
): string {
  if (!tempo || tempo.by === "") return "";
  const isNew = tempo.measureIndex === index;
  if (tempo.change !== "none") {
    const way = tempo.change === "slowing" ? "slowing" : "getting faster";
    const end = tempo.span ? measureName(reading.measures, tempo.span[1]) : "";
    const until =
      end === "" || end === measureName(reading.measures, index) ? "" : `, up to measure ${end}`;
    return `${isNew ? "" : "still "}${way}${until}`;
  }
  if (tempo.free) return "the beat may bend";
  if (tempo.settled)
    return `${tempo.settled === "slowed" ? "slower" : "faster"} than before, and steady`;
  if (isNew && tempo.restoredFrom !== null) {
    return `back to the speed of measure ${measureName(reading.measures, tempo.restoredFrom)}`;
  }
  const pace = entryOf(tempo.slugs[0] ?? null)?.asks.tempo;
  const words = pace ? (asksInWords({ tempo: pace })[0]?.words ?? "") : "";
  if (isNew) return words === "" ? "a new speed" : words;
  return "the speed stays";
}

/** "moderately loud" for `mf`. */
export function levelWords(level: string): string {
  const known = LEVELS.find((l): l is Level => l === level);
  return known ? (asksInWords({ dynamics: { level: known } })[0]?.words ?? level) : level;
}
