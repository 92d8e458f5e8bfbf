import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { Axis, Kind } from "@/lib/glossary/vocabulary";

/** The axis an entry is drilled under; `degree` are the small words (poco, più) that say how much of another. */
export type DrillAxis = Axis | "degree";

export const DRILL_AXES: readonly DrillAxis[] = [
  "tempo",
  "dynamics",
  "articulation",
  "character",
  "technique",
  "road",
  "degree",
];

const BY_KIND: Readonly<Record<Exclude<Kind, "form">, DrillAxis>> = {
  tempo: "tempo",
  "tempo-change": "tempo",
  dynamic: "dynamics",
  "dynamic-change": "dynamics",
  articulation: "articulation",
  character: "character",
  technique: "technique",
  ornament: "technique",
  navigation: "road",
  modifier: "degree",
};

/** Words of form ask nothing of the next note by themselves; they go with what they ask most. */
export function axisOf({ kind, asks }: Pick<ClientEntry, "kind" | "asks">): DrillAxis {
  if (kind !== "form") return BY_KIND[kind];
  if (asks.tempo) return "tempo";
  if (asks.dynamics) return "dynamics";
  if (asks.articulation) return "articulation";
  if (asks.character) return "character";
  if (asks.technique) return "technique";
  return "road";
}

export const DRILL_AXIS_WORDS: Readonly<Record<DrillAxis, string>> = {
  tempo: "tempo",
  dynamics: "dynamics",
  articulation: "articulation",
  character: "character",
  technique: "technique",
  road: "road",
  degree: "how much",
};
