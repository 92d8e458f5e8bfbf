/** Makes what the browser fetches from the content: `public/data` and `public/pieces`. Run before a build. */
import { createHash } from "node:crypto";
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { type ClientGlossary, toClientEntry } from "../glossary/client-entry";
import { loadGlossary } from "../glossary/load";
import { loadPieces } from "../glossary/pieces";
import { loadSpellingOrder } from "../glossary/sources";
import { makeLookUpIndex } from "../lookup/make-index";

const DATA = join("public", "data");
const PIECES = join("public", "pieces");

const entries = loadGlossary().entries.map(toClientEntry);
const order = Object.fromEntries(loadSpellingOrder());
const version = createHash("sha256")
  .update(JSON.stringify([entries, order]))
  .digest("hex")
  .slice(0, 12);
const glossary: ClientGlossary = { version, entries, order };

for (const folder of [DATA, PIECES]) {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
}
writeJson(join(DATA, "glossary.json"), glossary);
writeJson(join(DATA, "lookup.json"), makeLookUpIndex(loadGlossary().entries, loadSpellingOrder()));
writeJson(join(PIECES, "index.json"), loadPieces());
for (const file of existsSync("content/pieces") ? readdirSync("content/pieces") : []) {
  if (file.endsWith(".musicxml")) cpSync(join("content/pieces", file), join(PIECES, file));
}
console.log(`content: ${entries.length} entries, version ${version}`);

function writeJson(file: string, value: unknown): void {
  writeFileSync(file, JSON.stringify(value));
  console.log(`${file}: ${Math.round(readFileSync(file).length / 1024)} KB`);
}
