import { elementTable, joinTables } from "../xml/elements";
import { readDecimal, readWhole } from "./decimal";
import { DRAWN_SIGNS } from "./drawn-signs";
import { DYNAMICS } from "./dynamics";
import {
  type Handler,
  markTable,
  PLAIN,
  placementOf,
  setContent,
  type Table,
  textOf,
} from "./mark-handlers";
import { METRONOME } from "./metronome";
import { applySound, offsetTicks, onsetAt, SOUND_IN_DIRECTION } from "./sounds";

/** Words; blank ones, which only carry a sound, leave no mark. */
const WORDS: Handler = {
  open: (state, attributes) => {
    const mark = state.mark("words");
    mark.placement = placementOf(attributes);
    if (attributes["font-style"] === "italic" || attributes["font-weight"] === "bold") {
      mark.emphasis = true;
    }
  },
  text: (state, text) => {
    setContent(state.lastMark, "text", text);
    if (state.lastMark?.text === null) state.marks.pop();
  },
};

const WEDGE: Handler = {
  open: (state, attributes) => {
    const { type } = attributes;
    const role = type === "stop" || type === "continue" ? type : "start";
    const mark = state.mark("wedge", role === "start" ? (type ?? null) : null, role);
    mark.number = attributes.number ?? null;
    if (attributes.niente === "yes") mark.niente = true;
  },
};

/** Value says which pedal or what it does besides going down and up. */
const PEDAL: Handler = {
  open: (state, attributes) => {
    const type = attributes.type ?? "start";
    const role =
      type === "stop" ? "stop" : type === "start" || type === "sostenuto" ? "start" : "continue";
    const value = type === "start" || type === "stop" || type === "continue" ? null : type;
    state.mark("pedal", value, role).number = attributes.number ?? null;
  },
};

/** Value is direction and size, `down-8` for 8va: it names the move from sounding to written pitch. */
const OCTAVE_SHIFT: Handler = {
  open: (state, attributes) => {
    const { type } = attributes;
    const role = type === "stop" || type === "continue" ? type : "start";
    const value = role === "start" ? `${type}-${attributes.size ?? "8"}` : null;
    state.mark("octave-shift", value, role).number = attributes.number ?? null;
  },
};

const OWN = elementTable({
  words: WORDS,
  dynamics: DYNAMICS,
  wedge: WEDGE,
  pedal: PEDAL,
  "octave-shift": OCTAVE_SHIFT,
  metronome: METRONOME,
});

const DIRECTION_TYPE: Table = joinTables(
  markTable("direction-type", {
    rehearsal: { content: "text" },
    symbol: { content: "text" },
    segno: { value: "smufl" },
    coda: { value: "smufl" },
    dashes: { spans: true },
    bracket: { spans: true },
    damp: PLAIN,
    "damp-all": PLAIN,
    eyeglasses: PLAIN,
    "string-mute": { value: "type" },
    "staff-divide": { value: "type" },
    image: PLAIN,
    "other-direction": { content: "text" },
  }),
  DRAWN_SIGNS,
  OWN,
);

const CHILDREN: Table = elementTable({
  "direction-type": { children: DIRECTION_TYPE },
  offset: {
    open: (state, attributes) => {
      if (state.direction !== null) state.direction.offsetSounds = attributes.sound === "yes";
    },
    text: (state, text) => {
      const offset = readDecimal(text);
      if (offset === null) state.warn("bad-offset", `An offset of "${text.trim()}" is left out.`);
      if (state.direction !== null) state.direction.offset = offset;
    },
  },
  voice: textOf((state, text) => {
    if (state.direction !== null) state.direction.voice = text;
  }),
  staff: textOf((state, text) => {
    if (state.direction !== null) state.direction.staff = readWhole(text);
  }),
  sound: SOUND_IN_DIRECTION,
});

/** `direction`: its marks stand at its place in document order, moved by the offset. */
export const DIRECTION: Handler = {
  open: (state, attributes) => {
    state.directionSound = null;
    state.direction = {
      firstMark: state.marks.length,
      offset: null,
      offsetSounds: false,
      placement: placementOf(attributes),
      staff: null,
      voice: null,
    };
  },
  close: (state) => {
    const { direction, directionSound, marks } = state;
    if (direction === null) return;
    const shift = offsetTicks(state, direction.offset);
    const onset = onsetAt(state, shift);
    const group = state.groups++;
    const printed = marks.slice(direction.firstMark);
    for (const mark of printed) mark.onset = onset;
    if (directionSound !== null) {
      applySound(state, directionSound, printed, direction.offsetSounds ? shift : 0);
    }
    for (let i = direction.firstMark; i < marks.length; i++) {
      const mark = marks[i];
      if (mark === undefined) continue;
      mark.group = group;
      mark.staff = direction.staff;
      mark.voice = direction.voice;
      mark.placement = mark.placement ?? direction.placement;
    }
    state.direction = null;
  },
  children: CHILDREN,
};
