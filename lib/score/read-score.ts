import { DEFAULT_LIMITS, type ReadLimits, stopwatch } from "./limits";
import { readMei } from "./mei/read-mei";
import type { Score } from "./model";
import { readMusicXml } from "./musicxml/read-musicxml";
import { openScore } from "./open-score";
import { readText } from "./text/read-text";
import { findRoot, refuseRoot } from "./xml/find-root";

export type { ReadLimits } from "./limits";

/** Words typed with their measure numbers; a longer text is something else. */
const MAX_TYPED_BYTES = 200_000;

/**
 * Reads a score from the bytes of a file: MusicXML (plain or compressed), MEI,
 * or words typed with measure numbers (a name ending in .txt).
 * What it is, is told from the bytes; the name is used for messages.
 *
 * @param options limits other than the stated ones, and a clock in milliseconds
 * @throws ScoreReadError when the file cannot be read, never anything else
 * @example readScore(bytes, "sonatina.musicxml").measures.length // 32
 */
export function readScore(
  bytes: Uint8Array,
  fileName: string,
  options: Partial<ReadLimits> = {},
): Score {
  const limits: ReadLimits = { ...DEFAULT_LIMITS, ...options };
  if (/\.txt$/i.test(fileName) && bytes.length <= MAX_TYPED_BYTES) {
    return readText(new TextDecoder().decode(bytes), fileName);
  }
  const check = stopwatch(fileName, limits);
  const { source, warnings } = openScore(bytes, fileName, limits);
  check();
  const xml = { source, depth: limits.depth, check };
  const root = findRoot(source);
  const score =
    root === "mei"
      ? readMei(xml, limits)
      : root === "score-partwise" || root === "score-timewise" || root === ""
        ? readMusicXml(xml, limits)
        : refuseRoot(root, source.file);
  score.warnings.unshift(...warnings);
  return score;
}
