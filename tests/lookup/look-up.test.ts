/** What each query asks: common practice. The outside list is in tests/reference/lookup-dev.test.ts. */
import { gzipSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { openBooks } from "../../lib/lookup/books";
import { findDescribed } from "../../lib/lookup/find-described";
import { readEnglish } from "../../lib/lookup/read-english";
import { readQuery } from "../../lib/lookup/read-query";
import { glossary } from "../reading/read-file";
import { describeMeasured, measure } from "./measure";
import { OWN_TUNED, OWN_UNTOUCHED } from "./own-queries";
import { headwords, index, indexJson, lookUp } from "./real-look-up";

describe("readQuery", () => {
  it("takes the question off", () => {
    expect(readQuery("what does tenuto mean?").core).toBe("tenuto");
    expect(readQuery("trill sign").core).toBe("trill");
    expect(readQuery("meaning of dolce").core).toBe("dolce");
  });
  it("hears a language and a hint in brackets", () => {
    expect(readQuery("german for slow")).toMatchObject({ core: "slow", lang: "de" });
    expect(readQuery("doo (french soft)")).toMatchObject({ core: "doo", hint: "soft", lang: "fr" });
  });
  it("never takes all there is", () => {
    expect(readQuery("sign").core).toBe("sign");
    expect(readQuery("go back to the sign").core).toBe("go back to the sign");
  });
});

describe("findDescribed", () => {
  const books = openBooks(index);
  const described = (text: string) =>
    findDescribed(readEnglish(text), books.described, 5).map(
      ({ entry, by }) => `${books.entries[entry]?.headword} by ${by}`,
    );
  it("finds by meaning and by looks", () => {
    expect(described("back to the sign")[0]).toBe("dal segno by meaning");
    expect(described("dot under a curved line")[0]).toBe("fermata by looks");
  });
  it("finds nothing for words no entry holds", () => {
    expect(described("zzz qqq")).toEqual([]);
  });
});

describe("lookUp", () => {
  it("puts the exact spelling first, whatever else is near", () => {
    expect(lookUp("lento")[0]).toMatchObject({ slug: "lento", why: "exact", score: 1 });
    expect(lookUp("ff")[0]).toMatchObject({ slug: "fortissimo", why: "abbreviation" });
  });
  it("reaches every headword by typing it, a false friend behind its twin at most", () => {
    const lost = glossary.entries.filter(
      ({ headword, folder }) => folder !== "en" && !headwords(headword).includes(headword),
    );
    expect(lost.map(({ slug }) => slug)).toEqual([]);
  });
  it("gives the term, not the plain English direction, first", () => {
    expect(headwords("slower")[0]).not.toBe("slower");
    expect(headwords("suddenly")[0]).toBe("subito");
  });
  it("gives a whole compound before its parts, its parts where there is no whole", () => {
    expect(headwords("allegro con brio").slice(0, 3)).toEqual([
      "allegro con brio",
      "allegro",
      "con brio",
    ]);
    expect(headwords("sul pont. arco").slice(0, 2)).toEqual(["sul ponticello", "arco"]);
  });
  it("gives the word a sign stands for and the sign, the word first when described", () => {
    expect(headwords("pointed hat above a note").slice(0, 2)).toEqual(["marcato", "hat accent"]);
    expect(headwords("hat accent")[0]).toBe("hat accent");
  });
  it("names a headword once", () => {
    for (const query of ["grave", "triste", "fast", "dot over a note"]) {
      const found = headwords(query, 20);
      expect(new Set(found).size).toBe(found.length);
    }
  });
  it("answers the language asked for", () => {
    expect(headwords("german for fast")[0]).toBe("schnell");
    expect(headwords("french for fast")[0]).toBe("vite");
  });
  it("mends a slip in plain English", () => {
    expect(headwords("sudenly loud")[0]).toBe("subito forte");
  });
  it("gives at most what is asked for, and nothing for nothing", () => {
    expect(lookUp("slow", 3)).toHaveLength(3);
    expect([...lookUp(""), ...lookUp("   "), ...lookUp("???")]).toEqual([]);
  });
  it("never throws, and never scores above 1 or twice (property)", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 40 }), (query) => {
        const found = lookUp(query, 5);
        expect(found.length).toBeLessThanOrEqual(5);
        for (const { score } of found) expect(score).toBeLessThanOrEqual(1);
      }),
      { numRuns: 300 },
    );
  });
  it("finds every entry by its abbreviations and inflections among the first five", () => {
    const lost = glossary.entries.flatMap((entry) =>
      entry.folder === "en"
        ? []
        : [...(entry.abbreviations ?? []), ...(entry.inflections ?? [])]
            .filter((form) => !headwords(form).includes(entry.headword))
            .map((form) => `${form}: ${entry.headword}`),
    );
    console.log(`forms that miss: ${lost.join(", ")}`);
    expect(lost.length).toBeLessThanOrEqual(8);
  });
});

describe("own queries", () => {
  it.each([
    ["tuned", OWN_TUNED, 0.95, 0.985],
    ["untouched", OWN_UNTOUCHED, 0.93, 0.97],
  ] as const)("are answered: %s", (name, queries, first, three) => {
    const measured = measure(queries, headwords);
    console.log(`own queries, ${name}\n${describeMeasured(measured)}`);
    expect(measured.all.first / measured.all.rows).toBeGreaterThanOrEqual(first);
    expect(measured.all.three / measured.all.rows).toBeGreaterThanOrEqual(three);
  });
});

it("index › is at most 60 KB compressed", () => {
  const size = gzipSync(indexJson, { level: 9 }).length;
  console.log(`look-up index: ${size} bytes compressed, ${indexJson.length} plain`);
  expect(size).toBeLessThanOrEqual(60 * 1024);
});
