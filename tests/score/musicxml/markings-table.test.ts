/** Source: ../shared/reference/standards/musicxml-markings.tsv, made from the MusicXML 4.0 schema. */
import { describe, expect, it } from "vitest";
import type { Mark, Score } from "@/lib/score/model";
import {
  direction,
  hasShared,
  musicXml,
  notations,
  noteSkipped,
  quarter,
  read,
  readTable,
} from "../support";

interface Row {
  row_id: string;
  element: string;
  parent: string;
  value: string;
}

/** Attributes of a value cell such as "type=down size=8"; none when it is content. */
function attributesOf(value: string): Record<string, string> {
  const pairs = [...value.matchAll(/([a-z-]+)=([A-Za-z0-9-]+)/g)];
  return Object.fromEntries(pairs.map(([, name, content]) => [name, content]));
}

function write(attributes: Record<string, string>): string {
  return Object.entries(attributes)
    .map(([name, content]) => ` ${name}="${content}"`)
    .join("");
}

/** Content that stands for "some text" in a row without a value. */
const CONTENT: Record<string, string> = {
  words: "dolce",
  rehearsal: "A",
  symbol: "segno",
  "other-direction": "x",
  "other-dynamics": "x",
  "other-articulation": "x",
  "other-ornament": "x",
  "other-technical": "x",
  "other-notation": "x",
  "accidental-mark": "sharp",
  fingering: "1",
  pluck: "p",
  fret: "2",
  string: "1",
  dynamics: "<mf/>",
  "harp-pedals":
    "<pedal-tuning><pedal-step>D</pedal-step><pedal-alter>1</pedal-alter></pedal-tuning>",
  scordatura:
    '<accord string="4"><tuning-step>G</tuning-step><tuning-octave>3</tuning-octave></accord>',
  percussion: "<metal>cowbell</metal>",
  "accordion-registration": "<accordion-high/>",
  bend: "<bend-alter>2</bend-alter>",
  arrow: "<arrow-direction>up</arrow-direction>",
};

/** Elements told by a child rather than by text. */
const CHILD: Record<string, (value: string) => string> = {
  harmonic: (value) => `<${value}/>`,
  hole: (value) => `<hole-closed>${value}</hole-closed>`,
  "harmon-mute": (value) => `<harmon-closed>${value}</harmon-closed>`,
};

const METRONOMES: Record<string, string> = {
  "beat-unit+per-minute": "<beat-unit>quarter</beat-unit><per-minute>96</per-minute>",
  "beat-unit=beat-unit":
    "<beat-unit>quarter</beat-unit><beat-unit>quarter</beat-unit><beat-unit-dot/>",
  "metronome-note+metronome-relation":
    "<metronome-note><metronome-type>eighth</metronome-type></metronome-note><metronome-relation>equals</metronome-relation><metronome-note><metronome-type>quarter</metronome-type></metronome-note>",
  "metronome-note only": "<metronome-note><metronome-type>eighth</metronome-type></metronome-note>",
  "metronome-arrows":
    "<metronome-arrows/><metronome-note><metronome-type>eighth</metronome-type></metronome-note><metronome-relation>equals</metronome-relation><metronome-note><metronome-type>quarter</metronome-type></metronome-note>",
  "beat-unit-tied":
    "<beat-unit>half</beat-unit><beat-unit-tied><beat-unit>eighth</beat-unit></beat-unit-tied><per-minute>60</per-minute>",
};

function elementXml({ element, value }: Row): string {
  if (element === "metronome") return `<metronome>${METRONOMES[value]}</metronome>`;
  const attributes = attributesOf(value);
  const child = CHILD[element];
  if (child !== undefined) {
    const closed = Object.values(attributes)[0] ?? value;
    return `<${element}>${child(closed)}</${element}>`;
  }
  const isContent = Object.keys(attributes).length === 0 && value !== "" && value !== "(empty)";
  const content = isContent ? value : (CONTENT[element] ?? "");
  // MusicXML spells a harmonic head "diamond" and so on: the value cell is the content as it stands.
  return `<${element}${write(attributes)}>${content}</${element}>`;
}

/** Sound attributes and the sample value of each. */
const SOUND_VALUES: Record<string, string> = {
  number: "96",
  percent: "71",
  yes: "yes",
  no: "no",
  name: "a",
  list: "2",
  "yes/no/number": "yes",
  degrees: "30",
};

