/** The contracts of the commands: results alone on stdout, problems on stderr, 0 or 2. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";

function command(name: string, args: string[] = [], input = "") {
  const { status, stdout, stderr } = spawnSync("npx", ["tsx", `lib/cli/${name}.ts`, ...args], {
    input,
    encoding: "utf8",
  });
  return { status, stdout, stderr };
}

const PIECE = "content/pieces/slipway-parade.musicxml";
const folder = mkdtempSync(join(tmpdir(), "passagework-"));
const file = (name: string, content: string) => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};

describe("read", () => {
  it("prints one JSON object with the fields of the contract", () => {
    const { status, stdout, stderr } = command("read", [PIECE]);
    expect([status, stderr]).toEqual([0, ""]);
    const reading = JSON.parse(stdout);
    expect(Object.keys(reading)).toEqual([
      "format",
      "title",
      "parts",
      "measures",
      "found",
      "unknown",
      "playingOrder",
      "playingPolicy",
      "warnings",
    ]);
    expect(Object.keys(reading.found[0])).toEqual([
      "headword",
      "kind",
      "lang",
      "text",
      "sign",
      "partId",
      "measureIndex",
      "measureNumber",
      "onset",
    ]);
    expect(reading.playingOrder).toHaveLength(74);
    expect(reading.unknown).toEqual([]);
  });
  it("prints a JSON line for each --at", () => {
    const { status, stdout } = command("read", [PIECE, "--at", "P1:5:1", "--at", "P1:12:1"]);
    const lines = stdout
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(status).toBe(0);
    expect(lines).toHaveLength(2);
    // Carried from measure 5, pages earlier for a player.
    expect(lines[1].dynamic).toMatchObject({ level: "mf", source: "5" });
  });
  it.each([
    [["nowhere.musicxml"], /^nowhere\.musicxml: no such file; .+\n$/],
    [[], /^No file given; .+\n$/],
    [[PIECE, "--at", "P9:1:1"], /no part "P9"; it has P1\.\n$/],
    [[PIECE, "--at", "P1:999:1"], /no measure "999"/],
    [[PIECE, "--at", "P1"], /expected PART:MEASURE:BEAT/],
    [[PIECE, "--what"], /unknown option/],
    [[file("cut.musicxml", "<score-partwise><part")], /^cut\.musicxml.+\n$/],
    [[file("photo.pdf", "%PDF-1.7")], /looks like a PDF/],
  ])("refuses %j with exit code 2 and one sentence", (args, says) => {
    const { status, stdout, stderr } = command("read", args);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(says);
    expect(stderr).not.toMatch(/\n\s+at /);
  });
});

describe("match and lookup", () => {
  it("match answers line by line, an empty line with nothing", () => {
    const { status, stdout } = command("match", [], "Allegro con brio\n\nTrio\n");
    expect(status).toBe(0);
    expect(stdout).toBe("Allegro con brio\tallegro|tempo|it; con brio|character|it\n\t\nTrio\t\n");
  });
  it("lookup gives five best, best first", () => {
    const { status, stdout } = command("lookup", [], "stacatto\n");
    const [query, found = ""] = stdout.trim().split("\t");
    expect([status, query]).toEqual([0, "stacatto"]);
    expect(found.split("; ")[0]).toBe("staccato");
    expect(found.split("; ").length).toBeLessThanOrEqual(5);
  });
});
