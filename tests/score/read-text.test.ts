import { describe, expect, it } from "vitest";
import { makeReading } from "../../lib/reading/make-reading";
import { stateAt } from "../../lib/reading/state-at";
import { ScoreReadError } from "../../lib/score/problem";
import { readText } from "../../lib/score/text/read-text";
import { glossary, lexicon } from "../reading/read-file";

const reading = (text: string) => makeReading(readText(text, "typed.txt"), lexicon, glossary);

describe("readText", () => {
  it("puts words at their measures", () => {
    const { found, measures, format } = reading("12 cresc. | 17 subito p");
    expect(format).toBe("text");
    expect(measures).toHaveLength(17);
    expect(found.map((f) => [f.headword, f.measureNumber])).toEqual([
      ["crescendo", "12"],
      ["subito", "17"],
      ["piano", "17"],
    ]);
  });
  it("takes a title, a pickup, a range and m. before the number", () => {
    const r = reading("Weir Song\npickup mf\nm. 3-6 cresc.\nmm. 7 f; 9 rit.");
    expect(r.title).toBe("Weir Song");
    expect(r.measures[0]?.number).toBe("pickup");
    const state = stateAt(r, 0, { measureIndex: 5, onset: [0, 1] });
    expect(state.dynamic).toMatchObject({ level: "mf", change: "rising", toward: "f" });
  });
  it("says what it leaves out", () => {
    expect(reading("1 dolce\nsomething else").warnings.map((w) => w.code)).toContain(
      "no-measure-number",
    );
  });
  it("refuses what holds no measure number, and an absurd one", () => {
    expect(() => reading("just words")).toThrow(ScoreReadError);
    expect(() => reading("9999 cresc.")).toThrow(/measure 9999/);
  });
});
