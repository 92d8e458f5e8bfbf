/** A run of neighbouring measures, by their printed numbers. */
export interface MeasureStretch {
  number: string;
  through: string;
}

interface Numbered {
  index: number;
  number: string;
}

/**
 * Joins measures that follow one another: 9, 10, 11, 20 to 9–11 and 20. An
 * unnumbered measure gets its place from the start in brackets, as editors do.
 * @param indices measures by index, in any order, repeats allowed
 * @param measures of the whole piece, by index
 */
export function measureStretches(
  indices: readonly number[],
  measures: readonly Numbered[],
): MeasureStretch[] {
  const sorted = [...new Set(indices)].sort((a, b) => a - b);
  const runs: { first: number; last: number }[] = [];
  for (const index of sorted) {
    const run = runs.at(-1);
    if (run && run.last === index - 1) run.last = index;
    else runs.push({ first: index, last: index });
  }
  const printed = (index: number) => measures[index]?.number || `[${index + 1}]`;
  return runs.map(({ first, last }) => ({ number: printed(first), through: printed(last) }));
}
