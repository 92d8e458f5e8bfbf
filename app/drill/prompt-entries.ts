import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { WordPromptKind } from "@/lib/memory/prompts/build-prompt";
import type { AlsoRight, PromptEntry } from "@/lib/memory/prompts/prompt-entry";

type Asks = ClientEntry["asks"];

/** An entry as the drill asks about it, with what it demands for telling right answers from wrong. */
export interface DrillEntry extends PromptEntry {
  asks: Asks;
  modifies: string | null;
  isSign: boolean;
}

/**
 * Entries of the glossary as prompts need them.
 * A sign may be named by the word it stands for: the dot answers to "staccato" too.
 * @param isDrawn whether the page has a drawing for a sign that is no glyph (slurs, brackets)
 */
export function drillEntries(
  entries: ReadonlyMap<string, ClientEntry>,
  isDrawn: (slug: string) => boolean,
): DrillEntry[] {
  return [...entries.values()].map((entry) => {
    const means = entry.means === undefined ? undefined : entries.get(entry.means);
    const own = entry.spellings ?? [];
    return {
      slug: entry.slug,
      headword: entry.headword,
      lang: entry.lang,
      kind: entry.kind,
      meaning: entry.meaning,
      spellings: means ? [...own, means.headword, ...(means.spellings ?? [])] : own,
      abbreviations: entry.abbreviations ?? [],
      inflections: entry.inflections ?? [],
      alikes: entry.alikes ?? [],
      glyph: entry.sign
        ? (entry.sign.glyph ?? (isDrawn(entry.slug) ? `drawn ${entry.slug}` : null))
        : null,
      tier: entry.tier,
      asks: entry.asks,
      modifies: entry.modifies ?? null,
      isSign: entry.folder === "signs",
    };
  });
}

/**
 * Kinds of prompt an entry can be asked by. A sign is not asked for by its meaning: its
 * name is what the eye says, and it is asked from the drawing.
 */
export function kindsOf(entry: DrillEntry): WordPromptKind[] {
  const drawn = entry.glyph !== null;
  return [
    "word>meaning",
    ...(entry.isSign ? [] : (["meaning>word"] as const)),
    ...(drawn ? (["sign>name", "name>sign"] as const) : []),
    // The letters of p or sfz are its sign; asking for their full form would ask the same twice.
    ...(entry.abbreviations.length > 0 && !drawn ? (["short>full"] as const) : []),
    ...(entry.alikes.length > 0 ? (["alike"] as const) : []),
  ];
}

/**
 * Rules of what is also right, for one glossary.
 * `same`: the two ask the same of the player, or are drawn alike; either may be written for the other.
 * `implied`: all that the other asks is asked by this one too; among alternatives it would be half right.
 */
export function alsoRightRules(entries: readonly DrillEntry[]): {
  same: AlsoRight;
  implied: AlsoRight;
} {
  const demands = new Map(entries.map((entry) => [entry.slug, demandsOf(entry)]));
  const of = (entry: PromptEntry) => demands.get(entry.slug) ?? new Set<string>();
  const covers = (whole: ReadonlySet<string>, part: ReadonlySet<string>) =>
    part.size > 0 && [...part].every((demand) => whole.has(demand));
  const sameSign = (a: PromptEntry, b: PromptEntry) => a.glyph !== null && a.glyph === b.glyph;
  return {
    same: (a, b) => sameSign(a, b) || (covers(of(a), of(b)) && of(a).size === of(b).size),
    implied: (a, b) => sameSign(a, b) || covers(of(a), of(b)),
  };
}

/** What an entry asks as a set of single demands; metronome ranges are left out, they only illustrate. */
function demandsOf({ asks, modifies }: DrillEntry): Set<string> {
  const demands = new Set<string>();
  if (modifies !== null && modifies !== "link") demands.add(`modifies ${modifies}`);
  for (const [axis, asked] of Object.entries(asks)) {
    if (Array.isArray(asked)) for (const one of asked) demands.add(`${axis} ${one}`);
    else {
      for (const [what, value] of Object.entries(asked)) {
        if (what !== "ranges") demands.add(`${axis} ${what} ${String(value)}`);
      }
    }
  }
  return demands;
}
