import { describe, expect, it } from "vitest";
import { fraction, greatestCommonDivisor } from "@/lib/score/fraction";
import type { ReadLimits } from "@/lib/score/limits";
import type { Score } from "@/lib/score/model";
import { ScoreReadError } from "@/lib/score/problem";
import { readScore } from "@/lib/score/read-score";
import { bytesOf, direction, mei, meiQuarter, meiScore, musicXml, quarter, staff } from "./support";

const Q = quarter();
const M = meiQuarter();

/** Reads within the time allowed for any file whatever; load on the machine included. */
function inTime(text: string, options: Partial<ReadLimits> = {}): Score | ScoreReadError {
  const begin = performance.now();
  try {
    return readScore(bytesOf(text), "file", options);
  } catch (error) {
    if (error instanceof ScoreReadError) return error;
    throw error;
  } finally {
    expect(performance.now() - begin).toBeLessThan(10_000);
  }
}

function code(result: Score | ScoreReadError): string {
  return result instanceof ScoreReadError ? result.problem.code : "read";
}

const many = (count: number, piece: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => piece(i)).join("");

/** Files made to cost more than their size; each once took a path that grew with its square. */
const COSTLY: Record<string, string> = {
  "sounds in one measure": musicXml(Q + many(60_000, (i) => `<sound segno="${i}"/>`)),
  "barlines in one measure": musicXml(
    Q + many(40_000, (i) => `<barline><ending number="${i}" type="start"/></barline>`),
  ),
  "fractions in one time signature": musicXml(
    `<attributes><time>${many(150_000, () => "<beats>3</beats><beat-type>4</beat-type>")}</time></attributes>${Q}`,
  ),
  "spaces in one number": musicXml(Q.replace("<duration>4", `<duration>${" ".repeat(400_000)}x`)),
  "attributes in one element": musicXml(`<note ${many(50_000, (i) => `a${i}="" `)}/>`),
  "unknown elements": musicXml(direction(many(80_000, (i) => `<x${i}/>`))),
  "octave lines over everything": mei([
    `${staff(many(8_000, (i) => meiQuarter(`xml:id="n${i}"`)))}${many(8_000, () => '<octave dis="8" dis.place="above" startid="#n0" endid="#n7999"/>')}`,
  ]),
  "tuplet spans in one measure": mei([
    `${staff(many(8_000, (i) => meiQuarter(`xml:id="n${i}"`)))}${many(8_000, (i) => `<tupletSpan num="3" numbase="2" startid="#n${i}" endid="#n7999"/>`)}`,
  ]),
  "marks by beat in one measure": mei([
    staff(many(15_000, () => M)) + many(15_000, (i) => `<fermata staff="1" tstamp="${i + 1}"/>`),
  ]),
  "tuplets that do not add up": mei([
    staff(
      [3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37]
        .map((n) => `<tuplet num="${n}" numbase="2">${M}</tuplet>`)
        .join(""),
    ),
  ]),
  "tuplets within tuplets": mei([
    staff(
      `${many(150, () => '<tuplet num="1023" numbase="1024">')}${M}${many(150, () => "</tuplet>")}${M}`,
    ),
  ]),
  "empty sections called over and over": meiScore(
    `<section><measure n="1">${staff(M)}</measure>${many(20, (i) => `<section xml:id="s${i}"><expansion plist="${many(50, () => `#s${i + 1} `)}"/>`)}<section xml:id="s20"/>${many(20, () => "</section>")}</section>`,
  ),
};

describe("readScore › costly files", () => {
  it.each(Object.entries(COSTLY))("%s", (_name, text) => {
    const result = inTime(text);
    if (result instanceof ScoreReadError) return;
    for (const { notes } of result.parts) {
      for (const { onset } of notes) expect(onset.every(Number.isSafeInteger)).toBe(true);
    }
    expect(result.warnings.length).toBeLessThan(300);
  });
});

describe("readScore › limits", () => {
  it.each([
    [
      "parts",
      musicXml(Q).replace(/<part id.*<\/part>/, (part) =>
        many(4, (i) => part.replace("P1", `P${i}`)),
      ),
      { parts: 3 },
    ],
    ["notes and marks", musicXml(Q + Q + Q), { signs: 2 }],
    ["notes and marks of MEI", mei([staff(M + M + M)]), { signs: 2 }],
    ["measures of MEI", mei([staff(M), staff(M)]), { measures: 1 }],
    ["staves of MEI", mei([staff(M, 1) + staff(M, 2) + staff(M, 3)]), { parts: 2 }],
  ])("refuses too many %s", (_name, text, limits) => {
    expect(code(inTime(text, limits))).toBe("too-large");
    expect(code(inTime(text))).toBe("read");
  });

  it("ends arithmetic on what is no number", () => {
    expect(greatestCommonDivisor(Number.NaN, 3)).toBe(3);
    expect(greatestCommonDivisor(3, Number.NaN)).toBe(3);
    expect(greatestCommonDivisor(12, 18)).toBe(6);
    expect(fraction(6, -4)).toEqual([-3, 2]);
  });
});
