import { describe, expect, it } from "vitest";
import { brief, direction, marksOf, musicXml, quarter, read } from "../support";

const Q = quarter();
const words = (text: string, attributes = ""): string => `<words ${attributes}>${text}</words>`;

describe("readMusicXml › directions", () => {
  // Source: MusicXML 4.0, direction and offset.
  it("places a direction where it stands, moved by its offset", () => {
    const score = read(
      musicXml(
        `${Q}${direction(words("a"), "<offset>2</offset>")}${Q}${direction(words("b"), "<offset>-2</offset>")}`,
      ),
    );
    expect(brief(score)).toEqual(['0:3/2 words "a"', '0:3/2 words "b"']);
  });

  it("keeps an offset before the barline at the barline, with a warning", () => {
    const score = read(musicXml(direction(words("a"), "<offset>-4</offset>") + Q));
    expect(brief(score)).toEqual(['0:0/1 words "a"']);
    expect(score.warnings.map(({ code, measureNumber }) => [code, measureNumber])).toEqual([
      ["offset-before-measure", "1"],
    ]);
  });

  it("groups the marks of one direction and tells directions apart", () => {
    const score = read(
      musicXml(direction(`${words("più")}${words("mosso")}`) + direction("<segno/>") + Q),
    );
    const groups = marksOf(score).map(({ group }) => group);
    expect(groups[0]).toBe(groups[1]);
    expect(groups[2]).not.toBe(groups[0]);
  });

  it("gives every child of dynamics a mark of its own", () => {
    const score = read(
      musicXml(
        direction("<dynamics><sf/><p/><other-dynamics>sub.</other-dynamics></dynamics>") + Q,
      ),
    );
    expect(brief(score)).toEqual(["0:0/1 sf", "0:0/1 p", '0:0/1 other-dynamics "sub."']);
  });

  it("keeps words as decoded, trimmed at the ends only", () => {
    const score = read(musicXml(direction(words("\n  con  fuoco &amp; brio ")) + Q));
    expect(marksOf(score)[0]?.text).toBe("con  fuoco & brio");
  });

  it("reads staff, voice, placement and emphasis", () => {
    const score = read(
      musicXml(
        direction(
          words("dolce", 'font-style="italic"'),
          "<voice>2</voice><staff>2</staff>",
          'placement="below"',
        ) + Q,
      ),
    );
    expect(marksOf(score)[0]).toMatchObject({
      staff: 2,
      voice: "2",
      placement: "below",
      emphasis: true,
      note: null,
    });
  });

  it("leaves blank words out and keeps the sound they carried", () => {
    const score = read(musicXml(direction(words(" "), '<sound tempo="72"/>') + Q));
    expect(marksOf(score)).toHaveLength(1);
    expect(marksOf(score)[0]).toMatchObject({ element: "sound", value: "tempo", soundTempo: 72 });
  });

  it("puts a stop after the last note at the measure's length", () => {
    const score = read(
      musicXml(direction('<wedge type="crescendo"/>') + Q + Q + direction('<wedge type="stop"/>')),
    );
    expect(brief(score)).toEqual(["0:0/1 wedge:crescendo start", "0:2/1 wedge stop"]);
    expect(score.measures[0]?.length).toEqual([2, 1]);
  });

  it("keeps an unknown direction type by its name, warning of the measure", () => {
    const score = read(musicXml(Q, direction("<smoke-signal>x</smoke-signal>") + Q));
    expect(brief(score)).toEqual(['1:0/1 smoke-signal "x"']);
    expect(score.warnings[0]).toMatchObject({
      code: "unknown-element",
      measureNumber: "2",
      partId: "P1",
    });
  });

  it("reads diagrams as text", () => {
    const score = read(
      musicXml(
        direction(
          "<harp-pedals><pedal-tuning><pedal-step>D</pedal-step><pedal-alter>0</pedal-alter></pedal-tuning><pedal-tuning><pedal-step>C</pedal-step><pedal-alter>-1</pedal-alter></pedal-tuning></harp-pedals>",
        ) +
          direction(
            '<scordatura><accord string="4"><tuning-step>F</tuning-step><tuning-alter>1</tuning-alter><tuning-octave>3</tuning-octave></accord></scordatura>',
          ) +
          Q,
      ),
    );
    expect(marksOf(score).map(({ text }) => text)).toEqual(["D Cb", "4=F#3"]);
  });
});

