/** `npm run check:content [-- FOLDER] [--fix]`: every problem of the entries at once, with file, line and remedy. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import matter from "gray-matter";
import { checkContent } from "../glossary/check-content";
import { ENTRIES_FOLDER, listEntryFiles, parseAllEntries } from "../glossary/load";
import { frontMatterSchema } from "../glossary/schema";
import { SMUFL_CODEPOINTS } from "../glossary/smufl";
import { loadSharedSpellings, loadSourceKeys } from "../glossary/sources";

if (process.argv.includes("--fix")) fixKeyOrder();
const only = process.argv.slice(2).find((arg) => !arg.startsWith("--"));
const parsed = parseAllEntries();
const problems = checkContent(parsed, {
  sourceKeys: loadSourceKeys(),
  glyphNames: new Set(Object.keys(SMUFL_CODEPOINTS)),
  sharedSpellings: loadSharedSpellings(),
}).filter((p) => !only || `content/entries/${p.file}`.startsWith(only.replace(/\/$/, "")));
for (const { file, line, found, remedy } of problems) {
  console.log(`content/entries/${file}:${line}: ${found}. ${remedy}`);
}
console.log(`${parsed.length} entries, ${problems.length} problems`);
process.exitCode = problems.length > 0 ? 1 : 0;

/** Only the order of keys is mended by machine; all else needs a head. */
function fixKeyOrder(): void {
  const order = Object.keys(frontMatterSchema.shape);
  for (const file of listEntryFiles()) {
    const path = join(ENTRIES_FOLDER, file);
    if (!existsSync(path)) continue;
    const source = readFileSync(path, "utf8");
    const block = /^---\n([\s\S]*?)\n---\n?/.exec(source);
    if (!block?.[1]) continue;
    const keys = Object.keys(matter(source, {}).data);
    const wanted = order.filter((key) => keys.includes(key));
    if (keys.join() === wanted.join() || wanted.length !== keys.length) continue;
    const chunks = block[1].split(/\n(?=[a-z]+:)/);
    const sorted = wanted.map((key) => chunks.find((c) => c.startsWith(`${key}:`)) ?? "");
    writeFileSync(
      path,
      source.replace(block[1], () => sorted.join("\n")),
    );
  }
}
