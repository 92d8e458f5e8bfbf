import type { PieceRecord } from "@/lib/store/records";
import { measureStretches } from "../ui/measure-stretches";
import { printedMarks } from "../ui/ribbon/printed-marks";

/** The first place of an entry in the player's own part. */
export interface Stood {
  /** Measure as printed. */
  measure: string;
  measureIndex: number;
  /** Word as printed there; null for a sign. */
  text: string | null;
}

/** Where each entry of a piece stands first, by slug. */
export function whereItStood({ reading, partIndex }: PieceRecord): Map<string, Stood> {
  const places = new Map<string, Stood>();
  for (const mark of printedMarks(reading, partIndex)) {
    const [stretch] = measureStretches([mark.measureIndex], reading.measures);
    if (!stretch) continue;
    for (const { slug, sign, text } of mark.found) {
      if (slug === null || places.has(slug)) continue;
      places.set(slug, {
        measure: stretch.number,
        measureIndex: mark.measureIndex,
        text: sign === null ? text.replace(/\s+/g, " ").trim() : null,
      });
    }
  }
  return places;
}
