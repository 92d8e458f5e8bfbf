/** `npm run -s lookup < LINES`: each query with its five best headwords, best first. */
import { loadGlossary } from "../glossary/load";
import { loadSpellingOrder } from "../glossary/sources";
import { createLookUp } from "../lookup/look-up";
import { makeLookUpIndex } from "../lookup/make-index";
import { readLines } from "./lines";

const lookUp = createLookUp(makeLookUpIndex(loadGlossary().entries, loadSpellingOrder()));
const out = (await readLines(process.stdin)).map(
  (query) =>
    `${query}\t${lookUp(query, 5)
      .map(({ headword }) => headword)
      .join("; ")}`,
);
if (out.length > 0) process.stdout.write(`${out.join("\n")}\n`);
