/**
 * Damerau-Levenshtein distance in its restricted form: insertions, deletions, substitutions and
 * swaps of neighbours, no letter edited twice.
 *
 * @param limit stop counting above it
 * @returns edits, or `limit + 1` when there are more
 * @see Damerau 1964, CACM 7(3):171-176; Levenshtein 1966 (from memory)
 * @example editDistance("adagoi", "adagio") // 1
 */
export function editDistance(
  a: string,
  b: string,
  limit: number = Number.POSITIVE_INFINITY,
): number {
  const first = [...a];
  const second = [...b];
  if (Math.abs(first.length - second.length) > limit) return limit + 1;
  let before: number[] = [];
  let above = Array.from({ length: second.length + 1 }, (_, j) => j);
  for (let i = 1; i <= first.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= second.length; j += 1) {
      const same = first[i - 1] === second[j - 1];
      let best = Math.min(at(above, j) + 1, at(row, j - 1) + 1, at(above, j - 1) + (same ? 0 : 1));
      if (i > 1 && j > 1 && first[i - 1] === second[j - 2] && first[i - 2] === second[j - 1]) {
        best = Math.min(best, at(before, j - 2) + 1);
      }
      row.push(best);
    }
    before = above;
    above = row;
  }
  const distance = at(above, second.length);
  return distance > limit ? limit + 1 : distance;
}

function at(row: readonly number[], index: number): number {
  return row[index] ?? Number.POSITIVE_INFINITY;
}
