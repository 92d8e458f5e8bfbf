/** Spellings: common practice; inflections after the grammar of the languages. */
import { describe, expect, it } from "vitest";
import { openBooks } from "../../lib/lookup/books";
import { resolveInflection } from "../../lib/lookup/inflections";
import { type LookUpEntry, packIndex, unpackEntries } from "../../lib/lookup/look-up-index";
import { findNear } from "../../lib/lookup/near-spellings";
import { keysOf, phrasesLackingOne } from "../../lib/lookup/spelling-book";
import { splitCompound } from "../../lib/lookup/split-compound";
import { index } from "./real-look-up";

const books = openBooks(index);
const { entries, spelling, near } = books;
const headwordAt = (at: number | undefined) => entries[at ?? -1]?.headword;

describe("spelling book", () => {
  const claims = (key: string) => spelling.phrases.get(key)?.map(({ entry }) => headwordAt(entry));
  it("finds abbreviations with and without their stops", () => {
    expect(claims(keysOf("D.S. al Coda").join(" "))).toEqual(["dal segno al coda"]);
    expect(headwordAt(spelling.tight.get("dsalcoda")?.[0]?.entry)).toBe("dal segno al coda");
    expect(headwordAt(spelling.tight.get("//")?.[0]?.entry)).toBe("caesura");
  });
  it("puts the likelier reading of a shared spelling first", () => {
    expect(claims("rit")?.slice(0, 2)).toEqual(["ritardando", "ritenuto"]);
  });
  it("leaves compounds that are read as parts, and plain English, out of the parts", () => {
    expect(spelling.lexicon.phrases.has("allegro con brio")).toBe(false);
    expect(spelling.phrases.has("allegro con brio")).toBe(true);
    expect(spelling.lexicon.phrases.has("slower")).toBe(false);
  });
  it("knows phrases by all but one of their words", () => {
    expect(phrasesLackingOne(["di", "valse"], spelling)).toContain("tempo di valse");
    expect(phrasesLackingOne(["poco", "accel"], spelling)).toEqual([]);
  });
});

it("resolveInflection › takes endings off, German superlatives too", () => {
  const root = (text: string) => resolveInflection(keysOf(text), spelling.lexicon)?.headword;
  expect(root("maestosa")).toBe("maestoso");
  expect(root("feurigste")).toBe("feurig");
  expect(root("am feurigsten")).toBe("feurig");
  expect(root("hammer")).toBeUndefined();
});

describe("findNear", () => {
  const nearest = (text: string) => {
    const match = findNear(keysOf(text), near)[0];
    return [headwordAt(match?.entry), match?.by];
  };
  it("takes slips of the pen", () => {
    expect(nearest("crescnedo")).toEqual(["crescendo", "misspelling"]);
    expect(nearest("sotsenuto")).toEqual(["sostenuto", "misspelling"]);
  });
  it("takes what was heard", () => {
    expect(nearest("dolchay")).toEqual(["dolce", "sound"]);
    expect(nearest("con fwoco")).toEqual(["con fuoco", "sound"]);
  });
  it("takes beginnings, slips and all", () => {
    expect(nearest("alleg")[0]).toBe("allegro");
    expect(nearest("alegr")[0]).toBe("allegro");
  });
  it("does not take one dynamic for another", () => {
    const whole = findNear(["pp", "subito"], near).find(
      ({ entry }) => headwordAt(entry) === "subito piano",
    );
    expect(whole?.likeness ?? 0).toBeLessThan(0.85);
  });
});

describe("splitCompound", () => {
  const parts = (text: string) =>
    splitCompound(keysOf(text), spelling, near, () => false).parts.map(({ slug }) => slug);
  it("takes the longest listed spelling", () => {
    expect(parts("sul pont. arco")).toEqual(["sul-ponticello", "arco"]);
    expect(parts("con sord. e dolce")).toEqual(["con-sordino", "e", "dolce"]);
  });
  it("takes misspelt and inflected words beside known ones", () => {
    expect(parts("molto legatto")).toEqual(["molto", "legato"]);
    expect(parts("molto espressiva")).toEqual(["molto", "espressivo"]);
  });
  it("says how much is explained", () => {
    expect(splitCompound(["molto", "qqqq"], spelling, near, () => false).covered).toBe(0.5);
  });
});

it("packIndex › gives back what was packed", () => {
  const entry: LookUpEntry = {
    slug: "odd-slug",
    headword: "cédez",
    lang: "fr",
    kind: "tempo-change",
    tier: 2,
    meaning: "give way",
    spellings: ["a", "b c"],
    looks: ["one; two"],
    isSign: true,
  };
  const plain: LookUpEntry = { ...entry, slug: "cedez", spellings: undefined, looks: undefined };
  const packed = JSON.parse(JSON.stringify(packIndex([entry, plain], { x: ["a", "b"] })));
  expect(unpackEntries(packed)).toEqual([entry, plain]);
  expect(packed.columns.slug).toBe("odd-slug\n");
});
