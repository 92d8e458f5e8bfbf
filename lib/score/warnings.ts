import type { ScoreWarning } from "./model";

/** Warnings kept of one code; a broken file must not drown the reader. */
const MAX_PER_CODE = 50;

/** Collects warnings in order, each sentence once for a measure and part. */
export class WarningList {
  readonly list: ScoreWarning[] = [];
  private readonly seen = new Set<string>();
  private readonly counts = new Map<string, number>();

  add(warning: ScoreWarning): void {
    const key = `${warning.code}\n${warning.measureNumber}\n${warning.partId}\n${warning.message}`;
    if (this.seen.has(key)) return;
    const count = (this.counts.get(warning.code) ?? 0) + 1;
    this.counts.set(warning.code, count);
    if (count > MAX_PER_CODE) return;
    this.seen.add(key);
    this.list.push(warning);
  }

  /** Adds one line for every code that was cut short. */
  finish(): ScoreWarning[] {
    for (const [code, count] of this.counts) {
      if (count <= MAX_PER_CODE) continue;
      const message = `${count - MAX_PER_CODE} more of the same kind are not listed.`;
      this.list.push({ code, message, measureNumber: null, partId: null });
    }
    return this.list;
  }
}
