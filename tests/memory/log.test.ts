import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dateOfDay, dayOf, momentOf, readDate } from "@/lib/memory/day";
import { compareAnswers, mergeLogs, parseLog } from "@/lib/memory/log";
import { answer, answerArbitrary, DAY, START } from "./answers";

// fast-check prints the seed and the smallest failing case.
const log = fc.array(answerArbitrary, { maxLength: 25 });

describe("mergeLogs", () => {
  it("is commutative, even where one id has two contents (property)", () => {
    fc.assert(
      fc.property(log, log, (a, b) => {
        expect(mergeLogs(a, b)).toEqual(mergeLogs(b, a));
      }),
    );
  });
  it("is associative (property)", () => {
    fc.assert(
      fc.property(log, log, log, (a, b, c) => {
        const whole = mergeLogs(a, b, c);
        expect(mergeLogs(mergeLogs(a, b), c)).toEqual(whole);
        expect(mergeLogs(a, mergeLogs(b, c))).toEqual(whole);
      }),
    );
  });
  it("is idempotent (property)", () => {
    fc.assert(
      fc.property(log, (a) => {
        expect(mergeLogs(mergeLogs(a), a, a)).toEqual(mergeLogs(a));
      }),
    );
  });
  it("does not depend on order (property)", () => {
    const shuffled = log.chain((a) =>
      fc.tuple(fc.constant(a), fc.shuffledSubarray(a, { minLength: a.length })),
    );
    fc.assert(
      fc.property(shuffled, ([a, b]) => {
        expect(mergeLogs(b)).toEqual(mergeLogs(a));
      }),
    );
  });
  it("holds every id once, in order (property)", () => {
    fc.assert(
      fc.property(log, log, (a, b) => {
        const merged = mergeLogs(a, b);
        expect(new Set(merged.map((x) => x.id))).toEqual(new Set([...a, ...b].map((x) => x.id)));
        expect(merged.length).toBe(new Set(merged.map((x) => x.id)).size);
        expect([...merged].sort(compareAnswers)).toEqual(merged);
      }),
    );
  });
});

describe("parseLog", () => {
  it("reads back what was written (property)", () => {
    fc.assert(
      fc.property(log, (a) => {
        const parsed = parseLog(JSON.parse(JSON.stringify(a)));
        expect(parsed.refused).toEqual([]);
        expect(parsed.answers).toEqual(mergeLogs(a));
      }),
    );
  });
  it("never throws and loses no good line among bad ones (property)", () => {
    fc.assert(
      fc.property(log, fc.array(fc.jsonValue()), (good, junk) => {
        const parsed = parseLog([...junk, ...good]);
        const ids = new Set(parsed.answers.map((x) => x.id));
        for (const line of good) expect(ids.has(line.id)).toBe(true);
      }),
    );
  });
  it("names line and field of what it refuses", () => {
    const parsed = parseLog([
      answer(),
      { ...answer(), outcome: "perfect" },
      7,
      { ...answer(), ms: -1 },
    ]);
    expect(parsed.answers).toHaveLength(1);
    expect(parsed.refused.map((r) => r.index)).toEqual([1, 2, 3]);
    expect(parsed.refused[0]?.reason).toMatch(/^Answer 2, outcome: .+left out\.$/);
    expect(parsed.refused[2]?.reason).toContain("ms");
  });
  it("says in one sentence that something is no log", () => {
    for (const junk of [null, 3, "x", {}, { answers: 4 }]) {
      expect(parseLog(junk).refused[0]?.reason).toMatch(/no list of answers/);
    }
  });
  it("drops keys that are no part of an answer", () => {
    expect(parseLog([{ ...answer({ id: "a" }), name: "a child" }]).answers[0]).not.toHaveProperty(
      "name",
    );
  });
});

describe("dayOf", () => {
  it("is the student's own day", () => {
    const at = Date.UTC(2027, 0, 1, 23, 30);
    expect(dateOfDay(dayOf({ at, offset: 0 }))).toBe("2027-01-01");
    expect(dateOfDay(dayOf({ at, offset: 60 }))).toBe("2027-01-02");
    expect(dateOfDay(dayOf({ at: Date.UTC(2027, 0, 2, 4), offset: -300 }))).toBe("2027-01-01");
  });
  it("agrees with the moment of an hour on that day (property)", () => {
    const offset = fc.integer({ min: -720, max: 840 });
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 40_000 }),
        offset,
        fc.integer({ min: 0, max: 23 }),
        (day, o, hour) => {
          expect(dayOf({ at: momentOf(day, o, hour), offset: o })).toBe(day);
        },
      ),
    );
  });
});

describe("readDate", () => {
  it("reads dates that exist and no others", () => {
    expect(readDate("1970-01-02")).toBe(1);
    expect(readDate("2027-03-01")).toBe(Math.floor(START / DAY));
    expect(readDate("2028-02-29")).not.toBeNull();
    for (const text of ["2027-02-29", "2027-13-01", "2027-3-1", "tomorrow", "", "2027-00-10"]) {
      expect(readDate(text), text).toBeNull();
    }
  });
});
