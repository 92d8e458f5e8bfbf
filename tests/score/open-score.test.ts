import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { DEFAULT_LIMITS, type ReadLimits } from "@/lib/score/limits";
import { openScore } from "@/lib/score/open-score";
import { ScoreReadError } from "@/lib/score/problem";
import { readScore } from "@/lib/score/read-score";
import { crc32 } from "@/lib/score/unpack-archive";
import { brief, bytesOf, direction, musicXml, quarter } from "./support";

const SCORE = musicXml(direction("<words>Très animé</words>") + quarter());

const container = (path: string, before = ""): string =>
  `<container><rootfiles>${before}<rootfile full-path="${path}"/></rootfiles></container>`;

function mxl(files: Record<string, string>): Uint8Array {
  return zipSync(
    Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])),
  );
}

function problemOf(
  bytes: Uint8Array,
  options: Partial<ReadLimits> = {},
): ScoreReadError["problem"] {
  try {
    readScore(bytes, "file.mxl", options);
  } catch (error) {
    if (error instanceof ScoreReadError) return error.problem;
    throw error;
  }
  throw new Error("was read");
}

function encode(text: string, encoding: "utf-16le" | "utf-16be" | "latin1"): Uint8Array {
  const units = [...text].map((character) => character.charCodeAt(0));
  if (encoding === "latin1") return Uint8Array.from(units);
  const big = encoding === "utf-16be";
  return Uint8Array.from(units.flatMap((u) => (big ? [u >> 8, u & 255] : [u & 255, u >> 8])));
}

const declared = (encoding: string): string =>
  `<?xml version="1.0" encoding="${encoding}"?>${SCORE}`;
const read = (bytes: Uint8Array): string[] => brief(readScore(bytes, "file.xml"));
const WORDS = ['0:0/1 words "Très animé"'];

describe("readScore › encodings", () => {
  // Source: XML 1.0 appendix F, detection of encodings.
  it.each([
    ["UTF-8 by default", bytesOf(SCORE)],
    ["UTF-8 with a byte order mark", bytesOf(`\uFEFF${SCORE}`)],
    ["UTF-16 little-endian with a mark", encode(`\uFEFF${SCORE}`, "utf-16le")],
    ["UTF-16 big-endian with a mark", encode(`\uFEFF${SCORE}`, "utf-16be")],
    ["UTF-16 without a mark", encode(declared("UTF-16"), "utf-16le")],
    ["ISO-8859-1 declared", encode(declared("ISO-8859-1"), "latin1")],
    ["windows-1252 declared", encode(declared("windows-1252"), "latin1")],
  ])("reads %s", (_name, bytes) => expect(read(bytes)).toEqual(WORDS));

  it("reads the letters windows-1252 has beyond ISO-8859-1", () => {
    const text = declared("iso-8859-1").replace("Très", "c\x9cur\x92s");
    expect(read(encode(text, "latin1"))).toEqual(['0:0/1 words "cœur’s animé"']);
  });

  it("reads a character cut in two by the size of a piece", () => {
    const padding = `<!--${"x".repeat((1 << 16) - 60)}-->`;
    for (let shift = 0; shift < 60; shift++) {
      const text = padding + "y".repeat(0) + SCORE.replace("Très", `${"z".repeat(shift)}é`);
      expect(read(bytesOf(text))[0]).toBe(`0:0/1 words "${"z".repeat(shift)}é animé"`);
    }
  });

  it("refuses bytes that are not what the file says, naming the line", () => {
    const bytes = encode(`<?xml version="1.0"?>\n\n${SCORE}`, "latin1");
    expect(problemOf(bytes)).toMatchObject({ code: "bad-encoding", place: { line: 3 } });
  });

  it("refuses an encoding it does not know", () => {
    expect(problemOf(bytesOf(declared("x-klingon"))).code).toBe("bad-encoding");
  });

  it("warns where a file calls itself UTF-16 but is not", () => {
    const score = readScore(bytesOf(declared("UTF-16")), "file.xml");
    expect(score.warnings.map(({ code }) => code)).toEqual(["wrong-encoding"]);
    expect(brief(score)).toEqual(WORDS);
  });
});

describe("readScore › what is no score", () => {
  it.each([
    ["", "empty", "empty"],
    [" \n ", "empty", "empty"],
    ["%PDF-1.7", "not-xml", "a PDF"],
    ['{"a": 1}', "not-xml", "JSON"],
    ["Dear diary", "not-xml", "plain text"],
    ["MThd\0\0\0\x06", "not-xml", "a MIDI file"],
    ["GIF89a", "not-xml", "a GIF picture"],
    ["<svg xmlns='http://www.w3.org/2000/svg'/>", "not-music", "an SVG picture"],
    ["<html><body/></html>", "not-music", "a web page"],
    ["<opus/>", "unknown-root", "list of scores"],
    ["<score-partwise", "not-well-formed", "broken"],
    ["<score-partwise/>", "no-measures", "no measures"],
    ["<mei/>", "no-measures", "no measures"],
  ])("%j is refused as %s", (text, code, words) => {
    const problem = problemOf(bytesOf(text));
    expect(problem.code).toBe(code);
    expect(problem.found).toContain(words);
    expect(problem.place.file).toBe("file.mxl");
  });

  it("tells pictures by their first bytes", () => {
    expect(problemOf(Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10)).found).toContain("PNG");
    expect(problemOf(Uint8Array.of(0xff, 0xd8, 0xff, 0xe0)).found).toContain("JPEG");
  });

  it("refuses a file over the limit", () => {
    expect(problemOf(bytesOf(SCORE), { bytes: 100 }).code).toBe("too-large");
  });

  it("stops when the clock given runs out", () => {
    let seconds = 0;
    const now = () => 1000 * seconds++;
    expect(problemOf(bytesOf(SCORE), { now, seconds: 1 }).code).toBe("too-slow");
  });
});

