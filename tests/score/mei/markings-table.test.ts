/** Source: ../shared/reference/standards/mei-markings.tsv, made from the MEI 5 source. */
import { describe, expect, it } from "vitest";
import type { Mark, Score } from "@/lib/score/model";
import {
  hasShared,
  mei,
  meiQuarter,
  meiScore,
  noteSkipped,
  read,
  readTable,
  staff,
} from "../support";

interface Row {
  row_id: string;
  mei_item: string;
  kind: string;
  value: string;
  musicxml_row_id: string;
}

const NOTES = `${meiQuarter('xml:id="a"')}${meiQuarter('xml:id="b"')}${meiQuarter('xml:id="c"')}${meiQuarter('xml:id="d"')}`;
const AT = 'staff="1" tstamp="1"';

/** One measure of four quarters with this event beside them. */
function event(xml: string): string {
  return mei([staff(NOTES) + xml]);
}

function layer(xml: string): string {
  return mei([staff(xml)]);
}

/** Text that stands for "some text" of an element. */
const TEXTS: Record<string, string> = { dynam: "mf", tempo: "Allegro", dir: "dolce", reh: "A" };

/** Rows whose snippet is not "the element with the attributes of its value cell". */
const SNIPPETS: Record<string, string> = {
  "mei:dynam[@tstamp2/@endid/@dur]": event(`<dynam ${AT} tstamp2="0m+3">cresc.</dynam>`),
  "mei:dynam[@val/@val2]": event(`<dynam ${AT} val="80">mf</dynam>`),
  "mei:hairpin[@tstamp2/@endid]": event(`<hairpin ${AT} tstamp2="0m+3" form="cres"/>`),
  "mei:hairpin[niente=true]": event(`<hairpin ${AT} tstamp2="0m+3" form="cres" niente="true"/>`),
  "mei:tempo[mm/mm.unit/mm.dots]": event(`<tempo ${AT} mm="60" mm.unit="4" mm.dots="1"/>`),
  "mei:tempo[midi.bpm]": event(`<tempo ${AT} midi.bpm="96"/>`),
  "mei:tempo[func=metricmod]": event(`<tempo ${AT} func="metricmod">\u2669 = \u2669.</tempo>`),
  "mei:tempo[func=precedente]": event(`<tempo ${AT} func="precedente">\u2669 = \u2669.</tempo>`),
  "mei:fermata[note@fermata above/below]": layer(meiQuarter('fermata="above"')),
  "mei:fermata[on a bar line]": event('<fermata staff="1" tstamp="5"/>'),
  "mei:trill[@extender/@endid]": event('<trill startid="#a" endid="#b" extender="true"/>'),
  "mei:ornam[note@ornam letter code]": layer(meiQuarter('ornam="T"')),
  "mei:ending[n/label/type]": meiScore(
    `<ending n="1"><measure n="1">${staff(NOTES)}</measure></ending>`,
  ),
  "mei:ending[lendsym=angledown or none]": meiScore(
    `<ending n="1" lendsym="angledown"><measure n="1">${staff(NOTES)}</measure></ending>`,
  ),
  "mei:bTrem": layer(`<bTrem unitdur="32">${meiQuarter()}</bTrem>`),
  "mei:bTrem[form=unmeas]": layer(`<bTrem form="unmeas">${meiQuarter()}</bTrem>`),
  "mei:fTrem": layer(`<fTrem unitdur="32">${meiQuarter()}${meiQuarter()}</fTrem>`),
  "mei:gliss": event('<gliss startid="#a" endid="#b"/>'),
  "mei:slur": event('<slur startid="#a" endid="#b"/>'),
  "mei:phrase": event('<phrase startid="#a" endid="#b"/>'),
  "mei:tie": event('<tie startid="#a" endid="#b"/>'),
  "mei:lv": event('<lv startid="#a"/>'),
  "mei:tuplet": layer(
    `<tuplet num="3" numbase="2">${meiQuarter()}${meiQuarter()}${meiQuarter()}</tuplet>`,
  ),
  "mei:bracketSpan": event('<bracketSpan startid="#a" endid="#b"/>'),
  "mei:graceGrp": layer(`<graceGrp>${meiQuarter()}</graceGrp>`),
  "mei:grace[note@grace=unacc]": layer(meiQuarter('grace="unacc"')),
  "mei:grace[note@grace=acc]": layer(meiQuarter('grace="acc"')),
  "mei:beatRpt": layer("<beatRpt/>"),
  "mei:mRpt": layer("<mRpt/>"),
  "mei:mRpt2": layer("<mRpt2/>"),
  "mei:halfmRpt": layer("<halfmRpt/>"),
  "mei:multiRpt[num]": layer('<multiRpt num="4"/>'),
  "mei:multiRest[num]": layer('<multiRest num="8"/>'),
  "mei:ornam[(text or symbol)]": event('<ornam startid="#a">x</ornam>'),
  "mei:repeatMark[func=coda]": event(`<repeatMark ${AT} func="coda"/>`),
};

