import { checkCount } from "../limits";
import { elementTable } from "../xml/elements";
import { type Handler, textOf } from "./mark-handlers";
import { newPart, type PartState, type ReaderState } from "./reader-state";

function declared(state: ReaderState): ReaderState["declared"][number] | undefined {
  return state.declared[state.declared.length - 1];
}

const SCORE_PART: Handler = {
  open: (state, attributes) => {
    state.declared.push({ id: attributes.id ?? "", name: "", instrument: "" });
  },
  children: elementTable<ReaderState>({
    "part-name": textOf((state, text) => {
      const part = declared(state);
      if (part !== undefined) part.name = text.replace(/\s+/g, " ");
    }),
    "score-instrument": {
      children: elementTable<ReaderState>({
        "instrument-name": textOf((state, text) => {
          const part = declared(state);
          if (part !== undefined && part.instrument === "") part.instrument = text;
        }),
      }),
    },
  }),
};

export const PART_LIST: Handler = { children: elementTable({ "score-part": SCORE_PART }) };

/**
 * The part with this id, the `occurrence`th of that id from 0. A second part with
 * an id already taken is kept apart as "P1#2", named by the second declaration.
 */
export function openPart(state: ReaderState, id: string, occurrence: number): PartState {
  const sameId = state.parts.filter((part) => part.declaredId === id);
  const existing = sameId[occurrence];
  if (existing !== undefined) return existing;
  const declarations = state.declared.filter((part) => part.id === id);
  const declaration = declarations[occurrence] ?? declarations[0];
  const ownId = freeId(state, id === "" ? `P${state.parts.length + 1}` : id, occurrence);
  const part = newPart(id, ownId, declaration?.name || declaration?.instrument || ownId);
  state.parts.push(part);
  checkCount(state.file, state.parts.length, { limit: state.limits.parts, things: "parts" });
  const add = (code: string, message: string): void =>
    state.warnings.add({ code, message, measureNumber: null, partId: ownId });
  if (declaration === undefined) {
    add("undeclared-part", `Part "${id}" is not in the list of parts; it is named by its id.`);
  }
  if (sameId.length > 0) {
    add(
      "duplicate-part-id",
      `Two parts share the id "${id}"; the later one is read as "${ownId}".`,
    );
  }
  return part;
}

function freeId(state: ReaderState, wanted: string, occurrence: number): string {
  const taken = new Set(state.parts.map(({ part }) => part.id));
  let number = occurrence + 1;
  let id = number === 1 ? wanted : `${wanted}#${number}`;
  while (taken.has(id)) id = `${wanted}#${++number}`;
  return id;
}