describe("readScore › compressed scores", () => {
  // Source: MusicXML 4.0, compressed .MXL files.
  it("reads the score the container names", () => {
    const bytes = mxl({
      "META-INF/container.xml": container("a/score.xml"),
      "a/score.xml": SCORE,
      "b.xml": "<other/>",
    });
    expect(read(bytes)).toEqual(WORDS);
    expect(openScore(bytes, "x.mxl", DEFAULT_LIMITS).entryName).toBe("a/score.xml");
  });

  it("passes over rootfiles of other kinds", () => {
    const pdf = '<rootfile full-path="score.pdf" media-type="application/pdf"/>';
    const bytes = mxl({
      "META-INF/container.xml": container("score.xml", pdf),
      "score.pdf": "%PDF",
      "score.xml": SCORE,
    });
    expect(read(bytes)).toEqual(WORDS);
  });

  it("reads files stored without packing", () => {
    const bytes = zipSync(
      { "META-INF/container.xml": strToU8(container("s.xml")), "s.xml": strToU8(SCORE) },
      { level: 0 },
    );
    expect(read(bytes)).toEqual(WORDS);
  });

  it("reads MEI from an archive, and names the entry in problems", () => {
    const bytes = mxl({ "META-INF/container.xml": container("s.mei"), "s.mei": "<mei>" });
    expect(problemOf(bytes).place.file).toBe("file.mxl/s.mei");
  });

  it("takes the only score when the container is missing, with a warning", () => {
    const score = readScore(mxl({ mimetype: "x", "score.musicxml": SCORE }), "x.mxl");
    expect(score.warnings.map(({ code }) => code)).toEqual(["no-container"]);
    expect(brief(score)).toEqual(WORDS);
  });

  it.each([
    ["no container and two scores", { "a.xml": SCORE, "b.xml": SCORE }, "no-container"],
    ["no container and no score", { "a.txt": "x" }, "no-container"],
    [
      "a rootfile that is not there",
      { "META-INF/container.xml": container("x.xml") },
      "bad-rootfile",
    ],
    ["a rootfile outside", { "META-INF/container.xml": container("../x.xml") }, "bad-rootfile"],
    ["an absolute rootfile", { "META-INF/container.xml": container("/etc/x.xml") }, "bad-rootfile"],
    ["an empty container", { "META-INF/container.xml": "<container/>" }, "bad-rootfile"],
    ["an entry outside", { "../x.xml": SCORE }, "bad-archive"],
    ["an entry on another drive", { "C:\\x.xml": SCORE }, "bad-archive"],
    [
      "an archive in an archive",
      { "META-INF/container.xml": container("x.mxl"), "x.mxl": "PK\x03\x04" },
      "not-xml",
    ],
  ])("refuses %s", (_name, files, code) => {
    expect(problemOf(mxl(files as Record<string, string>)).code).toBe(code);
  });

  it("refuses a cut-off archive and a changed byte", () => {
    const bytes = mxl({ "META-INF/container.xml": container("s.xml"), "s.xml": SCORE });
    expect(problemOf(bytes.slice(0, bytes.length - 30)).code).toBe("bad-archive");
    const stored = zipSync(
      { "META-INF/container.xml": strToU8(container("s.xml")), "s.xml": strToU8(SCORE) },
      { level: 0 },
    );
    const at = new TextDecoder("latin1").decode(stored).indexOf("animé".slice(0, 4));
    stored[at] = 0x41;
    expect(problemOf(stored)).toMatchObject({ code: "bad-archive" });
    expect(problemOf(stored).found).toContain("checksum");
  });

  it("stops inflating at each of its limits", () => {
    const big = mxl({
      "META-INF/container.xml": container("s.xml"),
      "s.xml": `${SCORE}${" ".repeat(4e6)}`,
    });
    expect(problemOf(big).code).toBe("too-large");
    expect(problemOf(big, { ratio: 1e6, bytes: 1e6 }).code).toBe("too-large");
    expect(problemOf(big, { ratio: 1e6, archiveBytes: 1e6 }).code).toBe("too-large");
    expect(read(mxl({ "META-INF/container.xml": container("s.xml"), "s.xml": SCORE }))).toEqual(
      WORDS,
    );
    expect(problemOf(big, { ratio: 1e6, entries: 1 }).code).toBe("too-large");
  });

  it("is not fooled by an archive that understates its sizes", () => {
    const bytes = mxl({
      "META-INF/container.xml": container("s.xml"),
      "s.xml": `${SCORE}${" ".repeat(3e6)}`,
    });
    const view = new DataView(bytes.buffer);
    const directory = view.getUint32(bytes.length - 6, true);
    const second = directory + 46 + view.getUint16(directory + 28, true);
    expect(view.getUint32(second, true)).toBe(0x02014b50);
    view.setUint32(second + 24, 500, true);
    expect(problemOf(bytes, { ratio: 1e6 })).toMatchObject({ code: "bad-archive" });
  });

  it("computes the checksum of the zip standard", () => {
    // Check value of CRC-32 for the digits 1 to 9 (from memory; every CRC catalogue has it).
    expect(crc32(bytesOf("123456789"))).toBe(0xcbf43926);
  });
});
