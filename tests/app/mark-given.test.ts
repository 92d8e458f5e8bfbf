import { describe, expect, it } from "vitest";
import { contrastWith, spokenVerdict, verdictOf } from "@/app/drill/feedback-words";
import { hintFor } from "@/app/drill/hint";
import { answerOf, type Given, markGiven } from "@/app/drill/mark-given";
import { alsoRightRules } from "@/app/drill/prompt-entries";
import { answerSchema } from "@/lib/memory/log";
import { buildPrompt, isPrompt, type WordPromptKind } from "@/lib/memory/prompts/build-prompt";
import { indexSpellings } from "@/lib/memory/prompts/mark-typed";
import { createRandom } from "@/lib/memory/random";
import { clientEntries, drillEntry, pool } from "./drill-entries";

const index = indexSpellings(pool);
const rules = alsoRightRules(pool);

function promptOf(kind: WordPromptKind, slug: string) {
  const built = buildPrompt(kind, drillEntry(slug), {
    pool,
    alsoRight: rules.same,
    random: createRandom(slug),
    typed: true,
  });
  if (!isPrompt(built)) throw new Error(`no ${kind} for ${slug}: ${built.reason}`);
  return built;
}

function mark(kind: WordPromptKind, slug: string, given: Given, helped = false) {
  return markGiven(promptOf(kind, slug), given, { entry: drillEntry(slug), index, helped });
}

describe("markGiven", () => {
  it("takes a word whatever its accents and capitals", () => {
    expect(mark("meaning>word", "piu-mosso", { wrote: "Piu Mosso" }).outcome).toBe("right");
  });

  it("forgives a misspelling and gives the right spelling", () => {
    // learning-guidance, grading facts: two edits in eight letters or more.
    const told = mark("meaning>word", "crescendo", { wrote: "crescendno" });
    expect(told).toMatchObject({ outcome: "slip", spelling: "crescendo" });
    expect(verdictOf(told, "crescendo")).toEqual({
      text: "Right. It is spelt",
      word: "crescendo",
    });
  });

  it("does not take a misspelling that is another entry", () => {
    const told = mark("meaning>word", "meno", { wrote: "mezzo" });
    expect(told).toMatchObject({ outcome: "missed", instead: "mezzo" });
  });

  it("counts no answer with help for more than partly, and a miss as a miss", () => {
    expect(mark("meaning>word", "crescendo", { wrote: "crescendo" }, true).outcome).toBe("partly");
    expect(mark("meaning>word", "crescendo", { wrote: "zzzz" }, true).outcome).toBe("missed");
  });

  it("names a sign by the word it stands for, not by its letters", () => {
    expect(mark("sign>name", "staccato-dot", { wrote: "staccato" }).outcome).toBe("right");
    expect(mark("sign>name", "piano", { wrote: "p" }).outcome).toBe("missed");
    expect(mark("sign>name", "piano", { wrote: "piano" }).outcome).toBe("right");
  });

  it("counts a look at the answer as a miss", () => {
    expect(mark("meaning>word", "dolce", "shown")).toMatchObject({
      outcome: "missed",
      instead: null,
    });
  });
});

describe("answerOf", () => {
  const prompt = promptOf("word>meaning", "dolce");
  const wrong = prompt.choices?.find((c) => !c.right)?.slug ?? "";
  const told = markGiven(
    prompt,
    { chose: wrong },
    { entry: drillEntry("dolce"), index, helped: false },
  );

  it("makes a line the log accepts, naming what was chosen instead", () => {
    const stamp = { at: 5000, offset: -300 };
    const answer = answerOf(prompt, told, { id: "a", stamp, shownAt: 1200 });
    expect(answerSchema.parse(answer)).toEqual({
      id: "a",
      at: 5000,
      offset: -300,
      entry: "dolce",
      prompt: "word>meaning",
      outcome: "missed",
      ms: 3800,
      help: false,
      chose: wrong,
      options: prompt.choices?.length,
    });
  });

  it("writes no negative time when the clock was set back", () => {
    const stamp = { at: 1000, offset: 0 };
    expect(answerOf(prompt, told, { id: "a", stamp, shownAt: 9000 }).ms).toBe(0);
  });
});

describe("hintFor", () => {
  it("gives first letters of a word to be written, never the whole word", () => {
    for (const entry of pool) {
      if (entry.isSign || entry.headword.length < 3) continue;
      const hint = hintFor(promptOf("meaning>word", entry.slug), entry);
      if (hint?.form !== "letters") throw new Error(`no letters for ${entry.slug}`);
      const told = hint.text.slice(0, -1);
      expect(entry.headword.startsWith(told)).toBe(true);
      expect(told.length).toBeLessThan(entry.headword.length);
    }
  });

  it("never lays the right row aside, and leaves a choice", () => {
    for (const entry of pool.filter((e) => e.tier === 1)) {
      const prompt = promptOf("word>meaning", entry.slug);
      const hint = hintFor(prompt, entry);
      if (hint?.form !== "fewer") continue;
      const left = prompt.choices?.filter((c) => !hint.aside.includes(c.slug)) ?? [];
      expect(left.some((c) => c.right)).toBe(true);
      expect(left.length).toBeGreaterThan(1);
    }
  });

  it("gives half the sense where it has two halves", () => {
    // morendo asks a loudness and a character.
    const hint = hintFor(promptOf("word>meaning", "morendo"), drillEntry("morendo"));
    expect(hint).toMatchObject({ form: "sense" });
  });

  it("has none for two alternatives: it would be the answer", () => {
    expect(hintFor(promptOf("alike", "crescendo"), drillEntry("crescendo"))).toBeNull();
  });
});

describe("contrastWith", () => {
  it("takes the glossary's own sentence on the pair, from either page", () => {
    const there = contrastWith("rallentando", "allargando", clientEntries);
    expect(there).toMatchObject({ isDifference: true, headword: "allargando" });
    const only = [...clientEntries.values()].flatMap((e) =>
      (e.alikes ?? [])
        .filter((a) => !clientEntries.get(a.slug)?.alikes?.some((b) => b.slug === e.slug))
        .map((a) => ({ named: a.slug, by: e.slug, difference: a.difference })),
    )[0];
    if (!only) throw new Error("every pair is named on both pages");
    expect(contrastWith(only.named, only.by, clientEntries)?.text).toBe(only.difference);
  });

  it("else says what the answer given means", () => {
    const contrast = contrastWith("fermata", "dolce", clientEntries);
    expect(contrast).toMatchObject({
      isDifference: false,
      text: clientEntries.get("dolce")?.meaning,
    });
  });

  it("is silent when nothing was named, or the same", () => {
    expect(contrastWith("dolce", null, clientEntries)).toBeNull();
    expect(contrastWith("dolce", "dolce", clientEntries)).toBeNull();
  });
});

describe("spokenVerdict", () => {
  it("says the right answer after a miss, and no more than the verdict when right", () => {
    const prompt = promptOf("word>meaning", "dolce");
    const meaning = clientEntries.get("dolce")?.meaning;
    expect(spokenVerdict(mark("word>meaning", "dolce", "shown"), prompt, "dolce")).toContain(
      `The right answer is: ${meaning}.`,
    );
    expect(spokenVerdict(mark("word>meaning", "dolce", { chose: "dolce" }), prompt, "dolce")).toBe(
      "Right.",
    );
  });
});
