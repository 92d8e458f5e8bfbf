import { checkCount } from "../limits";
import type { ScorePart, TimeSignature } from "../model";
import type { XmlElement } from "../xml/element-tree";
import { childNamed, childrenOf, textOf } from "./editorial";
import type { MeiState, StaffState } from "./mei-state";

/** Time signature given on an element or in its meterSig; undefined when it gives none. */
export function timeOf(element: XmlElement): TimeSignature | undefined {
  const group = childNamed(element, "meterSigGrp");
  const sign = childNamed(group ?? element, "meterSig");
  const inside = sign === undefined ? undefined : signTime(sign, "");
  return inside ?? signTime(element, "meter.");
}

/** Time of a meterSig, or of `meter.` attributes. */
export function signTime(
  { attributes }: XmlElement,
  prefix: "" | "meter.",
): TimeSignature | undefined {
  const sym = attributes[`${prefix}sym`];
  const symbol = sym === "common" || sym === "cut" ? sym : null;
  const standard = symbol === "cut" ? "2" : symbol === "common" ? "4" : undefined;
  const beats = (attributes[`${prefix}count`] ?? standard ?? "").replace(/\s+/g, "");
  const beatType = Number(attributes[`${prefix}unit`] ?? standard);
  const usable = /^\d{1,4}(\+\d{1,4})*$/.test(beats) && /[1-9]/.test(beats);
  const isNoteValue = Number.isInteger(beatType) && beatType >= 1 && beatType <= 1024;
  return usable && isNoteValue ? { beats, beatType, symbol } : undefined;
}

/** Fifths of a key signature such as "2f", null for one of its own, undefined for none. */
function fifthsOf(element: XmlElement): number | null | undefined {
  const sign = childNamed(element, "keySig")?.attributes;
  const { attributes } = element;
  return readFifths(sign?.sig ?? attributes.keysig ?? attributes["key.sig"]);
}

export function readFifths(sig: string | undefined): number | null | undefined {
  if (sig === undefined) return undefined;
  const match = /^([0-9]|1[0-2])([sf]?)$/.exec(sig.trim());
  if (match === null) return null;
  const count = Number(match[1]);
  return match[2] === "f" && count > 0 ? -count : count;
}

function labelOf(element: XmlElement): string {
  const label = childNamed(element, "label");
  const abbreviation = childNamed(element, "labelAbbr");
  const instrument = childNamed(element, "instrDef");
  return (
    (label === undefined ? "" : textOf(label)) ||
    (element.attributes.label ?? "").trim() ||
    (abbreviation === undefined ? "" : textOf(abbreviation)) ||
    (instrument?.attributes["midi.instrname"] ?? "").replaceAll("_", " ")
  );
}

function staffDefsIn(group: XmlElement): XmlElement[] {
  return childrenOf(group).flatMap((child) =>
    child.name === "staffDef" ? [child] : child.name === "staffGrp" ? staffDefsIn(child) : [],
  );
}

/**
 * Whether a group of staves is one instrument: it has an instrument of its own,
 * or is braced and its staves have neither names nor instruments, or is braced
 * and named with barlines through.
 */
function isOneInstrument(group: XmlElement): boolean {
  if (childNamed(group, "instrDef") !== undefined) return true;
  const symbol = group.attributes.symbol ?? childNamed(group, "grpSym")?.attributes.symbol;
  if (symbol !== "brace") return false;
  const staves = staffDefsIn(group);
  if (staves.some((staff) => childNamed(staff, "instrDef") !== undefined)) return false;
  if (staves.every((staff) => labelOf(staff) !== ""))
    return labelOf(group) !== "" && group.attributes["bar.thru"] === "true";
  return true;
}

function addPart(state: MeiState, element: XmlElement, n: string): ScorePart {
  const wanted = element.attributes["xml:id"] ?? `P${n}`;
  const taken = (id: string): boolean => state.parts.some((part) => part.id === id);
  let id = wanted;
  for (let number = 2; taken(id); number++) id = `${wanted}#${number}`;
  const part: ScorePart = {
    id,
    name: labelOf(element) || id,
    staves: 0,
    transpose: 0,
    marks: [],
    notes: [],
  };
  state.parts.push(part);
  return part;
}

