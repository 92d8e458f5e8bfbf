import { describe, expect, it } from "vitest";
import { createSession } from "@/app/drill/create-session";
import { answerOf, type Given, markGiven } from "@/app/drill/mark-given";
import { usualSlugs } from "@/app/drill/what-to-drill";
import type { Answer } from "@/lib/memory/answer";
import { createRandom } from "@/lib/memory/random";
import { clientEntries as entries, isDrawn } from "./drill-entries";

const DAY = 86_400_000;
const START = Date.UTC(2027, 0, 11, 16);
const slugs = [...usualSlugs("tempo", entries), ...usualSlugs("articulation", entries)];

interface Sitting {
  answers?: Answer[];
  date?: string | null;
  minutes?: number;
  /** Share answered right. */
  knows?: number;
  seconds?: number;
}

/** Drills to the end of the minutes with a student who knows a share of the answers. */
function sit({ answers = [], date = null, minutes = 5, knows = 0.6, seconds = 7 }: Sitting) {
  const random = createRandom(`${date} ${minutes} ${knows} ${answers.length}`);
  const session = createSession({ slugs, date, minutes, answers, entries, random, isDrawn });
  let at = Math.max(START, ...answers.map((a) => a.at + DAY));
  const log: Answer[] = [];
  const shown: { slug: string; again: boolean; secondsLeft: number }[] = [];
  for (let i = 0; i < 500; i += 1) {
    const asking = session.next({ at, offset: 60 });
    if (!asking) break;
    const { prompt, entry } = asking;
    shown.push({ slug: prompt.slug, again: asking.again, secondsLeft: asking.secondsLeft });
    const knowsIt = random() < knows;
    const wrong = prompt.choices?.find((c) => !c.right)?.slug ?? "";
    const given: Given = prompt.choices
      ? { chose: knowsIt ? prompt.slug : wrong }
      : { wrote: knowsIt ? entry.headword : "zzzz" };
    const told = markGiven(prompt, given, { entry, index: session.index, helped: false });
    const stamp = { at: at + seconds * 1000, offset: 60 };
    const answer = answerOf(prompt, told, { id: `a${answers.length + i}`, stamp, shownAt: at });
    session.take(answer);
    log.push(answer);
    at = stamp.at + 3000;
  }
  return { session, log, shown, at };
}

describe("createSession", () => {
  it("ends within the minutes, and starts no prompt without time for it", () => {
    const { log, shown, at } = sit({ minutes: 5 });
    expect(log.length).toBeGreaterThan(15);
    expect(at - START).toBeLessThan(6 * 60_000);
    expect(Math.min(...shown.map((s) => s.secondsLeft))).toBeGreaterThan(0);
  });

  it("ends on what was missed", () => {
    const { log, shown } = sit({ minutes: 5, knows: 0.7 });
    const missed = new Set(log.filter((a) => a.outcome === "missed").map((a) => a.entry));
    const returned = new Set(shown.filter((s) => s.again).map((s) => s.slug));
    expect(missed.size).toBeGreaterThan(0);
    // The very last answers may be missed with no time left; of the rest most come back.
    expect([...missed].filter((slug) => returned.has(slug)).length).toBeGreaterThanOrEqual(
      missed.size - 3,
    );
  });

  it("asks nothing twice that was recalled today", () => {
    const { log } = sit({ minutes: 10, knows: 1 });
    expect(new Set(log.map((a) => a.entry)).size).toBe(log.length);
  });

  it("keeps the last evening light: half the minutes, as the planner does", () => {
    // learning-guidance, rule 21; the share is the planner's own, so both must agree.
    const before = sit({ minutes: 8, knows: 0.9 });
    const eve = sit({ answers: before.log, minutes: 8, knows: 0.5, date: "2027-01-13" });
    const sheet = eve.session.sheet({ at: eve.at, offset: 60 });
    expect(sheet.phase).toBe("last-evening");
    expect(eve.shown[0]?.secondsLeft).toBe(240);
    expect(sheet.spent).toBeLessThanOrEqual(8 * 60 * 0.5 + 15);
    expect(sheet.spent).toBeGreaterThan(8 * 60 * 0.5 - 25);
  });

  it("goes on after more minutes are given", () => {
    const { session, at } = sit({ minutes: 3 });
    expect(session.next({ at, offset: 60 })).toBeNull();
    session.addMinutes(5);
    expect(session.next({ at, offset: 60 })).not.toBeNull();
  });

  it("moves from choosing to writing as an entry firms up (guidance, rule 13)", () => {
    let answers: Answer[] = [];
    const typed: number[] = [];
    for (let day = 0; day < 6; day += 1) {
      const { log } = sit({ answers, minutes: 10, knows: 0.95, date: "2027-02-20" });
      typed.push(log.filter((a) => a.options === undefined).length / log.length);
      answers = [...answers, ...log];
    }
    expect(typed[0]).toBe(0);
    expect(Math.max(...typed.slice(2))).toBeGreaterThan(0.3);
  });
});
