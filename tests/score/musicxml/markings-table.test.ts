/** Source: ../shared/reference/standards/musicxml-markings.tsv, made from the MusicXML 4.0 schema. */
import { describe, expect, it } from "vitest";
import type { Mark, Score } from "@/lib/score/model";
import { hasShared, musicXml, noteSkipped, read, readTable } from "../support";
import { attributesOf, type Row, SOUND_VALUES, snippet } from "./marking-snippet";

interface Expected {
  element: string;
  value?: string | null;
  role?: Mark["role"];
}

/** Rows that speak only to a player program: nothing is printed and nothing asked, so no mark. */
const PLAYBACK_ONLY = new Set([
  "mx:sound.attr/divisions[number]",
  "mx:sound.attr/pan[degrees]",
  "mx:sound.attr/elevation[degrees]",
  "mx:note.attr/dynamics[percent]",
  "mx:note.attr/end-dynamics[percent]",
  "mx:note.attr/attack[divisions]",
  "mx:note.attr/release[divisions]",
]);

/** Rows that ask nothing: an ordinary notehead, an ordinary barline. */
const ORDINARY = new Set(["mx:note/notehead[normal]", "mx:barline/bar-style[regular]"]);

const JUMPS = new Set(["dacapo", "segno", "dalsegno", "coda", "tocoda", "fine", "forward-repeat"]);

function spans(value: string): Pick<Expected, "role" | "value"> {
  const type = attributesOf(value).type;
  if (type === "start" || type === "stop" || type === "continue")
    return { role: type, value: null };
  return { value: type ?? null };
}

function expected({ element, parent, value }: Row): Expected {
  const attributes = attributesOf(value);
  const type = attributes.type;
  if (parent === "sound@")
    return {
      element: "sound",
      value:
        element === "tempo" || element === "time-only"
          ? element
          : `${element}-${SOUND_VALUES[value]}`,
    };
  if (parent === "sound") return { element: "swing" };
  if (parent === "note@")
    return { element: "note", value: element === "time-only" ? "time-only" : "pizzicato-yes" };
  if (parent === "metronome")
    return { element: "metronome", value: element === "metronome-arrows" ? "modulation" : null };
  switch (element) {
    case "ornaments":
      return { element: "turn" };
    case "technical":
      return { element: "up-bow" };
    case "articulations":
      return { element: "accent" };
    case "dynamics":
      return { element: "mf" };
    case "metronome":
      if (value === "metronome-note only") return { element, value: "rhythm" };
      return { element, value: value === "beat-unit+per-minute" ? null : "modulation" };
    case "wedge":
      if (value === "niente=yes") return { element, role: "start" };
      return type === "stop" || type === "continue"
        ? { element, role: type, value: null }
        : { element, role: "start", value: type ?? null };
    case "pedal":
      if (type === "sostenuto") return { element, role: "start", value: type };
      return ["change", "discontinue", "resume"].includes(type ?? "")
        ? { element, role: "continue", value: type ?? null }
        : { element, ...spans(value) };
    case "octave-shift":
      return type === "stop" || type === "continue"
        ? { element, role: type, value: null }
        : { element, role: "start", value: `${type}-${attributes.size}` };
    case "tremolo":
      return type === "start" || type === "stop"
        ? { element, role: type, value: null }
        : { element, value: type ?? null };
    case "tuplet":
    case "hammer-on":
    case "pull-off":
      return { element };
    case "fermata":
    case "caesura":
      return {
        element,
        value: ["", "normal", "(empty)", "type=inverted"].includes(value) ? null : value,
      };
    case "breath-mark":
      return { element, value: value === "(empty)" ? null : value };
    case "repeat":
      return { element, value: attributes.direction ?? "backward" };
    case "ending":
      return type === "start"
        ? { element, role: "start", value: "1" }
        : { element, role: "stop", value: type === "discontinue" ? "discontinue" : null };
    case "turn":
      return { element, value: value === "slash=yes" ? "slash" : null };
    case "mordent":
    case "inverted-mordent":
      return { element, value: value === "long=yes" ? "long" : null };
    case "grace":
      return { element, value: value === "slash=yes" ? "slash" : null };
    case "measure-repeat":
    case "multiple-rest":
      return { element, value: value === "number" ? "8" : value };
    case "notehead":
      return { element, value: value.includes("parentheses") ? "parentheses" : value };
    case "percussion":
      return { element, value: "metal" };
    case "accidental-mark":
      return { element, value: "sharp" };
    case "arrow":
      return { element, value: "up" };
  }
  if (["dashes", "bracket", "wavy-line", "tied", "slur", "glissando", "slide"].includes(element))
    return { element, ...spans(value) };
  if (value === "") return { element };
  const [only] = Object.values(attributes);
  return { element, value: only ?? value };
}

function check(row: Row, score: Score): void {
  const marks = score.parts[0]?.marks ?? [];
  if (row.parent === "sound@" && JUMPS.has(row.element)) {
    expect(score.measures[0]?.jumps.map(({ kind }) => kind)).toEqual([row.element]);
    return;
  }
  if (PLAYBACK_ONLY.has(row.row_id) || ORDINARY.has(row.row_id)) {
    expect(marks).toEqual([]);
    return;
  }
  const want = expected(row);
  const [mark] = marks;
  expect(marks).toHaveLength(1);
  expect(mark).toMatchObject(want);
  expect(score.warnings).toEqual([]);
  if (row.value.startsWith("niente") || row.element === "n") expect(mark?.niente).toBe(true);
  if (row.value === "type=inverted") expect(mark?.placement).toBe("below");
  if (row.value === "times") expect(score.measures[0]?.repeatEnd?.times).toBe(3);
  if (row.value === "after-jump") expect(score.measures[0]?.repeatEnd?.afterJump).toBe(true);
  if (row.element === "tempo") expect(mark?.soundTempo).toBe(96);
}

describe("readMusicXml › every row of the markings table", () => {
  if (!hasShared) {
    it("needs the table", () => noteSkipped("musicxml-markings.tsv"));
    return;
  }
  const rows = readTable("reference/standards/musicxml-markings.tsv") as unknown as Row[];
  it("has the whole table", () => expect(rows.length).toBeGreaterThan(300));
  it.each(rows.map((row) => [row.row_id, row] as const))("%s", (_id, row) => {
    check(row, read(musicXml(snippet(row))));
  });
});
