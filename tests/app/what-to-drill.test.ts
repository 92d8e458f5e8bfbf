import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { axisOf, DRILL_AXES } from "@/app/drill/axis-of";
import { summarise } from "@/app/drill/summary";
import { type DrillAddress, usualSlugs, whatToDrill } from "@/app/drill/what-to-drill";
import { whereItStood } from "@/app/drill/where-it-stood";
import type { PieceRecord, SetRecord } from "@/lib/store/records";
import { readXml } from "../reading/read-file";
import { clientEntries as entries } from "./drill-entries";

const piece: PieceRecord = {
  id: "p1",
  title: "The Copper Weathercock",
  fileName: "copper-weathercock.musicxml",
  bytes: null,
  reading: readXml(readFileSync("content/pieces/copper-weathercock.musicxml", "utf8")),
  partIndex: 0,
  addedAt: 1,
  changedAt: 1,
};
const set: SetRecord = {
  id: "s1",
  title: "Winter seating",
  slugs: ["dolce", "legato", "dolce", "of-another-version"],
  pieceId: "p1",
  date: "2027-02-06",
  minutesADay: 8,
  changedAt: 1,
};
const nowhere: DrillAddress = { set: null, piece: null, axis: null, minutes: null };
const device = { sets: [set], pieces: [piece], entries };

describe("whatToDrill", () => {
  it("takes a set with its date, minutes and piece, and leaves out what this glossary lacks", () => {
    expect(whatToDrill({ ...nowhere, set: "s1" }, device)).toMatchObject({
      title: "Winter seating",
      slugs: ["dolce", "legato"],
      date: "2027-02-06",
      minutes: 8,
      piece: { id: "p1" },
    });
  });

  it("takes the set of a piece, and without one all its own words and signs", () => {
    expect(whatToDrill({ ...nowhere, piece: "p1" }, device)).toMatchObject({ key: "set s1" });
    const loose = whatToDrill({ ...nowhere, piece: "p1" }, { ...device, sets: [] });
    expect(loose).toMatchObject({ key: "piece p1", date: null });
    if (typeof loose === "string") throw new Error(loose);
    // Counted on the page of the piece: its lively first direction and its accents among them.
    expect(loose.slugs).toEqual(expect.arrayContaining(["allegro", "con-spirito", "staccato-dot"]));
  });

  it("takes the usual entries of an axis for the minutes asked, within reason", () => {
    const job = whatToDrill({ ...nowhere, axis: "dynamics", minutes: "10" }, device);
    expect(job).toMatchObject({ minutes: 10, date: null });
    expect(whatToDrill({ ...nowhere, axis: "dynamics", minutes: "-3" }, device)).toMatchObject({
      minutes: 5,
    });
  });

  it("says when the address names nothing, or nothing of this device", () => {
    expect(whatToDrill(nowhere, device)).toBe("none");
    expect(whatToDrill({ ...nowhere, set: "other" }, device)).toBe("gone");
    expect(whatToDrill({ ...nowhere, axis: "weather" }, device)).toBe("gone");
  });
});

describe("usualSlugs", () => {
  it("puts every tier-1 entry under one axis", () => {
    const all = DRILL_AXES.flatMap((axis) => usualSlugs(axis, entries));
    const tier1 = [...entries.values()].filter((e) => e.tier === 1).map((e) => e.slug);
    expect([...all].sort()).toEqual([...tier1].sort());
  });
});

describe("whereItStood", () => {
  it("gives each entry its first measure in the player's part, words as printed", () => {
    const places = whereItStood(piece);
    for (const [slug, { measureIndex }] of places) {
      const own = piece.reading.found.filter((f) => f.slug === slug && f.partIndex === 0);
      if (own.length === 0) continue;
      expect(measureIndex, slug).toBe(Math.min(...own.map((f) => f.measureIndex)));
    }
    expect(places.get("subito")?.text).toBe("sub.");
    expect(places.get("staccato-dot")?.text).toBeNull();
  });
});

describe("summarise", () => {
  it("counts each entry once, by its last answer, under its axis", () => {
    const axis = (slug: string) => {
      const entry = entries.get(slug);
      if (!entry) throw new Error(slug);
      return axisOf(entry);
    };
    const answer = (slug: string, outcome: "right" | "missed" | "partly", helped = false) => ({
      slug,
      outcome,
      helped,
    });
    const summary = summarise(
      [
        answer("dolce", "missed"),
        answer("forte", "right"),
        answer("dolce", "right"),
        answer("legato", "partly", true),
      ],
      axis,
    );
    expect(summary).toEqual({
      rows: [
        { axis: "dynamics", of: 1, recalled: 1 },
        { axis: "articulation", of: 1, recalled: 0 },
        { axis: "character", of: 1, recalled: 1 },
      ],
      rest: ["dolce", "forte"],
      again: ["legato"],
    });
  });
});
