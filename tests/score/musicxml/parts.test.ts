import { describe, expect, it } from "vitest";
import { ScoreReadError } from "@/lib/score/problem";
import { readScore } from "@/lib/score/read-score";
import { brief, bytesOf, direction, musicXml, quarter, read } from "../support";

const Q = quarter();
const p = direction("<dynamics><p/></dynamics>");

function score(list: string, parts: string, head = ""): string {
  return `<score-partwise>${head}<part-list>${list}</part-list>${parts}</score-partwise>`;
}
const listed = (id: string, name: string): string =>
  `<score-part id="${id}"><part-name>${name}</part-name></score-part>`;
const part = (id: string, ...measures: string[]): string =>
  `<part id="${id}">${measures.map((m, i) => `<measure number="${i + 1}">${m}</measure>`).join("")}</part>`;
const start = "<attributes><divisions>4</divisions></attributes>";

describe("readMusicXml › parts and measures", () => {
  it("names parts from the list, else from instrument or id", () => {
    const list = `${listed("A", " Flute\n 1 ")}<score-part id="B"><part-name/><score-instrument id="i"><instrument-name>Oboe</instrument-name></score-instrument></score-part>`;
    const { parts, warnings } = read(
      score(list, part("A", start + Q) + part("B", start + Q) + part("C", start + Q)),
    );
    expect(parts.map(({ id, name }) => [id, name])).toEqual([
      ["A", "Flute 1"],
      ["B", "Oboe"],
      ["C", "C"],
    ]);
    expect(warnings.map(({ code, partId }) => [code, partId])).toEqual([["undeclared-part", "C"]]);
  });

  it("warns of parts of unequal length and of parts without music", () => {
    const list = listed("A", "Flute") + listed("B", "Horn") + listed("C", "Tuba");
    const { measures, warnings } = read(
      score(list, part("A", start + Q, Q) + part("B", start + Q)),
    );
    expect(measures).toHaveLength(2);
    expect(warnings.map(({ code, partId }) => [code, partId])).toEqual([
      ["unequal-measures", "B"],
      ["missing-part", "C"],
    ]);
  });

  it("takes the longest part as the measure's length", () => {
    const { measures } = read(
      score(
        listed("A", "Flute") + listed("B", "Horn"),
        part("A", start + Q) + part("B", `${start}${Q}${Q}`),
      ),
    );
    expect(measures[0]?.length).toEqual([2, 1]);
  });

  it("reads timewise as it reads partwise", () => {
    const timewise = `<score-timewise><part-list>${listed("A", "Flute")}${listed("B", "Horn")}</part-list><measure number="1"><part id="A">${start}${Q}${p}${Q}</part><part id="B">${start}${Q}</part></measure><measure number="2"><part id="A">${Q}</part><part id="B">${Q}${p}</part></measure></score-timewise>`;
    const partwise = score(
      listed("A", "Flute") + listed("B", "Horn"),
      part("A", `${start}${Q}${p}${Q}`, Q) + part("B", start + Q, Q + p),
    );
    const a = read(timewise);
    const b = read(partwise);
    const groups = (s: typeof a) => ({
      ...s,
      parts: s.parts.map(({ marks, ...rest }) => ({
        ...rest,
        marks: marks.map((mark) => ({ ...mark, group: 0 })),
      })),
    });
    expect(groups(a)).toEqual(groups(b));
    expect(brief(a, 0)).toEqual(["0:1/1 p"]);
  });

  it("keeps two parts of one id apart in timewise files, too", () => {
    const text = `<score-timewise><part-list>${listed("A", "Flute")}${listed("A", "Horn")}</part-list><measure number="1"><part id="A">${start}${p}${Q}</part><part id="A">${start}${Q}</part></measure><measure number="2"><part id="A">${Q}</part><part id="A">${Q}${p}</part></measure></score-timewise>`;
    const { parts } = read(text);
    expect(parts.map(({ id, name, marks }) => [id, name, marks.length])).toEqual([
      ["A", "Flute", 1],
      ["A#2", "Horn", 1],
    ]);
  });

  it("reads title, version, numbers, pickups and the only movement", () => {
    const text = musicXml(Q, Q)
      .replace("<part-list>", "<movement-title> Study in F </movement-title><part-list>")
      .replace('number="1"', 'number="X1" implicit="yes"');
    const { title, version, format, measures } = read(text);
    expect([title, version, format]).toEqual(["Study in F", "4.0", "musicxml"]);
    expect(
      measures.map(({ number, implicit, movementStart }) => [number, implicit, movementStart]),
    ).toEqual([
      ["X1", true, true],
      ["2", false, false],
    ]);
  });

  it("prefers the work's title and has none when none is given", () => {
    const both =
      "<work><work-title>Suite</work-title></work><movement-title>March</movement-title><part-list>";
    expect(read(musicXml(Q).replace("<part-list>", both)).title).toBe("Suite");
    expect(read(musicXml(Q)).title).toBeNull();
  });

  it("refuses a score without measures", () => {
    const text = score(listed("A", "Flute"), '<part id="A"/>');
    expect(() => read(text)).toThrow(ScoreReadError);
    expect(() => read(text)).toThrow(/no measures/);
  });

  it("refuses too many measures, naming the limit", () => {
    const text = musicXml(Q, Q, Q);
    const attempt = () => readScore(bytesOf(text), "long.musicxml", { measures: 2 });
    expect(attempt).toThrow(/long\.musicxml:1:\d+: more than 2 measures/);
  });
});
