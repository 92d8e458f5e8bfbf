import { decodeChunks } from "./decode-text";
import { DEFAULT_LIMITS } from "./limits";
import { openScore } from "./open-score";

/**
 * The text of a score, for an engraver.
 * @throws ScoreReadError as `readScore` does
 */
export function scoreText(bytes: Uint8Array, fileName: string): string {
  return [...decodeChunks(openScore(bytes, fileName, DEFAULT_LIMITS).source)].join("");
}

const PART = /<part(?=[\s>])[^>]*>[\s\S]*?<\/part\s*>/g;
const SCORE_PART = /<score-part(?=[\s>])[^>]*>[\s\S]*?<\/score-part\s*>/g;
const PART_GROUP = /<part-group(?=[\s>])[^>]*?(?:\/>|>[\s\S]*?<\/part-group\s*>)/g;

const PART_NAMES =
  /<part-(name|abbreviation)(?:-display)?(?=[\s>])[^>]*>[\s\S]*?<\/part-\1(?:-display)?\s*>/g;

/** Leaves the names of the parts out: in an excerpt of one's own part they only take room. */
export function withoutPartNames(xml: string): string {
  return xml.replace(PART_NAMES, (_, kind) => (kind === "name" ? "<part-name></part-name>" : ""));
}

/**
 * A partwise MusicXML text with one part alone, so that only the player's own
 * line is engraved. Any other text, and an index out of range, comes back whole.
 * @param partIndex from 0, in document order
 */
export function onePart(xml: string, partIndex: number): string {
  const parts = xml.match(PART)?.length ?? 0;
  if (parts < 2 || partIndex >= parts) return xml;
  const keep = (pattern: RegExp, text: string) => {
    let at = -1;
    return text.replace(pattern, (whole) => {
      at += 1;
      return at === partIndex ? whole : "";
    });
  };
  return keep(PART, keep(SCORE_PART, xml)).replace(PART_GROUP, "");
}
