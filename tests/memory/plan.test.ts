import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Answer } from "@/lib/memory/answer";
import { dateOfDay } from "@/lib/memory/day";
import { foldLog } from "@/lib/memory/fold-log";
import { forecast } from "@/lib/memory/forecast";
import { callSheet, createPlanner, type PlanItem } from "@/lib/memory/plan";
import { answer, DAY, START } from "./answers";

const dayNumber = Math.floor(START / DAY);
const dateIn = (days: number) => dateOfDay(dayNumber + days);
const item = (slug: string, alikes: string[] = []): PlanItem => ({
  slug,
  alikes,
  asks: ["word>meaning", "meaning>word", "alike"],
});
const items = (count: number) => Array.from({ length: count }, (_, i) => item(`entry-${i}`));
const now = { at: START, offset: 0 };

describe("callSheet", () => {
  it("never goes past the minutes, whatever the log (property)", () => {
    const arbitrary = fc.record({
      minutes: fc.integer({ min: 1, max: 20 }),
      days: fc.integer({ min: -2, max: 30 }),
      seen: fc.array(fc.tuple(fc.nat(29), fc.boolean(), fc.nat(6)), { maxLength: 40 }),
    });
    fc.assert(
      fc.property(arbitrary, ({ minutes, days, seen }) => {
        const log = seen.map(([i, right, ago]) =>
          answer({
            entry: `entry-${i}`,
            outcome: right ? "right" : "missed",
            at: START - ago * DAY - 60_000,
          }),
        );
        const sheet = callSheet({
          fold: foldLog(log),
          items: items(30),
          date: dateIn(days),
          minutes,
          now,
        });
        expect(sheet.seconds).toBeLessThanOrEqual(Math.max(0, minutes * 60 - sheet.spent) + 1e-9);
        expect(new Set(sheet.prompts.map((p) => p.slug)).size).toBe(sheet.prompts.length);
      }),
      { numRuns: 40 },
    );
  });

  it("counts what was already done today", () => {
    const log = Array.from({ length: 12 }, (_, i) =>
      answer({ entry: `entry-${i}`, at: START - 600_000 + i * 10_000, ms: 8000 }),
    );
    const options = { items: items(40), date: dateIn(10), minutes: 4, now };
    const before = callSheet({ ...options, fold: foldLog([]) });
    const after = callSheet({ ...options, fold: foldLog(log) });
    expect(after.spent).toBe(120);
    expect(after.seconds).toBeLessThanOrEqual(120);
    expect(before.seconds).toBeGreaterThan(180);
  });

  it("does not ask again today what was right today, and brings back a miss after three others", () => {
    const fold = foldLog([]);
    const planner = createPlanner({ fold, items: items(12), date: dateIn(8), minutes: 10 });
    const asked: string[] = [];
    let at = START;
    for (let i = 0; i < 10; i += 1) {
      const next = planner.sheet({ at, offset: 0 }).prompts[0];
      if (!next) break;
      asked.push(next.slug);
      at += 10_000;
      planner.take(
        answer({
          entry: next.slug,
          outcome: i === 0 ? "missed" : "right",
          at,
          prompt: next.prompt,
        }),
      );
    }
    const missed = asked[0] ?? "";
    const back = asked.indexOf(missed, 1);
    expect(back === -1 || back > 3).toBe(true);
    const right = asked.filter((slug) => slug !== missed);
    expect(new Set(right).size).toBe(right.length);
    expect(asked.length).toBe(10);
  });

  it("does not first meet two alike on one day while days suffice", () => {
    const pair = [
      item("ritardando", ["ritenuto"]),
      item("ritenuto"),
      item("dolce"),
      item("tenuto"),
    ];
    const sheet = callSheet({ fold: foldLog([]), items: pair, date: dateIn(9), minutes: 10, now });
    const slugs = sheet.prompts.map((p) => p.slug);
    expect(slugs.filter((s) => s.startsWith("rit"))).toHaveLength(1);
    expect(slugs).toHaveLength(3);
    const met = foldLog([answer({ entry: "ritenuto", outcome: "missed", at: START - 300_000 })]);
    const after = callSheet({ fold: met, items: pair, date: dateIn(9), minutes: 10, now });
    expect(after.prompts.map((p) => p.slug)).not.toContain("ritardando");
    const tomorrow = callSheet({
      fold: met,
      items: pair,
      date: dateIn(9),
      minutes: 10,
      now: { at: START + DAY, offset: 0 },
    });
    expect(tomorrow.prompts.map((p) => p.slug)).toContain("ritardando");
  });

  it("meets alike entries together when no day is left for waiting", () => {
    const pair = [item("ritardando", ["ritenuto"]), item("ritenuto")];
    const sheet = callSheet({ fold: foldLog([]), items: pair, date: dateIn(2), minutes: 10, now });
    expect(sheet.prompts).toHaveLength(2);
  });

  it("keeps the last evening light: within reach only, half the minutes", () => {
    const log: Answer[] = [];
    for (let i = 0; i < 8; i += 1) {
      for (const ago of [6, 3]) log.push(answer({ entry: `entry-${i}`, at: START - ago * DAY }));
    }
    log.push(answer({ entry: "entry-8", outcome: "missed", at: START - 2 * DAY }));
    const sheet = callSheet({
      fold: foldLog(log),
      items: items(30),
      date: dateIn(1),
      minutes: 10,
      now,
    });
    expect(sheet.phase).toBe("last-evening");
    expect(sheet.seconds).toBeLessThanOrEqual(300);
    expect(sheet.prompts.every((p) => p.why !== "new")).toBe(true);
    expect(sheet.prompts.length).toBeGreaterThan(0);
  });

  it("sets two entries side by side after one was given for the other", () => {
    const log = [
      answer({ entry: "entry-0", outcome: "missed", chose: "entry-1", at: START - DAY }),
    ];
    const sheet = callSheet({
      fold: foldLog(log),
      items: items(3),
      date: dateIn(6),
      minutes: 5,
      now,
    });
    const prompt = sheet.prompts.find((p) => p.slug === "entry-0");
    expect(prompt).toMatchObject({ prompt: "alike", why: "confused" });
  });

  it("starts an entry with recognition and goes on to production (rule 13)", () => {
    const first = callSheet({
      fold: foldLog([]),
      items: [item("dolce")],
      date: dateIn(6),
      minutes: 5,
      now,
    });
    expect(first.prompts[0]?.prompt).toBe("word>meaning");
    const log = [answer({ entry: "dolce", prompt: "word>meaning", options: 4, at: START - DAY })];
    const second = callSheet({
      fold: foldLog(log),
      items: [item("dolce")],
      date: dateIn(6),
      minutes: 5,
      now,
    });
    expect(second.prompts[0]?.prompt).toBe("meaning>word");
  });

  it("plans on without a date and after it", () => {
    const options = { fold: foldLog([]), items: items(3), minutes: 5, now };
    expect(callSheet({ ...options, date: null })).toMatchObject({ phase: "open", daysLeft: null });
    expect(callSheet({ ...options, date: dateIn(-1) })).toMatchObject({
      phase: "passed",
      daysLeft: null,
    });
    expect(callSheet({ ...options, date: dateIn(5) })).toMatchObject({
      phase: "building",
      daysLeft: 5,
      unmet: 3,
    });
  });

  it("refuses a date that does not exist and minutes that leave no time", () => {
    const options = { fold: foldLog([]), items: items(3), now };
    expect(() => callSheet({ ...options, date: "2027-02-30", minutes: 5 })).toThrow(/not a date/);
    expect(() => callSheet({ ...options, date: null, minutes: 0 })).toThrow(/minutes/);
  });

  it("lets the gap before the date fall between 5 % and 50 % of what is left (Cepeda 2008, soft)", () => {
    // One entry right today, thirty days before the date: on which day does it come back first?
    const fold = foldLog([answer({ entry: "entry-0" })]);
    const others = Array.from({ length: 40 }, (_, i) =>
      answer({ entry: `entry-${i}`, at: START - i * 1000 }),
    );
    for (const line of others.slice(1)) fold.take({ ...line, at: START + 1 });
    let back = 0;
    for (let day = 1; day <= 30 && back === 0; day += 1) {
      const sheet = callSheet({
        fold,
        items: items(40),
        date: dateIn(30),
        minutes: 3,
        now: { at: START + day * DAY, offset: 0 },
      });
      if (sheet.prompts.some((p) => p.slug === "entry-0")) back = day;
      for (const p of sheet.prompts)
        fold.take(answer({ entry: p.slug, at: START + day * DAY, prompt: p.prompt }));
    }
    expect(back).toBeGreaterThanOrEqual(1);
    expect(back).toBeLessThanOrEqual(15);
  });
});

