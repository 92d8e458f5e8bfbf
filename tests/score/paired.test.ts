/**
 * The same music in both formats must give the same model.
 * Source: the two standards' markings tables in ../shared/reference/standards, which
 * name each MEI row's MusicXML counterpart; the fixtures are written for this test.
 */
import { describe, expect, it } from "vitest";
import type { Mark, Measure, Score } from "@/lib/score/model";
import { direction, mei, meiQuarter, musicXml, notations, quarter, read, staff } from "./support";

const four = (...inside: string[]): string => inside.join("");
const Q = quarter();
const M = meiQuarter();

interface Pair {
  musicxml: string[];
  mei: string[];
  /** Attributes of the MEI measures, for barlines. */
  attributes?: string[];
}

const PAIRS: Record<string, Pair> = {
  "dynamics by beat": {
    musicxml: [four(Q, Q, direction("<dynamics><sfz/></dynamics>"), Q, Q)],
    mei: [`${staff(M + M + M + M)}<dynam staff="1" tstamp="3">sfz</dynam>`],
  },
  niente: {
    musicxml: [four(direction("<dynamics><n/></dynamics>"), Q, Q, Q, Q)],
    mei: [`${staff(M + M + M + M)}<dynam staff="1" tstamp="1">n</dynam>`],
  },
  "hairpin to the end of the next measure": {
    musicxml: [
      four(direction('<wedge type="crescendo"/>'), Q, Q, Q, Q),
      four(Q, Q, Q, Q, direction('<wedge type="stop"/>')),
    ],
    mei: [
      `${staff(M + M + M + M)}<hairpin form="cres" staff="1" tstamp="1" tstamp2="1m+5"/>`,
      staff(M + M + M + M),
    ],
  },
  "hairpin to nothing, by note": {
    musicxml: [
      four(
        Q,
        direction('<wedge type="diminuendo"/>'),
        Q,
        Q,
        direction('<wedge type="stop" niente="yes"/>'),
        Q,
      ),
    ],
    mei: [
      `${staff(M + meiQuarter('xml:id="a"') + M + meiQuarter('xml:id="b"'))}<hairpin form="dim" niente="true" startid="#a" endid="#b"/>`,
    ],
  },
  "tempo with a metronome mark": {
    musicxml: [
      four(
        `<direction><direction-type><words>Allegro</words></direction-type><direction-type><metronome><beat-unit>quarter</beat-unit><beat-unit-dot/><per-minute>96</per-minute></metronome></direction-type><sound tempo="144"/></direction>`,
        Q,
        Q,
        Q,
        Q,
      ),
    ],
    mei: [
      `${staff(M + M + M + M)}<tempo staff="1" tstamp="1" mm="96" mm.unit="4" mm.dots="1" midi.bpm="144">Allegro</tempo>`,
    ],
  },
  "metric modulation": {
    musicxml: [
      four(
        direction(
          "<metronome><beat-unit>quarter</beat-unit><beat-unit>quarter</beat-unit><beat-unit-dot/></metronome>",
        ),
        Q,
        Q,
        Q,
        Q,
      ),
    ],
    mei: [
      `${staff(M + M + M + M)}<tempo staff="1" tstamp="1" func="metricmod">\u2669 = \u2669.</tempo>`,
    ],
  },
  "worded crescendo with its line": {
    musicxml: [
      four(
        `<direction><direction-type><words>cresc.</words></direction-type><direction-type><dashes type="start"/></direction-type></direction>`,
        Q,
        Q,
        direction('<dashes type="stop"/>'),
        Q,
        Q,
      ),
    ],
    mei: [`${staff(M + M + M + M)}<dynam staff="1" tstamp="1" tstamp2="0m+3">cresc.</dynam>`],
  },
  "rehearsal, segno, words": {
    musicxml: [
      four(
        direction("<rehearsal>A</rehearsal>"),
        direction("<segno/>"),
        direction("<words>dolce</words>"),
        Q,
        Q,
        Q,
        Q,
      ),
    ],
    mei: [
      `${staff(M + M + M + M)}<reh staff="1" tstamp="1">A</reh><repeatMark func="segno" staff="1" tstamp="1"/><dir staff="1" tstamp="1">dolce</dir>`,
    ],
  },
  "octave line and pedal": {
    musicxml: [
      four(
        direction('<octave-shift type="down" size="8"/>'),
        direction('<pedal type="start"/>'),
        Q,
        Q,
        direction('<octave-shift type="stop" size="8"/>'),
        direction('<pedal type="stop"/>'),
        Q,
        Q,
      ),
    ],
    mei: [
      `${staff(meiQuarter('xml:id="a"') + meiQuarter('xml:id="b"') + M + M)}<octave dis="8" dis.place="above" startid="#a" endid="#b"/><pedal staff="1" dir="down" tstamp="1"/><pedal staff="1" dir="up" tstamp="3"/>`,
    ],
  },
  "articulations and fermata": {
    musicxml: [
      four(
        notations("<articulations><accent/><staccato/></articulations>"),
        notations('<articulations><strong-accent type="up"/></articulations>'),
        notations("<technical><up-bow/></technical>"),
        notations("<fermata>square</fermata>"),
      ),
    ],
    mei: [
      `${staff(`${meiQuarter('artic="acc stacc"')}${meiQuarter("", '<artic artic="marc"/>')}${meiQuarter('artic="upbow"')}${meiQuarter('xml:id="d"')}`)}<fermata startid="#d" shape="square"/>`,
    ],
  },
  "slur, tie and trill": {
    musicxml: [
      four(
        notations('<slur type="start"/>'),
        notations('<slur type="stop"/><tied type="start"/>'),
        notations('<tied type="stop"/>'),
        notations("<ornaments><trill-mark/></ornaments>"),
      ),
    ],
    mei: [
      `${staff(`${meiQuarter('xml:id="a"')}${meiQuarter('xml:id="b" tie="i"')}${meiQuarter('xml:id="c" tie="t"')}${meiQuarter('xml:id="d"')}`)}<slur startid="#a" endid="#b"/><tie startid="#b" endid="#c"/><trill startid="#d"/>`,
    ],
  },
  ornaments: {
    musicxml: [
      four(
        notations("<ornaments><mordent/></ornaments>"),
        notations("<ornaments><inverted-mordent/></ornaments>"),
        notations("<ornaments><turn/></ornaments>"),
        notations("<ornaments><delayed-inverted-turn/></ornaments>"),
      ),
    ],
    mei: [
      `${staff(M + M + M + M)}<mordent form="lower" staff="1" tstamp="1"/><mordent form="upper" staff="1" tstamp="2"/><turn form="upper" staff="1" tstamp="3"/><turn form="lower" delayed="true" staff="1" tstamp="4"/>`,
    ],
  },
  "triplet and grace note": {
    musicxml: [
      four(
        '<note><grace slash="yes"/><pitch><step>C</step><octave>5</octave></pitch></note>',
        ...[0, 1, 2].map(
          (i) =>
            `<note><pitch><step>C</step><octave>5</octave></pitch><duration>4</duration><type>quarter</type><time-modification><actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification>${i === 0 ? '<notations><tuplet type="start"/></notations>' : ""}${i === 2 ? '<notations><tuplet type="stop"/></notations>' : ""}</note>`,
        ),
        direction("<dynamics><p/></dynamics>"),
        Q.replace("<duration>4", "<duration>6"),
        Q.replace("<duration>4", "<duration>6"),
      ).replace("<note>", "<attributes><divisions>6</divisions></attributes><note>"),
    ],
    mei: [
      `${staff(`${meiQuarter('grace="unacc"')}<tuplet num="3" numbase="2">${M}${M}${M}</tuplet>${M}${M}`)}<dynam staff="1" tstamp="3">p</dynam>`,
    ],
  },
  tremolo: {
    musicxml: [
      four(
        notations('<ornaments><tremolo type="single">3</tremolo></ornaments>'),
        Q,
        ...["start", "stop"].map((type) =>
          quarter(
            `<time-modification><actual-notes>2</actual-notes><normal-notes>1</normal-notes></time-modification><notations><ornaments><tremolo type="${type}">3</tremolo></ornaments></notations>`,
          ),
        ),
      ),
    ],
    mei: [
      staff(
        `<bTrem unitdur="32">${M}</bTrem>${M}<fTrem beams="3"><note pname="c" oct="5" dur="2"/><note pname="c" oct="5" dur="2"/></fTrem>`,
      ),
    ],
  },
  "repeats and barlines": {
    musicxml: [
      four(
        '<barline location="left"><repeat direction="forward"/></barline>',
        Q,
        Q,
        Q,
        Q,
        '<barline location="right"><repeat direction="backward"/></barline>',
      ),
      four(Q, Q, Q, Q, '<barline location="right"><bar-style>light-light</bar-style></barline>'),
    ],
    mei: [staff(M + M + M + M), staff(M + M + M + M)],
    attributes: ['left="rptstart" right="rptend"', 'right="dbl"'],
  },
  "measures of rest and repeats of a measure": {
    musicxml: [
      '<attributes><measure-style><multiple-rest>4</multiple-rest></measure-style></attributes><note><rest measure="yes"/><duration>16</duration></note>',
      '<attributes><measure-style><measure-repeat type="start">1</measure-repeat></measure-style></attributes><forward><duration>16</duration></forward>',
    ],
    mei: [staff('<multiRest num="4"/>'), staff("<mRpt/>")],
  },
};

