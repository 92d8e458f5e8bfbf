/** Words of a meaning that say nothing by themselves. */
const EMPTY = new Set(
  `a an the and or of to in on at by for from with as is are be it its this that than then so
   but not into out up down one you your play played playing note notes music passage piece
   sound manner way style get getting become becoming very more little bit much`.split(/\s+/),
);

/** Degree words that turn a meaning into another, kept as content. */
const DEGREES = new Set(["very", "more", "little", "much", "not"]);

/**
 * Content words of a meaning, in one form for singular and adverb.
 *
 * @example keyWords("gradually getting slower") // Set { "gradual", "slower" }
 */
export function keyWords(meaning: string): Set<string> {
  const words = meaning
    .normalize("NFKD")
    .toLowerCase()
    .replace(/\p{M}/gu, "")
    .split(/[^a-z]+/)
    .filter((word) => word.length > 0 && (!EMPTY.has(word) || DEGREES.has(word)));
  return new Set(words.map(stem));
}

/** Adverbs and plurals fold together; comparatives do not: slow is not slower. */
function stem(word: string): string {
  if (word.length > 5 && word.endsWith("ily")) return `${word.slice(0, -3)}y`;
  if (word.length > 4 && word.endsWith("ly")) return word.slice(0, -2);
  if (word.length > 3 && word.endsWith("s") && !word.endsWith("ss")) return word.slice(0, -1);
  return word;
}

/** How many words two meanings share, against the shorter and the longer of them; 0 when one is empty. */
export function sharedShare(
  first: ReadonlySet<string>,
  second: ReadonlySet<string>,
): { ofShorter: number; ofLonger: number } {
  const shorter = Math.min(first.size, second.size);
  if (shorter === 0) return { ofShorter: 0, ofLonger: 0 };
  let shared = 0;
  for (const word of first) if (second.has(word)) shared += 1;
  return { ofShorter: shared / shorter, ofLonger: shared / Math.max(first.size, second.size) };
}

/** The same content words, whatever their order; two empty sets are not the same. */
export function sameWords(first: ReadonlySet<string>, second: ReadonlySet<string>): boolean {
  return sharedShare(first, second).ofLonger === 1;
}
