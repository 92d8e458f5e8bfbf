/** One line of the bench table. */
export interface Row {
  what: string;
  ours: string;
  alternative: string;
  ratio: string;
}

/** Best of several runs, milliseconds: the machine is shared, so the least disturbed run counts. */
export function bestOf(runs: number, work: () => void): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < runs; i += 1) {
    const from = performance.now();
    work();
    best = Math.min(best, performance.now() - from);
  }
  return best;
}

export function ms(value: number): string {
  return `${value < 10 ? value.toFixed(2) : Math.round(value)} ms`;
}

export function times(ours: number, theirs: number): string {
  const ratio = theirs / ours;
  return ratio >= 1 ? `${ratio.toFixed(1)} times faster` : `${(1 / ratio).toFixed(1)} times slower`;
}
