import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { AXIS_QUESTIONS, asksInWords } from "@/lib/glossary/asks-words";
import { loadGlossary } from "@/lib/glossary/load";
import { type Asks, asksSchema } from "@/lib/glossary/schema";
import {
  AMOUNTS,
  ATTACKS,
  AXES,
  CHARACTERS,
  CONNECTIONS,
  LENGTHS,
  LEVELS,
  PACES,
  RATES,
  ROAD_ACTIONS,
  TECHNIQUE_GROUPS,
  TEMPO_CHANGES,
} from "@/lib/glossary/vocabulary";

const one = (asks: Asks) => asksInWords(asks).map(({ words }) => words);

// Meanings after MusicXML 4.0 (dynamics, articulations, sound attributes) and Gehrkens 1914; the wording is ours.
describe("asksInWords", () => {
  it.each<[Asks, string]>([
    [{ tempo: { pace: "fast" } }, "fast"],
    [{ tempo: { pace: "fast", amount: "slight" } }, "fast, in a small degree"],
    [{ tempo: { pace: "fast", change: "strict" } }, "fast; strictly in time"],
    [{ tempo: { change: "slower", rate: "gradual" } }, "slower, little by little"],
    [
      { tempo: { change: "slower", rate: "gradual", amount: "much" } },
      "much slower, little by little",
    ],
    [
      { tempo: { change: "faster", rate: "at-once", amount: "slight" } },
      "a little faster, at once",
    ],
    [{ tempo: { change: "return", rate: "at-once" } }, "back to the speed before"],
    [{ dynamics: { level: "pp" } }, "very soft"],
    [{ dynamics: { level: "p", rate: "at-once" } }, "soft, at once"],
    [{ dynamics: { level: "p", attack: "f", rate: "at-once" } }, "start loud, then at once soft"],
    [{ dynamics: { attack: "accent", rate: "one-note" } }, "stress the start of this one note"],
    [
      { dynamics: { change: "softer", rate: "gradual", toward: "n" } },
      "softer, little by little, down to nothing",
    ],
    [
      { dynamics: { change: "louder", rate: "gradual", toward: "ff" } },
      "louder, little by little, until very loud",
    ],
    [
      { articulation: { connection: "separated", length: "short", attack: "hard" } },
      "hard start, short, apart from the next note",
    ],
    [{ character: ["light", "playful"] }, "light, playful"],
    [{ technique: { name: "con-sordino", group: "mute" } }, "con sordino (mute)"],
    [{ technique: { name: "mute-on", group: "mute" } }, "mute on"],
    [{ technique: { name: "slap", group: "other" } }, "slap"],
    [{ road: { action: "to-start", until: "fine" } }, "go back to the beginning, as far as fine"],
  ])("says %o as %s", (asks, words) => {
    expect(one(asks)).toEqual([words]);
  });

  it("keeps the order of the ribbon, whatever order the entry has", () => {
    const asks: Asks = { road: { action: "hold" }, character: ["calm"], tempo: { pace: "slow" } };
    expect(asksInWords(asks).map(({ axis }) => axis)).toEqual(["tempo", "character", "road"]);
  });

  it("says nothing of ranges, which may not stand without their source", () => {
    expect(one({ tempo: { ranges: [{ low: 60, high: 66, source: "gehrkens-1914" }] } })).toEqual(
      [],
    );
  });

  it("gives different values different words", () => {
    const said = (all: readonly Asks[]) => new Set(all.map((asks) => one(asks).join())).size;
    expect(said(PACES.map((pace) => ({ tempo: { pace } })))).toBe(PACES.length);
    expect(said(TEMPO_CHANGES.map((change) => ({ tempo: { change } })))).toBe(TEMPO_CHANGES.length);
    expect(said(LEVELS.map((level) => ({ dynamics: { level } })))).toBe(LEVELS.length);
    expect(said(LENGTHS.map((length) => ({ articulation: { length } })))).toBe(LENGTHS.length);
    expect(said(ATTACKS.map((attack) => ({ articulation: { attack } })))).toBe(ATTACKS.length);
    expect(said(CONNECTIONS.map((connection) => ({ articulation: { connection } })))).toBe(
      CONNECTIONS.length,
    );
    expect(said(ROAD_ACTIONS.map((action) => ({ road: { action } })))).toBe(ROAD_ACTIONS.length);
  });

  it("has words for every request, plain ones, and never a code word of ours (property)", () => {
    const some = <T>(list: readonly T[]) => fc.option(fc.constantFrom(...list), { nil: undefined });
    const level = some(LEVELS);
    const dynamics = fc.record({
      level,
      change: some(["louder", "softer"] as const),
      rate: some(RATES),
      amount: some(AMOUNTS),
      toward: level,
      attack: some([...LEVELS, "accent"] as const),
    });
    const tempo = fc.record({
      pace: some(PACES),
      change: some(TEMPO_CHANGES),
      rate: some(RATES),
      amount: some(AMOUNTS),
    });
    const technique = fc.record({
      name: fc.constantFrom("arco", "sul-tasto"),
      group: fc.constantFrom(...TECHNIQUE_GROUPS),
    });
    const character = fc.array(fc.constantFrom(...CHARACTERS), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(fc.record({ tempo, dynamics, technique, character }), (asks) => {
        expect(asksSchema.safeParse(asks).success).toBe(true);
        for (const { words } of asksInWords(asks)) {
          expect(words).not.toMatch(/undefined|at-once|one-note|-slow|-fast|^[;, ]|[;, ]$| {2}/);
        }
      }),
    );
  });

  it("says something of every entry of the glossary that asks something", () => {
    for (const { slug, asks } of loadGlossary().entries) {
      const axes = AXES.filter((axis) => asks[axis] !== undefined);
      expect({ slug, axes: asksInWords(asks).map(({ axis }) => axis) }).toEqual({ slug, axes });
    }
  });

  it("asks its question on every axis", () => {
    expect(AXES.map((axis) => AXIS_QUESTIONS[axis]).every((words) => words.length > 0)).toBe(true);
  });
});
