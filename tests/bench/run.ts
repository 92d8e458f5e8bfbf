/** `npm run bench`: what, this project, the alternative, ratio; all in one run on one machine. */
import { benchCoverage } from "./bench-coverage";
import { benchLookup } from "./bench-lookup";
import { benchReading } from "./bench-reading";
import { benchCommand, benchWords } from "./bench-words";
import type { Row } from "./row";

const rows: Row[] = [
  ...benchWords(),
  ...benchCoverage(),
  ...(await benchLookup()),
  ...(await benchReading()),
  ...benchCommand(),
];
const head: Row = {
  what: "what",
  ours: "this project",
  alternative: "alternative",
  ratio: "ratio",
};
const table = [head, ...rows];
const width = (key: keyof Row) => Math.max(...table.map((row) => row[key].length));
const widths = { what: width("what"), ours: width("ours"), alternative: width("alternative") };
for (const { what, ours, alternative, ratio } of table) {
  console.log(
    `${what.padEnd(widths.what)}  ${ours.padEnd(widths.ours)}  ${alternative.padEnd(widths.alternative)}  ${ratio}`,
  );
}
