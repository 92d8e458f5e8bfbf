/** Meanings of English words: common practice. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { askConcepts } from "../../lib/lookup/ask-concepts";
import { mendEnglish } from "../../lib/lookup/mend-english";
import { readEnglish } from "../../lib/lookup/read-english";
import { splitEnglish } from "../../lib/lookup/split-english";
import { stem } from "../../lib/lookup/stem";
import { glossary } from "../reading/read-file";

/** What a text mainly says: the names of its full senses. */
const says = (text: string) =>
  readEnglish(text).flatMap(({ names, weight }) => (weight === 1 ? names : []));

describe("stem", () => {
  it("joins the forms of a word", () => {
    expect(["joined", "joining", "joins"].map(stem)).toEqual(["join", "join", "join"]);
    expect(["hammered", "sweetly", "stopping"].map(stem)).toEqual(["hammer", "sweet", "stop"]);
  });
  it("keeps comparatives, and endings that are none", () => {
    expect(["slower", "string", "speed", "lively"].map(stem)).toEqual([
      "slower",
      "string",
      "speed",
      "lively",
    ]);
  });
});

describe("splitEnglish", () => {
  it("spells out what is said short", () => {
    expect(splitEnglish("Don't drag")).toEqual(["do", "not", "drag"]);
    expect(splitEnglish("take the mute off")).toEqual(["without", "mute"]);
    expect(splitEnglish("as fast as possible")).toEqual(["most", "fast"]);
    expect(splitEnglish("bring this part out")).toEqual(["bring", "out", "part"]);
  });
  it("keeps numbers and the signs typed for signs, apart from letters", () => {
    expect(splitEnglish("8va, note = 120 >")).toEqual(["8", "va", "note", "=", "120", ">"]);
  });
});

describe("readEnglish", () => {
  it("reads phrases as what they ask", () => {
    expect(says("get slower bit by bit")).toEqual(["slower", "gradually"]);
    expect(says("all of a sudden")).toEqual(["at-once"]);
    expect(says("not so fast")).toContain("slower");
  });
  it("joins a degree with its scale, a denial with what it denies", () => {
    expect(says("very slow")).toEqual(["very slow"]);
    expect(says("really soft")).toEqual(["very level-p"]);
    expect(says("without mute")).toEqual(["without mute"]);
  });
  it("tells loud then soft from soft then loud", () => {
    expect(says("loud then right away soft")).toContain("level-f then level-p");
    expect(says("soft then suddenly loud")).toContain("level-p then level-f");
  });
  it("reads filler only where there is nothing else", () => {
    expect(readEnglish("and")).toEqual([{ names: ["~and"], weight: 1 }]);
    expect(says("the dot on the note")).toEqual(["dot"]);
  });
  it("never throws, and weighs between 0 and 1 (property)", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 60 }), (text) => {
        for (const { weight } of readEnglish(text)) {
          expect(weight).toBeGreaterThan(0);
          expect(weight).toBeLessThanOrEqual(1);
        }
      }),
    );
  });
});

describe("mendEnglish", () => {
  it("mends one slip in plain English, and leaves terms alone", () => {
    const isTerm = (word: string) => word === "legato";
    expect(mendEnglish(["sudenly"], isTerm)).toEqual({ words: ["suddenly"], mended: true });
    expect(mendEnglish(["legato"], isTerm)).toEqual({ words: ["legato"], mended: false });
  });
});

describe("askConcepts", () => {
  const asks = (slug: string) => {
    const entry = glossary.bySlug.get(slug);
    return entry ? askConcepts(entry) : [];
  };
  it("says what the data of an entry asks", () => {
    expect(asks("ritardando")).toEqual(["slower", "gradually"]);
    expect(asks("fortepiano")).toContain("level-f then level-p");
    expect(asks("subito")).toEqual(["at-once"]);
  });
  it("leaves out names of techniques that are no English", () => {
    expect(asks("arco")).not.toContain("=arco");
  });
});
