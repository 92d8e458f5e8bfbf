import { DYNAMIC_LETTERS } from "../dynamic-letters";
import { elementTable, joinTables } from "../xml/elements";
import {
  type Handler,
  type MarkRule,
  markTable,
  PLAIN,
  placementOf,
  setContent,
  type Table,
} from "./mark-handlers";

const LETTER_RULES: Readonly<Record<string, MarkRule>> = Object.fromEntries(
  DYNAMIC_LETTERS.map((letter) => [letter, PLAIN]),
);

const NIENTE: Handler = {
  open: (state) => {
    state.mark("n").niente = true;
  },
};

const OTHER_DYNAMICS: Handler = {
  open: (state, attributes) => {
    state.mark("other-dynamics", attributes.smufl ?? null);
  },
  text: (state, text) => setContent(state.lastMark, "text", text),
};

const LETTERS: Table = joinTables(
  markTable("dynamics", LETTER_RULES),
  elementTable({ n: NIENTE, "other-dynamics": OTHER_DYNAMICS }),
);

/** `dynamics`, as a direction or on a note: each child is a mark of its own. */
export const DYNAMICS: Handler = {
  open: (state, attributes) => {
    state.dynamicsMark = state.marks.length;
    state.dynamicsPlacement = placementOf(attributes);
  },
  close: (state) => {
    const { marks, dynamicsMark, dynamicsPlacement } = state;
    for (let i = dynamicsMark; i < marks.length; i++) {
      const mark = marks[i];
      if (mark !== undefined) mark.placement = dynamicsPlacement;
    }
  },
  children: LETTERS,
};
