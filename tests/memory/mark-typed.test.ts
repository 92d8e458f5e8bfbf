import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { editDistance } from "@/lib/memory/prompts/edit-distance";
import {
  editsForgiven,
  foldSpelling,
  indexSpellings,
  markTyped,
} from "@/lib/memory/prompts/mark-typed";
import { POOL } from "./prompt-entries";

const index = indexSpellings(POOL);
const bySlug = new Map(POOL.map((e) => [e.slug, e]));
const mark = (
  typed: string,
  slug: string,
  options: { fullOnly?: boolean; alsoRight?: string[] } = {},
) => {
  const target = bySlug.get(slug);
  if (!target) throw new Error(`no entry ${slug}`);
  const { outcome, chose } = markTyped(typed, target, { index, ...options });
  return chose ? `${outcome} ${chose}` : outcome;
};

describe("markTyped", () => {
  // Source: ../shared/reference/memory/learning-guidance.md, "Grading facts that can be tested".
  it.each([
    // accents, case, spacing, hyphens
    ["più mosso", "piu-mosso", "right"],
    ["PIU MOSSO", "piu-mosso", "right"],
    ["piu\u0300  mosso", "piu-mosso", "right"],
    ["più-mosso", "piu-mosso", "right"],
    ["A Tempo", "a-tempo", "right"],
    // singular, plural, feminine; standard abbreviations
    ["animata", "animato", "right"],
    ["animati", "animato", "right"],
    ["rit.", "ritardando", "right"],
    ["rit", "ritenuto", "right"],
    ["rall", "rallentando", "right"],
    ["SFZ", "sforzando", "right"],
    // one edit in four to seven letters: left out, added, changed, swapped
    ["dolc", "dolce", "slip"],
    ["dollce", "dolce", "slip"],
    ["dolca", "dolce", "slip"],
    ["dloce", "dolce", "slip"],
    ["dlocce", "dolce", "missed"],
    // two edits in eight or more
    ["acelerendo", "accelerando", "slip"],
    ["acellerendo", "accelerando", "missed"],
    ["ritradano", "ritardando", "slip"],
    // none below four letters
    ["ff", "forte", "missed"],
    // a slip that spells another entry is that entry
    ["pianto", "piano", "missed pianto"],
    ["mezzo", "meno", "missed mezzo"],
    ["sforzando", "rinforzando", "missed sforzando"],
    ["rinforzando", "sforzando", "missed rinforzando"],
    ["meno mosso", "piu-mosso", "missed meno-mosso"],
    ["pp", "piano", "missed"],
    // a misspelling nearer to another entry is that entry
    ["sforzamdo", "rinforzando", "missed sforzando"],
    ["rinforzano", "sforzando", "missed rinforzando"],
    // nothing typed
    ["", "dolce", "missed"],
    [" -. ", "dolce", "missed"],
  ])("marks %j for %s as %s", (typed, slug, expected) => {
    expect(mark(typed, slug)).toBe(expected);
  });

  it("wants the full word where the short form was shown", () => {
    expect(mark("rit.", "ritardando", { fullOnly: true })).toBe("missed");
    expect(mark("ritardando", "ritardando", { fullOnly: true })).toBe("right");
    expect(mark("ritenuto", "ritardando", { fullOnly: true, alsoRight: ["ritenuto"] })).toBe(
      "partly ritenuto",
    );
  });

  it("counts another word of the same meaning as right in part", () => {
    expect(mark("rallentando", "ritardando", { alsoRight: ["rallentando"] })).toBe(
      "partly rallentando",
    );
    expect(mark("accelerando", "ritardando", { alsoRight: ["rallentando"] })).toBe(
      "missed accelerando",
    );
  });

  it("takes every spelling of every entry as right, in any case (property)", () => {
    const spelling = fc
      .constantFrom(...POOL)
      .chain((e) =>
        fc.tuple(
          fc.constant(e.slug),
          fc.constantFrom(e.headword, ...e.abbreviations, ...e.inflections),
          fc.boolean(),
        ),
      );
    fc.assert(
      fc.property(spelling, ([slug, text, upper]) => {
        expect(mark(upper ? text.toUpperCase() : text, slug)).toBe("right");
      }),
    );
  });

  it("never calls another entry's word a slip (property)", () => {
    fc.assert(
      fc.property(fc.constantFrom(...POOL), fc.constantFrom(...POOL), (target, other) => {
        fc.pre(target.slug !== other.slug);
        expect(mark(other.headword, target.slug)).toBe(`missed ${other.slug}`);
      }),
    );
  });

  it("never throws, whatever is typed (property)", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 80 }), (text) => {
        expect(["right", "slip", "missed"]).toContain(mark(text, "dolce").split(" ")[0]);
      }),
    );
  });
});

describe("foldSpelling", () => {
  it("frees accents, case, spaces, dots, apostrophes, ligatures", () => {
    expect(foldSpelling("L’istesso tempo")).toBe("listessotempo");
    expect(foldSpelling("D.C.")).toBe("dc");
    expect(foldSpelling("cœur")).toBe("coeur");
    expect(foldSpelling("mäßig")).toBe("massig");
  });
});

describe("editsForgiven", () => {
  it("is 0, 1 and 2 at the lengths of the guidance", () => {
    expect([3, 4, 7, 8, 20].map(editsForgiven)).toEqual([0, 1, 1, 2, 2]);
  });
});

describe("editDistance", () => {
  const text = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 7 });
  it("is 0 only for equals, and the same both ways (property)", () => {
    fc.assert(
      fc.property(text, text, (a, b) => {
        expect(editDistance(a, b) === 0).toBe(a === b);
        expect(editDistance(a, b)).toBe(editDistance(b, a));
        expect(editDistance(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length));
      }),
    );
  });
  it("counts a swap of neighbours once and stops above the limit (common practice)", () => {
    expect(editDistance("adagoi", "adagio")).toBe(1);
    expect(editDistance("kitten", "sitting")).toBe(3);
    expect(editDistance("kitten", "sitting", 1)).toBe(2);
  });
});
