/** The look-up over the whole glossary, through the same JSON that is shipped. */
import { loadSpellingOrder } from "../../lib/glossary/sources";
import { createLookUp } from "../../lib/lookup/look-up";
import type { LookUpIndex } from "../../lib/lookup/look-up-index";
import { makeLookUpIndex } from "../../lib/lookup/make-index";
import { glossary } from "../reading/read-file";

export const indexJson = JSON.stringify(makeLookUpIndex(glossary.entries, loadSpellingOrder()));
export const index = JSON.parse(indexJson) as LookUpIndex;
export const lookUp = createLookUp(index);

export function headwords(query: string, limit = 5): string[] {
  return lookUp(query, limit).map(({ headword }) => headword);
}
