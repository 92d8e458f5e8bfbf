import { describe, expect, it } from "vitest";
import { timesPlayed, waysOn, wayWords } from "@/app/ui/ribbon/playing-words";
import { beats, glyphs, laneShapes, repeat, ribbonOf, scoreOf, texts, words } from "./small-score";

const measures = (count: number) =>
  Array.from({ length: count }, (_, i) => ({ index: i, number: String(i + 1) })) as never[];
const told = (playingOrder: number[], count: number, from: number) => {
  const ways = waysOn({ playingOrder, measures: measures(count) });
  return wayWords(from, ways.get(from) ?? [], measures(count));
};

describe("waysOn", () => {
  it("says nothing of a piece played straight through", () => {
    expect(waysOn({ playingOrder: [0, 1, 2], measures: measures(3) }).size).toBe(0);
  });

  it("tells a repeat, an ending, a jump to the coda and a Fine", () => {
    expect(told([0, 1, 0, 1, 2], 3, 1)).toBe("back to 1, then on");
    // First ending is measure 2, second measure 3.
    expect(told([0, 1, 0, 2, 3], 4, 0)).toBe("last time, on to 3");
    expect(told([0, 1, 0, 2, 3], 4, 1)).toBe("back to 1");
    // The order of the renderer test segno-tocoda-ds-al-coda.musicxml (../shared/scores).
    expect(told([0, 1, 2, 0, 1, 3, 4], 5, 1)).toBe("last time, on to 4");
    expect(told([0, 1, 2, 0, 1], 3, 1)).toBe("last time, end");
  });

  it("counts how often a section is played", () => {
    const ways = waysOn({ playingOrder: [0, 1, 0, 1, 0, 1, 2], measures: measures(3) });
    expect(timesPlayed(ways, new Set([1]))).toEqual(new Map([[0, 3]]));
  });
});

describe("road lane", () => {
  it("draws repeats as signs and says how often and where next", () => {
    const reading = scoreOf([beats, repeat("forward") + beats, beats + repeat("backward"), beats]);
    const shapes = laneShapes(ribbonOf(reading), "road");
    expect(glyphs(shapes)).toEqual(["repeatLeft", "repeatRight"]);
    expect(texts(shapes)).toEqual(["twice", "back to 2, then on"]);
  });

  it("sets D.C. before its barline and says where it leads", () => {
    const reading = scoreOf([beats, words("Fine") + beats, beats + words("D.C. al Fine")]);
    expect(texts(laneShapes(ribbonOf(reading), "road"))).toEqual([
      "last time, end",
      "Fine",
      "back to 1",
      "D.C. al Fine",
    ]);
  });

  it("spans endings over their measures", () => {
    const ending = (number: number, type: string) =>
      `<barline location="${type === "start" ? "left" : "right"}"><ending number="${number}" type="${type}"/>${type === "stop" && number === 1 ? '<repeat direction="backward"/>' : ""}</barline>`;
    const reading = scoreOf([
      beats,
      ending(1, "start") + beats,
      beats + ending(1, "stop"),
      ending(2, "start") + beats + ending(2, "stop"),
    ]);
    const ribbon = ribbonOf(reading);
    const brackets = laneShapes(ribbon, "road").filter((s) => s.kind === "path");
    expect(brackets).toHaveLength(2);
    expect(brackets[0]?.x1).toBeGreaterThan((ribbon.columns.edges[3] ?? 0) - 10);
    expect(brackets[0]?.x1).toBeLessThan(ribbon.columns.edges[3] ?? 0);
  });
});
