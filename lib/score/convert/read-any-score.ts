import type { Score } from "../model";
import { type ReadLimits, readScore } from "../read-score";
import { convertScore, needsConversion } from "./convert-score";

/** `readScore` for every format the project opens, those that are converted first included. */
export async function readAnyScore(
  bytes: Uint8Array,
  fileName: string,
  options: Partial<ReadLimits> = {},
): Promise<Score> {
  if (!needsConversion(fileName)) return readScore(bytes, fileName, options);
  const { bytes: mei, warning } = await convertScore(bytes, fileName);
  const score = readScore(mei, fileName, options);
  score.warnings.unshift(warning);
  return score;
}
