/** Our own measure stays honest: no misspelling of the development lists is written into an entry. */
import { expect, it } from "vitest";
import { fold } from "../../lib/glossary/fold";
import { glossary } from "../reading/read-file";
import { hasShared, sharedTable } from "./shared";

it("glossary › holds no misspelling copied from lookup-dev.tsv", () => {
  if (!hasShared("reference/lookup-dev.tsv")) return;
  const misspelt = new Set(
    sharedTable("reference/lookup-dev.tsv")
      .filter((row) => row.class === "misspelling")
      .map((row) => fold(row.query ?? "")),
  );
  const copied = glossary.entries.flatMap((e) =>
    [...(e.spellings ?? []), ...(e.inflections ?? []), ...(e.abbreviations ?? [])]
      .filter((s) => misspelt.has(fold(s)))
      .map((s) => `${e.slug}: ${s}`),
  );
  expect(copied).toEqual([]);
});
