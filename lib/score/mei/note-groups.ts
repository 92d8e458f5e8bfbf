import { multiplyFractions } from "../fraction";
import type { XmlElement } from "../xml/element-tree";
import { tupletScale } from "./durations";
import { childrenOf } from "./editorial";
import { type EventReader, type LayerReader, placeNow } from "./events";

export function readInside(layer: LayerReader, element: XmlElement): void {
  layer.read(layer, childrenOf(element));
}

export const readTuplet: EventReader = (layer, element) => {
  const { num, numbase } = element.attributes;
  const scale = tupletScale(num, numbase);
  if (scale === null) {
    layer.state.warn(
      "bad-tuplet",
      "A tuplet gives no usable ratio; its notes keep their written length.",
      layer.staff.part.id,
    );
  }
  const first = layer.staff.part.notes.length;
  const start = placeNow(layer, first);
  const outer = layer.scale;
  layer.scale = scale === null ? outer : multiplyFractions(outer, scale);
  const before = layer.staff.part.marks.length;
  readInside(layer, element);
  layer.scale = outer;
  const last = layer.staff.part.notes.length - 1;
  if (last < first) return;
  const value = scale === null ? null : `${num}:${numbase}`;
  const opening = layer.state.makeMark(start, "tuplet", { value, role: "start" });
  layer.staff.part.marks.splice(before, 0, opening);
  const onset = layer.staff.part.notes[last]?.onset ?? layer.cursor;
  layer.state.mark({ ...start, note: last, onset }, "tuplet", { role: "stop" });
};

export const readGraceGroup: EventReader = (layer, element) => {
  const outer = layer.grace;
  layer.grace = element.attributes.grace === "unacc" ? "slash" : "plain";
  readInside(layer, element);
  layer.grace = outer;
};

/** Strokes that `unitdur` adds to the flags the note has itself, null when it does not say. */
function strokesOf({ attributes }: XmlElement, note: XmlElement | undefined): string | null {
  const mod = /^([1-6])slash$/.exec(note?.attributes["stem.mod"] ?? "")?.[1];
  if (mod !== undefined) return mod;
  if (/^[1-6]$/.test(attributes.beams ?? "")) return attributes.beams ?? null;
  const unit = Math.log2(Number(attributes.unitdur) / 4);
  const own = Math.max(0, Math.log2(Number(note?.attributes.dur ?? 4) / 4));
  return Number.isInteger(unit) && Number.isInteger(own) && unit > own ? `${unit - own}` : null;
}

export const readRepeatedTremolo: EventReader = (layer, element) => {
  const [inside] = childrenOf(element).filter(({ name }) => name === "note" || name === "chord");
  const place = placeNow(layer, layer.staff.part.notes.length);
  const value = element.attributes.form === "unmeas" ? "unmeasured" : "single";
  if (inside !== undefined) {
    layer.state.mark(place, "tremolo", { value, text: strokesOf(element, inside) });
  }
  const quiet = childrenOf(element).map((child) => ({
    ...child,
    attributes: { ...child.attributes, "stem.mod": undefined },
  }));
  layer.read(layer, quiet);
};

/** Two notes each written with the length of both together. */
export const readFingeredTremolo: EventReader = (layer, element) => {
  const { part } = layer.staff;
  const first = part.notes.length;
  const before = part.marks.length;
  const start = placeNow(layer, first);
  const outer = layer.scale;
  layer.scale = multiplyFractions(outer, [1, 2]);
  readInside(layer, element);
  layer.scale = outer;
  let last = part.notes.length - 1;
  while (last > first && part.notes[last]?.chord === true) last--;
  if (last < first) return;
  const [inside] = childrenOf(element);
  const text = strokesOf(element, inside);
  part.marks.splice(before, 0, layer.state.makeMark(start, "tremolo", { role: "start", text }));
  const onset = part.notes[last]?.onset ?? layer.cursor;
  layer.state.mark({ ...start, note: last, onset }, "tremolo", { role: "stop", text });
};
