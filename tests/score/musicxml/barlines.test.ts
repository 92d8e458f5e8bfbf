import { describe, expect, it } from "vitest";
import { endingText, readPasses } from "@/lib/score/passes";
import { brief, musicXml, quarter, read } from "../support";

const Q = quarter();
const left = (inside: string): string => `<barline location="left">${inside}</barline>`;
const right = (inside: string): string => `<barline location="right">${inside}</barline>`;

describe("readMusicXml › barlines", () => {
  it("reads repeats and endings into measures and marks", () => {
    const score = read(
      musicXml(
        left('<repeat direction="forward"/>') + Q,
        `${left('<ending number="1, 2" type="start">1. 2.</ending>')}${Q}${right('<bar-style>light-heavy</bar-style><ending number="1, 2" type="stop"/><repeat direction="backward" times="3"/>')}`,
        `${left('<ending number="3" type="start">last time</ending>')}${Q}${right('<ending number="3" type="discontinue"/>')}`,
      ),
    );
    const [first, second, third] = score.measures;
    expect(first?.repeatStart).toBe(true);
    expect(second).toMatchObject({
      endingStart: [1, 2],
      endingText: null,
      endingStop: "stop",
      barStyle: "light-heavy",
      repeatEnd: { times: 3, afterJump: null },
    });
    expect(third).toMatchObject({
      endingStart: [3],
      endingText: "last time",
      endingStop: "discontinue",
      repeatEnd: null,
    });
    expect(brief(score)).toEqual([
      "0:0/1 repeat:forward",
      '1:0/1 ending:1, 2 start "1. 2."',
      "1:1/1 bar-style:light-heavy",
      "1:1/1 ending stop",
      "1:1/1 repeat:backward",
      '2:0/1 ending:3 start "last time"',
      "2:1/1 ending:discontinue stop",
    ]);
  });

  it("reads a forward repeat at a right barline as the next measure's", () => {
    const score = read(musicXml(Q + right('<repeat direction="forward"/>'), Q));
    expect(score.measures.map(({ repeatStart }) => repeatStart)).toEqual([false, true]);
  });

  it("reads a backward repeat at a left barline as the measure before's", () => {
    const score = read(musicXml(Q, left('<repeat direction="backward"/>') + Q));
    expect(score.measures.map(({ repeatEnd }) => repeatEnd !== null)).toEqual([true, false]);
  });

  it("keeps one sign once, however often the barline is written", () => {
    const bar = right('<bar-style>light-heavy</bar-style><repeat direction="backward"/>');
    expect(brief(read(musicXml(Q + bar + bar)))).toEqual([
      "0:1/1 bar-style:light-heavy",
      "0:1/1 repeat:backward",
    ]);
  });

  it("places right barline marks at the longest voice's end", () => {
    const score = read(
      musicXml(`${Q}${Q}<backup><duration>4</duration></backup>${right("<fermata/>")}`),
    );
    expect(brief(score)).toEqual(["0:2/1 fermata"]);
  });

  it("reads segno and coda with the names playback uses", () => {
    const score = read(musicXml(`<barline location="left" segno="s1"><segno/></barline>${Q}`));
    expect(score.measures[0]?.jumps).toEqual([
      { kind: "segno", name: "s1", onset: [0, 1], timeOnly: null },
    ]);
    expect(brief(score)).toEqual(["0:0/1 segno"]);
  });

  it("warns of an ending that names no pass", () => {
    const score = read(musicXml(left('<ending number=" " type="start"/>') + Q));
    expect(score.measures[0]?.endingStart).toEqual([]);
    expect(score.warnings.map(({ code }) => code)).toEqual(["ending-without-number"]);
  });

  // Source: MusicXML 4.0 ending-number, and printed forms (common practice).
  it.each([
    ["1", [1]],
    ["1,2", [1, 2]],
    ["1, 3", [1, 3]],
    ["1-3", [1, 2, 3]],
    ["1.2.", [1, 2]],
    [" ", []],
    ["1-999999999", Array.from({ length: 99 }, (_, i) => i + 1)],
  ])("reads passes of %j", (text, passes) => expect(readPasses(text)).toEqual(passes));

  it("tells printed words from mere numbers", () => {
    expect(endingText(" 1., 2. ")).toBeNull();
    expect(endingText("2nd time")).toBe("2nd time");
  });
});
