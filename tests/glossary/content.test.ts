import { describe, expect, it } from "vitest";
import { checkContent } from "../../lib/glossary/check-content";
import { parseAllEntries } from "../../lib/glossary/load";
import { parseEntry } from "../../lib/glossary/parse-entry";
import { SMUFL_CODEPOINTS } from "../../lib/glossary/smufl";
import { loadSharedSpellings, loadSourceKeys } from "../../lib/glossary/sources";

const facts = {
  sourceKeys: loadSourceKeys(),
  glyphNames: new Set(Object.keys(SMUFL_CODEPOINTS)),
  sharedSpellings: loadSharedSpellings(),
};
const good = `---
headword: weirando
lang: it
kind: character
tier: 3
meaning: like water over a weir
asks: { character: [flowing] }
ipa: weiˈrando
say: way-RAHN-doh
sources: [{ key: common-practice }]
reviewed: 2026-11-25
---
Let it run.
`;
const check = (source: string, file = "it/weirando.mdx") =>
  checkContent([parseEntry(file, source)], facts).map((p) => `${p.line} ${p.found}`);

describe("glossary", () => {
  it("holds to every rule of the content check", () => {
    const problems = checkContent(parseAllEntries(), facts);
    expect(problems.map((p) => `${p.file}:${p.line}: ${p.found}`)).toEqual([]);
  });
  it("cites a known source in every entry", () => {
    for (const { entry } of parseAllEntries()) {
      expect(
        entry?.sources.every((s) => facts.sourceKeys.has(s.key)),
        entry?.slug,
      ).toBe(true);
    }
  });
});

describe("checkContent", () => {
  it("passes a good entry", () => expect(check(good)).toEqual([]));
  it("reports all problems at once, with their lines", () => {
    const bad = good.replace("kind: character", "kind: mood").replace("tier: 3", "tier: 9");
    const found = check(bad);
    expect(found.some((f) => f.startsWith("4 kind"))).toBe(true);
    expect(found.some((f) => f.startsWith("5 tier"))).toBe(true);
  });
  it.each([
    ["an unknown key", good.replace("tier: 3", "tier: 3\ncolour: red"), "colour"],
    [
      "a meaning over its length",
      good.replace(
        "like water over a weir",
        "one two three four five six seven eight nine ten eleven twelve thirteen",
      ),
      "at most 12 words",
    ],
    ["an unknown source", good.replace("common-practice", "hearsay"), "hearsay"],
    ["a component it may not use", good.replace("Let it run.", "<Video src=x />"), "<Video>"],
    ["code in the body", good.replace("Let it run.", "{1 + 1}"), "code in the body"],
    ["a link to no entry", good.replace("Let it run.", '<Term to="nowhere">x</Term>'), "nowhere"],
    [
      "keys out of order",
      good.replace(
        "tier: 3\nmeaning: like water over a weir",
        "meaning: like water over a weir\ntier: 3",
      ),
      "out of order",
    ],
    ["YAML that is none", good.replace("tier: 3", "tier: [3"), "not YAML"],
    ["a missing pronunciation", good.replace("say: way-RAHN-doh\n", ""), "pronunciation"],
  ])("reports %s", (_, source, says) => {
    expect(check(source).join("\n")).toContain(says);
  });
  it("reports a spelling claimed twice", () => {
    const twin = good
      .replace("headword: weirando", "headword: weirato\nspellings: [weirando]")
      .replace(
        "spellings: [weirando]\nlang: it\nkind: character\ntier: 3",
        "lang: it\nkind: character\ntier: 3\nspellings: [weirando]",
      );
    const problems = checkContent(
      [parseEntry("it/weirando.mdx", good), parseEntry("it/weirato.mdx", twin)],
      facts,
    );
    expect(problems.map((p) => p.found).join("\n")).toContain("also claimed");
  });
});
