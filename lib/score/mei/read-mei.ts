import { type ReadLimits, scoreProblem } from "../limits";
import type { Score } from "../model";
import { treeHandler, type XmlElement } from "../xml/element-tree";
import {
  type Attributes,
  type ElementHandler,
  type ElementTable,
  elementTable,
} from "../xml/elements";
import { walkXml, type XmlInput } from "../xml/walk-xml";
import { markEnding } from "./barlines";
import { finishMarks } from "./control-places";
import { childrenOf } from "./editorial";
import { expandSections, newSection } from "./expansion";
import { readMeasure } from "./measures";
import { MeiState } from "./mei-state";
import { soundOctaveLines } from "./octave-lines";
import { applyScoreDef, applyStaffDef } from "./staves";

type Handler = ElementHandler<MeiState>;

function enterSection(state: MeiState, attributes: Attributes): void {
  const section = newSection(attributes["xml:id"] ?? null);
  state.openSections[state.openSections.length - 1]?.items.push(section);
  state.openSections.push(section);
}

function enterEnding(state: MeiState, attributes: Attributes): void {
  enterSection(state, attributes);
  state.endings.push({ attributes, first: state.measures.length });
}

function leaveEnding(state: MeiState): void {
  state.openSections.pop();
  const ending = state.endings.pop();
  if (ending !== undefined && ending.first < state.measures.length) {
    markEnding(state, ending.attributes, ending.first);
  }
}

function readExpansion(state: MeiState, { attributes }: XmlElement): void {
  const section = state.openSections[state.openSections.length - 1];
  if (section === undefined) return;
  const id = attributes["xml:id"];
  if (id !== undefined) section.expansionIds.push(id);
  if (section.order !== null) {
    state.warn("several-expansions", "A section gives several playing orders; the first is used.");
    return;
  }
  const ids = (attributes.plist ?? "").split(/\s+/).filter((part) => part !== "");
  section.order = ids.map((part) => part.replace(/^#/, ""));
}

/** Sections inside an editorial choice: the chosen reading is read as if it stood alone. */
function readChosen(state: MeiState, element: XmlElement): void {
  const wrapper: XmlElement = { name: "section", attributes: {}, children: [element] };
  for (const child of childrenOf(wrapper)) readSectionPart(state, child);
}

function readSectionPart(state: MeiState, element: XmlElement): void {
  const { name, attributes } = element;
  if (name === "measure") readMeasure(state, element);
  else if (name === "scoreDef") applyScoreDef(state, element);
  else if (name === "staffDef") applyStaffDef(state, element);
  else if (name === "expansion") readExpansion(state, element);
  else if (name === "section" || name === "ending") {
    if (name === "ending") enterEnding(state, attributes);
    else enterSection(state, attributes);
    for (const child of childrenOf(element)) readSectionPart(state, child);
    if (name === "ending") leaveEnding(state);
    else state.openSections.pop();
  }
}

const SECTION: Handler = {
  open: enterSection,
  close: (state) => {
    state.openSections.pop();
  },
};
const ENDING: Handler = { open: enterEnding, close: leaveEnding };
/** Editorial wrappers around sections that hold a single reading. */
const WRAPPER: Handler = {};

const SECTION_PARTS: ElementTable<MeiState> = elementTable({
  measure: treeHandler(readMeasure),
  scoreDef: treeHandler(applyScoreDef),
  staffDef: treeHandler(applyStaffDef),
  expansion: treeHandler(readExpansion),
  app: treeHandler(readChosen),
  choice: treeHandler(readChosen),
  subst: treeHandler(readChosen),
  section: SECTION,
  ending: ENDING,
  ...Object.fromEntries(
    "add corr damage orig reg restore sic supplied unclear"
      .split(" ")
      .map((name) => [name, WRAPPER]),
  ),
});
SECTION.children = SECTION_PARTS;
ENDING.children = SECTION_PARTS;
WRAPPER.children = SECTION_PARTS;

/** Of several coda marks in a movement the first is where the player leaves for the coda. */
function settleCodas(state: MeiState): void {
  const [departure, ...others] = state.codas;
  if (departure !== undefined && others.length > 0) departure.jump.kind = "tocoda";
  state.codas = [];
}

const MDIV: Handler = {
  open: (state) => {
    state.movementStarts = true;
    state.repeatStartsNext = false;
  },
  close: settleCodas,
};
MDIV.children = elementTable<MeiState>({
  mdiv: MDIV,
  parts: {
    open: (state) => {
      state.warn(
        "separate-parts",
        "Music written out by part is not read, only the full score is.",
      );
      return false;
    },
  },
  score: {
    open: (state) => {
      const movement = newSection(null);
      state.movements.push(movement);
      state.openSections.push(movement);
    },
    close: (state) => {
      state.openSections.pop();
    },
    children: SECTION_PARTS,
  },
});

const MUSIC: Handler = {};
MUSIC.children = elementTable<MeiState>({
  body: { children: elementTable({ mdiv: MDIV }) },
  group: { children: elementTable({ music: MUSIC }) },
});

/** The first title of the file that has text; its parts only when the title has none of its own. */
const TITLE: Handler = {
  text: (state, text) => {
    if (state.title === "") state.title = text.replace(/\s+/g, " ").trim() || state.titlePart;
  },
  children: elementTable<MeiState>({
    titlePart: {
      open: (_state, { type }) => type === undefined || type === "main",
      text: (state, text) => {
        state.titlePart ||= text.replace(/\s+/g, " ").trim();
      },
    },
    rend: {
      text: (state, text) => {
        state.titlePart ||= text.replace(/\s+/g, " ").trim();
      },
    },
  }),
};

const HEAD: Handler = {
  children: elementTable({
    fileDesc: {
      children: elementTable({ titleStmt: { children: elementTable({ title: TITLE }) } }),
    },
  }),
};

const DOCUMENT: ElementTable<MeiState> = elementTable<MeiState>({
  mei: {
    open: (state, attributes) => {
      state.version = attributes.meiversion ?? null;
    },
    children: elementTable<MeiState>({ meiHead: HEAD, music: MUSIC }),
  },
});

function finish(state: MeiState): Score {
  if (state.measures.length === 0) {
    throw scoreProblem(state.file, "no-measures", {
      found: "the score holds no measures",
      expected: "at least one measure of music",
      remedy: "Check that the file holds a full score in common notation.",
    });
  }
  finishMarks(state);
  soundOctaveLines(state.octaveLines, state.soundingOctaves);
  const { measures: expansion, problem } = expandSections(state.movements, state.measures.length);
  if (problem !== null) {
    const message = `The playing order given by the file cannot be followed: ${problem}.`;
    state.warnings.add({ code: "bad-expansion", message, measureNumber: null, partId: null });
  }
  return {
    format: "mei",
    version: state.version,
    title: state.title || null,
    parts: state.parts,
    measures: state.measures,
    expansion,
    warnings: state.warnings.finish(),
  };
}

/**
 * Reads MEI 3 to 5 (common notation, full score). Sections are streamed; only a
 * measure at a time is held as a tree. Marks carry MusicXML element names.
 *
 * @throws ScoreReadError for broken XML, no measures, or a limit passed
 * @see MEI 5 guidelines, modules CMN and shared; MEI to MusicXML table of this project
 */
export function readMei(xml: XmlInput, limits: ReadLimits): Score {
  const state = new MeiState(xml.source.file, limits);
  walkXml(xml, DOCUMENT, state);
  return finish(state);
}
