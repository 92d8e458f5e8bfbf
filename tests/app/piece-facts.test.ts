import { describe, expect, it } from "vitest";
import { dateWords, daysWords } from "@/app/ui/date-words";
import { durationWords, pieceSlugs, playingTime } from "@/app/ui/piece-facts";
import { measureOfHash, pieceHref } from "@/app/ui/piece-href";
import { refuseLarge } from "@/app/ui/read-in-worker";
import { readDate } from "@/lib/memory/day";
import { MAX_BYTES } from "@/lib/score/limits";
import { articulated, beats, dynamics, metronome, repeat, scoreOf, words } from "./small-score";

describe("playingTime", () => {
  it("reckons measures at the printed number, repeats included", () => {
    // Four quarter notes at 120 a minute are 2 seconds.
    expect(playingTime(scoreOf([metronome(120) + beats, beats]))).toEqual({
      seconds: 4,
      about: false,
    });
    const twice = scoreOf([metronome(120) + repeat("forward") + beats, beats + repeat("backward")]);
    expect(playingTime(twice)?.seconds).toBe(8);
  });

  it("goes by the number before a rit. and says that it is a guess", () => {
    const reading = scoreOf([metronome(60) + beats, words("rit.") + beats]);
    expect(playingTime(reading)).toEqual({ seconds: 8, about: true });
  });

  it("stays silent where any stretch has no number", () => {
    expect(playingTime(scoreOf([words("Allegro") + beats]))).toBeNull();
    expect(playingTime(scoreOf([metronome(60) + beats, words("Lento") + beats]))).toBeNull();
    expect(playingTime(scoreOf([beats]))).toBeNull();
  });

  it("changes its number inside a measure", () => {
    const half = beats.slice(0, beats.length / 2);
    const reading = scoreOf([metronome(60) + half + metronome(120) + half]);
    expect(playingTime(reading)?.seconds).toBe(3);
  });
});

it("durationWords says minutes and seconds", () => {
  expect(durationWords(87.2)).toBe("1 min 27 s");
  expect(durationWords(45)).toBe("45 s");
  expect(durationWords(120)).toBe("2 min");
});

it("pieceSlugs names each entry once, in order of measures", () => {
  const reading = scoreOf([
    words("Allegro") + beats,
    dynamics("f") + articulated("staccato") + dynamics("f") + beats,
  ]);
  expect(pieceSlugs(reading, 0)).toEqual(["allegro", "forte", "staccato-dot"]);
});

it("pieceHref and measureOfHash agree", () => {
  expect(pieceHref("a b", 11)).toBe("/piece?id=a+b#m12");
  expect(measureOfHash("#m12")).toBe(11);
  for (const hash of ["", "#m0", "#m", "#x1", "#m1x"]) expect(measureOfHash(hash)).toBeNull();
});

it("refuseLarge tells size, limit and remedy in one sentence", () => {
  expect(() => refuseLarge({ name: "act.mxl", size: MAX_BYTES })).not.toThrow();
  expect(() => refuseLarge({ name: "act.mxl", size: MAX_BYTES + 1 })).toThrow(
    "act.mxl: the file has 33 MB; expected at most 32 MB. Export single movements or parts and open those.",
  );
});

it("dates are said as people say them", () => {
  const today = readDate("2027-01-14") ?? 0;
  expect(dateWords("2027-02-06", "2027-01-14")).toBe("6 February");
  expect(dateWords("2028-02-06", "2027-01-14")).toBe("6 February 2028");
  expect(
    ["2027-01-13", "2027-01-14", "2027-01-15", "2027-02-06"].map((d) => daysWords(d, today)),
  ).toEqual(["past", "today", "tomorrow", "in 23 days"]);
});
