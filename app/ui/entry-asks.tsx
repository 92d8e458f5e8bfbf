import { AXIS_QUESTIONS, asksInWords } from "@/lib/glossary/asks-words";
import { citeBriefly } from "@/lib/glossary/cite";
import type { Entry } from "@/lib/glossary/schema";
import type { Source } from "@/lib/glossary/sources";
import styles from "./entry-asks.module.css";
import { FactRows } from "./rows";

interface EntryAsksProps {
  entry: Entry;
  sources: ReadonlyMap<string, Source>;
}

/** What the entry asks of the player, axis by axis, in plain words. */
export function EntryAsks({ entry, sources }: EntryAsksProps) {
  const facts = asksInWords(entry.asks).map(({ axis, words }) => ({
    key: axis,
    label: AXIS_QUESTIONS[axis],
    value: words,
  }));
  const ranges = entry.asks.tempo?.ranges ?? [];
  const all =
    ranges.length === 0
      ? facts
      : [
          ...facts,
          {
            key: "ranges",
            label: "beats a minute",
            value: <Ranges ranges={ranges} sources={sources} />,
          },
        ];
  if (all.length === 0) return null;
  return (
    <section aria-labelledby="asks">
      <h2 id="asks">What it asks</h2>
      <FactRows facts={all} />
    </section>
  );
}

type Range = NonNullable<NonNullable<Entry["asks"]["tempo"]>["ranges"]>[number];

function Ranges({
  ranges,
  sources,
}: {
  ranges: readonly Range[];
  sources: ReadonlyMap<string, Source>;
}) {
  const bySpan = new Map<string, string[]>();
  for (const { low, high, source } of ranges) {
    const span = rangeInWords(low, high);
    bySpan.set(span, [...(bySpan.get(span) ?? []), citeBriefly(source, sources)]);
  }
  return (
    <ul>
      {[...bySpan].map(([span, cited]) => (
        <li key={span} className={styles.range}>
          <span className={styles.numbers}>{span}</span>
          <span className={styles.source}>{[...new Set(cited)].join(", ")}</span>
        </li>
      ))}
    </ul>
  );
}

function rangeInWords(low: number | undefined, high: number | undefined): string {
  if (low === undefined) return `up to ${high}`;
  if (high === undefined) return `${low} and up`;
  return low === high ? String(low) : `${low} to ${high}`;
}
