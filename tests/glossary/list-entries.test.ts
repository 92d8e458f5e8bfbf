import { describe, expect, it } from "vitest";
import { fold } from "@/lib/glossary/fold";
import {
  entryFilterQuery,
  filterEntries,
  parseEntryFilter,
  shelfOf,
  shelveEntries,
} from "@/lib/glossary/list-entries";
import { loadGlossary } from "@/lib/glossary/load";

const { entries } = loadGlossary();

describe("parseEntryFilter", () => {
  it("reads what it knows and leaves out the rest", () => {
    expect(parseEntryFilter({ axis: "dynamics", tier: "2", lang: "it" })).toEqual({
      axis: "dynamics",
      tier: 2,
      shelf: "it",
    });
    expect(parseEntryFilter({ axis: "colour", tier: "9", lang: "xx" })).toEqual({});
    expect(parseEntryFilter({ lang: ["signs", "it"] })).toEqual({ shelf: "signs" });
  });

  it("is undone by entryFilterQuery", () => {
    const filter = { axis: "road", tier: 1, shelf: "fr" } as const;
    const params = Object.fromEntries(new URLSearchParams(entryFilterQuery(filter)));
    expect(parseEntryFilter(params)).toEqual(filter);
    expect(entryFilterQuery({})).toBe("");
  });
});

describe("filterEntries", () => {
  it("keeps an entry exactly when each choice holds for it", () => {
    const filter = { axis: "articulation", tier: 1 } as const;
    const kept = new Set(filterEntries(entries, filter));
    for (const entry of entries) {
      expect(kept.has(entry)).toBe(entry.tier === 1 && entry.asks.articulation !== undefined);
    }
    expect(kept.size).toBeGreaterThan(0);
  });
});

describe("shelveEntries", () => {
  it("keeps every entry once, on its own shelf", () => {
    const shelved = shelveEntries(entries).flatMap(({ shelf, letters }) =>
      letters.flatMap(({ entries: group }) => group.map((entry) => ({ entry, shelf }))),
    );
    expect(shelved.length).toBe(entries.length);
    for (const { entry, shelf } of shelved) expect(shelfOf(entry)).toBe(shelf);
  });

  it("sets letters in order and files every entry under its letter without the accent", () => {
    for (const { letters } of shelveEntries(entries)) {
      const names = letters.map(({ letter }) => letter);
      expect(names).toEqual([...names].sort());
      for (const { letter, entries: group } of letters) {
        const initials = new Set(
          group.map(({ headword }) => fold(headword).charAt(0).toUpperCase()),
        );
        expect(
          letter === "#" ? /^[^A-Z]*$/.test([...initials].join("")) : [...initials].join(),
        ).toBe(letter === "#" ? true : letter);
      }
    }
    const [first] = entries;
    if (!first) throw new Error("the glossary is empty");
    const accented = {
      ...first,
      slug: "a-test",
      headword: "Übermütig",
      folder: "de",
      lang: "de" as const,
    };
    expect(shelveEntries([accented])).toEqual([
      { shelf: "de", letters: [{ letter: "U", entries: [accented] }] },
    ]);
  });
});
