import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isAlsoRight, isSynonym } from "@/lib/memory/prompts/alternatives";
import {
  buildPrompt,
  isPrompt,
  type Prompt,
  promptKindsOf,
  WORD_PROMPTS,
} from "@/lib/memory/prompts/build-prompt";
import { keyWords, sameWords, sharedShare } from "@/lib/memory/prompts/meaning-words";
import { createRandom } from "@/lib/memory/random";
import { entry, POOL } from "./prompt-entries";

const never = () => false;
const bySlug = (slug: string) => {
  const found = POOL.find((e) => e.slug === slug);
  if (!found) throw new Error(`no entry ${slug}`);
  return found;
};
const options = (seed: number) => ({ pool: POOL, alsoRight: never, random: createRandom(seed) });
const built = (kind: (typeof WORD_PROMPTS)[number], slug: string, change: object = {}): Prompt => {
  const prompt = buildPrompt(kind, bySlug(slug), { ...options(1), ...change });
  if (!isPrompt(prompt)) throw new Error(`${kind} ${slug}: ${prompt.reason}`);
  return prompt;
};

describe("buildPrompt", () => {
  it("offers one right answer and two or three wrong ones, none also right (property)", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...POOL),
        fc.constantFrom(...WORD_PROMPTS),
        fc.integer(),
        (target, kind, seed) => {
          const prompt = buildPrompt(kind, target, options(seed));
          if (!isPrompt(prompt) || prompt.choices === null) return;
          const right = prompt.choices.filter((c) => c.right);
          expect(right.map((c) => c.slug)).toEqual([target.slug]);
          expect(prompt.choices.length).toBeGreaterThanOrEqual(kind === "alike" ? 2 : 3);
          expect(prompt.choices.length).toBeLessThanOrEqual(4);
          expect(new Set(prompt.choices.map((c) => c.slug)).size).toBe(prompt.choices.length);
          for (const choice of prompt.choices) {
            if (!choice.right) expect(isAlsoRight(target, bySlug(choice.slug), never)).toBe(false);
          }
        },
      ),
    );
  });

  it("is the same for the same seed, and puts the right answer in every place", () => {
    expect(built("word>meaning", "dolce")).toEqual(built("word>meaning", "dolce"));
    const places = new Set(
      Array.from({ length: 40 }, (_, seed) =>
        built("word>meaning", "forte", { random: createRandom(seed) }).choices?.findIndex(
          (c) => c.right,
        ),
      ),
    );
    expect(places.size).toBeGreaterThanOrEqual(3);
  });

  it("draws the student's own confusions and the alikes first", () => {
    const prompt = built("word>meaning", "ritardando", { confusions: new Map([["piano", 2]]) });
    expect(prompt.choices?.map((c) => c.slug)).toEqual(
      expect.arrayContaining(["piano", "ritenuto"]),
    );
  });

  it("never offers what the page calls also right, nor a meaning of the same words", () => {
    for (let seed = 0; seed < 30; seed += 1) {
      const prompt = built("word>meaning", "ritardando", {
        random: createRandom(seed),
        alsoRight: (_: unknown, b: { slug: string }) => b.slug === "meno-mosso",
      });
      const slugs = prompt.choices?.map((c) => c.slug);
      expect(slugs).not.toContain("rallentando");
      expect(slugs).not.toContain("meno-mosso");
    }
  });

  it("asks a meaning with first letters where two words have it", () => {
    const prompt = built("meaning>word", "ritardando");
    expect(prompt).toMatchObject({
      choices: null,
      alsoRight: expect.arrayContaining(["rallentando"]),
      hint: "ri…",
    });
    expect(built("meaning>word", "dolce").hint).toBeNull();
  });

  it("asks a short form with first letters where it stands for two words", () => {
    const rit = entry("ritardando", { abbreviations: ["rit."] });
    const other = entry("ritenuto", { abbreviations: ["rit"] });
    const prompt = buildPrompt("short>full", rit, { ...options(1), pool: [rit, other] });
    expect(prompt).toMatchObject({
      question: { text: "rit.", lang: "it" },
      alsoRight: ["ritenuto"],
      hint: "rita…",
    });
  });

  it("shows a sign without its name, and asks for it chosen or typed", () => {
    expect(built("sign>name", "piano").question).toEqual({
      text: "",
      lang: null,
      glyph: "dynamicPiano",
    });
    expect(built("sign>name", "piano").choices).not.toBeNull();
    expect(built("sign>name", "piano", { typed: true }).choices).toBeNull();
    const glyphs = built("name>sign", "piano").choices?.map((c) => c.glyph);
    expect(new Set(glyphs).size).toBe(glyphs?.length);
    expect(glyphs).not.toContain(null);
  });

  it("sets two alike side by side, telling the difference afterwards", () => {
    const prompt = built("alike", "ritardando");
    expect(prompt.choices?.map((c) => c.slug).sort()).toEqual(["ritardando", "ritenuto"]);
    expect(prompt.difference).toBe("ritenuto holds back at once");
    expect(prompt.question.text).toBe("gradually slower");
  });

  it("says why it cannot", () => {
    expect(buildPrompt("sign>name", bySlug("dolce"), options(1))).toEqual({ reason: "no-sign" });
    expect(buildPrompt("short>full", bySlug("dolce"), options(1))).toEqual({
      reason: "no-short-form",
    });
    expect(buildPrompt("alike", bySlug("dolce"), options(1))).toEqual({ reason: "no-alike" });
    const alone = { ...options(1), pool: [bySlug("dolce")] };
    expect(buildPrompt("word>meaning", bySlug("dolce"), alone)).toEqual({
      reason: "too-few-alternatives",
    });
  });
});

