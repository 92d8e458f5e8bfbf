import { useMemo } from "react";
import type { PieceRecord, SetRecord } from "@/lib/store/records";
import { dateWords, daysWords } from "../ui/date-words";
import { counted, durationWords, partName, pieceSlugs, playingTime } from "../ui/piece-facts";
import styles from "./page.module.css";
import { useSteps } from "./use-steps";

/** Whose part, when; the title; and the facts of the piece in one line. */
export function PieceHead({ piece, set }: { piece: PieceRecord; set: SetRecord | null }) {
  const { reading, partIndex } = piece;
  const slugs = useMemo(() => pieceSlugs(reading, partIndex), [reading, partIndex]);
  const time = useMemo(() => playingTime(reading), [reading]);
  const steps = useSteps(slugs, set?.date ?? null);
  const facts = [
    counted(reading.measures.length, "measure"),
    ...(time
      ? [`${time.about ? "about " : ""}${durationWords(time.seconds)} at the printed tempo`]
      : []),
  ];
  const entries = counted(slugs.length, "word or sign", "words and signs");
  const date = set?.date ?? null;
  return (
    <header className={styles.head}>
      <p className="lane-name">
        {partName(reading, partIndex)}
        {date === null ? null : `, ${dateWords(date)}, ${daysWords(date)}`}
      </p>
      <h1>{piece.title}</h1>
      <p className="small soft">
        {facts.join(", ")}. {entries.charAt(0).toUpperCase()}
        {entries.slice(1)}
        {steps === null ? "." : `: ${steps}.`}
      </p>
    </header>
  );
}
