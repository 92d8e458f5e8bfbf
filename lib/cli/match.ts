/** `npm run -s match < LINES`: each line with the terms found in it. */
import { loadGlossary } from "../glossary/load";
import { loadSpellingOrder } from "../glossary/sources";
import { makeLexicon } from "../words/lexicon";
import { readWords } from "../words/match-terms";
import { readLines } from "./lines";

const lexicon = makeLexicon(loadGlossary().entries, loadSpellingOrder());
const out: string[] = [];
for (const line of await readLines(process.stdin)) {
  const { matches } = readWords(line, lexicon);
  out.push(`${line}\t${matches.map((m) => `${m.headword}|${m.kind}|${m.lang}`).join("; ")}`);
}
if (out.length > 0) process.stdout.write(`${out.join("\n")}\n`);
