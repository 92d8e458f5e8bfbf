import { SMUFL_CODEPOINTS } from "@/lib/glossary/smufl";
import { GLYPH_BOXES } from "../glyph-boxes";
import type { Face } from "./shapes";

/** Letters of EB Garamond Italic by advance width in hundredths of the type size; the files of the package, measured. */
const ITALIC: readonly (readonly [number, string])[] = [
  [20, " '`"],
  [22, ",.:;’"],
  [26, "-j|"],
  [28, "!/ls"],
  [30, "()Jitìíîï"],
  [32, '"?cfç'],
  [34, "*eèéêë"],
  [36, "I[]{}ÌÍÎÏ"],
  [38, "oròóôõöø"],
  [40, "\\vyzýÿ"],
  [42, "g"],
  [44, "#bpx"],
  [46, "S_k"],
  [48, "$0123456789hq"],
  [50, "F^au~àáâãäåùúûü"],
  [52, "dnßæñ–"],
  [56, "P"],
  [58, "+<=>BELYÈÉÊËÝœ"],
  [62, "Tw"],
  [64, "%CXZÇ"],
  [66, "AÀÁÂÃÄÅ"],
  [68, "GRV…"],
  [70, "KOQUÒÓÔÕÖÙÚÛÜ"],
  [78, "@DHNmÑ"],
  [82, "&Æ"],
  [100, "MWŒ"],
];
const WIDTHS = new Map(ITALIC.flatMap(([width, letters]) => [...letters].map((l) => [l, width])));
/** An average letter of Atkinson Hyperlegible, and of an alphabet the table lacks. */
const AVERAGE_READ = 54;
const AVERAGE_TERM = 48;

/** Type sizes in ribbon units. */
export const TYPE: Readonly<Record<Face, number>> = { term: 17, tempo: 17, read: 12.5, mark: 13 };

/** Reckoned width of a text, on the wide side: nothing may touch. */
export function textWidth(text: string, face: Face): number {
  const size = TYPE[face];
  if (face === "read" || face === "mark") return (text.length * size * AVERAGE_READ) / 100;
  let sum = 0;
  for (const letter of text) sum += WIDTHS.get(letter) ?? AVERAGE_TERM;
  return (sum * size * (face === "tempo" ? 1.07 : 1.02)) / 100;
}

/** Extent of a glyph from its origin, in units, y downwards; a glyph that is not in the font has none. */
export function glyphBox(
  name: string,
  size: number,
): { left: number; right: number; top: number; bottom: number } | null {
  const box = GLYPH_BOXES[name];
  if (!box || SMUFL_CODEPOINTS[name] === undefined) return null;
  const space = size / 4;
  const [left, bottom, right, top] = box;
  return { left: left * space, right: right * space, top: -top * space, bottom: -bottom * space };
}

export function glyphWidth(name: string, size: number): number {
  const box = glyphBox(name, size);
  return box ? box.right - box.left : 0;
}