describe("isAlsoRight and isSynonym", () => {
  const soft = entry("soft-one", { kind: "dynamic", meaning: "soft" });
  const softer = entry("soft-two", { kind: "dynamic", meaning: "very soft" });
  const pair = { ...soft, alikes: [{ slug: "soft-two", difference: "one is softer" }] };
  it("keeps a meaning that swallows another off the list, unless the two are a pair", () => {
    expect(isAlsoRight(soft, softer, never)).toBe(true);
    expect(isAlsoRight(pair, softer, never)).toBe(false);
    expect(isAlsoRight(pair, softer, () => true)).toBe(true);
  });
  it("keeps a pair of nearly the same words off the list too", () => {
    const dolce = entry("one", { meaning: "sweetly, with a gentle tone", alikes: pair.alikes });
    expect(
      isAlsoRight(dolce, entry("soft-two", { meaning: "soft, sweet and gentle" }), never),
    ).toBe(true);
  });
  it("takes as synonyms only what means the same", () => {
    expect(isSynonym(soft, softer, never)).toBe(false);
    expect(isSynonym(soft, entry("x", { meaning: "soft" }), never)).toBe(true);
    expect(isSynonym(soft, softer, () => true)).toBe(true);
  });
});

describe("promptKindsOf", () => {
  it("lists what can be built", () => {
    const pool = { pool: POOL, alsoRight: never };
    expect(promptKindsOf(bySlug("dolce"), pool)).not.toContain("sign>name");
    expect(promptKindsOf(bySlug("piano"), pool)).toEqual(
      expect.arrayContaining(["sign>name", "name>sign", "short>full"]),
    );
  });
});

describe("keyWords", () => {
  it("keeps what a meaning says", () => {
    expect(keyWords("gradually getting slower")).toEqual(new Set(["gradual", "slower"]));
    expect(sameWords(keyWords("gradually slower"), keyWords("slower, gradually"))).toBe(true);
    const share = (a: string, b: string) => sharedShare(keyWords(a), keyWords(b));
    expect(share("gradually slower", "gradually faster")).toEqual({
      ofShorter: 0.5,
      ofLonger: 0.5,
    });
    expect(share("soft", "very soft")).toEqual({ ofShorter: 1, ofLonger: 0.5 });
    expect(sameWords(keyWords("soft"), keyWords("very soft"))).toBe(false);
    expect(sameWords(keyWords(""), keyWords(""))).toBe(false);
  });
});
