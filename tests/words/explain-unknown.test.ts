/** Endings: common practice (grammar of the languages). */
import { expect, it } from "vitest";
import { explainUnknown } from "../../lib/words/explain-unknown";
import { lexicon } from "../reading/read-file";

it("explainUnknown › names the root and what the ending says, as a guess", () => {
  expect(explainUnknown("martellosissimo", lexicon)).toMatchObject({
    lang: "it",
    ending: "very much so",
  });
  expect(explainUnknown("dolcezza", lexicon)).toMatchObject({
    root: { slug: "dolce" },
    ending: "the quality of being so",
  });
});
it("explainUnknown › says nothing of what it cannot tell", () => {
  expect(explainUnknown("xyz", lexicon)).toBeNull();
  expect(explainUnknown("Capo 4th fret", lexicon)).toBeNull();
});
