import { type ScoreProblemCode, ScoreReadError } from "./problem";

/** Largest file, and largest file inside an archive, in bytes. A full orchestral act is about 25 MB. */
export const MAX_BYTES = 32 * 1024 * 1024;
/** All files of an archive together, in bytes once inflated. */
export const MAX_ARCHIVE_BYTES = 64 * 1024 * 1024;
/** Files in one archive. */
export const MAX_ENTRIES = 200;
/** Inflated size over packed size; scores stay below 60, a bomb is near 1000. */
export const MAX_RATIO = 250;
/** Nesting of elements; MusicXML needs 9, MEI with editorial markup about 30. */
export const MAX_DEPTH = 200;
/** Measures of a score; the longest operas have about 10 000. */
export const MAX_MEASURES = 20_000;
/** Parts of a score, and staves of an MEI score; the largest orchestral scores have about 60. */
export const MAX_PARTS = 300;
/** Notes and marks together; a full orchestral act has about 200 000. */
export const MAX_SIGNS = 1_000_000;
/** Time to read, counted only when a clock is given. */
export const MAX_SECONDS = 8;

export interface ReadLimits {
  bytes: number;
  archiveBytes: number;
  entries: number;
  ratio: number;
  depth: number;
  measures: number;
  parts: number;
  signs: number;
  seconds: number;
  /** Clock in milliseconds; without one no time limit applies. */
  now: (() => number) | null;
}

export const DEFAULT_LIMITS: Readonly<ReadLimits> = {
  bytes: MAX_BYTES,
  archiveBytes: MAX_ARCHIVE_BYTES,
  entries: MAX_ENTRIES,
  ratio: MAX_RATIO,
  depth: MAX_DEPTH,
  measures: MAX_MEASURES,
  parts: MAX_PARTS,
  signs: MAX_SIGNS,
  seconds: MAX_SECONDS,
  now: null,
};

/** Builds the error for a file as a whole; the XML layer adds line and column on the way out. */
export function scoreProblem(
  file: string,
  code: ScoreProblemCode,
  words: { found: string; expected: string; remedy: string },
): ScoreReadError {
  return new ScoreReadError({ code, place: { file }, ...words });
}

/**
 * Refuses a score with more of something than its limit.
 * @throws ScoreReadError `too-large` when `count` is over
 */
export function checkCount(
  file: string,
  count: number,
  { limit, things }: { limit: number; things: string },
): void {
  if (count <= limit) return;
  throw scoreProblem(file, "too-large", {
    found: `more than ${limit} ${things}`,
    expected: "a piece of reasonable size",
    remedy: "Export single movements or parts and open those.",
  });
}

/**
 * Returns a check to call now and then; it throws `too-slow` once `limits.seconds`
 * have passed since this call. Does nothing without a clock.
 */
export function stopwatch(file: string, limits: ReadLimits): () => void {
  const { now, seconds } = limits;
  if (now === null) return () => {};
  const end = now() + seconds * 1000;
  return () => {
    if (now() <= end) return;
    throw scoreProblem(file, "too-slow", {
      found: `reading took longer than ${seconds} seconds`,
      expected: "a score that can be read in that time",
      remedy: "Export single movements or single parts and open those.",
    });
  };
}