function markKeys(score: Score): string[] {
  const key = ({
    element,
    value,
    text,
    role,
    measureIndex,
    onset,
    niente,
    soundTempo,
    metronome,
    note,
  }: Mark): string =>
    JSON.stringify([
      measureIndex,
      onset,
      element,
      value,
      text,
      role,
      niente,
      soundTempo,
      metronome,
      note === null,
    ]);
  return (score.parts[0]?.marks ?? []).map(key).sort();
}

/** Measures without what only one format writes (bar styles of repeats). */
function measureKeys(score: Score): Partial<Measure>[] {
  return score.measures.map(({ barStyle: _style, jumps: _jumps, ...measure }) => measure);
}

function noteKeys(score: Score): unknown[] {
  const notes = score.parts[0]?.notes ?? [];
  return notes.map(({ onset, duration, pitch, grace, tieStart, tieStop }) => [
    onset,
    duration,
    pitch,
    grace,
    tieStart,
    tieStop,
  ]);
}

describe("readScore › equal music in MusicXML and MEI", () => {
  it.each(Object.entries(PAIRS))("%s", (_name, pair) => {
    const fromMusicXml = read(musicXml(...pair.musicxml));
    const fromMei = read(
      mei(pair.mei, pair.attributes ? { attributes: pair.attributes } : {}),
      "test.mei",
    );
    expect(fromMusicXml.warnings).toEqual([]);
    expect(fromMei.warnings).toEqual([]);
    expect(markKeys(fromMusicXml).length).toBeGreaterThan(0);
    expect(markKeys(fromMei)).toEqual(markKeys(fromMusicXml));
    expect(measureKeys(fromMei)).toEqual(measureKeys(fromMusicXml));
  });

  it.each(["triplet and grace note", "tremolo", "slur, tie and trill"])(
    "same notes: %s",
    (name) => {
      const pair = PAIRS[name];
      const fromMusicXml = read(musicXml(...(pair?.musicxml ?? [])));
      const fromMei = read(mei(pair?.mei ?? []), "test.mei");
      expect(noteKeys(fromMusicXml)).toHaveLength(pair === PAIRS["triplet and grace note"] ? 6 : 4);
      expect(noteKeys(fromMei)).toEqual(noteKeys(fromMusicXml));
    },
  );
});