function snippet(row: Row): string {
  const { element, parent, value } = row;
  const xml = elementXml(row);
  switch (parent) {
    case "direction-type":
      return direction(xml) + quarter();
    case "metronome":
      return direction(`<metronome>${METRONOMES[element]}</metronome>`) + quarter();
    case "dynamics":
      return direction(`<dynamics>${xml}</dynamics>`) + quarter();
    case "articulations":
    case "ornaments":
    case "technical":
      return notations(`<${parent}>${xml}</${parent}>`);
    case "notations":
      if (["ornaments", "technical", "articulations"].includes(element)) {
        const inside = { ornaments: "turn", technical: "up-bow", articulations: "accent" }[element];
        return notations(`<${element}><${inside}/></${element}>`);
      }
      return notations(xml);
    case "barline": {
      const left = value.includes("forward") || value.includes("type=start");
      const attributes =
        element === "repeat" && !value.includes("direction")
          ? ` direction="backward" ${value}="${value === "times" ? "3" : "yes"}"`
          : write(attributesOf(value));
      const inner =
        element === "repeat" || element === "ending"
          ? `<${element}${element === "ending" ? ' number="1"' : ""}${attributes}/>`
          : xml;
      return `${left ? "" : quarter()}<barline location="${left ? "left" : "right"}">${inner}</barline>${left ? quarter() : ""}`;
    }
    case "sound@":
      return `<sound ${element}="${SOUND_VALUES[value]}"/>${quarter()}`;
    case "sound":
      return `<sound><swing><first>2</first><second>1</second></swing></sound>${quarter()}`;
    case "swing":
      return `<sound><swing><straight/></swing></sound>${quarter()}`;
    case "play":
      return `<sound><play>${xml}</play></sound>${quarter()}`;
    case "note":
      if (element === "grace")
        return `<note><grace${write(attributesOf(value))}/><pitch><step>C</step><octave>5</octave></pitch></note>`;
      if (element === "cue") return quarter("", "<cue/>");
      if (element === "unpitched") return "<note><unpitched/><duration>4</duration></note>";
      return quarter(
        value.includes("parentheses") ? '<notehead parentheses="yes">normal</notehead>' : xml,
      );
    case "note@":
      return quarter().replace(
        "<note>",
        `<note ${element}="${value === "yes/no" ? "yes" : value === "list" ? "2" : "50"}">`,
      );
    case "measure-style":
      return `<attributes><measure-style><${element} type="start">${value === "number" ? "8" : value}</${element}></measure-style></attributes>${quarter()}`;
    default:
      throw new Error(`no snippet for parent ${parent}`);
  }
}

interface Expected {
  element: string;
  value?: string | null;
  role?: Mark["role"];
}

/** Rows that speak only to a player program: nothing is printed and nothing asked, so no mark. */
const PLAYBACK_ONLY = new Set([
  "mx:sound.attr/divisions[number]",
  "mx:sound.attr/pan[degrees]",
  "mx:sound.attr/elevation[degrees]",
  "mx:note.attr/dynamics[percent]",
  "mx:note.attr/end-dynamics[percent]",
  "mx:note.attr/attack[divisions]",
  "mx:note.attr/release[divisions]",
]);

/** Rows that ask nothing: an ordinary notehead, an ordinary barline. */
const ORDINARY = new Set(["mx:note/notehead[normal]", "mx:barline/bar-style[regular]"]);

const JUMPS = new Set(["dacapo", "segno", "dalsegno", "coda", "tocoda", "fine", "forward-repeat"]);

function spans(value: string): Pick<Expected, "role" | "value"> {
  const type = attributesOf(value).type;
  if (type === "start" || type === "stop" || type === "continue")
    return { role: type, value: null };
  return { value: type ?? null };
}

