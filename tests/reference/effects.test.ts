/** Source: ../shared/reference/terms-dev.tsv, column effect (compiled from ABRSM, NZMEB, Gehrkens, GCIDE, LilyPond and others, per row). */
import { describe, expect, it } from "vitest";
import { effectsOf } from "../../lib/glossary/effect-of";
import { glossary } from "../reading/read-file";
import { hasShared, sharedTable } from "./shared";

/** Where an entry says otherwise than the list, and why. */
const REASONS: Record<string, string> = {
  "andante sostenuto": "the list calls the speed steady; that the notes are held is said besides",
  "doppio movimento": "twice as fast is a proportion, which says more than faster at once",
};

const FILE = "reference/terms-dev.tsv";
const rows = hasShared(FILE) ? sharedTable(FILE) : [];

describe("glossary › against the reference list", () => {
  it("has an entry for every row", () => {
    const missing = rows.filter(
      (row) =>
        !glossary.entries.some((e) => e.headword === row.headword && e.lang === row.language),
    );
    expect(missing.map((row) => row.headword)).toEqual([]);
  });
  it("agrees in effect, or says why not", () => {
    const differs: string[] = [];
    for (const { headword = "", language, effect = "" } of rows) {
      const entry = glossary.entries.find((e) => e.headword === headword && e.lang === language);
      const ours: readonly string[] = entry ? effectsOf(entry.asks) : [];
      if (!entry || ours.includes(effect)) continue;
      console.log(
        `${headword}: list ${effect}, entry ${ours.join(" or ")}: ${REASONS[headword] ?? "no reason given"}`,
      );
      if (!REASONS[headword]) differs.push(headword);
    }
    expect(differs).toEqual([]);
  });
  it("keeps kind and tier of the list's tier 1", () => {
    for (const { headword, language, tier, kind } of rows) {
      if (tier !== "1") continue;
      const entry = glossary.entries.find((e) => e.headword === headword && e.lang === language);
      expect([entry?.tier, entry?.kind], headword).toEqual([
        1,
        kind === "form/rhythm" ? "form" : kind,
      ]);
    }
  });
});
