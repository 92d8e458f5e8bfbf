/** Small scores written out by hand, and their ribbons. */
import { layoutRibbon, type Ribbon } from "@/app/ui/ribbon/layout-ribbon";
import type { Shape } from "@/app/ui/ribbon/shapes";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { Axis } from "@/lib/glossary/vocabulary";
import type { Reading } from "@/lib/reading/reading";
import { glossary, readXml } from "../reading/read-file";

export const entries: ReadonlyMap<string, ClientEntry> = glossary.bySlug;
export const entryOf = (slug: string | null) => (slug === null ? undefined : entries.get(slug));

export const words = (text: string) =>
  `<direction><direction-type><words>${text}</words></direction-type></direction>`;
export const dynamics = (mark: string) =>
  `<direction><direction-type><dynamics><${mark}/></dynamics></direction-type></direction>`;
export const wedge = (type: string) =>
  `<direction><direction-type><wedge type="${type}"/></direction-type></direction>`;
export const metronome = (perMinute: number) =>
  `<direction><direction-type><metronome><beat-unit>quarter</beat-unit><per-minute>${perMinute}</per-minute></metronome></direction-type></direction>`;
export const note = (notations = "", type = "quarter", duration = 1) =>
  `<note><pitch><step>B</step><octave>4</octave></pitch><duration>${duration}</duration><type>${type}</type>${notations === "" ? "" : `<notations>${notations}</notations>`}</note>`;
export const articulated = (sign: string) => note(`<articulations><${sign}/></articulations>`);
export const repeat = (direction: "forward" | "backward") =>
  `<barline location="${direction === "forward" ? "left" : "right"}"><repeat direction="${direction}"/></barline>`;
/** Four quarter notes. */
export const beats = note() + note() + note() + note();

const attributes =
  "<attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>";

/** A score in 4/4; each part is a list of measures. */
export function scoreOf(...parts: string[][]): Reading {
  const list = parts
    .map((_, p) => `<score-part id="P${p + 1}"><part-name>Part ${p + 1}</part-name></score-part>`)
    .join("");
  const body = parts
    .map((measures, p) => {
      const inside = measures
        .map((m, i) => `<measure number="${i + 1}">${i === 0 ? attributes : ""}${m}</measure>`)
        .join("");
      return `<part id="P${p + 1}">${inside}</part>`;
    })
    .join("");
  return readXml(
    `<?xml version="1.0"?><score-partwise version="4.0"><part-list>${list}</part-list>${body}</score-partwise>`,
  );
}

export function ribbonOf(reading: Reading, partIndex = 0, staff = 1): Ribbon {
  return layoutRibbon(reading, { partIndex, staff, least: 80, entryOf });
}

export function laneShapes(ribbon: Ribbon, name: Axis): Shape[] {
  return ribbon.lanes.find((lane) => lane.name === name)?.shapes ?? [];
}

export const texts = (shapes: readonly Shape[]) =>
  shapes.flatMap((s) => (s.kind === "text" ? [s.text] : []));
export const glyphs = (shapes: readonly Shape[]) =>
  shapes.flatMap((s) => (s.kind === "glyph" ? [s.name] : []));
