import { BY_THE_WAY } from "./english-table";
import type { LookUpEntry } from "./look-up-index";
import { readAsks, readEnglish, type Sense } from "./read-english";

/** A text that describes an entry: what it means, one way it looks, or all its looks together. */
export interface Description {
  by: "meaning" | "looks";
  /** Highest score it may give. */
  most: number;
  /** 0 to 1: how much saying more than was asked counts against it. */
  strict: number;
  says: Sense[];
}

/** How much saying more than was asked counts against one text, and against all texts together. */
const STRICT = 0.4;
const LAX = 0.1;
/** The greatest scores of texts that tell only a part, or all at once. */
const GIST_ALONE = 0.95;
const LITERAL_ALONE = 0.8;
const ALL_LOOKS = 0.8;
const EVERYTHING = 0.72;
/** What the entry's own data asks is surer than what its words seem to say. */
const GIST = 0.93;
/** What follows the first comma or semicolon explains; the gist stands before it. */
const AFTER_GIST = 0.8;
const LITERAL = 0.9;
const NAME = 0.5;
/** What "above", say, adds when no look mentions the place. */
const PLACE = 0.4;
/** Share of what explains that counts as said besides. */
const EXPLAINING = 0.5;
const GIST_ENDS = /[;:]|,(?! (?:then|and|but|or|yet)\b)/;
const SETTING = /^(?:(?:on|for|in) (?:the )?\w+|brass|horn|organ|strings|winds)$/;
/** A literal sense that is a phrase (with fire) says more than a root (forced). */
const PHRASE = /^(?:with|without|in|at|on|to|from|by|like|as|not) /;

/** The whole meaning; its gist and each literal sense alone; each look; the looks together. */
export function describeEntry(entry: LookUpEntry): Description[] {
  const [gist, rest] = splitGist(entry.meaning);
  const gistSays = readEnglish(gist);
  const literals = (entry.literal ?? "")
    .split(/[,;(]/)
    .filter((words) => words.trim() !== "")
    .map((words) => ({ says: readEnglish(words), isPhrase: PHRASE.test(words.trim()) }));
  const named = entry.lang === "en" || entry.isSign;
  const meaning = [
    ...scaled(gistSays, GIST),
    ...scaled(readEnglish(rest), AFTER_GIST, EXPLAINING),
    ...literals.flatMap(({ says }) => scaled(says, LITERAL, EXPLAINING)),
    ...readAsks(entry.asks ?? []),
    ...scaled(named ? readEnglish(entry.headword) : [], NAME),
  ];
  const texts: Description[] = [{ by: "meaning", most: 1, strict: STRICT, says: meaning }];
  // The gist of a compound is only its first half.
  if (!entry.isComposed) {
    texts.push({ by: "meaning", most: GIST_ALONE, strict: STRICT, says: gistSays });
  }
  for (const { says, isPhrase } of literals) {
    const most = isPhrase ? GIST_ALONE : LITERAL_ALONE;
    texts.push({ by: "meaning", most, strict: STRICT, says });
  }
  return entry.looks ? [...texts, ...describeLooks(entry, entry.looks, meaning)] : texts;
}

function describeLooks(
  { stands, shape }: LookUpEntry,
  lookTexts: readonly string[],
  meaning: readonly Sense[],
): Description[] {
  const where = readEnglish(`${stands?.replaceAll("-", " ") ?? ""} ${shape ?? ""}`);
  const place = scaled(where, PLACE);
  const looks = lookTexts.map(readLook);
  const all = [...place, ...looks.flat()];
  return [
    ...looks.map(
      (look): Description => ({
        by: "looks",
        most: 1,
        strict: STRICT,
        says: [...look, ...place],
      }),
    ),
    { by: "looks", most: ALL_LOOKS, strict: LAX, says: all },
    { by: "looks", most: EVERYTHING, strict: LAX, says: [...all, ...meaning] },
  ];
}

/** The gist of a meaning and what explains it; a setting ("on the piano,") is no gist. */
function splitGist(meaning: string): [string, string] {
  const [gist = "", ...rest] = meaning.split(GIST_ENDS);
  return SETTING.test(gist) ? [meaning, ""] : [gist, rest.join(",")];
}

function scaled(senses: readonly Sense[], share: number, bulk?: number): Sense[] {
  return senses.map(({ names, weight }) => ({ names, weight: weight * share, bulk }));
}

/** Sizes and sides of a sign are mentioned or not as it happens. */
function readLook(look: string): Sense[] {
  return readEnglish(look).map(({ names, weight }) => ({
    names,
    weight,
    bulk: names.some((name) => BY_THE_WAY.has(name)) ? 0.4 : undefined,
  }));
}
