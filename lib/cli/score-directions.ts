export interface DirectionScore {
  precision: number;
  recall: number;
  /** One line a direction that was read wrongly. */
  mistakes: string[];
}

/**
 * Precision and recall by headword over a table `text<TAB>headword|kind|lang; …`
 * with one line of column names. Occurrences count, order does not.
 */
export function scoreDirections(table: string, find: (text: string) => string[]): DirectionScore {
  let right = 0;
  let wrong = 0;
  let lost = 0;
  const mistakes: string[] = [];
  for (const line of table.split("\n").slice(1)) {
    if (line === "") continue;
    const [text = "", terms = ""] = line.split("\t");
    const wanted = terms
      .split(";")
      .map((t) => t.trim().split("|")[0] ?? "")
      .filter((t) => t !== "");
    const left = [...wanted];
    const got = find(text);
    let extra = 0;
    for (const headword of got) {
      const at = left.indexOf(headword);
      if (at < 0) extra += 1;
      else left.splice(at, 1);
    }
    right += got.length - extra;
    wrong += extra;
    lost += left.length;
    if (extra > 0 || left.length > 0) {
      mistakes.push(
        `"${text}": expected ${wanted.join(", ") || "nothing"}, read ${got.join(", ") || "nothing"}`,
      );
    }
  }
  return { precision: right / (right + wrong || 1), recall: right / (right + lost || 1), mistakes };
}