/** Attributes of a value cell such as "dis=8 dis.place=above"; "-" is no attribute. */
function attributesIn(value: string): string {
  return [...value.matchAll(/([a-z.0-9]+)=([A-Za-z0-9.]+)/g)]
    .map(([, name, content]) => `${name}="${content}"`)
    .join(" ");
}

function snippet(row: Row): string {
  const own = SNIPPETS[row.row_id];
  if (own !== undefined) return own;
  const { mei_item: item, value } = row;
  if (item === "artic") return layer(meiQuarter(`artic="${value}"`));
  if (item === "stem.mod") return layer(meiQuarter(`stem.mod="${value}"`));
  if (item === "measure") return mei([staff(NOTES)], { attributes: [attributesIn(value)] });
  const end = item === "hairpin" || item === "octave" ? ' tstamp2="0m+4"' : "";
  const text = TEXTS[item] ?? (item === "fing" || item === "anchoredText" ? "x" : "");
  return event(`<${item} ${AT}${end} ${attributesIn(value)}>${text}</${item}>`);
}

type Expected = Partial<Mark>;

/** What a MusicXML row of the mapping looks like as a mark, where its value says more than its element. */
const VALUES: Record<string, Expected> = {
  "mx:direction-type/wedge[type=crescendo]": { value: "crescendo", role: "start" },
  "mx:direction-type/wedge[type=diminuendo]": { value: "diminuendo", role: "start" },
  "mx:direction-type/wedge[type=stop]": { value: null, role: "stop" },
  "mx:direction-type/wedge[niente=yes]": { niente: true },
  "mx:direction-type/dashes[type=start]": { role: "start" },
  "mx:direction-type/bracket[type=start]": { role: "start" },
  "mx:direction-type/pedal[type=start]": { role: "start", value: null },
  "mx:direction-type/pedal[type=stop]": { role: "stop", value: null },
  "mx:direction-type/pedal[type=change]": { value: "change" },
  "mx:direction-type/pedal[type=sostenuto]": { value: "sostenuto" },
  "mx:direction-type/octave-shift[type=down size=8]": { value: "down-8", role: "start" },
  "mx:direction-type/octave-shift[type=up size=8]": { value: "up-8", role: "start" },
  "mx:direction-type/octave-shift[type=down size=15]": { value: "down-15", role: "start" },
  "mx:direction-type/octave-shift[type=up size=15]": { value: "up-15", role: "start" },
  "mx:direction-type/metronome[beat-unit=beat-unit]": { value: "modulation" },
  "mx:notations/fermata[angled]": { value: "angled" },
  "mx:notations/fermata[square]": { value: "square" },
  "mx:notations/fermata[normal]": { value: null },
  "mx:notations/fermata[type=inverted]": { placement: "below" },
  "mx:articulations/breath-mark[comma]": { value: "comma" },
  "mx:articulations/caesura[normal]": { value: null },
  "mx:articulations/strong-accent[type=up]": { value: "up" },
  "mx:ornaments/mordent[long=no]": { value: null },
  "mx:ornaments/mordent[long=yes]": { value: "long" },
  "mx:ornaments/inverted-mordent[long=no]": { value: null },
  "mx:ornaments/inverted-mordent[long=yes]": { value: "long" },
  "mx:ornaments/tremolo[type=single]": { value: "single" },
  "mx:ornaments/tremolo[type=unmeasured]": { value: "unmeasured" },
  "mx:ornaments/tremolo[type=start]": { role: "start" },
  "mx:ornaments/wavy-line[type=start]": { role: "start" },
  "mx:notations/arpeggiate[direction=up]": { value: "up" },
  "mx:notations/arpeggiate[direction=down]": { value: "down" },
  "mx:notations/slur[type=start]": { role: "start" },
  "mx:notations/tied[type=start]": { role: "start" },
  "mx:notations/tied[type=let-ring]": { value: "let-ring" },
  "mx:notations/glissando[type=start]": { role: "start" },
  "mx:barline/ending[type=start]": { role: "start", value: "1" },
  "mx:barline/ending[type=stop]": { role: "stop" },
  "mx:barline/repeat[direction=backward]": { value: "backward" },
  "mx:barline/repeat[direction=forward]": { value: "forward" },
  "mx:measure-style/measure-repeat[1]": { value: "1" },
  "mx:measure-style/measure-repeat[2]": { value: "2" },
  "mx:measure-style/measure-repeat[4]": { value: "4" },
  "mx:measure-style/multiple-rest[number]": { value: "8" },
  "mx:note/grace[slash=yes]": { value: "slash" },
  "mx:note/grace[slash=no]": { value: null },
  "mx:note/notehead[x]": { value: "x" },
  "mx:technical/harmonic[natural]": { value: "natural" },
  "mx:technical/tap[hand=right]": { value: "right" },
  "mx:sound.attr/soft-pedal[yes/no/number]": { element: "sound", value: "soft-pedal-yes" },
  "mx:sound.attr/tempo[number]": { element: "sound", value: "tempo", soundTempo: 96 },
  "mx:direction-type/dynamics": { element: "mf" },
};

