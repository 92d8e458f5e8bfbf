import { describe, expect, it } from "vitest";
import { alsoRightRules, kindsOf } from "@/app/drill/prompt-entries";
import { buildPrompt, isPrompt } from "@/lib/memory/prompts/build-prompt";
import { createRandom } from "@/lib/memory/random";
import { clientEntries, drillEntry, pool } from "./drill-entries";

const rules = alsoRightRules(pool);

describe("drillEntries", () => {
  it("lets a sign be named by the word it stands for", () => {
    // MusicXML 4.0 names the dot itself `staccato`.
    expect(drillEntry("staccato-dot").spellings).toContain("staccato");
  });

  it("gives a drawn sign without a glyph its drawing", () => {
    expect(drillEntry("slur").glyph).not.toBeNull();
    expect(drillEntry("allegro").glyph).toBeNull();
  });
});

describe("kindsOf", () => {
  it("asks a sign from its drawing, never for its name from the meaning", () => {
    expect(kindsOf(drillEntry("slur"))).toEqual(expect.arrayContaining(["sign>name", "name>sign"]));
    expect(kindsOf(drillEntry("slur"))).not.toContain("meaning>word");
  });

  it("asks a word both ways and by its short form", () => {
    expect(kindsOf(drillEntry("crescendo"))).toEqual(
      expect.arrayContaining(["word>meaning", "meaning>word", "short>full"]),
    );
  });

  it("does not ask what p is short for beside asking what the sign p is called", () => {
    expect(kindsOf(drillEntry("piano"))).not.toContain("short>full");
  });
});

describe("alsoRightRules", () => {
  it("counts terms with the same demand as also right, and not those with another", () => {
    // common practice: rallentando and ritardando both slow little by little; accelerando hurries.
    expect(rules.same(drillEntry("rallentando"), drillEntry("ritardando"))).toBe(true);
    expect(rules.same(drillEntry("rallentando"), drillEntry("accelerando"))).toBe(false);
  });

  it("takes a weaker demand as implied in one direction only", () => {
    // common practice: morendo grows softer and more; diminuendo only grows softer.
    const [morendo, diminuendo] = [drillEntry("morendo"), drillEntry("diminuendo")];
    expect(rules.implied(morendo, diminuendo)).toBe(true);
    expect(rules.implied(diminuendo, morendo)).toBe(false);
    expect(rules.same(morendo, diminuendo)).toBe(false);
  });

  it("never offers an alternative whose demands the right entry makes too (all tier-1 entries)", () => {
    const bySlug = new Map(pool.map((e) => [e.slug, e]));
    const wrongs: string[] = [];
    for (const entry of pool.filter((e) => e.tier === 1)) {
      for (const kind of kindsOf(entry)) {
        if (kind === "alike") continue;
        const random = createRandom(`${entry.slug} ${kind}`);
        const built = buildPrompt(kind, entry, { pool, alsoRight: rules.implied, random });
        if (!isPrompt(built) || !built.choices) continue;
        expect(built.choices.filter((c) => c.right)).toHaveLength(1);
        for (const choice of built.choices) {
          const other = bySlug.get(choice.slug);
          if (!choice.right && other && rules.implied(entry, other)) {
            wrongs.push(`${kind} ${entry.slug}: ${choice.slug}`);
          }
        }
      }
    }
    expect(wrongs).toEqual([]);
  });

  it("can ask every entry of the glossary somehow", () => {
    const mute = [...clientEntries.keys()].filter((slug) => {
      const entry = drillEntry(slug);
      const random = createRandom(slug);
      return !kindsOf(entry).some((kind) =>
        isPrompt(buildPrompt(kind, entry, { pool, alsoRight: rules.implied, random })),
      );
    });
    expect(mute).toEqual([]);
  });
});
