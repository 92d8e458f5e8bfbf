import { describe, expect, it } from "vitest";
import type { MarkSpan } from "../../lib/reading/reading";
import { readXml } from "./read-file";

const note = (notations = "", voice = 1) =>
  `<note><pitch><step>B</step><octave>4</octave></pitch><duration>1</duration><voice>${voice}</voice><type>quarter</type>${notations === "" ? "" : `<notations>${notations}</notations>`}</note>`;
const slur = (type: string, number = 1) => `<slur type="${type}" number="${number}"/>`;
const score = (...measures: string[]) =>
  readXml(
    `<?xml version="1.0"?><score-partwise version="4.0"><part-list><score-part id="P1"><part-name>A</part-name></score-part></part-list><part id="P1">${measures
      .map(
        (m, i) =>
          `<measure number="${i + 1}">${i === 0 ? "<attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>" : ""}${m}</measure>`,
      )
      .join("")}</part></score-partwise>`,
  );
const short = ({ from, to }: MarkSpan) =>
  `${from.measureIndex + 1}:${from.onset[0]} to ${to.measureIndex + 1}:${to.onset[0]}`;

// Pairing by type and number: MusicXML 4.0, slur type (start and stop share a number).
describe("markSpans", () => {
  it("ties a slur's start to its stop over the barline", () => {
    const { spans } = score(note() + note(slur("start")), note() + note(slur("stop")));
    expect(spans.map(short)).toEqual(["1:1 to 2:1"]);
  });

  it("keeps slurs of two numbers apart", () => {
    const { spans } = score(
      note(slur("start", 1)) +
        note(slur("start", 2)) +
        note(slur("stop", 2)) +
        note(slur("stop", 1)),
    );
    expect(spans.map(short)).toEqual(["1:0 to 1:3", "1:1 to 1:2"]);
  });

  it("keeps slurs of one number in two voices apart", () => {
    const upper = note(slur("start")) + note() + note() + note(slur("stop"));
    const lower = note("", 2) + note(slur("start"), 2) + note(slur("stop"), 2) + note("", 2);
    const { spans } = score(`${upper}<backup><duration>4</duration></backup>${lower}`);
    expect(spans.map(short)).toEqual(["1:0 to 1:3", "1:1 to 1:2"]);
  });

  it("leaves out a slur that is never closed", () => {
    expect(score(note(slur("start")) + note()).spans).toEqual([]);
  });

  it("gives an ending its measures, once for all parts", () => {
    const ending = (location: string, number: number, type: string) =>
      `<barline location="${location}"><ending number="${number}" type="${type}"/></barline>`;
    const { spans } = score(
      note(),
      ending("left", 1, "start") + note(),
      note() + ending("right", 1, "stop"),
      ending("left", 2, "start") + note() + ending("right", 2, "discontinue"),
    );
    expect(
      spans.map((s) => [s.element, s.partIndex, s.from.measureIndex, s.to.measureIndex]),
    ).toEqual([
      ["ending", null, 1, 2],
      ["ending", null, 3, 3],
    ]);
  });
});
