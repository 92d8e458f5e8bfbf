import type { XmlElement } from "../xml/element-tree";
import { childNamed } from "./editorial";

const ALTERS: Readonly<Record<string, number>> = {
  s: 1,
  f: -1,
  n: 0,
  ss: 2,
  x: 2,
  ff: -2,
  xs: 3,
  sx: 3,
  ts: 3,
  tf: -3,
  nf: -1,
  ns: 1,
  su: 1.5,
  sd: 0.5,
  fu: -0.5,
  fd: -1.5,
  nu: 0.5,
  nd: -0.5,
  "1qs": 0.5,
  "3qs": 1.5,
  "1qf": -0.5,
  "3qf": -1.5,
};
const STEPS: Readonly<Record<string, number>> = { c: 0, d: 2, e: 4, f: 5, g: 7, a: 9, b: 11 };

/**
 * MIDI number of a note, null without a pitch: written step and accidental, in the
 * octave it sounds in where the note states one.
 */
export function pitchOf(element: XmlElement): number | null {
  const { pname } = element.attributes;
  const oct = element.attributes["oct.ges"] ?? element.attributes.oct;
  const step = STEPS[pname ?? ""];
  const octave = Number(oct);
  if (step === undefined || oct === undefined || !Number.isInteger(octave)) return null;
  const accid = childNamed(element, "accid")?.attributes ?? {};
  const written = element.attributes.accid ?? accid.accid;
  const sounding = element.attributes["accid.ges"] ?? accid["accid.ges"];
  return 12 * (octave + 1) + step + (ALTERS[written ?? sounding ?? "n"] ?? 0);
}
