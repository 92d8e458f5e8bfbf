import { loadGlossary } from "../../lib/glossary/load";
import { loadSpellingOrder } from "../../lib/glossary/sources";
import { makeReading } from "../../lib/reading/make-reading";
import type { Reading } from "../../lib/reading/reading";
import { readScore } from "../../lib/score/read-score";
import { makeLexicon } from "../../lib/words/lexicon";

export const glossary = loadGlossary();
export const lexicon = makeLexicon(glossary.entries, loadSpellingOrder());

export function readBytes(bytes: Uint8Array, name = "test.musicxml"): Reading {
  return makeReading(readScore(bytes, name), lexicon, glossary);
}

export function readXml(xml: string): Reading {
  return readBytes(new TextEncoder().encode(xml));
}