/** Rows without a MusicXML counterpart, under the name they are kept by. */
const OWN: Record<string, Expected | null> = {
  "mei:expansion[plist]": null,
  "mei:section": null,
  "mei:measure[right=dbldashed]": { element: "bar-style", value: "dbldashed" },
  "mei:measure[right=dbldotted]": { element: "bar-style", value: "dbldotted" },
  "mei:octave[coll=coll]": { element: "coll-octave", value: "8" },
  "mei:pedal[dir=half]": { element: "pedal", value: "half" },
  "mei:pedal[func=silent]": { element: "pedal", value: "silent" },
  "mei:halfmRpt": { element: "half-measure-repeat" },
  "mei:cpMark": { element: "cpMark" },
};

const JUMP = /^mx:sound\.attr\/(dalsegno|dacapo|fine)\[/;

function checkNone(row: Row, score: Score): void {
  const own = OWN[row.row_id];
  expect(own, `${row.row_id} has no counterpart and no name of its own`).not.toBeUndefined();
  if (own !== null && own !== undefined) {
    expect(score.parts[0]?.marks[0]).toMatchObject(own);
  }
}

function check(row: Row, score: Score): void {
  const { musicxml_row_id: target } = row;
  const marks = score.parts[0]?.marks ?? [];
  const jump = JUMP.exec(target)?.[1];
  if (jump !== undefined) {
    expect(score.measures[0]?.jumps.map(({ kind }) => kind)).toEqual([jump]);
    expect(marks.map(({ element }) => element)).toEqual(["words"]);
    return;
  }
  if (target === "none") {
    checkNone(row, score);
    return;
  }
  if (target === "mx:sound.attr/dynamics[percent]") {
    // A playback number beside the printed mark: only the print is a mark.
    expect(marks.map(({ element }) => element)).toEqual(["mf"]);
    return;
  }
  if (target === "mx:barline/bar-style[regular]") {
    expect(marks).toEqual([]);
    return;
  }
  const element = /\/([a-z-]+)/.exec(target)?.[1] ?? "";
  const value = /bar-style\[([a-z-]+)\]/.exec(target)?.[1];
  const want = { element, ...(value === undefined ? {} : { value }), ...VALUES[target] };
  const found = marks.find((mark) => {
    const sameRole = want.role === undefined || mark.role === want.role;
    return mark.element === want.element && sameRole;
  });
  expect(found, JSON.stringify(marks)).toMatchObject(want);
}

describe("readMei › every row of the markings table", () => {
  if (!hasShared) {
    it("needs the table", () => noteSkipped("mei-markings.tsv"));
    return;
  }
  const rows = readTable("reference/standards/mei-markings.tsv") as unknown as Row[];
  it("has the whole table", () => expect(rows.length).toBeGreaterThan(140));
  it.each(rows.map((row) => [row.row_id, row] as const))("%s", (id, row) => {
    if (id === "mei:expansion[plist]" || id === "mei:section") {
      const measure = (n: number): string => `<measure n="${n}">${staff(NOTES)}</measure>`;
      const score = read(
        meiScore(
          `<section><expansion plist="#A #B #A"/><section xml:id="A">${measure(1)}</section><section xml:id="B">${measure(2)}</section></section>`,
        ),
      );
      expect(score.expansion).toEqual([0, 1, 0]);
      return;
    }
    check(row, read(snippet(row)));
  });
});
