/** Verovio 6.3 (its expanded timemap) beside our playing order, on published scores and the worked examples. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { VerovioToolkit } from "verovio/esm";
import createVerovioModule from "verovio/wasm";
import { beforeAll, describe, expect, it } from "vitest";
import { scoreText } from "../../lib/score/one-part";
import { readBytes } from "../reading/read-file";
import { hasShared, SHARED } from "./shared";

/** Where the two differ, and why ours stands. */
const REASONS: Record<string, string> = {
  "je-te-veux-voltas.mxl":
    "brackets 1-3 inside an outer repeat with brackets of its own, then Fine: Verovio plays on after the last pass",
  "joplin-elite-syncopations.mei":
    "Verovio does not expand this file's repeat barlines; we read them and its endings",
  "segno-tocoda-ds-al-coda.musicxml":
    "the jumps are words alone, without sound attributes; Verovio plays straight through",
  "PO-S3.musicxml": "inner repeat on each outer pass (rule R14, majority); Verovio takes it once",
  "PO-S8.musicxml": "a repeat without a forward sign (rule R3, contested; our policy names it)",
};

const folders = [
  "content/pieces",
  ...(hasShared("scores")
    ? [join(SHARED, "scores"), join(SHARED, "reference/standards/playing-order")]
    : []),
];
const files = folders.flatMap((folder) =>
  readdirSync(folder)
    .filter((f) => /\.(?:mxl|xml|musicxml|mei)$/.test(f))
    .map((f) => [f, join(folder, f)] as const),
);

describe("playingOrder › beside Verovio", () => {
  let module: unknown;
  beforeAll(async () => {
    module = await createVerovioModule();
  });
  it.each(files)("%s: as many measures are played", (name, path) => {
    const bytes = readFileSync(path);
    const toolkit = new VerovioToolkit(module);
    toolkit.loadData(scoreText(bytes, name));
    const theirs = toolkit
      .renderToTimemap({ includeMeasures: true })
      .filter((t) => t.measureOn).length;
    const ours = readBytes(bytes, name).playingOrder.length;
    const reason = REASONS[name];
    if (theirs !== ours)
      console.log(`${name}: Verovio ${theirs}, ours ${ours}: ${reason ?? "no reason given"}`);
    expect(theirs === ours || reason !== undefined).toBe(true);
    // A reason that no longer holds must go.
    expect(theirs === ours && reason !== undefined).toBe(false);
  });
});
