/** Source: ../shared/reference/standards/musicxml-markings.tsv (MusicXML 4.0 schema): each row as a small score, read and linked to an entry. */
import { describe, expect, it } from "vitest";
import { glossary, readXml } from "../reading/read-file";
import { snippet } from "../score/musicxml/marking-snippet";
import { musicXml } from "../score/support";
import { hasShared, sharedTable } from "./shared";

const FILE = "reference/standards/musicxml-markings.tsv";
const rows = hasShared(FILE) ? sharedTable(FILE) : [];

/** Rows that are no marking a player meets, with the reason. */
function notAsked({
  row_id = "",
  element = "",
  parent = "",
  value = "",
  headword = "",
}: Record<string, string>): string | null {
  if (headword.startsWith("(")) return "looked up by its text, or asks nothing";
  if (/type=(?:stop|continue|discontinue)/.test(value))
    return "the end of a sign already named at its start";
  if (
    ["ornaments", "technical", "articulations", "dynamics"].includes(element) &&
    parent !== "direction-type"
  )
    return "a container";
  if (row_id === "mx:direction-type/dynamics") return "a container";
  if (
    parent === "sound@" ||
    parent === "note@" ||
    parent === "sound" ||
    parent === "swing" ||
    parent === "play"
  )
    return "playback, nothing is printed";
  if (row_id === "mx:note/notehead[normal]" || row_id === "mx:barline/bar-style[regular]")
    return "ordinary";
  if (row_id === "mx:note/cue" || row_id === "mx:note/unpitched")
    return "a kind of note, not a mark";
  if (element === "repeat" && !value.includes("direction")) return "a detail of the repeat sign";
  return null;
}

describe("reading › every marking of the standard is named", () => {
  it("has the whole table, or says why not", () => {
    expect(rows.length === 0 || rows.length > 300).toBe(true);
  });
  it.each(rows.map((row) => [row.row_id ?? "", row] as const))("%s", (id, row) => {
    if (notAsked(row)) return;
    const { found } = readXml(
      musicXml(
        snippet({
          row_id: id,
          element: row.element ?? "",
          parent: row.parent ?? "",
          value: row.value ?? "",
        }),
      ),
    );
    const signs = found.filter((f) => f.sign !== null && f.sign !== "time");
    expect(signs.length, "not found at all").toBeGreaterThan(0);
    if (row.tier === "3") return;
    const slugs = signs.map((f) => f.slug).filter((s) => s !== null);
    expect(slugs, "named, but linked to no entry").not.toEqual([]);
    for (const slug of slugs) expect(glossary.bySlug.has(slug)).toBe(true);
  });
});