describe("readMusicXml › metronome", () => {
  const metronome = (inside: string, attributes = "") =>
    marksOf(read(musicXml(direction(`<metronome ${attributes}>${inside}</metronome>`) + Q)));

  it.each([
    ["96", 96],
    ["c. 66", 66],
    ["66,5", 66.5],
    ["88-92", null],
    ["", null],
    ["allegro", null],
    ["0", null],
  ])("reads per-minute %j as %j", (text, perMinute) => {
    const [mark] = metronome(`<beat-unit>quarter</beat-unit><per-minute>${text}</per-minute>`);
    expect(mark?.metronome).toMatchObject({ perMinute, perMinuteText: text });
  });

  it("reads dots and tied beat units", () => {
    const [mark] = metronome(
      "<beat-unit>half</beat-unit><beat-unit-dot/><beat-unit-tied><beat-unit>eighth</beat-unit><beat-unit-dot/></beat-unit-tied><per-minute>40</per-minute>",
    );
    expect(mark?.metronome?.beat).toEqual({
      unit: "half",
      dots: 1,
      tied: [{ unit: "eighth", dots: 1 }],
    });
  });

  it("reads an equation as old = new", () => {
    const [mark] = metronome(
      "<beat-unit>eighth</beat-unit><beat-unit>quarter</beat-unit><beat-unit-dot/>",
    );
    expect(mark?.value).toBe("modulation");
    expect(mark?.metronome).toEqual({
      beat: { unit: "eighth", dots: 0 },
      perMinute: null,
      perMinuteText: null,
      equals: { unit: "quarter", dots: 1 },
      oldSide: "left",
    });
  });

  it("does not take a swing relation for a change of beat", () => {
    const note = (type: string) =>
      `<metronome-note><metronome-type>${type}</metronome-type></metronome-note>`;
    const [mark] = metronome(
      `${note("eighth")}${note("eighth")}<metronome-relation>equals</metronome-relation>${note("quarter")}${note("eighth")}`,
    );
    expect(mark?.value).toBe("relation");
    expect(mark?.metronome).toBeUndefined();
  });

  it("leaves out a mark that is not printed", () => {
    expect(metronome("<beat-unit>quarter</beat-unit>", 'print-object="no"')).toEqual([]);
  });
});

describe("readMusicXml › sound", () => {
  it("gives its tempo to the printed words and metronome of the direction", () => {
    const score = read(
      musicXml(
        direction(
          `${words("Allegro")}<metronome><beat-unit>quarter</beat-unit><per-minute>120</per-minute></metronome>`,
          '<sound tempo="120"/>',
        ) + Q,
      ),
    );
    expect(marksOf(score).map(({ element, soundTempo }) => [element, soundTempo])).toEqual([
      ["words", 120],
      ["metronome", 120],
    ]);
  });

  it("adds no mark for what is printed beside it", () => {
    const score = read(musicXml(direction(words("pizz."), '<sound pizzicato="yes"/>') + Q));
    expect(brief(score)).toEqual(['0:0/1 words "pizz."']);
  });

  it("collects jumps with place, name and passes, once", () => {
    const jump = direction(words("To Coda"), '<sound tocoda="coda1" time-only="2"/>');
    const score = read(musicXml(`${Q}${jump}${jump}${Q}<sound dacapo="yes"/>`));
    expect(score.measures[0]?.jumps).toEqual([
      { kind: "tocoda", name: "coda1", onset: [1, 1], timeOnly: [2] },
      { kind: "dacapo", name: "", onset: [2, 1], timeOnly: null },
    ]);
  });

  it("moves a jump by the direction's offset only when that sounds", () => {
    const at = (attributes: string) =>
      read(
        musicXml(
          `${Q}${direction(words("Fine"), `<offset ${attributes}>4</offset><sound fine="yes"/>`)}${Q}`,
        ),
      ).measures[0]?.jumps[0]?.onset;
    expect(at("")).toEqual([1, 1]);
    expect(at('sound="yes"')).toEqual([2, 1]);
  });

  it("leaves out a tempo that is none, with a warning", () => {
    const score = read(musicXml(direction(words("x"), '<sound tempo="0"/>') + Q));
    expect(marksOf(score)[0]?.soundTempo).toBeUndefined();
    expect(score.warnings.map(({ code }) => code)).toEqual(["bad-tempo"]);
  });
});
