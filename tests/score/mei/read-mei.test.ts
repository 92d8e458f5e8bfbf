import { describe, expect, it } from "vitest";
import { ScoreReadError } from "@/lib/score/problem";
import { brief, marksOf, mei, meiQuarter, meiScore, read, staff } from "../support";

const M = meiQuarter();
const FOUR = M + M + M + M;
const p = (n: string, tstamp = 1): string => `<dynam staff="${n}" tstamp="${tstamp}">p</dynam>`;
const codes = (text: string): string[] => read(text).warnings.map(({ code }) => code);

function staffDef(n: number, inside = "", attributes = ""): string {
  return `<staffDef n="${n}" lines="5" ${attributes}>${inside}</staffDef>`;
}

function withStaves(group: string, measure: string): string {
  return meiScore(`<section><measure n="1">${measure}</measure></section>`, group);
}

describe("readMei › parts and staves", () => {
  const two = staff(FOUR, 1) + staff(FOUR, 2);

  it("takes each staff for a part of its own", () => {
    const group = `<staffGrp>${staffDef(1, "<label>Flute</label>", 'xml:id="fl"')}${staffDef(2, "<label>Horn</label>", 'trans.semi="-7"')}</staffGrp>`;
    expect(
      read(withStaves(group, two)).parts.map(({ id, name, staves, transpose }) => [
        id,
        name,
        staves,
        transpose,
      ]),
    ).toEqual([
      ["fl", "Flute", 1, 0],
      ["P2", "Horn", 1, -7],
    ]);
  });

  it.each([
    [
      "a brace over unnamed staves",
      `<staffGrp symbol="brace"><label>Piano</label>${staffDef(1)}${staffDef(2)}</staffGrp>`,
    ],
    [
      "a brace drawn by an element",
      `<staffGrp><grpSym symbol="brace"/><label>Piano</label>${staffDef(1)}${staffDef(2)}</staffGrp>`,
    ],
    [
      "an instrument of the group",
      `<staffGrp><label>Piano</label><instrDef/>${staffDef(1)}${staffDef(2)}</staffGrp>`,
    ],
    [
      "a brace inside a group",
      `<staffGrp><staffGrp symbol="brace" bar.thru="true"><label>Piano</label>${staffDef(1)}${staffDef(2)}</staffGrp></staffGrp>`,
    ],
  ])("takes %s for one part", (_name, group) => {
    const score = read(withStaves(group, `${two}${p("2")}${p("1 2", 2)}`));
    expect(score.parts.map(({ id, name, staves }) => [id, name, staves])).toEqual([
      ["P1", "Piano", 2],
    ]);
    expect(marksOf(score).map(({ staff: s, onset }) => [s, onset[0]])).toEqual([
      [2, 0],
      [1, 1],
      [2, 1],
    ]);
  });

  it("keeps braced instruments with names of their own apart", () => {
    const group = `<staffGrp symbol="brace">${staffDef(1, "<label>Violin I</label>")}${staffDef(2, "<label>Violin II</label>")}</staffGrp>`;
    const score = read(withStaves(group, two + p("1 2")));
    expect(score.parts.map(({ name }) => name)).toEqual(["Violin I", "Violin II"]);
    expect(score.parts.map(({ marks }) => marks.length)).toEqual([1, 1]);
  });

  it("reads a staff never declared as a part, with a warning", () => {
    const score = read(withStaves(`<staffGrp>${staffDef(1)}</staffGrp>`, two));
    expect(score.parts.map(({ id }) => id)).toEqual(["P1", "P2"]);
    expect(score.warnings.map(({ code }) => code)).toEqual(["undeclared-staff"]);
  });

  it("reads an event that names no staff in the first part, with a warning unless it is for all", () => {
    const group = `<staffGrp>${staffDef(1)}${staffDef(2)}</staffGrp>`;
    const tempo = read(withStaves(group, `${two}<tempo tstamp="1">Allegro</tempo>`));
    expect(tempo.warnings).toEqual([]);
    expect(tempo.parts.map(({ marks }) => marks.length)).toEqual([1, 0]);
    expect(codes(withStaves(group, `${two}<dynam tstamp="1">p</dynam>`))).toEqual(["no-staff"]);
  });
});

