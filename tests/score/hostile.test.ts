/** Source: ../shared/reference/standards/hostile/manifest.json, its outcomes, reasons and musts. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Score } from "@/lib/score/model";
import { ScoreReadError } from "@/lib/score/problem";
import { readScore } from "@/lib/score/read-score";
import { brief, hasShared, noteSkipped, SHARED } from "./support";

interface ManifestFile {
  file: string;
  expected: {
    outcome: "accepted" | "refused" | "either";
    measures?: number;
    reasons?: string[];
    warning?: string;
  };
  must?: string[];
}

const FOLDER = join(SHARED, "reference/standards/hostile");

function open(file: string): Score | ScoreReadError {
  try {
    return readScore(readFileSync(join(FOLDER, file)), file);
  } catch (error) {
    if (error instanceof ScoreReadError) return error;
    throw error;
  }
}

function accepted(file: string): Score {
  const result = open(file);
  if (result instanceof ScoreReadError) throw result;
  return result;
}

function refused(file: string): ScoreReadError {
  const result = open(file);
  if (result instanceof ScoreReadError) return result;
  throw new Error(`${file} was read`);
}

const texts = (score: Score, part = 0): string[] =>
  (score.parts[part]?.marks ?? []).flatMap(({ text }) => (text === null ? [] : [text]));

const codes = (score: Score): string[] => score.warnings.map(({ code }) => code);

/** The musts of the manifest, file by file. */
const MUSTS: Record<string, () => void> = {
  "utf16-bom.musicxml": () => expect(texts(accepted("utf16-bom.musicxml"))).toEqual(["Très animé"]),
  "latin1-declared.musicxml": () =>
    expect(texts(accepted("latin1-declared.musicxml"))).toEqual(["Très animé"]),
  "external-entity.musicxml": () => {
    const canary = readFileSync(join(FOLDER, "canary.txt"), "utf8").trim();
    const { message, problem } = refused("external-entity.musicxml");
    expect(problem.code).toBe("entity");
    expect(message).not.toContain(canary);
  },
  "billion-laughs.musicxml": () => {
    const before = process.memoryUsage().heapUsed;
    refused("billion-laughs.musicxml");
    expect(process.memoryUsage().heapUsed - before).toBeLessThan(100e6);
  },
  "zip-bomb.mxl": () => expect(refused("zip-bomb.mxl").message).toMatch(/more than \d+ MB/),
  "traversal.mxl": () => expect(refused("traversal.mxl").message).toContain("outside"),
  "deep-50k.musicxml": () => expect(refused("deep-50k.musicxml").message).toContain("200 deep"),
  "measures-100k.mxl": () =>
    expect(refused("measures-100k.mxl").message).toContain("20000 measures"),
  "negative-divisions.musicxml": () => {
    const score = accepted("negative-divisions.musicxml");
    expect(brief(score)).toEqual(["0:0/1 f", "1:0/1 p"]);
    expect(codes(score)).toContain("bad-divisions");
  },
  "missing-divisions.musicxml": () => {
    const score = accepted("missing-divisions.musicxml");
    expect(brief(score)).toEqual(["0:0/1 f", "1:0/1 p"]);
    expect(codes(score)).toEqual(["assumed-divisions"]);
  },
  "duplicate-part-ids.musicxml": () => {
    const score = accepted("duplicate-part-ids.musicxml");
    expect(score.parts.map(({ id }) => id)).toEqual(["P1", "P1#2"]);
    expect(score.parts.map(({ marks }) => marks.map(({ element }) => element))).toEqual([
      ["f"],
      ["p"],
    ]);
    expect(codes(score)).toEqual(["duplicate-part-id"]);
  },
  "odd-measure-numbers.musicxml": () => {
    const { measures } = accepted("odd-measure-numbers.musicxml");
    expect(measures.map(({ number }) => number)).toEqual(["1", "12a", "X1", "", "13"]);
    expect(measures.map(({ index }) => index)).toEqual([0, 1, 2, 3, 4]);
  },
  "pickup-zero.musicxml": () => {
    const score = accepted("pickup-zero.musicxml");
    expect(score.measures[0]).toMatchObject({ number: "0", implicit: true });
    expect(brief(score)).toEqual(["0:0/1 mf"]);
  },
  "html-in-words.musicxml": () => {
    // Plain characters, as decoded; showing them as such is the page's work.
    expect(texts(accepted("html-in-words.musicxml"))).toEqual([
      "<script>alert(1)</script> dolce",
      '<img src=x onerror="alert(2)">',
      "javascript:alert(3)",
    ]);
  },
  "unicode-trouble.musicxml": () => {
    // Kept as decoded: dropping invisible characters is the words room's work.
    const words = texts(accepted("unicode-trouble.musicxml"));
    const visible = words.map((text) =>
      text.replace(/[\u200B-\u200F\u202A-\u202E\u2066-\u2069]/g, ""),
    );
    expect(visible).toEqual(expect.arrayContaining(["cresc.", "dolce"]));
    expect(visible.map((text) => text.normalize("NFC"))).toContain("énergique");
  },
  "timewise.musicxml": () => {
    const score = accepted("timewise.musicxml");
    expect(brief(score, 0)).toEqual(["0:0/1 f"]);
    expect(brief(score, 1)).toEqual(["1:0/1 p"]);
  },
  "mei-v3.mei": () =>
    expect(brief(accepted("mei-v3.mei"))).toEqual([
      "0:0/1 accent",
      '0:0/1 words "Moderato"',
      "0:0/1 metronome",
      "0:0/1 f",
      "1:0/1 tenuto",
      "1:0/1 wedge:diminuendo start",
      "1:0/1 fermata",
      "1:3/1 wedge stop",
    ]),
  "scan.mxl": () => expect(refused("scan.mxl").message).toContain("looks like a PDF"),
};

describe("readScore › hostile and malformed files", () => {
  if (!hasShared) {
    it("needs the files", () => noteSkipped("hostile files"));
    return;
  }
  const manifest = JSON.parse(readFileSync(join(FOLDER, "manifest.json"), "utf8"));
  const files: ManifestFile[] = manifest.files;
  it("has all 24", () => expect(files).toHaveLength(24));

  it.each(files.map((entry) => [entry.file, entry] as const))("%s", (file, { expected, must }) => {
    const begin = performance.now();
    const result = open(file);
    expect(performance.now() - begin).toBeLessThan(10_000);
    if (result instanceof ScoreReadError) {
      expect(expected.outcome).not.toBe("accepted");
      expect(expected.reasons).toContain(result.problem.code);
      expect(result.message).toContain(file);
      expect(result.message).not.toMatch(/\n|\bat .*\.(ts|js):/);
    } else {
      expect(expected.outcome).not.toBe("refused");
      expect(result.measures).toHaveLength(expected.measures ?? 0);
      if (expected.warning !== undefined) expect(result.warnings).not.toEqual([]);
    }
    if (must !== undefined) {
      expect(Object.keys(MUSTS)).toContain(file);
      MUSTS[file]?.();
    }
  });
});
