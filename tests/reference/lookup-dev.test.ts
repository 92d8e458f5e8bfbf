/**
 * Queries with the headwords that answer them, from outside the project.
 * @see ../shared/reference/lookup-dev.tsv (its README names the sources)
 */
import { expect, it } from "vitest";
import { describeMeasured, measure } from "../lookup/measure";
import { headwords } from "../lookup/real-look-up";
import { devQueries, LOOKUP_DEV } from "./lookup-dev";
import { hasShared } from "./shared";

it("lookUp › answers the outside queries: first 95 %, in three 99 %, in every class", () => {
  if (!hasShared(LOOKUP_DEV)) return;
  const measured = measure(devQueries(), headwords);
  const missed = measured.missed.map(({ query, got }) => `  ${query.query} → ${got.join("; ")}`);
  console.log(`lookup-dev.tsv\n${describeMeasured(measured)}\nnot first:\n${missed.join("\n")}`);
  for (const { rows, first, three } of [measured.all, ...measured.byClass.values()]) {
    expect(first / rows).toBeGreaterThanOrEqual(0.95);
    expect(three / rows).toBeGreaterThanOrEqual(0.99);
  }
});