describe("readMei › time", () => {
  const onsets = (events: string): string[] =>
    (read(mei([staff(events)])).parts[0]?.notes ?? []).map(({ onset }) => onset.join("/"));

  // Source: MEI 5 guidelines, durations in CMN.
  it("adds dots, tuplets, chords, spaces and grace notes exactly", () => {
    expect(
      onsets(
        `<note pname="c" oct="4" dur="8" dots="1"/><note pname="c" oct="4" dur="16"/><tuplet num="3" numbase="2"><note pname="c" oct="4" dur="8"/><tuplet num="5" numbase="4">${'<note pname="c" oct="4" dur="32"/>'.repeat(5)}</tuplet><note pname="c" oct="4" dur="8"/></tuplet>${meiQuarter('grace="acc"')}<space dur="8"/><chord dur="8"><note pname="c" oct="4"/><note pname="e" oct="4"/></chord>`,
      ),
    ).toEqual([
      "0/1",
      "3/4",
      "1/1",
      "4/3",
      "7/5",
      "22/15",
      "23/15",
      "8/5",
      "5/3",
      "2/1",
      "5/2",
      "5/2",
    ]);
  });

  it("scales the notes under a tupletSpan", () => {
    const notes = ["a", "b", "c"].map((id) => `<note xml:id="${id}" pname="c" oct="4" dur="8"/>`);
    const score = read(
      mei([
        `${staff(notes.join("") + M)}<tupletSpan num="3" numbase="2" startid="#a" endid="#c"/>`,
      ]),
    );
    expect(score.parts[0]?.notes.map(({ onset }) => onset.join("/"))).toEqual([
      "0/1",
      "1/3",
      "2/3",
      "1/1",
    ]);
    expect(brief(score)).toEqual(["0:0/1 tuplet:3:2 start", "0:2/3 tuplet stop"]);
  });

  it("lets a whole-measure rest last as long as the measure", () => {
    const group = `<staffGrp>${staffDef(1)}${staffDef(2)}</staffGrp>`;
    const score = read(withStaves(group, staff("<mRest/>", 1) + staff(M + M, 2)));
    expect(score.measures[0]?.length).toEqual([2, 1]);
    expect(score.parts[0]?.notes[0]).toMatchObject({ rest: true, duration: [2, 1] });
  });

  it.each([
    ["1", "0/1"],
    ["2.5", "3/2"],
    ["1.333", "1/3"],
    ["2.6667", "5/3"],
    ["0", "0/1"],
    ["5", "4/1"],
  ])("reads beat %s as onset %s", (tstamp, onset) => {
    const score = read(mei([`${staff(FOUR)}<dynam staff="1" tstamp="${tstamp}">p</dynam>`]));
    expect(brief(score)).toEqual([`0:${onset} p`]);
  });

  it("counts beats in the meter's own unit", () => {
    const text = mei([
      `${staff('<note pname="c" oct="5" dur="2" dots="1"/>')}${p("1", 4)}`,
    ]).replace('meter.count="4" meter.unit="4"', 'meter.count="6" meter.unit="8"');
    expect(brief(read(text))).toEqual(["0:3/2 p"]);
  });

  it("follows spans into later measures", () => {
    const score = read(
      mei([
        `${staff(FOUR)}<hairpin form="cres" staff="1" tstamp="2" tstamp2="2m+3"/>`,
        staff(FOUR),
        staff(FOUR) + p("1", 3),
      ]),
    );
    expect(brief(score)).toEqual(["0:1/1 wedge:crescendo start", "2:2/1 p", "2:2/1 wedge stop"]);
  });

  it("lets a span of a stated length run over the barline", () => {
    const score = read(
      mei([`${staff(FOUR)}<hairpin form="dim" staff="1" tstamp="4" dur="2"/>`, staff(FOUR)]),
    );
    expect(brief(score)).toEqual(["0:3/1 wedge:diminuendo start", "1:1/1 wedge stop"]);
  });

  it("warns of a target that is not there", () => {
    expect(
      codes(mei([`${staff(FOUR)}<slur staff="1" startid="#x" tstamp="1" endid="#y"/>`])),
    ).toEqual(["missing-target", "missing-target"]);
  });

  it("sounds the notes under an octave line where MusicXML writes them", () => {
    const id = (name: string): string => meiQuarter(`xml:id="${name}"`);
    const pitches = (event: string): (number | null)[] =>
      (read(mei([staff(M + id("a") + id("b") + M) + event])).parts[0]?.notes ?? []).map(
        ({ pitch }) => pitch,
      );
    expect(pitches('<octave dis="8" dis.place="above" startid="#a" endid="#b"/>')).toEqual([
      72, 84, 84, 72,
    ]);
    expect(pitches('<octave dis="15" dis.place="below" startid="#a" endid="#a"/>')).toEqual([
      72, 48, 72, 72,
    ]);
  });
});

