"use client";
import { useSearchParams } from "next/navigation";
import { useEffect } from "react";
import { ButtonLink } from "../ui/button";
import { Notice } from "../ui/notice";
import { Progress } from "../ui/progress";
import { Row, Rows } from "../ui/rows";
import { useGlossary } from "../ui/use-glossary";
import { useLog } from "../ui/use-log";
import { usePieces } from "../ui/use-pieces";
import styles from "./passage.module.css";
import { PassageRound } from "./passage-round";

/** Chooses the piece, then asks what its passages ask for. */
export function PassageScreen() {
  const params = useSearchParams();
  const id = params.get("piece");
  const at = Number(params.get("at") ?? Number.NaN);
  const { pieces, load, trouble } = usePieces();
  const log = useLog();
  const { bySlug, trouble: glossaryTrouble } = useGlossary();
  useEffect(() => {
    void load();
    void log.load();
  }, [load, log.load]);

  const broken = trouble ?? glossaryTrouble;
  if (broken) {
    return (
      <Notice
        kind="error"
        title={broken}
        action={<ButtonLink href="/pieces">To the pieces</ButtonLink>}
      />
    );
  }
  if (!pieces || !bySlug || !log.answers) return <Progress label="Opening" />;
  const piece = pieces.find((p) => p.id === id) ?? (pieces.length === 1 ? pieces[0] : undefined);
  if (piece) {
    return (
      <PassageRound key={`${piece.id} ${piece.partIndex}`} piece={piece} entries={bySlug} at={at} />
    );
  }
  return (
    <>
      <h1 className={styles.title}>What does this passage ask for?</h1>
      {pieces.length === 0 ? (
        <Notice
          kind="empty"
          title="No piece is open yet."
          action={
            <ButtonLink kind="filled" href="/pieces">
              Open a score
            </ButtonLink>
          }
        >
          Open the score of a piece, or one of the demo pieces, and its passages are asked here.
        </Notice>
      ) : (
        <Rows label="Your pieces">
          {pieces.map((p) => (
            <Row
              key={p.id}
              lead={p.title}
              note={`${p.reading.measures.length} measures`}
              href={`/passage?piece=${p.id}`}
            />
          ))}
        </Rows>
      )}
    </>
  );
}
