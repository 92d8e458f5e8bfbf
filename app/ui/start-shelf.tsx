"use client";
import { useEffect } from "react";
import { ButtonLink, ButtonRow } from "./button";
import { dateWords, daysWords } from "./date-words";
import { Forecast } from "./forecast";
import { Row, Rows } from "./rows";
import styles from "./start-shelf.module.css";
import { usePieces } from "./use-pieces";
import { useSets } from "./use-sets";
import { useToday } from "./use-today";

/** What today asks for the next date, and the pieces of this device. */
export function StartShelf() {
  const { pieces, load } = usePieces();
  const { sets, load: loadSets } = useSets();
  const today = useToday();
  useEffect(() => {
    void load();
    void loadSets();
  }, [load, loadSets]);
  if (!pieces || !sets || !today) return null;

  const [next] = sets
    .filter((s) => s.date !== null && s.date >= today)
    .sort((a, b) => ((a.date ?? "") < (b.date ?? "") ? -1 : 1));
  return (
    <>
      {next?.date ? (
        <section aria-labelledby="next-date">
          <h2 id="next-date" className={styles.label}>
            {next.title}, {dateWords(next.date, today)}
          </h2>
          <p className={styles.days}>{daysWords(next.date)}</p>
          <div className={styles.forecast}>
            <Forecast slugs={next.slugs} date={next.date} minutes={next.minutesADay} />
          </div>
          <ButtonRow>
            <ButtonLink kind="filled" href={`/drill?set=${next.id}`}>
              Drill, {next.minutesADay} min
            </ButtonLink>
            <ButtonLink href={next.pieceId ? `/passage?piece=${next.pieceId}` : "/passage"}>
              One passage
            </ButtonLink>
          </ButtonRow>
        </section>
      ) : null}
      <section aria-labelledby="own-pieces">
        <h2 id="own-pieces" className={styles.label}>
          Your pieces
        </h2>
        <Rows>
          {pieces.map((piece) => (
            <Row
              key={piece.id}
              href={`/piece?id=${piece.id}`}
              lead={<span className={styles.title}>{piece.title}</span>}
              note={`${piece.reading.measures.length} measures`}
            />
          ))}
          <Row
            href="/pieces"
            lead={pieces.length === 0 ? "Open a score, or a demo piece" : "Open another score"}
          />
        </Rows>
      </section>
    </>
  );
}
