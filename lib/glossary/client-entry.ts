import type { Entry } from "./schema";

/** The part of an entry that every screen and the reader in the browser need. */
export type ClientEntry = Omit<
  Entry,
  "how" | "ipa" | "sources" | "disagree" | "reviewed" | "literal"
>;

/** The glossary as the browser fetches it once and keeps. */
export interface ClientGlossary {
  /** Changes with the content, so that a kept copy is known to be old. */
  version: string;
  entries: ClientEntry[];
  /** For spellings claimed twice: slugs, the likelier first. */
  order: Record<string, string[]>;
}

export function toClientEntry(entry: Entry): ClientEntry {
  const {
    how: _how,
    ipa: _ipa,
    sources: _s,
    disagree: _d,
    reviewed: _r,
    literal: _l,
    ...kept
  } = entry;
  return kept;
}
