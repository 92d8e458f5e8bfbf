/**
 * `npm run -s read -- FILE [--at PART:MEASURE:BEAT …] [--staff N]`
 * One JSON object of the whole reading, or one JSON line for each --at.
 */
import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { loadGlossary } from "../glossary/load";
import { loadSpellingOrder } from "../glossary/sources";
import { makeReading } from "../reading/make-reading";
import { readAnyScore } from "../score/convert/read-any-score";
import { ScoreReadError } from "../score/problem";
import { makeLexicon } from "../words/lexicon";
import { BadArgument, parseReadArguments, stateLine } from "./read-at";
import { readingOutput } from "./reading-output";

async function main(argv: readonly string[]): Promise<number> {
  try {
    const { file, places, staff } = parseReadArguments(argv);
    const bytes = openFile(file);
    const glossary = loadGlossary();
    const lexicon = makeLexicon(glossary.entries, loadSpellingOrder());
    const score = await readAnyScore(bytes, basename(file));
    const reading = makeReading(score, lexicon, glossary);
    const lines =
      places.length > 0
        ? places.map((place) => stateLine(reading, place, staff, basename(file)))
        : [readingOutput(reading)];
    process.stdout.write(`${lines.map((line) => JSON.stringify(line)).join("\n")}\n`);
    return 0;
  } catch (error) {
    if (!(error instanceof ScoreReadError || error instanceof BadArgument)) throw error;
    process.stderr.write(`${error.message}\n`);
    return 2;
  }
}

function openFile(file: string): Uint8Array {
  try {
    return readFileSync(file);
  } catch (error) {
    const code = error instanceof Error && "code" in error ? String(error.code) : "";
    const found = code === "ENOENT" ? "no such file" : `it cannot be opened (${code})`;
    throw new BadArgument(`${basename(file)}: ${found}; give the path of a score.`);
  }
}

process.exitCode = await main(process.argv.slice(2));