describe("forecast", () => {
  const options = { fold: foldLog([]), items: items(20), date: dateIn(10), minutes: 6, now };

  it("runs from now to the evening before, rising, and ends where the plan has met all", () => {
    const rows = forecast(options);
    expect(rows).toHaveLength(11);
    expect(rows[0]).toMatchObject({ date: dateIn(0), recall: 0, unmet: 20 });
    expect(rows.at(-1)).toMatchObject({ date: dateIn(9), unmet: 0 });
    expect(rows.at(-1)?.recall).toBeGreaterThan(0.6);
    for (const row of rows) {
      expect(row.low).toBeLessThanOrEqual(row.recall);
      expect(row.high).toBeGreaterThanOrEqual(row.recall);
    }
  });

  it("is the same each time and changes nothing", () => {
    expect(forecast(options)).toEqual(forecast(options));
    expect(options.fold.count()).toBe(0);
  });

  it("expects less of fewer minutes", () => {
    const last = (minutes: number) => forecast({ ...options, minutes }).at(-1)?.recall ?? 0;
    expect(last(1)).toBeLessThan(last(6));
  });

  it("has one row after the date, and refuses a date that does not exist", () => {
    expect(forecast({ ...options, date: dateIn(-3) })).toHaveLength(1);
    expect(() => forecast({ ...options, date: "2027-04-31" })).toThrow(/not a date/);
  });
});
