/** Chance as an argument: a number in [0, 1), the next at each call. */
export type Random = () => number;

/**
 * Seeded generator, the same sequence on every machine.
 *
 * @param seed a number or a text; equal seeds give equal sequences
 * @see 32-bit state with a Weyl increment and two multiply-xorshift rounds (from memory: "mulberry32");
 *   texts are folded by FNV-1a
 */
export function createRandom(seed: number | string): Random {
  let state = typeof seed === "number" ? mixNumber(seed) : hashText(seed);
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** FNV-1a, 32 bits, over UTF-16 units. */
export function hashText(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i += 1) {
    hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  }
  return hash >>> 0;
}

function mixNumber(seed: number): number {
  return Number.isSafeInteger(seed) && Math.abs(seed) < 2 ** 31
    ? seed >>> 0
    : hashText(String(seed));
}

/** A new array in random order (Fisher and Yates). */
export function shuffle<T>(items: readonly T[], random: Random): T[] {
  const out = [...items];
  for (let i = out.length - 1; i > 0; i -= 1) {
    const j = Math.floor(random() * (i + 1));
    const a = out[i];
    const b = out[j];
    if (a === undefined || b === undefined) continue;
    out[i] = b;
    out[j] = a;
  }
  return out;
}
