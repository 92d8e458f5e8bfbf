import { describe, expect, it } from "vitest";
import { composeDemands } from "../../lib/words/compose";
import { readWords } from "../../lib/words/match-terms";
import { lexicon } from "../reading/read-file";

const found = (text: string) => readWords(text, lexicon).matches.map((m) => m.headword);

describe("readWords", () => {
  it("takes the longest spelling: poco a poco is not also poco", () => {
    expect(found("poco a poco cresc.")).toEqual(["poco a poco", "crescendo"]);
    expect(found("Più mosso")).toEqual(["più mosso"]);
  });
  it("reads a compound that only adds its parts as the parts", () => {
    expect(found("Allegro con brio")).toEqual(["allegro", "con brio"]);
    expect(found("molto rit.")).toEqual(["molto", "ritardando"]);
  });
  it.each([
    ["rit.", "ritardando"],
    ["rit", "ritardando"],
    ["D.C. al Fine", "da capo al fine"],
    ["D. C. al Fine", "da capo al fine"],
    ["DC al Fine", "da capo al fine"],
    ["con sord.", "con sordino"],
    ["CRESC.", "crescendo"],
    ["espr.", "espressivo"],
  ])("knows the abbreviation %s", (text, headword) => expect(found(text)).toEqual([headword]));
  it.each([
    ["zarter", "zart"],
    ["tranquilla", "tranquillo"],
    ["animatissimo", "animato"],
    ["gracieuse", "gracieux"],
  ])("knows the ending of %s", (text, headword) => expect(found(text)).toContain(headword));
  it("joins a word stretched by hyphens", () => {
    expect(found("smor - - zan - - do")).toEqual(["smorzando"]);
    expect(found("cre-scen-do")).toEqual(["crescendo"]);
    expect(found("poco - a - poco")).toEqual(["poco a poco"]);
  });
  it("mends a slip of the pen beside a known word", () => {
    expect(found("molto rallentamdo")).toEqual(["molto", "rallentando"]);
  });
  it("spells music letters and drops what cannot be seen", () => {
    expect(found("sempre \ue52b")).toEqual(["sempre", "pianissimo"]);
    expect(found("dol\u200bce\u202e")).toEqual(["dolce"]);
    expect(found("ｃｒｅｓｃ．")).toEqual(["crescendo"]);
    expect(found("<i>dolce</i> &amp; legato")).toEqual(["dolce", "legato"]);
  });
  it("keeps the negation with what it negates", () => {
    const [demand] = composeDemands(readWords("non legato", lexicon));
    expect(demand?.head?.slug).toBe("legato");
    expect(demand?.modifiers.map((m) => m.role)).toEqual(["not"]);
  });
  it("lists function words of no entry nowhere", () => {
    expect(found("zart und ausdrucksvoll")).toEqual(["zart", "ausdrucksvoll"]);
    expect(found("con")).toEqual([]);
    expect(found("e")).toEqual([]);
  });
  it.each([
    "Tenor: Et in terra pax",
    "Page 12",
    "Violin II",
    "Copyright 1911 by the publisher, con brio press",
    "J. S. (1685-1750)",
    "Verse 2: O come with me",
    "Light of the world",
    "Come, holy night",
    "Once more unto the shore",
    "Ringing",
    "Trio",
    "II. Menuetto",
    "12",
    "",
    "♯",
  ])("yields nothing for %j", (text) => expect(found(text)).toEqual([]));
  it("shows what no entry explains, never drops it", () => {
    expect(readWords("dolce blurfando", lexicon).unmatched).toEqual(["blurfando"]);
  });
  it("says how sure it is and why", () => {
    const [exact] = readWords("dolce", lexicon).matches;
    const [slip] = readWords("rallentamdo molto", lexicon).matches;
    expect(exact).toMatchObject({ how: "exact", sure: 1 });
    expect(slip?.how).toBe("misspelling");
    expect(slip?.sure).toBeLessThan(1);
  });
});

describe("composeDemands", () => {
  const demands = (text: string) =>
    composeDemands(readWords(text, lexicon)).map((d) => [
      d.head?.slug ?? null,
      ...d.modifiers.map((m) => m.slug),
    ]);
  it("makes one demand of a term with all its modifiers", () => {
    expect(demands("poco a poco più mosso, ma non troppo")).toEqual([
      ["piu-mosso", "poco-a-poco", "ma-non-troppo"],
    ]);
  });
  it("gives nicht zu and not too to the word they stand before", () => {
    expect(demands("Klagend, doch nicht zu langsam")).toEqual([
      ["klagend"],
      ["langsam", "nicht-zu"],
    ]);
    expect(demands("Andante non troppo, dolce")).toEqual([["andante", "non-troppo"], ["dolce"]]);
  });
  it("gives a modifier between two terms to the one that follows", () => {
    expect(demands("dolce poco rit.")).toEqual([["dolce"], ["ritardando", "poco"]]);
  });
  it("gives a trailing modifier to the term before", () => {
    expect(demands("Allegro assai")).toEqual([["allegro", "assai"]]);
  });
  it("keeps modifiers that stand alone for the sign beside them", () => {
    expect(demands("sempre")).toEqual([[null, "sempre"]]);
  });
});
