/** Words whose ending is no ending. */
const WHOLE = new Set(
  (
    "bass glass cross press across less this is was its as us always lens plus brass miss pass " +
    "speed need feed seed red bed head lead bleed weed " +
    "king ring sing thing string spring bring wing swing during evening ending nothing something " +
    "lively only early family july reply holy ugly friendly lovely " +
    "joyful playful restful business very every hardly nearly mostly " +
    "really slowly slowing opening closing longing meaning marking pointed pointing setting"
  ).split(" "),
);

/**
 * The stem of an English word, so that "joined", "joining" and "joins" meet.
 * Comparatives keep their ending: slower is another demand than slow.
 * @param word folded
 */
export function stem(word: string): string {
  if (word.length < 4 || WHOLE.has(word)) return word;
  let known = stems.get(word);
  if (known === undefined) {
    known = cut(word);
    if (stems.size < STEMS_LIMIT) stems.set(word, known);
  }
  return known;
}

const stems = new Map<string, string>();
const STEMS_LIMIT = 10_000;

function cut(word: string): string {
  let out = word;
  if (out.endsWith("'s")) out = out.slice(0, -2);
  if (out.endsWith("sses")) out = out.slice(0, -2);
  else if (out.endsWith("ies") && out.length > 4) out = `${out.slice(0, -3)}y`;
  else if (/(?:ch|sh|x|z)es$/.test(out)) out = out.slice(0, -2);
  else if (/[^siu]s$/.test(out)) out = out.slice(0, -1);
  if (WHOLE.has(out)) return out;
  if (out.endsWith("ness") && out.length > 6) out = out.slice(0, -4);
  if (out.endsWith("ily") && out.length > 5) out = `${out.slice(0, -3)}y`;
  else if (out.endsWith("ly") && out.length > 4) out = out.slice(0, -2);
  if (WHOLE.has(out)) return out;
  if (out.endsWith("ful") && out.length > 6) out = out.slice(0, -3);
  const bare = /^(.*[aeiouy].*)(?:ing|ed)$/.exec(out)?.[1];
  if (bare !== undefined && bare.length > 2) out = undouble(bare);
  return out.length > 4 && out.endsWith("e") ? out.slice(0, -1) : out;
}

/** "stopp" to "stop", but "roll" and "pass" stay. */
function undouble(word: string): string {
  return /([bdgmnprt])\1$/.test(word) ? word.slice(0, -1) : word;
}
