import type { LookUpEntry, LookUpResult, Why } from "./look-up-index";

/** Entries found so far, each with its best score. */
export class Pool {
  readonly #found = new Map<number, { score: number; why: Why }>();

  constructor(readonly entries: readonly LookUpEntry[]) {}

  /** @param at place of the entry */
  add(at: number, score: number, why: Why): void {
    const known = this.#found.get(at);
    if (!known || score > known.score) this.#found.set(at, { score, why });
  }

  set(at: number, score: number, why: Why): void {
    this.#found.set(at, { score, why });
  }

  get best(): number {
    let best = 0;
    for (const { score } of this.#found.values()) best = Math.max(best, score);
    return best;
  }

  *[Symbol.iterator](): Generator<[number, { score: number; why: Why }]> {
    yield* this.#found;
  }

  /** Best first; of entries that share a headword only the best. */
  list(limit: number): LookUpResult[] {
    const ranked = [...this.#found].sort(
      ([a, x], [b, y]) => y.score - x.score || this.#tier(a) - this.#tier(b) || a - b,
    );
    const out: LookUpResult[] = [];
    const seen = new Set<string>();
    for (const [at, { score, why }] of ranked) {
      const entry = this.entries[at];
      if (!entry || seen.has(entry.headword)) continue;
      seen.add(entry.headword);
      out.push({ slug: entry.slug, headword: entry.headword, why, score });
      if (out.length === limit) break;
    }
    return out;
  }

  #tier(at: number): number {
    return this.entries[at]?.tier ?? 3;
  }
}