describe("readMei › words", () => {
  const event = (xml: string): string[] => brief(read(mei([staff(FOUR) + xml])));
  const at = 'staff="1" tstamp="1"';

  it.each([
    ["mf", ["0:0/1 mf"]],
    ["<rend>p</rend>", ["0:0/1 p"]],
    ["\uE520\uE520", ["0:0/1 pp"]],
    ["ffz", ['0:0/1 other-dynamics "ffz"']],
    ["più f", ['0:0/1 words "più f"']],
    ["p dolce", ["0:0/1 p", '0:0/1 words "dolce"']],
    ["cresc.", ['0:0/1 words "cresc."']],
  ])("reads dynam %j", (text, expected) =>
    expect(event(`<dynam ${at}>${text}</dynam>`)).toEqual(expected),
  );

  it.each([
    ["Allegro", ['0:0/1 words "Allegro"']],
    ["Allegro (\u2669 = 120)", ['0:0/1 words "Allegro"', "0:0/1 metronome"]],
    [
      'Allegro <symbol glyph.name="metNoteQuarterUp"/> = 120',
      ['0:0/1 words "Allegro"', "0:0/1 metronome"],
    ],
    ["Tempo I = primo", ['0:0/1 words "Tempo I = primo"']],
    ["poco <lb/> <rend>rit.</rend>", ['0:0/1 words "poco rit."']],
    ["<rend>ad lib.</rend><rend>rit.</rend>", ['0:0/1 words "ad lib. rit."']],
  ])("reads tempo %j", (text, expected) =>
    expect(event(`<tempo ${at}>${text}</tempo>`)).toEqual(expected),
  );

  it("reads a drawn metronome mark with its dot", () => {
    const score = read(mei([`${staff(FOUR)}<tempo ${at}>\uECA5 \uECB7 = c. 66</tempo>`]));
    expect(marksOf(score)[0]?.metronome).toEqual({
      beat: { unit: "quarter", dots: 1 },
      perMinute: 66,
      perMinuteText: "c. 66",
      equals: null,
      oldSide: "left",
    });
  });

  // Source: ../shared/reference/standards/README.md, "Traps": metricmod is old = new, precedente new = old.
  it.each([
    ["metricmod", "left"],
    ["precedente", "right"],
  ])("tells the old beat of a %s equation", (func, oldSide) => {
    const score = read(mei([`${staff(FOUR)}<tempo ${at} func="${func}">\u2669 = \u2669.</tempo>`]));
    expect(marksOf(score)[0]?.metronome).toMatchObject({
      oldSide,
      equals: { unit: "quarter", dots: 1 },
    });
  });

  it("reads signs drawn in a direction", () => {
    expect(event(`<dir ${at}><symbol glyph.auth="smufl" glyph.name="segno"/></dir>`)).toEqual([
      "0:0/1 segno",
    ]);
    expect(event(`<dir ${at}>To <symbol glyph.name="coda"/></dir>`)).toEqual([
      '0:0/1 words "To"',
      "0:0/1 coda",
    ]);
  });

  it("follows editorial readings", () => {
    expect(
      event(
        `<app><lem><dir ${at}>dolce</dir></lem><rdg><dir ${at}>forte</dir></rdg></app><dir ${at}><choice><sic>dolze</sic><corr>con <supplied>brio</supplied></corr></choice></dir><dir ${at}><choice><abbr>rit.</abbr><expan>ritenuto</expan></choice><del>x</del><annot>y</annot></dir>`,
      ),
    ).toEqual(['0:0/1 words "dolce"', '0:0/1 words "con brio"', '0:0/1 words "ritenuto"']);
  });

  it("takes the departure and the coda apart", () => {
    const score = read(
      mei([
        `${staff(FOUR)}<repeatMark func="coda" staff="1" tstamp="3"/>`,
        `${staff(FOUR)}<repeatMark func="daCapoAlCoda" staff="1" tstamp="5"/>`,
        `${staff(FOUR)}<repeatMark func="coda" staff="1" tstamp="1"/>`,
      ]),
    );
    expect(score.measures.map(({ jumps }) => jumps.map(({ kind }) => kind))).toEqual([
      ["tocoda"],
      ["dacapo"],
      ["coda"],
    ]);
    expect(brief(score)[1]).toBe('1:4/1 words "D.C. al Coda"');
  });

  it("keeps an unknown event by its name", () => {
    const text = mei([`${staff(FOUR)}<wobble ${at}>x</wobble>`]);
    expect(brief(read(text))).toEqual(['0:0/1 wobble "x"']);
    expect(codes(text)).toEqual(["unknown-element"]);
  });
});

