/** A small MusicXML part for each row of the table of markings. Source: ../shared/reference/standards/musicxml-markings.tsv. */
import { direction, notations, quarter } from "../support";

export interface Row {
  row_id: string;
  element: string;
  parent: string;
  value: string;
}

/** Attributes of a value cell such as "type=down size=8"; none when it is content. */
export function attributesOf(value: string): Record<string, string> {
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
export const SOUND_VALUES: Record<string, string> = {
  number: "96",
  percent: "71",
  yes: "yes",
  no: "no",
  name: "a",
  list: "2",
  "yes/no/number": "yes",
  degrees: "30",
};

export function snippet(row: Row): string {
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
