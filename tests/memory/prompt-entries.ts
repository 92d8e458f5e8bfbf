import type { PromptEntry } from "@/lib/memory/prompts/prompt-entry";

/** An entry with what matters given. Meanings are the project's own short wording. */
export function entry(slug: string, change: Partial<PromptEntry> = {}): PromptEntry {
  return {
    slug,
    headword: slug.replaceAll("-", " "),
    lang: "it",
    kind: "character",
    meaning: `meaning of ${slug}`,
    spellings: [],
    abbreviations: [],
    inflections: [],
    alikes: [],
    glyph: null,
    tier: 1,
    ...change,
  };
}

export const POOL: readonly PromptEntry[] = [
  entry("ritardando", {
    kind: "tempo-change",
    meaning: "gradually slower",
    abbreviations: ["rit.", "ritard."],
    alikes: [{ slug: "ritenuto", difference: "ritenuto holds back at once" }],
  }),
  entry("rallentando", {
    kind: "tempo-change",
    meaning: "slower gradually",
    abbreviations: ["rall."],
  }),
  entry("ritenuto", {
    kind: "tempo-change",
    meaning: "held back at once",
    abbreviations: ["rit.", "riten."],
  }),
  entry("accelerando", {
    kind: "tempo-change",
    meaning: "gradually faster",
    abbreviations: ["accel."],
  }),
  entry("a-tempo", { kind: "tempo-change", meaning: "back to the earlier speed" }),
  entry("stringendo", { kind: "tempo-change", meaning: "pressing ahead with tension" }),
  entry("meno-mosso", { kind: "tempo-change", meaning: "slower from here" }),
  entry("piu-mosso", { kind: "tempo-change", headword: "più mosso", meaning: "faster from here" }),
  entry("piano", { kind: "dynamic", meaning: "soft", abbreviations: ["p"], glyph: "dynamicPiano" }),
  entry("forte", { kind: "dynamic", meaning: "loud", abbreviations: ["f"], glyph: "dynamicForte" }),
  entry("mezzo-forte", { kind: "dynamic", meaning: "half loud", glyph: "dynamicMF" }),
  entry("pianissimo", { kind: "dynamic", meaning: "very soft", glyph: "dynamicPP" }),
  entry("fortepiano", {
    kind: "dynamic",
    meaning: "loud then soft at once",
    glyph: "dynamicFortePiano",
  }),
  entry("pianto", { kind: "character", meaning: "weeping", tier: 3 }),
  entry("meno", { kind: "modifier", meaning: "less" }),
  entry("mezzo", { kind: "modifier", meaning: "half" }),
  entry("rinforzando", {
    kind: "dynamic-change",
    meaning: "a phrase made stronger",
    abbreviations: ["rfz"],
  }),
  entry("sforzando", {
    kind: "articulation",
    meaning: "one note hit hard",
    abbreviations: ["sfz"],
  }),
  entry("animato", { meaning: "lively", inflections: ["animata", "animati", "animate"] }),
  entry("dolce", { meaning: "sweetly" }),
];
