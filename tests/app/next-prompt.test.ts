import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Asked, minutesLeftWords, nextPrompt, openMisses } from "@/app/drill/next-prompt";
import type { CallSheet } from "@/lib/memory/plan";

const asked = (text: string): Asked[] =>
  text.split(" ").flatMap((word) => {
    if (word === "") return [];
    const outcome = { "+": "right", "-": "missed", "~": "partly" }[word.slice(-1)];
    if (outcome !== "right" && outcome !== "missed" && outcome !== "partly") return [];
    return [{ slug: word.slice(0, -1), outcome, helped: outcome === "partly" }];
  });
const sheetOf = (...slugs: string[]): CallSheet => ({
  prompts: slugs.map((slug) => ({
    slug,
    prompt: "word>meaning",
    seconds: 10,
    recallNow: 0.5,
    why: "fading",
  })),
  seconds: slugs.length * 10,
  spent: 0,
  daysLeft: 5,
  phase: "building",
  unmet: 0,
});
const again = () => ({ kind: "alike" as const, seconds: 12 });

describe("openMisses", () => {
  it("lists what was missed and not recalled since, the longest ago first", () => {
    expect(openMisses(asked("a- b- c+ a- d~ b+"))).toEqual([
      { slug: "a", since: 2 },
      { slug: "d", since: 1 },
    ]);
  });

  it("lets an entry go after three times in one session", () => {
    expect(openMisses(asked("a- b+ a- c+ a- d+"))).toEqual([]);
  });
});

describe("nextPrompt", () => {
  it("follows the planner while time remains for what was missed", () => {
    const next = nextPrompt({ sheet: sheetOf("x"), asked: asked("a-"), secondsLeft: 60, again });
    expect(next).toMatchObject({ slug: "x", again: false });
  });

  it("turns to the missed ones when the time is only just enough for them (guidance, rule 10)", () => {
    const next = nextPrompt({
      sheet: sheetOf("x"),
      asked: asked("a- b+ c+ d+"),
      secondsLeft: 20,
      again,
    });
    expect(next).toEqual({ slug: "a", kind: "alike", again: true });
  });

  it("does not echo a miss back at once", () => {
    const only = nextPrompt({ sheet: sheetOf(), asked: asked("a-"), secondsLeft: 60, again });
    expect(only).toBeNull();
  });

  it("starts no repeat past the minutes, and never a fourth asking (property)", () => {
    const answer = fc.record({
      slug: fc.constantFrom("a", "b", "c", "d"),
      outcome: fc.constantFrom("right", "slip", "partly", "missed"),
      helped: fc.boolean(),
    });
    fc.assert(
      fc.property(
        fc.array(answer, { maxLength: 20 }),
        fc.integer({ min: 0, max: 60 }),
        (log, left) => {
          const next = nextPrompt({ sheet: sheetOf(), asked: log, secondsLeft: left, again });
          if (next === null) return;
          expect(left).toBeGreaterThanOrEqual(12);
          expect(log.filter((a) => a.slug === next.slug).length).toBeLessThan(3);
          expect(log.at(-1)?.slug).not.toBe(next.slug);
        },
      ),
    );
  });
});

describe("minutesLeftWords", () => {
  it("says minutes, not seconds", () => {
    expect(minutesLeftWords(290)).toBe("about 5 min left");
    expect(minutesLeftWords(70)).toBe("about a minute left");
    expect(minutesLeftWords(20)).toBe("nearly done");
  });
});
