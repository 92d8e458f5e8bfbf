import { useMemo } from "react";
import type { PieceRecord, SetRecord } from "@/lib/store/records";
import { dateWords, daysWords } from "../ui/date-words";
import { counted, partName, pieceSlugs } from "../ui/piece-facts";
import { pieceHref } from "../ui/piece-href";
import { Row, Rows } from "../ui/rows";
import styles from "./page.module.css";

interface PieceRowsProps {
  pieces: readonly PieceRecord[];
  sets: readonly SetRecord[];
}

/** The pieces of this device, each with its part, its size and its date. */
export function PieceRows({ pieces, sets }: PieceRowsProps) {
  return (
    <Rows>
      {pieces.map((piece) => (
        <PieceRow key={piece.id} piece={piece} date={nextDate(piece, sets)} />
      ))}
    </Rows>
  );
}

function PieceRow({ piece, date }: { piece: PieceRecord; date: string | null }) {
  const { reading, partIndex } = piece;
  const entries = useMemo(() => pieceSlugs(reading, partIndex).length, [reading, partIndex]);
  const facts = [
    partName(reading, partIndex),
    counted(reading.measures.length, "measure"),
    counted(entries, "word or sign", "words and signs"),
  ];
  return (
    <Row
      href={pieceHref(piece.id)}
      lead={<span className={styles.title}>{piece.title}</span>}
      note={
        <>
          {facts.join(", ")}
          {date === null ? null : (
            <span className={styles.date}>
              {dateWords(date)}, {daysWords(date)}
            </span>
          )}
        </>
      }
      noteAt="below"
    />
  );
}

/** The next date of the piece's sets; a date gone by only where no other stands. */
function nextDate(piece: PieceRecord, sets: readonly SetRecord[]): string | null {
  const dates = sets
    .filter((s) => s.pieceId === piece.id)
    .flatMap((s) => s.date ?? [])
    .sort();
  return dates.find((date) => daysWords(date) !== "past") ?? dates.at(-1) ?? null;
}
