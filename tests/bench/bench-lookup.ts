import Fuse from "fuse.js";
import MiniSearch from "minisearch";
import type { Entry } from "../../lib/glossary/schema";
import { type Measured, measure, type RightQuery } from "../lookup/measure";
import { OWN_TUNED, OWN_UNTOUCHED } from "../lookup/own-queries";
import { headwords, indexJson } from "../lookup/real-look-up";
import { glossary } from "../reading/read-file";
import { devQueries, LOOKUP_DEV } from "../reference/lookup-dev";
import { hasShared } from "../reference/shared";
import { bestOf, ms, type Row, times } from "./row";

/** Fuse.js over everything takes long: it is timed once, and not asked our own tuned list. */
const RUNS: Readonly<Record<string, number>> = { "Fuse.js": 1, MiniSearch: 3, ours: 3 };
/** What all three search in: the same texts of the same entries. */
const FIELDS = ["headword", "spellings", "abbreviations", "inflections", "meaning", "literal"];

type Find = (query: string) => string[];

/** Rightness and speed of look-up beside Fuse.js as it comes and MiniSearch with its fuzzy and prefix search. */
export async function benchLookup(): Promise<Row[]> {
  const lists: [string, readonly RightQuery[]][] = [
    ["our own queries", OWN_TUNED],
    ["our own queries never tuned to", OWN_UNTOUCHED],
  ];
  if (hasShared(LOOKUP_DEV)) lists.unshift(["lookup-dev.tsv", devQueries()]);
  const others: [string, Find][] = [
    ["Fuse.js", plainFuse(glossary.entries)],
    ["MiniSearch", plainMiniSearch(glossary.entries)],
  ];
  const rows: Row[] = [];
  for (const [name, queries] of lists) {
    const ours = measure(queries, headwords);
    for (const [other, find] of others) {
      if (other === "Fuse.js" && queries === OWN_TUNED) continue;
      rows.push({
        what: `look-up, ${name} (${queries.length}): right first, in three; against ${other}`,
        ours: rightness(ours),
        alternative: rightness(measure(queries, find)),
        ratio: "-",
      });
    }
  }
  const queries = (lists[0]?.[1] ?? []).map(({ query }) => query);
  const mine = slowest(queries, headwords, "ours");
  for (const [other, find] of others) {
    const theirs = slowest(queries, find, other);
    rows.push({
      what: `look-up, ${glossary.entries.length} entries: 95 of 100 queries within, against ${other}`,
      ours: ms(mine),
      alternative: ms(theirs),
      ratio: times(mine, theirs),
    });
  }
  return [...rows, await sizeRow()];
}

function rightness({ all: { rows, first, three } }: Measured): string {
  return `${((100 * first) / rows).toFixed(1)} %, ${((100 * three) / rows).toFixed(1)} %`;
}

/** The 95th percentile of the least disturbed run of each query, milliseconds; all were asked these before. */
function slowest(queries: readonly string[], find: Find, who: string): number {
  const runs = RUNS[who] ?? 1;
  const spent = queries.map((query) => bestOf(runs, () => find(query))).sort((a, b) => a - b);
  return spent[Math.floor((spent.length - 1) * 0.95)] ?? 0;
}

function textsOf(entry: Entry): Record<string, string | string[]> {
  const { headword, meaning, literal = "" } = entry;
  return {
    headword,
    meaning,
    literal,
    spellings: entry.spellings ?? [],
    abbreviations: entry.abbreviations ?? [],
    inflections: entry.inflections ?? [],
    looks: entry.sign?.looks ?? [],
  };
}

function plainFuse(entries: readonly Entry[]): Find {
  const fuse = new Fuse(entries.map(textsOf), { keys: [...FIELDS, "looks"] });
  return (query) => fuse.search(query, { limit: 5 }).map(({ item }) => String(item.headword));
}

function plainMiniSearch(entries: readonly Entry[]): Find {
  const mini = new MiniSearch({
    fields: [...FIELDS, "looks"],
    storeFields: ["headword"],
    extractField: (document, field) => [document[field]].flat().join(" "),
    searchOptions: { fuzzy: 0.2, prefix: true },
  });
  mini.addAll(entries.map((entry, id) => ({ id, ...textsOf(entry) })));
  return (query) =>
    mini
      .search(query)
      .slice(0, 5)
      .map(({ headword }) => String(headword));
}

async function sizeRow(): Promise<Row> {
  const { gzipSync } = await import("node:zlib");
  return {
    what: "look-up index as shipped: compressed, plain",
    ours: `${(gzipSync(indexJson, { level: 9 }).length / 1024).toFixed(1)} KB, ${Math.round(indexJson.length / 1024)} KB`,
    alternative: "-",
    ratio: "-",
  };
}
