import { elementTable, joinTables } from "../xml/elements";
import { DYNAMICS } from "./dynamics";
import {
  type Handler,
  type MarkRule,
  markHandler,
  markTable,
  PLAIN,
  placementOf,
  setContent,
  type Table,
} from "./mark-handlers";
import type { ReaderState } from "./reader-state";

const SPAN: MarkRule = { spans: true };
const SPAN_TEXT: MarkRule = { spans: true, content: "text" };
const VALUE: MarkRule = { content: "value" };
const TEXT: MarkRule = { content: "text" };

function plain(names: string): Record<string, MarkRule> {
  return Object.fromEntries(names.split(" ").map((name) => [name, PLAIN]));
}

const SIGNS_BY_NAME = markTable("articulations", {
  ...plain("accent staccato tenuto detached-legato staccatissimo spiccato scoop plop doit falloff"),
  ...plain("stress unstress soft-accent"),
  "strong-accent": { value: "type", otherwise: "up" },
  "breath-mark": VALUE,
  "other-articulation": TEXT,
});

/** A sign with a shape; the normal shape changes nothing and leaves the value null. */
export function shapeOf(state: ReaderState, text: string): void {
  if (text.trim() !== "normal") setContent(state.lastMark, "value", text);
}

const SHAPED: Handler = {
  open: (state, attributes, name) => {
    state.mark(name).placement = placementOf(attributes);
  },
  text: shapeOf,
};

/** Strokes of a tremolo are its text; a single or unmeasured one is told by the value. */
const TREMOLO: Handler = {
  open: (state, attributes) => {
    const type = attributes.type ?? "single";
    const spans = type === "start" || type === "stop";
    const mark = state.mark("tremolo", spans ? null : type, spans ? type : "point");
    mark.placement = placementOf(attributes);
  },
  text: (state, text) => setContent(state.lastMark, "text", text),
};

const SLASH: MarkRule = { yes: ["slash", "slash"] };
const LONG: MarkRule = { yes: ["long", "long"] };

const ORNAMENTS = joinTables(
  markTable("ornaments", {
    ...plain("trill-mark vertical-turn inverted-vertical-turn shake schleifer haydn"),
    turn: SLASH,
    "delayed-turn": SLASH,
    "inverted-turn": SLASH,
    "delayed-inverted-turn": SLASH,
    mordent: LONG,
    "inverted-mordent": LONG,
    "wavy-line": SPAN,
    "accidental-mark": VALUE,
    "other-ornament": TEXT,
  }),
  elementTable({ tremolo: TREMOLO }),
);

const CONTENT_IS_VALUE: Handler = {
  text: (state, text) => setContent(state.lastMark, "value", text),
};
const CONTENT_IS_TEXT: Handler = {
  text: (state, text) => setContent(state.lastMark, "text", text),
};
const NAME_IS_VALUE: Handler = {
  open: (state, _attributes, name) => setContent(state.lastMark, "value", name),
};

/** Technical signs told by the elements inside them. */
const TECHNICAL_WITH_CHILDREN = elementTable({
  harmonic: markHandler(PLAIN, elementTable({ natural: NAME_IS_VALUE, artificial: NAME_IS_VALUE })),
  bend: markHandler(
    PLAIN,
    elementTable({
      "bend-alter": CONTENT_IS_TEXT,
      "pre-bend": NAME_IS_VALUE,
      release: NAME_IS_VALUE,
    }),
  ),
  hole: markHandler(
    PLAIN,
    elementTable({ "hole-type": CONTENT_IS_TEXT, "hole-closed": CONTENT_IS_VALUE }),
  ),
  "harmon-mute": markHandler(PLAIN, elementTable({ "harmon-closed": CONTENT_IS_VALUE })),
  arrow: markHandler(
    PLAIN,
    elementTable({ "arrow-direction": CONTENT_IS_VALUE, "circular-arrow": CONTENT_IS_VALUE }),
  ),
});

const TECHNICAL = joinTables(
  markTable("technical", {
    ...plain("up-bow down-bow open-string thumb-position double-tongue triple-tongue stopped"),
    ...plain("snap-pizzicato heel toe fingernails brass-bend flip smear open half-muted golpe"),
    fingering: TEXT,
    pluck: TEXT,
    fret: TEXT,
    string: TEXT,
    "hammer-on": SPAN_TEXT,
    "pull-off": SPAN_TEXT,
    tap: { value: "hand", content: "text" },
    handbell: VALUE,
    "other-technical": TEXT,
  }),
  TECHNICAL_WITH_CHILDREN,
);

/** Upright or inverted becomes above or below; the shape is the value. */
export const FERMATA: Handler = {
  open: (state, attributes) => {
    const mark = state.mark("fermata");
    if (attributes.type === "inverted") mark.placement = "below";
    else if (attributes.type === "upright") mark.placement = "above";
  },
  text: shapeOf,
};

const ARTICULATIONS = joinTables(SIGNS_BY_NAME, elementTable({ caesura: SHAPED }));

/** The ratio of a tuplet comes from the note, which is read before its notations. */
const TUPLET: Handler = {
  open: (state, attributes) => {
    const stops = attributes.type === "stop";
    const { actual, normal } = state.note;
    const ratio = stops || actual === normal ? null : `${actual}:${normal}`;
    const mark = state.mark("tuplet", ratio, stops ? "stop" : "start");
    mark.number = attributes.number ?? null;
    mark.placement = placementOf(attributes);
  },
};

const OWN = elementTable<ReaderState>({
  articulations: { children: ARTICULATIONS },
  ornaments: { children: ORNAMENTS },
  technical: { children: TECHNICAL },
  dynamics: DYNAMICS,
  fermata: FERMATA,
  tuplet: TUPLET,
  footnote: {},
  level: {},
});

/** Everything inside `notations`. */
export const NOTATIONS: Table = joinTables(
  markTable("notations", {
    tied: SPAN,
    slur: SPAN,
    glissando: SPAN_TEXT,
    slide: SPAN_TEXT,
    arpeggiate: { value: "direction" },
    "non-arpeggiate": { value: "type" },
    "accidental-mark": VALUE,
    "other-notation": SPAN_TEXT,
  }),
  OWN,
);
