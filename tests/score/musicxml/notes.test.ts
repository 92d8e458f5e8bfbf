import { describe, expect, it } from "vitest";
import { brief, direction, marksOf, musicXml, notations, quarter, read } from "../support";

const Q = quarter();
const p = direction("<dynamics><p/></dynamics>");

function note(duration: number, rest = ""): string {
  return `<note>${rest}<pitch><step>C</step><octave>5</octave></pitch><duration>${duration}</duration></note>`;
}

describe("readMusicXml › time", () => {
  // Source: MusicXML 4.0, divisions, backup, forward, chord.
  it("follows divisions that change between and within measures", () => {
    const score = read(
      musicXml(
        `${note(4)}<attributes><divisions>6</divisions></attributes>${note(2)}${p}${note(4)}`,
        `${note(2)}${p}`,
      ),
    );
    expect(brief(score)).toEqual(["0:4/3 p", "1:1/3 p"]);
    expect(score.measures.map(({ length }) => length)).toEqual([
      [2, 1],
      [1, 3],
    ]);
  });

  it("goes back and forward between voices", () => {
    const score = read(
      musicXml(
        `${note(16)}<backup><duration>16</duration></backup><forward><duration>6</duration></forward>${p}${note(2)}`,
      ),
    );
    expect(brief(score)).toEqual(["0:3/2 p"]);
    expect(score.parts[0]?.notes.map(({ onset }) => onset)).toEqual([
      [0, 1],
      [3, 2],
    ]);
    expect(score.measures[0]?.length).toEqual([4, 1]);
  });

  it("gives the notes of a chord one onset and moves on once", () => {
    const score = read(
      musicXml(Q + quarter("", "<chord/>") + notations("<articulations><accent/></articulations>")),
    );
    expect(score.parts[0]?.notes.map(({ onset, chord }) => [onset[0], chord])).toEqual([
      [0, false],
      [0, true],
      [1, false],
    ]);
    expect(brief(score)).toEqual(["0:1/1 accent"]);
  });

  it("gives a grace note no length and the next note its onset", () => {
    const grace =
      '<note><grace slash="yes"/><pitch><step>D</step><octave>5</octave></pitch><voice>1</voice><notations><slur type="start"/></notations></note>';
    const score = read(musicXml(Q + grace + Q));
    expect(score.parts[0]?.notes[1]).toMatchObject({
      grace: "slash",
      onset: [1, 1],
      duration: [0, 1],
    });
    expect(brief(score)).toEqual(["0:1/1 grace:slash", "0:1/1 slur start"]);
    expect(score.measures[0]?.length).toEqual([2, 1]);
  });

  it("keeps decimal durations exact", () => {
    const score = read(musicXml(`${note(0.5)}${p}${note(1.5)}`));
    expect(brief(score)).toEqual(["0:1/8 p"]);
    expect(score.measures[0]?.length).toEqual([1, 2]);
  });

  it("stops a backup at the barline, with a warning", () => {
    const score = read(musicXml(`${Q}<backup><duration>99</duration></backup>${p}`));
    expect(brief(score)).toEqual(["0:0/1 p"]);
    expect(score.warnings.map(({ code }) => code)).toEqual(["backup-before-measure"]);
  });

  it.each(["0", "-1", "x", "", "1e9", "999999999999"])(
    "warns of divisions %j and goes on",
    (divisions) => {
      const text = musicXml(`${note(4)}${p}`).replace(
        "<divisions>4</divisions>",
        `<divisions>${divisions}</divisions>`,
      );
      const score = read(text);
      expect(brief(score)).toEqual(["0:0/1 p"]);
      expect(score.warnings.map(({ code }) => code)).toEqual(["bad-divisions", "unknown-timing"]);
    },
  );

  it("assumes missing divisions from the first printed note value", () => {
    const text = musicXml(`${Q}${p}${Q}`).replace("<divisions>4</divisions>", "");
    const score = read(text);
    expect(brief(score)).toEqual(["0:1/1 p"]);
    expect(score.warnings.map(({ code }) => code)).toEqual(["assumed-divisions"]);
  });

  it("gives an empty measure the length of its time", () => {
    expect(read(musicXml("")).measures[0]?.length).toEqual([4, 1]);
  });

  it("does not lose count over long notes of odd lengths", () => {
    const score = read(musicXml(`<forward><duration>123456789012</duration></forward>${p}`));
    expect(brief(score)).toEqual(["0:30864197253/1 p"]);
  });
});

describe("readMusicXml › notes", () => {
  it("reads pitch as a MIDI number", () => {
    const text = musicXml(
      "<note><pitch><step>F</step><alter>1</alter><octave>4</octave></pitch><duration>4</duration></note>",
    );
    // F#4 is 66 where C4 is 60 (MIDI 1.0).
    expect(read(text).parts[0]?.notes[0]?.pitch).toBe(66);
  });

  it("reads rests, cues, voices, staves and ties", () => {
    const text = musicXml(
      '<note><cue/><rest/><duration>4</duration><voice>3</voice><staff>2</staff></note><note><pitch><step>C</step><octave>4</octave></pitch><duration>4</duration><tie type="stop"/><tie type="start"/></note>',
    );
    const notes = read(text).parts[0]?.notes;
    expect(notes?.[0]).toMatchObject({ cue: true, rest: true, pitch: null, voice: "3", staff: 2 });
    expect(notes?.[1]).toMatchObject({ tieStop: true, tieStart: true, voice: "1", staff: 1 });
  });

  it("attaches marks to their note", () => {
    const score = read(musicXml(Q + notations("<fermata>angled</fermata>")));
    expect(marksOf(score)[0]).toMatchObject({
      element: "fermata",
      value: "angled",
      note: 1,
      group: -1,
      voice: "1",
    });
  });

  it("makes no marks of lyrics, harmony, figured bass, credits or part names", () => {
    const lyric = "<lyric><syllabic>single</syllabic><text>dolce</text></lyric>";
    const text = musicXml(
      `<print><part-name-display><display-text>x</display-text></part-name-display></print><harmony><root><root-step>C</root-step></root><kind>major</kind></harmony><figured-bass><figure><figure-number>6</figure-number></figure></figured-bass>${quarter(lyric)}`,
    ).replace("<part-list>", "<credit><credit-words>Allegro</credit-words></credit><part-list>");
    expect(marksOf(read(text))).toEqual([]);
  });

  it("reads the ratio of a tuplet from its note", () => {
    const text = musicXml(
      quarter(
        '<time-modification><actual-notes>5</actual-notes><normal-notes>4</normal-notes></time-modification><notations><tuplet type="start" number="1"/></notations>',
      ),
    );
    expect(marksOf(read(text))[0]).toMatchObject({ element: "tuplet", value: "5:4", number: "1" });
  });

  it("leaves out notations that are not printed", () => {
    const text = musicXml(quarter('<notations print-object="no"><fermata/></notations>'));
    expect(marksOf(read(text))).toEqual([]);
  });

  it("keeps an unknown articulation by its name", () => {
    const score = read(musicXml(notations("<articulations><wobble/></articulations>")));
    expect(brief(score)).toEqual(["0:0/1 wobble"]);
    expect(score.warnings[0]?.code).toBe("unknown-element");
  });
});
