/// <reference lib="webworker" />
/** Reads one score off the page's own thread. It has no network and sends nothing but the reading back. */
import type { ClientGlossary } from "@/lib/glossary/client-entry";
import { type Glossary, makeGlossary } from "@/lib/glossary/glossary";
import { makeReading } from "@/lib/reading/make-reading";
import { readAnyScore } from "@/lib/score/convert/read-any-score";
import { ScoreReadError } from "@/lib/score/problem";
import { makeLexicon } from "@/lib/words/lexicon";
import type { FromReader, ToReader } from "./reading-messages";

const say = (message: FromReader) => self.postMessage(message);

self.addEventListener("message", async ({ data }: MessageEvent<ToReader>) => {
  const { bytes, fileName, glossary } = data;
  try {
    say({ type: "reading" });
    const score = await readAnyScore(bytes, fileName, { now: () => performance.now() });
    const lexicon = makeLexicon(glossary.entries, new Map(Object.entries(glossary.order)));
    say({ type: "done", reading: makeReading(score, lexicon, wholeGlossary(glossary)) });
  } catch (error) {
    if (error instanceof ScoreReadError) say({ type: "refused", sentence: error.message });
    else throw error;
  }
});

/** The reader asks only what the browser has: sources and review dates stay with the entry's own page. */
function wholeGlossary({ entries }: ClientGlossary): Glossary {
  return makeGlossary(entries.map((entry) => ({ ...entry, sources: [], reviewed: "" })));
}
