/** Source: ../shared/scores/directions-dev.tsv, directions of open scores (OpenScore, music21 corpus) with the terms in each. */
import { describe, expect, it } from "vitest";
import { scoreDirections } from "../../lib/cli/score-directions";
import { readWords } from "../../lib/words/match-terms";
import { lexicon } from "../reading/read-file";
import { hasShared, sharedText } from "./shared";

const FILE = "scores/directions-dev.tsv";

describe("readWords › directions of open scores", () => {
  it("finds headwords with precision and recall of at least 0.97", () => {
    if (!hasShared(FILE)) return;
    const { precision, recall, mistakes } = scoreDirections(sharedText(FILE), (text) =>
      readWords(text, lexicon).matches.map((m) => m.headword),
    );
    console.log(`directions-dev: precision ${precision.toFixed(3)}, recall ${recall.toFixed(3)}`);
    for (const line of mistakes.slice(0, 10)) console.log(`  ${line}`);
    expect(precision).toBeGreaterThanOrEqual(0.97);
    expect(recall).toBeGreaterThanOrEqual(0.97);
  });
});