describe("readMei › sections", () => {
  const measure = (n: number, attributes = "", inside = ""): string =>
    `<measure n="${n}" ${attributes}>${staff(FOUR)}${inside}</measure>`;

  it("reads endings into measures and marks", () => {
    const score = read(
      meiScore(
        `<section>${measure(1, 'left="rptstart"')}<ending n="1, 2" lendsym="angledown">${measure(2)}${measure(3, 'right="rptend"')}</ending><ending n="3" lendsym="none" label="last">${measure(4, 'right="end"')}</ending></section>`,
      ),
    );
    expect(
      score.measures.map(({ endingStart, endingStop, repeatStart, repeatEnd }) => [
        endingStart,
        endingStop,
        repeatStart,
        repeatEnd !== null,
      ]),
    ).toEqual([
      [null, null, true, false],
      [[1, 2], null, false, false],
      [null, "stop", false, true],
      [[3], "discontinue", false, false],
    ]);
    expect(score.measures[3]?.endingText).toBe("last");
    expect(brief(score).filter((mark) => mark.includes("ending"))).toEqual([
      "1:0/1 ending:1, 2 start",
      "2:4/1 ending stop",
      '3:0/1 ending:3 start "last"',
      "3:4/1 ending:discontinue stop",
    ]);
  });

  it("starts the next measure's repeat after rptboth", () => {
    const score = read(
      meiScore(`<section>${measure(1, 'right="rptboth"')}${measure(2)}</section>`),
    );
    expect(
      score.measures.map(({ repeatStart, repeatEnd }) => [repeatStart, repeatEnd !== null]),
    ).toEqual([
      [false, true],
      [true, false],
    ]);
  });

  it("spells out the playing order of nested expansions", () => {
    const score = read(
      meiScore(
        `<section><expansion plist="#a #b #a"/><section xml:id="a"><expansion plist="#a1 #a1 #a2"/><section xml:id="a1">${measure(1)}</section><ending xml:id="a2" n="1">${measure(2)}</ending></section><section xml:id="b">${measure(3)}</section></section><section>${measure(4)}</section>`,
      ),
    );
    expect(score.expansion).toEqual([0, 0, 1, 2, 0, 0, 1, 3]);
  });

  it.each([
    ["#a #nowhere", "names"],
    ["#a #a", "circle"],
  ])("warns of an expansion that cannot be followed: %s", (plist, words) => {
    const inner =
      words === "circle"
        ? '<expansion plist="#b"/><section xml:id="b"><expansion plist="#a"/></section>'
        : "";
    const score = read(
      meiScore(
        `<section><expansion plist="${plist}"/><section xml:id="a">${inner}${measure(1)}</section></section>`,
      ),
    );
    expect(score.expansion).toBeNull();
    expect(score.warnings.map(({ code, message }) => [code, message.includes(words)])).toEqual([
      ["bad-expansion", true],
    ]);
  });

  it("joins movements into one score", () => {
    const one = meiScore(`<section>${measure(1)}${measure(2)}</section>`);
    const mdiv = /<mdiv>.*<\/mdiv>/.exec(one)?.[0] ?? "";
    const score = read(one.replace("</body>", `${mdiv}</body>`));
    expect(score.measures.map(({ index, movementStart }) => [index, movementStart])).toEqual([
      [0, true],
      [1, false],
      [2, true],
      [3, false],
    ]);
    expect(score.parts).toHaveLength(1);
  });

  it("reads chosen readings of whole sections", () => {
    const score = read(
      meiScore(
        `<section><app><lem><section xml:id="x">${measure(1)}</section></lem><rdg><section>${measure(7)}</section></rdg></app>${measure(2)}</section>`,
      ),
    );
    expect(score.measures.map(({ number }) => number)).toEqual(["1", "2"]);
  });

  it("changes time and key between measures, and marks the time sign", () => {
    const score = read(
      meiScore(
        `<section>${measure(1)}<scoreDef meter.sym="cut" meter.count="2" meter.unit="2"><keySig sig="3f"/></scoreDef>${measure(2)}<staffDef n="1"><meterSig count="3" unit="4"/></staffDef>${measure(3)}</section>`,
      ),
    );
    expect(score.measures.map(({ time, fifths }) => [time?.beats, time?.symbol, fifths])).toEqual([
      ["4", null, 0],
      ["2", "cut", -3],
      ["3", null, -3],
    ]);
    expect(brief(score)).toEqual(["1:0/1 time:cut"]);
  });

  it("reads pickups, titles and versions", () => {
    const text = meiScore(
      `<section>${measure(0, 'metcon="false"')}${measure(1)}</section>`,
    ).replace(
      "<music>",
      '<meiHead><fileDesc><titleStmt><title>Study <titlePart type="subordinate">in F</titlePart></title></titleStmt></fileDesc></meiHead><music>',
    );
    const { measures, title, version, format } = read(text);
    expect(measures.map(({ implicit }) => implicit)).toEqual([true, false]);
    expect([title, version, format]).toEqual(["Study", "5.0", "mei"]);
  });

  it("reads elements with a namespace prefix", () => {
    const text = mei([staff(FOUR) + p("1")])
      .replace(/<(\/?)(?=\w)/g, "<$1mei:")
      .replace("xmlns=", "xmlns:mei=");
    expect(brief(read(text))).toEqual(["0:0/1 p"]);
  });

  it("refuses what holds no measures", () => {
    expect(() => read(meiScore("<section/>"))).toThrow(ScoreReadError);
  });
});

