import { soundClass } from "./sound-key";

const VOWELS = "aeiou";
const CHEAP = 0.4;
/** Pairs that one English letter may stand for: hard and soft g and c, ch as in chord. */
const ONE_LETTER = new Set(["gJ", "Jg", "kC", "Ck", "ks", "sk", "yJ", "Jy"]);
const LETTERS = "aeioupbtdkgfvwslrmnhySCJzx";
const SIZE = LETTERS.length;

function changeCost(a: string, b: string): number {
  if (a === b) return 0;
  const vowels = (VOWELS.includes(a) ? 1 : 0) + (VOWELS.includes(b) ? 1 : 0);
  if (vowels === 2) return CHEAP;
  if (a + b === "yi" || a + b === "iy") return 0.1;
  if (a + b === "sz" || a + b === "zs") return 0.2;
  if (ONE_LETTER.has(a + b)) return CHEAP;
  const kind = soundClass(a);
  return vowels === 0 && kind !== undefined && kind === soundClass(b) ? CHEAP : 1;
}

/** Letters easily not heard, or heard where there are none. */
function dropCost(letter: string): number {
  if (letter === "h" || letter === "e") return CHEAP;
  if (VOWELS.includes(letter) || letter === "y" || letter === "w") return 0.6;
  return "nrtsz".includes(letter) ? 0.7 : 1;
}

/** The costs above as tables, since thousands are asked for at each key. */
const CHANGE = Float64Array.from({ length: SIZE * SIZE }, (_, i) =>
  changeCost(LETTERS[Math.floor(i / SIZE)] ?? "", LETTERS[i % SIZE] ?? ""),
);
const DROP = Float64Array.from({ length: SIZE }, (_, i) => dropCost(LETTERS[i] ?? ""));

/** A sound as places in the tables. */
export type SoundCode = Uint8Array;

export function codeOf(sound: string): SoundCode {
  const known = [...sound].map((letter) => LETTERS.indexOf(letter)).filter((at) => at >= 0);
  return Uint8Array.from(known);
}

/** Weighted edit distance of two sounds: mishearings cost less than other changes. */
export function soundDistance(a: SoundCode, b: SoundCode): number {
  let row = new Float64Array(b.length + 1);
  let next = new Float64Array(b.length + 1);
  for (let j = 1; j <= b.length; j += 1) row[j] = (row[j - 1] ?? 0) + (DROP[b[j - 1] ?? 0] ?? 1);
  for (let i = 1; i <= a.length; i += 1) {
    const letter = a[i - 1] ?? 0;
    const drop = DROP[letter] ?? 1;
    next[0] = (row[0] ?? 0) + drop;
    for (let j = 1; j <= b.length; j += 1) {
      const other = b[j - 1] ?? 0;
      const gone = (row[j] ?? 0) + drop;
      const come = (next[j - 1] ?? 0) + (DROP[other] ?? 1);
      const changed = (row[j - 1] ?? 0) + (CHANGE[letter * SIZE + other] ?? 1);
      next[j] = Math.min(gone, come, changed);
    }
    [row, next] = [next, row];
  }
  return row[b.length] ?? 0;
}

/** 1 for the same sound, 0 for nothing in common. */
export function soundLikeness(a: SoundCode, b: SoundCode): number {
  const longest = Math.max(a.length, b.length);
  return longest === 0 ? 0 : Math.max(0, 1 - soundDistance(a, b) / longest);
}
