import { describe, expect, it } from "vitest";
import { citeBriefly } from "@/lib/glossary/cite";
import { asSentence, familyLine } from "@/lib/glossary/family-words";
import { loadGlossary } from "@/lib/glossary/load";
import { loadSources } from "@/lib/glossary/sources";

describe("familyLine", () => {
  it("names the language and what the entry is about", () => {
    expect(familyLine({ lang: "it", kind: "articulation", folder: "it" })).toBe(
      "Italian, how notes are touched",
    );
  });
  it("calls a sign a sign", () => {
    expect(familyLine({ lang: "en", kind: "navigation", folder: "signs" })).toBe(
      "Sign, where next",
    );
  });
});

describe("asSentence", () => {
  it.each([
    ["hammered; short, hard notes", "Hammered; short, hard notes."],
    ["where to? here!", "Where to? here!"],
    ["élan", "Élan."],
  ])("makes %s a sentence", (text, sentence) => {
    expect(asSentence(text)).toBe(sentence);
  });
});

describe("citeBriefly", () => {
  const sources = loadSources();
  it("takes the author's last name and the year", () => {
    expect(citeBriefly("gehrkens-1914", sources)).toBe("Gehrkens 1914");
  });
  it("takes the publisher where no author is named", () => {
    const list = {
      title: "A List",
      year: 2024,
      publisher: "Mill Race Band (print)",
      used: "terms",
    };
    expect(citeBriefly("list", new Map([["list", list]]))).toBe("Mill Race Band 2024");
  });
  it("gives an unknown key back", () => {
    expect(citeBriefly("nobody", sources)).toBe("nobody");
  });
  it("is short, and its own, for every source of a metronome range", () => {
    const keys = new Set(
      loadGlossary().entries.flatMap(({ asks }) => asks.tempo?.ranges?.map((r) => r.source) ?? []),
    );
    const brief = [...keys].map((key) => citeBriefly(key, sources));
    expect(new Set(brief).size).toBe(keys.size);
    for (const words of brief) expect(words.length).toBeLessThan(50);
  });
});
