import { memo } from "react";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { Reading } from "@/lib/reading/reading";
import { leadInWords, leadOf } from "./mark-lead";
import { measureName } from "./measure-name";
import { waysOn, wayWords } from "./playing-words";
import { isTelling, type PrintedMark } from "./printed-marks";

interface RibbonInWordsProps {
  reading: Reading;
  marks: readonly PrintedMark[];
  entryOf(slug: string | null): ClientEntry | undefined;
}

/** The ribbon for the ears: every measure in which something is printed, and what. */
export const RibbonInWords = memo(function RibbonInWords(props: RibbonInWordsProps) {
  const { reading, marks, entryOf } = props;
  const ways = waysOn(reading);
  const lines = reading.measures.flatMap(({ index }) => {
    const here = marks.filter((m) => m.measureIndex === index && isTelling(m));
    const names = here.map((mark) => {
      return leadInWords(leadOf(mark, { entryOf, reading }));
    });
    const way = ways.get(index);
    if (way) names.push(`then ${wayWords(index, way, reading.measures)}`);
    return names.length === 0 ? [] : [{ index, words: [...new Set(names)].join(", ") }];
  });
  return (
    <div className="aside-for-ears">
      <h2>The ribbon in words</h2>
      <ol>
        {lines.map(({ index, words }) => (
          <li key={index}>
            Measure {measureName(reading.measures, index)}: {words}
          </li>
        ))}
      </ol>
    </div>
  );
});
