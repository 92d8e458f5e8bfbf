import type { Reading } from "../reading/reading";
import { stateAt } from "../reading/state-at";
import { numberOf } from "./context";
import type { Passage } from "./question";

/** The passage in words, for those who do not see the engraving. Says what is printed, answers nothing more. */
export function describePassage(reading: Reading, passage: Passage): string {
  const { partIndex, staff, from, to } = passage;
  const start = stateAt(reading, partIndex, { measureIndex: from, onset: [0, 1] }, staff);
  const head = `Measures ${numberOf(reading, from)} to ${numberOf(reading, to)}.`;
  const carried = [
    start.tempo?.word,
    start.dynamic?.level,
    ...start.character.map((w) => w.text),
    ...start.technique.map((w) => w.text),
  ].filter((word) => word != null);
  const lines: string[] = [];
  for (let m = from; m <= to; m += 1) {
    const marks = reading.found.filter(
      (f) =>
        f.partIndex === partIndex &&
        f.measureIndex === m &&
        (f.staff === null || f.staff === staff),
    );
    const counts = new Map<string, number>();
    for (const f of marks) {
      const name = f.sign === null ? f.text : f.headword;
      counts.set(name, (counts.get(name) ?? 0) + 1);
    }
    if (counts.size === 0) continue;
    const names = [...counts].map(([name, n]) => (n > 1 ? `${name} (${n} times)` : name));
    lines.push(`Measure ${numberOf(reading, m)}: ${names.join(", ")}.`);
  }
  const force = carried.length > 0 ? ` In force at the first note: ${carried.join(", ")}.` : "";
  return `${head}${force} ${lines.join(" ") || "No sign or word is printed here."}`;
}