describe("readMei › notes", () => {
  const notes = (events: string) => read(mei([staff(events)]));

  it("does not count a tie or slur twice when it is written twice", () => {
    const ids = `${meiQuarter('xml:id="a" tie="i" slur="i1"')}${meiQuarter('xml:id="b" tie="t" slur="t1"')}`;
    const score = read(
      mei([`${staff(ids)}<tie startid="#a" endid="#b"/><slur startid="#a" endid="#b"/>`]),
    );
    expect(brief(score)).toEqual([
      "0:0/1 tied start",
      "0:0/1 slur start",
      "0:1/1 tied stop",
      "0:1/1 slur stop",
    ]);
  });

  it("ties every note of a tied chord", () => {
    const chord = (tie: string) =>
      `<chord dur="4" tie="${tie}"><note pname="c" oct="4"/><note pname="e" oct="4"/></chord>`;
    const score = notes(chord("i") + chord("t"));
    expect(score.parts[0]?.notes.map(({ tieStart, tieStop }) => [tieStart, tieStop])).toEqual([
      [true, false],
      [true, false],
      [false, true],
      [false, true],
    ]);
    expect(marksOf(score)).toHaveLength(4);
  });

  it("puts a chord's articulation on its first note", () => {
    const score = notes(
      '<chord dur="4" artic="stacc"><note pname="c" oct="4"/><note pname="e" oct="4" artic="acc"/></chord>',
    );
    expect(marksOf(score).map(({ element, note }) => [element, note])).toEqual([
      ["staccato", 0],
      ["accent", 1],
    ]);
  });

  it("finds the note of a mark placed by beat", () => {
    const score = read(
      mei([
        `${staff(`${M}${M}<rest dur="4"/>${M}`)}<fermata staff="1" tstamp="2"/><fermata staff="1" tstamp="3"/><fermata staff="1" tstamp="5"/>`,
      ]),
    );
    expect(marksOf(score).map(({ note, onset }) => [note, onset[0]])).toEqual([
      [1, 1],
      [2, 2],
      [null, 4],
    ]);
  });

  it("keeps an unknown articulation by its name", () => {
    const score = notes(meiQuarter('artic="wobble"'));
    expect(brief(score)).toEqual(['0:0/1 other-articulation "wobble"']);
    expect(score.warnings.map(({ code }) => code)).toEqual(["unknown-articulation"]);
  });

  it("warns of a note without a length", () => {
    const score = notes('<note pname="c" oct="4"/>');
    expect(score.warnings.map(({ code }) => code)).toEqual(["no-duration"]);
  });
});
