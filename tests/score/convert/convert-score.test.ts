/** Formats: ABC notation standard 2.1 (abcnotation.com, decorations); Humdrum **kern and **dynam (humdrum.org). Tunes composed here. */
import { describe, expect, it } from "vitest";
import { needsConversion } from "../../../lib/score/convert/convert-score";
import { readAnyScore } from "../../../lib/score/convert/read-any-score";
import { ScoreReadError } from "../../../lib/score/problem";

const bytes = (text: string) => new TextEncoder().encode(text);
const ABC = "X:1\nT:Weir Song\nM:3/4\nL:1/8\nK:G\n!p!G2 A2 B2|!f!.c.d.e.d.c.B|!fermata!G6|]\n";
const KERN =
  "**kern\t**dynam\n*M4/4\t*\n=1\t=1\n4c\tp\n4d'\t<\n4e^\t(\n4f\tf\n=2\t=2\n1g;\t.\n==\t==\n*-\t*-\n";

describe("readAnyScore", () => {
  it("reads ABC by way of MEI and says what may be lost", async () => {
    const score = await readAnyScore(bytes(ABC), "weir.abc");
    const signs = score.parts[0]?.marks.map((m) => m.element) ?? [];
    expect(signs.filter((s) => s === "staccato")).toHaveLength(6);
    expect(signs).toEqual(expect.arrayContaining(["p", "f", "fermata"]));
    expect(score.warnings[0]).toMatchObject({ code: "converted" });
  });
  it("reads Humdrum: letters, dots, accents, fermata", async () => {
    const score = await readAnyScore(bytes(KERN), "weir.krn");
    expect(score.measures).toHaveLength(2);
    const signs = score.parts[0]?.marks.map((m) => m.element) ?? [];
    expect(signs).toEqual(expect.arrayContaining(["p", "f", "staccato", "accent", "fermata"]));
  });
  it("refuses what holds no notes in one sentence", async () => {
    await expect(readAnyScore(bytes("nothing here"), "empty.abc")).rejects.toBeInstanceOf(
      ScoreReadError,
    );
  });
  it("leaves other names to the readers", () => {
    expect(needsConversion("weir.musicxml")).toBe(false);
  });
});
