import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { findRuns, runSpeed, secondsOf } from "../../lib/reading/sums";
import { readScore } from "../../lib/score/read-score";
import { readBytes } from "./read-file";

const file = "content/pieces/paper-lighthouse-waltz.musicxml";
const bytes = readFileSync(file);

describe("secondsOf", () => {
  it("sums the printed tempo along the playing order: one 3/4 measure at dotted half = 58 lasts 60/58 s", () => {
    const reading = readBytes(bytes);
    expect(secondsOf(reading, 0, 0)?.seconds).toBeCloseTo(60 / 58, 6);
  });
  it("reckons with a chosen speed, whatever is printed", () => {
    const reading = readBytes(bytes);
    // Worked by hand: 8 measures of 3 quarters at 120 quarters a minute.
    expect(secondsOf(reading, 0, 7, 120)).toEqual({ seconds: 12, approximate: false });
  });
  it("gives no number where none is written", () => {
    const reading = readBytes(bytes);
    reading.tempo = [];
    expect(secondsOf(reading, 0, 3)).toBeNull();
  });
});

describe("findRuns", () => {
  const xml = (notes: string) =>
    readScore(
      new TextEncoder().encode(
        `<score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Flute</part-name></score-part></part-list><part id="P1"><measure number="1"><attributes><divisions>4</divisions></attributes>${notes}</measure></part></score-partwise>`,
      ),
      "run.musicxml",
    );
  const note = (extra = "") =>
    `<note><pitch><step>C</step><octave>5</octave></pitch><duration>1</duration><voice>1</voice><type>16th</type>${extra}</note>`;
  const slur = (type: string) => `<notations><slur type="${type}" number="1"/></notations>`;
  it("counts tongued sixteenths, and their speed at quarter = 120 is 8 a second", () => {
    const [part] = xml(note().repeat(8)).parts;
    const runs = part ? findRuns(part) : [];
    expect(runs).toEqual([
      { fromMeasure: 0, toMeasure: 0, notes: 8, noteLength: 0.25, touch: "tongued" },
    ]);
    expect(runs[0] && runSpeed(runs[0], 120)).toBe(8);
  });
  it("tells slurred notes from tongued ones: the first note of a slur is tongued", () => {
    const [part] = xml(
      note() + note() + note() + note(slur("start")) + note().repeat(4) + note(slur("stop")),
    ).parts;
    expect(part && findRuns(part).map((r) => [r.touch, r.notes])).toEqual([
      ["tongued", 4],
      ["slurred", 5],
    ]);
  });
});
