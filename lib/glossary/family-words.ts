import type { Entry } from "./schema";
import type { FAMILIES, Kind, Language } from "./vocabulary";

export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = {
  it: "Italian",
  fr: "French",
  de: "German",
  la: "Latin",
  en: "English",
};

/** Where an entry is listed: a language, or the signs. */
export const SHELF_NAMES: Readonly<Record<Language | "signs", string>> = {
  ...LANGUAGE_NAMES,
  signs: "Signs",
};

/** The kinds as the family an entry belongs to, in words that follow a language and a comma. */
export const KIND_WORDS: Readonly<Record<Kind, string>> = {
  tempo: "how fast",
  "tempo-change": "which way the speed goes",
  dynamic: "how loud",
  "dynamic-change": "which way the loudness goes",
  articulation: "how notes are touched",
  character: "what mood",
  technique: "how to produce it",
  ornament: "how to adorn a note",
  navigation: "where next",
  modifier: "how much of the next word",
  form: "what kind of piece or part",
};

/** Whose hands a piece of advice is for. */
export const FAMILY_WORDS: Readonly<Record<(typeof FAMILIES)[number], string>> = {
  all: "On any instrument",
  winds: "On winds",
  strings: "On strings",
  percussion: "On percussion",
  voice: "When singing",
  keyboard: "On keyboards",
};

/** How soon an entry is needed. */
export const TIER_WORDS: Readonly<Record<1 | 2 | 3, string>> = {
  1: "met in most parts",
  2: "met now and then",
  3: "seldom met",
};

/** "Italian, how notes are touched"; a sign has no language of its own. */
export function familyLine(entry: Pick<Entry, "lang" | "kind" | "folder">): string {
  const home = entry.folder === "signs" ? "Sign" : LANGUAGE_NAMES[entry.lang];
  return `${home}, ${KIND_WORDS[entry.kind]}`;
}

/** A meaning as a sentence of its own: capital first, full stop last. */
export function asSentence(text: string): string {
  const first = text.charAt(0).toLocaleUpperCase("en");
  return /[.!?]$/.test(text) ? first + text.slice(1) : `${first}${text.slice(1)}.`;
}
