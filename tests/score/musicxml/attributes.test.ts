import { describe, expect, it } from "vitest";
import { brief, musicXml, quarter, read } from "../support";

const Q = quarter();
const attributes = (inside: string): string => `<attributes>${inside}</attributes>`;
const time = (inside: string, symbol = ""): string =>
  attributes(`<time ${symbol}>${inside}</time>`);

describe("readMusicXml › attributes", () => {
  it("carries time and key until they change", () => {
    const score = read(
      musicXml(
        Q,
        attributes("<key><fifths>-3</fifths></key>") +
          time("<beats>6</beats><beat-type>8</beat-type>") +
          Q,
        Q,
      ),
    );
    expect(score.measures.map(({ time: t, fifths }) => [t?.beats, t?.beatType, fifths])).toEqual([
      ["4", 4, 0],
      ["6", 8, -3],
      ["6", 8, -3],
    ]);
  });

  // Source: MusicXML 4.0 time (composite and additive signatures).
  it.each([
    ["<beats>3+2</beats><beat-type>8</beat-type>", { beats: "3+2", beatType: 8 }],
    [
      "<beats>3</beats><beat-type>8</beat-type><beats>2</beats><beat-type>4</beat-type>",
      { beats: "3+4", beatType: 8 },
    ],
  ])("reads %s", (inside, expected) => {
    expect(read(musicXml(time(inside) + Q)).measures[0]?.time).toMatchObject({
      beats: "4",
    });
    expect(read(musicXml(Q, time(inside) + Q)).measures[1]?.time).toMatchObject(expected);
  });

  it("has no time in unmetered music", () => {
    expect(read(musicXml(Q, time("<senza-misura/>") + Q)).measures[1]?.time).toBeNull();
  });

  it("marks common and cut time", () => {
    const cut = time("<beats>2</beats><beat-type>2</beat-type>", 'symbol="cut"');
    const score = read(musicXml(Q, cut + Q));
    expect(brief(score)).toEqual(["1:0/1 time:cut"]);
    expect(score.measures[1]?.time?.symbol).toBe("cut");
  });

  it("warns of a time signature that is none", () => {
    const score = read(musicXml(Q, time("<beats>x</beats><beat-type>4</beat-type>") + Q));
    expect(score.measures[1]?.time).toBeNull();
    expect(score.warnings.map(({ code }) => code)).toEqual(["bad-time"]);
  });

  it("reads staves and transposition", () => {
    const score = read(
      musicXml(
        attributes(
          "<staves>2</staves><transpose><diatonic>-1</diatonic><chromatic>-2</chromatic><octave-change>-1</octave-change></transpose>",
        ) + Q,
      ),
    );
    expect(score.parts[0]).toMatchObject({ staves: 2, transpose: -14 });
  });

  it("keeps the place of a measure style and the staff it names", () => {
    const score = read(
      musicXml(
        Q +
          attributes('<measure-style number="2"><slash type="start"/></measure-style>') +
          Q +
          attributes('<measure-style><slash type="stop"/></measure-style>'),
      ),
    );
    expect(brief(score)).toEqual(["0:1/1 slash start", "0:2/1 slash stop"]);
    expect(score.parts[0]?.marks[0]?.staff).toBe(2);
  });
});
