import { describe, expect, it } from "vitest";
import { onePart } from "../../lib/score/one-part";
import { readScore } from "../../lib/score/read-score";

const xml = `<?xml version="1.0"?><score-partwise version="4.0"><part-list><part-group type="start" number="1"><group-symbol>bracket</group-symbol></part-group><score-part id="A"><part-name>Flute</part-name></score-part><score-part id="B"><part-name>Oboe</part-name></score-part><part-group type="stop" number="1"/></part-list><part id="A"><measure number="1"><note><rest/><duration>1</duration></note></measure></part><part id="B"><measure number="1"><direction><direction-type><words>dolce</words></direction-type></direction><note><rest/><duration>1</duration></note></measure></part></score-partwise>`;

describe("onePart", () => {
  it("leaves the chosen part alone, still a readable score", () => {
    const score = readScore(new TextEncoder().encode(onePart(xml, 1)), "b.musicxml");
    expect(score.parts.map((p) => p.id)).toEqual(["B"]);
    expect(score.parts[0]?.marks.map((m) => m.text)).toContain("dolce");
  });
  it("gives a single part, or one that is not there, back whole", () => {
    expect(onePart(onePart(xml, 0), 0)).toBe(onePart(xml, 0));
    expect(onePart(xml, 7)).toBe(xml);
  });
});
