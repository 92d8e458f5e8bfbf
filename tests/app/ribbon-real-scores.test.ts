/**
 * The ribbon against the scores it is drawn from: what the file itself holds,
 * counted in its text, must stand in the lanes.
 * Scores: ../shared/scores (their sources in SOURCES.md there).
 */
import { unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import type { Ribbon } from "@/app/ui/ribbon/layout-ribbon";
import type { Reading } from "@/lib/reading/reading";
import { readBytes } from "../reading/read-file";
import { hasShared, sharedBytes } from "../reference/shared";
import { laneShapes, ribbonOf } from "./small-score";

const SCORES = [
  "scores/abendfeier-ds-al-fine-voltas.mxl",
  "scores/the-river-rich-words.mxl",
  "scores/loves-emblems-5-parts.mxl",
  "scores/je-te-veux-voltas.mxl",
];

/** The text of one part of a compressed score. */
function partText(bytes: Uint8Array, partId: string): string {
  const files = unzipSync(bytes);
  const name = Object.keys(files).find(
    (n) => /\.(?:musicxml|xml)$/.test(n) && !n.startsWith("META"),
  );
  const text = new TextDecoder().decode(files[name ?? ""]);
  const from = text.indexOf(`<part id="${partId}">`);
  return text.slice(from, text.indexOf("</part>", from));
}

const count = (text: string, pattern: RegExp) => text.match(pattern)?.length ?? 0;

const LETTERS: Readonly<Record<string, string>> = {
  pp: "dynamicPP",
  p: "dynamicPiano",
  mf: "dynamicMF",
  f: "dynamicForte",
  ff: "dynamicFF",
};

for (const file of SCORES) {
  describe(file, () => {
    if (!hasShared(file)) {
      it("skipped: no ../shared", () => {});
      return;
    }
    const bytes = sharedBytes(file);
    const reading: Reading = readBytes(bytes, file);
    const ribbon: Ribbon = ribbonOf(reading, 0);
    const text = partText(bytes, reading.parts[0]?.id ?? "");

    it("sets every dynamic letter of the part", () => {
      const names = laneShapes(ribbon, "dynamics").flatMap((s) =>
        s.kind === "glyph" ? [s.name] : [],
      );
      for (const [letters, glyph] of Object.entries(LETTERS)) {
        const printed = count(text, new RegExp(`<${letters}\\s*/>`, "g"));
        expect(
          names.filter((n) => n === glyph),
          letters,
        ).toHaveLength(printed);
      }
    });

    it("draws a repeat sign wherever the part has one", () => {
      const names = laneShapes(ribbon, "road").flatMap((s) => (s.kind === "glyph" ? [s.name] : []));
      for (const [direction, glyph] of [
        ["forward", "repeatLeft"],
        ["backward", "repeatRight"],
      ]) {
        const printed = count(text, new RegExp(`<repeat direction="${direction}"`, "g"));
        expect(names.filter((n) => n === glyph)).toHaveLength(printed);
      }
    });

    it("arcs no more slurs than begin in the part, and all that are closed", () => {
      const begun = count(text, /<slur [^>]*type="start"/g);
      const closed = reading.spans.filter((s) => s.element === "slur" && s.partIndex === 0).length;
      expect(closed).toBe(begun);
    });

    it("lets no words run into one another", () => {
      for (const { name, shapes } of ribbon.lanes) {
        const rows = new Map<number, { x0: number; x1: number }[]>();
        for (const shape of shapes) {
          // The tempo lane is one row on a bent line.
          const row = name === "tempo" ? 0 : Math.round(shape.kind === "text" ? shape.y : 0);
          if (shape.kind !== "text" || shape.face === "read") continue;
          rows.set(row, [...(rows.get(row) ?? []), shape]);
        }
        for (const row of rows.values()) {
          row.sort((a, b) => a.x0 - b.x0);
          row.forEach((shape, i) => {
            const before = row[i - 1];
            if (before) expect(shape.x0, name).toBeGreaterThanOrEqual(before.x1);
          });
        }
      }
    });

    it("stays within the width it says it has", () => {
      for (const { shapes } of ribbon.lanes) {
        for (const { x1 } of shapes) expect(x1).toBeLessThanOrEqual(ribbon.width);
      }
    });
  });
}