function expected({ element, parent, value }: Row): Expected {
  const attributes = attributesOf(value);
  const type = attributes.type;
  if (parent === "sound@")
    return {
      element: "sound",
      value:
        element === "tempo" || element === "time-only"
          ? element
          : `${element}-${SOUND_VALUES[value]}`,
    };
  if (parent === "sound") return { element: "swing" };
  if (parent === "note@")
    return { element: "note", value: element === "time-only" ? "time-only" : "pizzicato-yes" };
  if (parent === "metronome")
    return { element: "metronome", value: element === "metronome-arrows" ? "modulation" : null };
  switch (element) {
    case "ornaments":
      return { element: "turn" };
    case "technical":
      return { element: "up-bow" };
    case "articulations":
      return { element: "accent" };
    case "dynamics":
      return { element: "mf" };
    case "metronome":
      if (value === "metronome-note only") return { element, value: "rhythm" };
      return { element, value: value === "beat-unit+per-minute" ? null : "modulation" };
    case "wedge":
      if (value === "niente=yes") return { element, role: "start" };
      return type === "stop" || type === "continue"
        ? { element, role: type, value: null }
        : { element, role: "start", value: type ?? null };
    case "pedal":
      if (type === "sostenuto") return { element, role: "start", value: type };
      return ["change", "discontinue", "resume"].includes(type ?? "")
        ? { element, role: "continue", value: type ?? null }
        : { element, ...spans(value) };
    case "octave-shift":
      return type === "stop" || type === "continue"
        ? { element, role: type, value: null }
        : { element, role: "start", value: `${type}-${attributes.size}` };
    case "tremolo":
      return type === "start" || type === "stop"
        ? { element, role: type, value: null }
        : { element, value: type ?? null };
    case "tuplet":
    case "hammer-on":
    case "pull-off":
      return { element };
    case "fermata":
    case "caesura":
      return {
        element,
        value: ["", "normal", "(empty)", "type=inverted"].includes(value) ? null : value,
      };
    case "breath-mark":
      return { element, value: value === "(empty)" ? null : value };
    case "repeat":
      return { element, value: attributes.direction ?? "backward" };
    case "ending":
      return type === "start"
        ? { element, role: "start", value: "1" }
        : { element, role: "stop", value: type === "discontinue" ? "discontinue" : null };
    case "turn":
      return { element, value: value === "slash=yes" ? "slash" : null };
    case "mordent":
    case "inverted-mordent":
      return { element, value: value === "long=yes" ? "long" : null };
    case "grace":
      return { element, value: value === "slash=yes" ? "slash" : null };
    case "measure-repeat":
    case "multiple-rest":
      return { element, value: value === "number" ? "8" : value };
    case "notehead":
      return { element, value: value.includes("parentheses") ? "parentheses" : value };
    case "percussion":
      return { element, value: "metal" };
    case "accidental-mark":
      return { element, value: "sharp" };
    case "arrow":
      return { element, value: "up" };
  }
  if (["dashes", "bracket", "wavy-line", "tied", "slur", "glissando", "slide"].includes(element))
    return { element, ...spans(value) };
  if (value === "") return { element };
  const [only] = Object.values(attributes);
  return { element, value: only ?? value };
}

function check(row: Row, score: Score): void {
  const marks = score.parts[0]?.marks ?? [];
  if (row.parent === "sound@" && JUMPS.has(row.element)) {
    expect(score.measures[0]?.jumps.map(({ kind }) => kind)).toEqual([row.element]);
    return;
  }
  if (PLAYBACK_ONLY.has(row.row_id) || ORDINARY.has(row.row_id)) {
    expect(marks).toEqual([]);
    return;
  }
  const want = expected(row);
  const [mark] = marks;
  expect(marks).toHaveLength(1);
  expect(mark).toMatchObject(want);
  expect(score.warnings).toEqual([]);
  if (row.value.startsWith("niente") || row.element === "n") expect(mark?.niente).toBe(true);
  if (row.value === "type=inverted") expect(mark?.placement).toBe("below");
  if (row.value === "times") expect(score.measures[0]?.repeatEnd?.times).toBe(3);
  if (row.value === "after-jump") expect(score.measures[0]?.repeatEnd?.afterJump).toBe(true);
  if (row.element === "tempo") expect(mark?.soundTempo).toBe(96);
}

describe("readMusicXml › every row of the markings table", () => {
  if (!hasShared) {
    it("needs the table", () => noteSkipped("musicxml-markings.tsv"));
    return;
  }
  const rows = readTable("reference/standards/musicxml-markings.tsv") as unknown as Row[];
  it("has the whole table", () => expect(rows.length).toBeGreaterThan(300));
  it.each(rows.map((row) => [row.row_id, row] as const))("%s", (_id, row) => {
    check(row, read(musicXml(snippet(row))));
  });
});
