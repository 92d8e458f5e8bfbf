import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Mark, Score } from "@/lib/score/model";
import { readScore } from "@/lib/score/read-score";

/** Reference material beside the repository; absent on a fresh clone. */
export const SHARED = join(import.meta.dirname, "../../../shared");
export const hasShared = existsSync(SHARED);

export function noteSkipped(what: string): void {
  console.log(`skipped: no ../shared (${what})`);
}

export function bytesOf(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

export function read(text: string, name = "test.musicxml"): Score {
  return readScore(bytesOf(text), name);
}

export function readShared(path: string): Score {
  return readScore(readFileSync(join(SHARED, path)), path.split("/").at(-1) ?? path);
}

/** One-part MusicXML; each string is the content of a measure. Divisions 4, common practice 4/4. */
export function musicXml(...measures: string[]): string {
  const start =
    "<attributes><divisions>4</divisions><key><fifths>0</fifths></key><time><beats>4</beats><beat-type>4</beat-type></time></attributes>";
  const body = measures
    .map((m, i) => `<measure number="${i + 1}">${i === 0 ? start : ""}${m}</measure>`)
    .join("");
  return `<score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Flute</part-name></score-part></part-list><part id="P1">${body}</part></score-partwise>`;
}

/** A quarter note C5 (divisions 4) with anything after its type. */
export function quarter(inside = "", before = ""): string {
  return `<note>${before}<pitch><step>C</step><octave>5</octave></pitch><duration>4</duration><voice>1</voice><type>quarter</type>${inside}</note>`;
}

export function notations(inside: string): string {
  return quarter(`<notations>${inside}</notations>`);
}

export function direction(types: string, rest = "", attributes = ""): string {
  return `<direction ${attributes}><direction-type>${types}</direction-type>${rest}</direction>`;
}

/** One-staff MEI; each string is what a measure holds, staves and events. */
export function mei(
  measures: string[],
  options: { head?: string; attributes?: string[] } = {},
): string {
  const body = measures
    .map((m, i) => `<measure n="${i + 1}" ${options.attributes?.[i] ?? ""}>${m}</measure>`)
    .join("");
  return meiScore(`<section>${body}</section>`, options.head);
}

export function meiScore(
  sections: string,
  head = '<staffGrp><staffDef n="1" lines="5"><label>Flute</label></staffDef></staffGrp>',
): string {
  return `<mei xmlns="http://www.music-encoding.org/ns/mei" meiversion="5.0"><music><body><mdiv><score><scoreDef meter.count="4" meter.unit="4" keysig="0">${head}</scoreDef>${sections}</score></mdiv></body></music></mei>`;
}

/** A staff with one layer. */
export function staff(events: string, n = 1): string {
  return `<staff n="${n}"><layer n="1">${events}</layer></staff>`;
}

/** A quarter note C5 of MEI. */
export function meiQuarter(attributes = "", inside = ""): string {
  return `<note pname="c" oct="5" dur="4" ${attributes}>${inside}</note>`;
}

export function marksOf(score: Score, part = 0): Mark[] {
  return score.parts[part]?.marks ?? [];
}

/** Element, value, role and onset of each mark: enough to compare most expectations at a glance. */
export function brief(score: Score, part = 0): string[] {
  return marksOf(score, part).map(
    ({ element, value, text, role, measureIndex, onset }) =>
      `${measureIndex}:${onset.join("/")} ${element}${value === null ? "" : `:${value}`}${role === "point" ? "" : ` ${role}`}${text === null ? "" : ` "${text}"`}`,
  );
}

/** Rows of a tab-separated table with a header line. */
export function readTable(path: string): Record<string, string>[] {
  const [header = "", ...lines] = readFileSync(join(SHARED, path), "utf8").trimEnd().split("\n");
  const names = header.split("\t");
  return lines.map((line) => {
    const cells = line.split("\t");
    return Object.fromEntries(names.map((name, i) => [name, cells[i] ?? ""]));
  });
}