function addStaff(state: MeiState, staffDef: XmlElement, part: ScorePart): StaffState {
  part.staves++;
  const staff: StaffState = {
    n: staffDef.attributes.n ?? `${state.staves.length + 1}`,
    part,
    index: part.staves,
    time: null,
    fifths: null,
    defaultDur: null,
    pulses: null,
  };
  state.staves.push(staff);
  checkCount(state.file, state.staves.length, { limit: state.limits.parts, things: "staves" });
  return staff;
}

/** The staff with this @n; a staff never declared becomes a part of its own. */
export function staffNumbered(state: MeiState, n: string): StaffState {
  const known = state.staves.find((staff) => staff.n === n);
  if (known !== undefined) return known;
  const definition: XmlElement = { name: "staffDef", attributes: { n }, children: [] };
  const part = addPart(state, definition, n);
  state.warn(
    "undeclared-staff",
    `Staff ${n} is not declared; it is read as a part of its own.`,
    part.id,
  );
  return addStaff(state, definition, part);
}

/** Declares the parts and staves of a staffGrp; staves known already keep their part. */
function declareStaves(state: MeiState, group: XmlElement): void {
  for (const child of childrenOf(group)) {
    if (child.name === "staffGrp" && isOneInstrument(child))
      declarePart(state, child, staffDefsIn(child));
    else if (child.name === "staffGrp") declareStaves(state, child);
    else if (child.name === "staffDef") declarePart(state, child, [child]);
  }
}

function declarePart(state: MeiState, element: XmlElement, staffDefs: readonly XmlElement[]): void {
  const fresh = staffDefs.filter(
    ({ attributes }) =>
      attributes.n === undefined || !state.staves.some(({ n }) => n === attributes.n),
  );
  const [first] = fresh;
  if (first === undefined) return;
  const part = addPart(state, element, first.attributes.n ?? `${state.staves.length + 1}`);
  for (const staffDef of fresh) addStaff(state, staffDef, part);
  const semitones = Number(first.attributes["trans.semi"] ?? element.attributes["trans.semi"] ?? 0);
  if (Number.isInteger(semitones)) part.transpose = semitones;
}

/** Takes time, key and default duration of a definition for these staves. */
function applyTo(state: MeiState, definition: XmlElement, staves: readonly StaffState[]): void {
  const time = timeOf(definition);
  const fifths = fifthsOf(definition);
  const dur = definition.attributes["dur.default"];
  const pulses = Number(definition.attributes.ppq);
  for (const staff of staves) {
    if (time !== undefined) staff.time = time;
    if (fifths !== undefined) staff.fifths = fifths;
    if (dur !== undefined) staff.defaultDur = dur;
    if (Number.isInteger(pulses) && pulses > 0) staff.pulses = pulses;
    if (time?.symbol) addTimeSign(state, staff.part, time.symbol);
  }
}

function addTimeSign(state: MeiState, part: ScorePart, symbol: string): void {
  if (state.timeSigns.some((sign) => sign.part === part)) return;
  state.timeSigns.push({ part, symbol });
}

/** Applies a staffDef standing alone or inside a scoreDef. */
export function applyStaffDef(state: MeiState, staffDef: XmlElement): void {
  const n = staffDef.attributes.n;
  const staves = n === undefined ? [] : state.staves.filter((staff) => staff.n === n);
  applyTo(state, staffDef, staves);
}

/** Applies a scoreDef: parts when it lists staves, then what is in force for all, then for each. */
export function applyScoreDef(state: MeiState, scoreDef: XmlElement): void {
  const topGroup = childNamed(scoreDef, "staffGrp");
  if (topGroup !== undefined) {
    const asOne = isOneInstrument(topGroup);
    if (asOne) declarePart(state, topGroup, staffDefsIn(topGroup));
    else declareStaves(state, topGroup);
  }
  applyTo(state, scoreDef, state.staves);
  const staffDefs = topGroup === undefined ? childrenOf(scoreDef) : staffDefsIn(topGroup);
  for (const child of staffDefs) if (child.name === "staffDef") applyStaffDef(state, child);
}
