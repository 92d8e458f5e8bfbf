import type { Note } from "../model";
import type { XmlElement } from "../xml/element-tree";
import { childrenOf } from "./editorial";
import type { MarkFields, MeiState, Place } from "./mei-state";

/** MEI data.ARTICULATION as MusicXML elements, from the MEI to MusicXML table of this project. */
const ARTICULATIONS: Readonly<
  Record<string, readonly (readonly [element: string, value?: string])[]>
> = {
  acc: [["accent"]],
  "acc-soft": [["soft-accent"]],
  stacc: [["staccato"]],
  dot: [["staccato"]],
  ten: [["tenuto"]],
  "ten-stacc": [["detached-legato"]],
  stacciss: [["staccatissimo"]],
  stroke: [["staccatissimo"]],
  marc: [["strong-accent", "up"]],
  "marc-stacc": [["strong-accent", "up"], ["staccato"]],
  spicc: [["spiccato"]],
  stress: [["stress"]],
  unstress: [["unstress"]],
  doit: [["doit"]],
  scoop: [["scoop"]],
  rip: [["scoop"]],
  plop: [["plop"]],
  fall: [["falloff"]],
  longfall: [["falloff"]],
  bend: [["brass-bend"]],
  flip: [["flip"]],
  smear: [["smear"]],
  shake: [["shake"]],
  dnbow: [["down-bow"]],
  upbow: [["up-bow"]],
  harm: [["harmonic", "natural"]],
  snap: [["snap-pizzicato"]],
  fingernail: [["fingernails"]],
  damp: [["damp"]],
  dampall: [["damp-all"]],
  open: [["open"]],
  stop: [["stopped"]],
  lhpizz: [["stopped"]],
  dbltongue: [["double-tongue"]],
  trpltongue: [["triple-tongue"]],
  heel: [["heel"]],
  toe: [["toe"]],
  tap: [["tap", "right"]],
};

/** Kept as other articulations, told by the text: MusicXML has no element of their own. */
const OTHER_ARTICULATIONS = new Set(["acc-inv", "acc-long"]);
/** Read as the nearest MusicXML element; the text keeps what the file says. */
const NEAREST = new Set(["rip", "longfall", "lhpizz"]);

const HEADS: Readonly<Record<string, string>> = {
  x: "x",
  diamond: "diamond",
  filldiamond: "diamond",
  slash: "slash",
  backslash: "back slashed",
  "+": "cross",
  square: "square",
  rectangle: "rectangle",
  isotriangle: "triangle",
  circle: "circled",
};

export function placementOf(place: string | undefined): "above" | "below" | null {
  return place === "above" || place === "below" ? place : null;
}

function tokens(value: string | undefined): string[] {
  return (value ?? "").split(/\s+/).filter((token) => token !== "");
}

function markArticulations(state: MeiState, place: Place, element: XmlElement): void {
  const { artic, place: where } = element.attributes;
  const placement = placementOf(where);
  for (const token of tokens(artic)) {
    const known = ARTICULATIONS[token];
    const text = NEAREST.has(token) ? token : null;
    for (const [name, value] of known ?? []) {
      state.mark(place, name, { value: value ?? null, text, placement });
    }
    if (known !== undefined) continue;
    state.mark(place, "other-articulation", { text: token, placement });
    if (OTHER_ARTICULATIONS.has(token)) continue;
    state.warn(
      "unknown-articulation",
      `The articulation "${token}" is not known; it is kept by its name.`,
      place.staff.part.id,
    );
  }
}

/** A letter of @tie or @slur: i starts, t ends, m does both. */
function markJoin(
  state: MeiState,
  place: Place,
  join: { element: string; letter: string; number: string | null },
): void {
  const { element, letter, number } = join;
  const { part } = place.staff;
  for (const role of ["stop", "start"] as const) {
    if (letter !== "m" && letter !== (role === "stop" ? "t" : "i")) continue;
    state.mark(place, element, { role, number });
    if (place.note !== null) state.joined.add(state.joinKey(part, element, role, place.note));
  }
}

function markJoins(
  state: MeiState,
  place: Place,
  element: XmlElement,
  note: Note | undefined,
): void {
  const { tie, slur, lv, gliss } = element.attributes;
  const letter = tie?.trim().charAt(0) ?? "";
  if (letter !== "") markJoin(state, place, { element: "tied", letter, number: null });
  if (note !== undefined && "im".includes(letter) && letter !== "") note.tieStart = true;
  if (note !== undefined && "tm".includes(letter) && letter !== "") note.tieStop = true;
  for (const token of tokens(slur)) {
    markJoin(state, place, {
      element: "slur",
      letter: token.charAt(0),
      number: token.slice(1) || null,
    });
  }
  for (const token of tokens(gliss))
    markJoin(state, place, { element: "glissando", letter: token.charAt(0), number: null });
  if (lv === "true") state.mark(place, "tied", { value: "let-ring" });
}

/** Strokes through the stem: a tremolo, a roll, speech; on a grace note the one slash belongs to it. */
function markStem(state: MeiState, place: Place, element: XmlElement, isGrace: boolean): void {
  const mod = element.attributes["stem.mod"];
  const strokes = /^([1-6])slash$/.exec(mod ?? "")?.[1];
  if (strokes !== undefined && !isGrace)
    state.mark(place, "tremolo", { value: "single", text: strokes });
  else if (mod === "z") state.mark(place, "tremolo", { value: "unmeasured" });
  else if (mod === "sprech") state.mark(place, "notehead", { value: "x" });
}

function markHead(state: MeiState, place: Place, { attributes }: XmlElement): void {
  if (attributes["stem.visible"] === "false") state.mark(place, "stem", { value: "none" });
  const isHidden = attributes["head.visible"] === "false";
  const head = isHidden ? "none" : HEADS[attributes["head.shape"] ?? ""];
  if (head !== undefined) state.mark(place, "notehead", { value: head });
  if (tokens(attributes["head.mod"]).includes("paren"))
    state.mark(place, "notehead", { value: "parentheses" });
}

/**
 * Marks written on a note, chord or rest itself: as attributes or as elements inside.
 * @param note the note to give its ties to, undefined for a chord or rest
 */
export function markNote(state: MeiState, place: Place, element: XmlElement, note?: Note): void {
  const fields: MarkFields = {};
  if (note !== undefined && note.grace !== null) {
    state.mark(place, "grace", { value: note.grace === "slash" ? "slash" : null });
  }
  if (note?.cue === true) state.mark(place, "cue");
  markStem(state, place, element, element.attributes.grace !== undefined || note?.grace != null);
  markHead(state, place, element);
  markJoins(state, place, element, note);
  markArticulations(state, place, element);
  const { fermata, ornam } = element.attributes;
  if (fermata !== undefined) state.mark(place, "fermata", { placement: placementOf(fermata) });
  for (const token of tokens(ornam))
    state.mark(place, "other-ornament", { ...fields, text: token });
  for (const child of childrenOf(element)) {
    if (child.name === "artic") markArticulations(state, place, child);
  }
}
