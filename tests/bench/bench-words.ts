import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { scoreDirections } from "../../lib/cli/score-directions";
import { readWords } from "../../lib/words/match-terms";
import { lexicon } from "../reading/read-file";
import { hasShared, SHARED, sharedText } from "../reference/shared";
import { bestOf, type Row, times } from "./row";

const FILE = "scores/directions-dev.tsv";
const ROUNDS = 200;

/** Speed and rightness of finding terms; `grep -c -F` of one word is the floor for speed. */
export function benchWords(): Row[] {
  if (!hasShared(FILE)) return [];
  const table = sharedText(FILE);
  const lines = table
    .split("\n")
    .slice(1)
    .map((line) => line.split("\t")[0] ?? "");
  const find = (text: string) => readWords(text, lexicon).matches.map((m) => m.headword);
  const { precision, recall } = scoreDirections(table, find);
  const spent = bestOf(3, () => {
    for (let i = 0; i < ROUNDS; i += 1) for (const line of lines) readWords(line, lexicon);
  });
  const plain = [...lexicon.phrases.keys()];
  const naive = bestOf(1, () => {
    for (const line of lines) plain.filter((p) => line.toLowerCase().includes(p));
  });
  const perSecond = (lines.length * ROUNDS * 1000) / spent;
  const naivePerSecond = (lines.length * 1000) / naive;
  return [
    {
      what: "lines a second through match, against trying every spelling",
      ours: Math.round(perSecond).toLocaleString("en"),
      alternative: Math.round(naivePerSecond).toLocaleString("en"),
      ratio: times(1 / perSecond, 1 / naivePerSecond),
    },
    {
      what: "directions-dev.tsv: precision and recall by headword",
      ours: `${precision.toFixed(3)} and ${recall.toFixed(3)}`,
      alternative: naiveScore(table, plain),
      ratio: "-",
    },
  ];
}

/** Every headword that occurs in the text as it is: what a plain search would say. */
function naiveScore(table: string, spellings: readonly string[]): string {
  const { precision, recall } = scoreDirections(table, (text) => {
    const low = text.toLowerCase();
    return spellings
      .filter((s) => s.length > 2 && low.includes(s))
      .map((s) => lexicon.phrases.get(s)?.[0]?.headword ?? "");
  });
  return `${precision.toFixed(3)} and ${recall.toFixed(3)}`;
}

/** Start to finish of the command, for the record. */
export function benchCommand(): Row[] {
  const file = join(SHARED, FILE);
  if (!existsSync(file)) return [];
  const input = readFileSync(file);
  const from = performance.now();
  execFileSync("npx", ["tsx", "lib/cli/match.ts"], { input });
  return [
    {
      what: "npm run match on directions-dev.tsv, start to end",
      ours: `${((performance.now() - from) / 1000).toFixed(1)} s`,
      alternative: "-",
      ratio: "-",
    },
  ];
}
