import { elementTable } from "../xml/elements";
import { type Handler, setContent, type Table, textOf } from "./mark-handlers";
import type { ReaderState } from "./reader-state";

/** Opens a mark whose text is put together from the elements inside it. */
function assembled(children: Table, value?: string): Handler {
  return {
    open: (state, attributes, name) => {
      state.mark(name, value === undefined ? null : (attributes[value] ?? null));
      state.pieces = [];
    },
    close: (state) => setContent(state.lastMark, "text", state.pieces.join(" ")),
    children,
  };
}

/** Adds to the last piece, or begins one. */
function append(state: ReaderState, text: string): void {
  const last = state.pieces.pop() ?? "";
  state.pieces.push(last + text);
}

const ACCIDENTALS: Readonly<Record<string, string>> = {
  "-1": "b",
  "1": "#",
  "-2": "bb",
  "2": "##",
};

function appendAlter(state: ReaderState, alter: string): void {
  if (alter !== "0") append(state, ACCIDENTALS[alter] ?? alter);
}

/** Retuned strings, as in "4=G3 3=D4". */
const SCORDATURA = assembled(
  elementTable<ReaderState>({
    accord: {
      open: (state, attributes) => {
        state.pieces.push(attributes.string === undefined ? "" : `${attributes.string}=`);
      },
      children: elementTable<ReaderState>({
        "tuning-step": textOf(append),
        "tuning-alter": textOf(appendAlter),
        "tuning-octave": textOf(append),
      }),
    },
  }),
);

/** Harp pedals in diagram order, as in "D C# B E F G Ab". */
const HARP_PEDALS = assembled(
  elementTable<ReaderState>({
    "pedal-tuning": {
      open: (state) => {
        state.pieces.push("");
      },
      children: elementTable<ReaderState>({
        "pedal-step": textOf(append),
        "pedal-alter": textOf(appendAlter),
      }),
    },
  }),
);

/** Accordion reeds as in "high middle-2 low". */
const ACCORDION = assembled(
  elementTable<ReaderState>({
    "accordion-high": { open: (state) => state.pieces.push("high") },
    "accordion-middle": textOf((state, text) => state.pieces.push(`middle-${text || "1"}`)),
    "accordion-low": { open: (state) => state.pieces.push("low") },
  }),
);

/** The kind of picture is the value, what it shows the text. */
const PICTOGRAM: Handler = {
  open: (state, _attributes, name) => setContent(state.lastMark, "value", name),
  text: (state, text) => setContent(state.lastMark, "text", text),
};

const PERCUSSION: Handler = {
  open: (state) => {
    state.mark("percussion");
  },
  children: elementTable<ReaderState>(
    {
      stick: {
        open: (state, _attributes, name) => setContent(state.lastMark, "value", name),
        children: elementTable<ReaderState>({
          "stick-type": textOf((state, text) => setContent(state.lastMark, "text", text)),
        }),
      },
    },
    PICTOGRAM,
  ),
};

const PRINCIPAL_VOICE: Handler = {
  open: (state, attributes) => {
    const stops = attributes.type === "stop";
    state.mark("principal-voice", attributes.symbol ?? null, stops ? "stop" : "start");
  },
  text: (state, text) => setContent(state.lastMark, "text", text),
};

/** Direction types drawn as a picture or diagram rather than written. */
export const DRAWN_SIGNS: Table = elementTable({
  scordatura: SCORDATURA,
  "harp-pedals": HARP_PEDALS,
  "accordion-registration": ACCORDION,
  percussion: PERCUSSION,
  "principal-voice": PRINCIPAL_VOICE,
});
