/** The outside list of queries with the headwords that answer them. */
import { QUERY_CLASSES, type RightQuery } from "../lookup/measure";
import { sharedTable } from "./shared";

export const LOOKUP_DEV = "reference/lookup-dev.tsv";

export function devQueries(): RightQuery[] {
  return sharedTable(LOOKUP_DEV).map(({ query = "", intended = "", class: name }) => {
    const kind = QUERY_CLASSES.find((k) => k === name);
    if (!kind) throw new Error(`${LOOKUP_DEV}: no class "${name}"`);
    return { query, right: intended.split("; "), kind };
  });
}
