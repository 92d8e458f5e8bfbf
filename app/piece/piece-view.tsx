"use client";
import { useCallback, useEffect, useMemo, useState } from "react";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { ReadingMeasure } from "@/lib/reading/reading";
import type { PieceRecord, SetRecord } from "@/lib/store/records";
import { Button, ButtonLink, ButtonRow } from "../ui/button";
import { Dialog } from "../ui/dialog";
import { MeasureNumber } from "../ui/measure-number";
import { measureOfHash } from "../ui/piece-href";
import { measureName } from "../ui/ribbon/measure-name";
import { printedMarks } from "../ui/ribbon/printed-marks";
import { Ribbon } from "../ui/ribbon/ribbon";
import { tellMeasure } from "../ui/ribbon/tell-measure";
import { Row, Rows } from "../ui/rows";
import { SetOutlook } from "../ui/set-outlook";
import { Term } from "../ui/term";
import { useIsDesk } from "../ui/use-media";
import { DateForm } from "./date-form";
import { MeasurePanel } from "./measure-panel";
import styles from "./page.module.css";
import { PartChoice } from "./part-choice";
import { PieceHead } from "./piece-head";
import { unknownRowList } from "./printed-row-list";
import { PrintedRows } from "./printed-rows";
import { RemovePiece } from "./remove-piece";

interface PieceViewProps {
  piece: PieceRecord;
  /** Sets made of this piece. */
  sets: readonly SetRecord[];
  entries: ReadonlyMap<string, ClientEntry>;
}

/** One piece: what it asks, measure by measure. */
export function PieceView({ piece, sets, entries }: PieceViewProps) {
  const { reading, partIndex } = piece;
  const onDesk = useIsDesk();
  const [staff, setStaff] = useState(1);
  const [chosen, setChosen] = useChosenMeasure(reading.measures.length);
  const entryOf = useCallback(
    (slug: string | null) => (slug === null ? undefined : entries.get(slug)),
    [entries],
  );
  const marks = useMemo(() => printedMarks(reading, partIndex), [reading, partIndex]);
  // A desk has the room to show one measure always; a phone opens it when tapped.
  const told = onDesk ? (chosen ?? 0) : chosen;
  const story = useMemo(
    () => (told === null ? null : tellMeasure(told, { reading, partIndex, staff, marks, entryOf })),
    [told, reading, partIndex, staff, marks, entryOf],
  );
  const set = sets[0] ?? null;
  const unknown = unknownRowList(
    reading.unknown.filter((u) => u.partIndex === partIndex),
    reading,
  );
  const warnings = reading.warnings.filter(
    (w) => w.partId === null || w.partId === reading.parts[partIndex]?.id,
  );

  return (
    <article className={styles.piece}>
      <div className={styles.top}>
        <PieceHead piece={piece} set={set} />
      </div>
      <section
        className={styles.ribbon}
        aria-label="Ribbon: what the piece asks, from left to right"
      >
        <Ribbon
          reading={reading}
          partIndex={partIndex}
          staff={staff}
          entries={entries}
          onDesk={onDesk}
          chosen={told}
          onChoose={setChosen}
        />
      </section>
      <aside className={styles.beside} aria-label="Beside the piece">
        {onDesk && story ? (
          <section aria-labelledby="told" aria-live="polite">
            <h2 id="told">Measure {story.number}</h2>
            <MeasurePanel told={story} />
          </section>
        ) : null}
        <SetOutlook set={set} />
        <div className={styles.next}>
          <ButtonLink kind="filled" wide href={`/drill?piece=${piece.id}`}>
            Drill this piece
          </ButtonLink>
          <ButtonLink
            wide
            href={`/passage?piece=${piece.id}${chosen === null ? "" : `&at=${chosen}`}`}
          >
            What does a passage ask for?
          </ButtonLink>
        </div>
        <div>
          <DateForm piece={piece} set={set} />
          <PartChoice piece={piece} set={set} staff={staff} onStaff={setStaff} />
        </div>
      </aside>
      <div className={styles.lists}>
        <PrintedRows reading={reading} marks={marks} entryOf={entryOf} />
        {unknown.length > 0 ? (
          <section aria-labelledby="unknown">
            <h2 id="unknown">Not in the glossary</h2>
            <Rows>
              {unknown.map(({ text, stretches, guess }) => (
                <Row
                  key={text}
                  lead={
                    <Term lang="und" size="row">
                      {text}
                    </Term>
                  }
                  note={
                    <>
                      {guess === "" ? null : <span className="soft">{guess} · </span>}
                      {stretches.map((stretch, i) => (
                        <span key={stretch.number}>
                          {i > 0 ? ", " : null}
                          <MeasureNumber {...stretch} />
                        </span>
                      ))}
                    </>
                  }
                />
              ))}
            </Rows>
          </section>
        ) : null}
        {warnings.length > 0 ? (
          <section aria-labelledby="warnings">
            <h2 id="warnings">In doubt</h2>
            <ul className={styles.warnings}>
              {warnings.map(({ code, message, measureNumber }) => (
                <li key={`${code} ${measureNumber} ${message}`}>{message}</li>
              ))}
            </ul>
          </section>
        ) : null}
        <div className={styles.remove}>
          <RemovePiece piece={piece} sets={sets} />
        </div>
      </div>
      {onDesk ? null : (
        <Dialog
          open={story !== null}
          onClose={() => setChosen(null)}
          title={`Measure ${story?.number ?? ""}`}
          actions={
            chosen === null ? null : (
              <Neighbours index={chosen} measures={reading.measures} onChoose={setChosen} />
            )
          }
        >
          {story ? <MeasurePanel told={story} /> : null}
        </Dialog>
      )}
    </article>
  );
}

/** To the measures beside the one that is open, without closing the sheet. */
function Neighbours({
  index,
  measures,
  onChoose,
}: {
  index: number;
  measures: readonly ReadingMeasure[];
  onChoose: (index: number) => void;
}) {
  const last = measures.length - 1;
  return (
    <ButtonRow>
      <Button disabled={index === 0} onClick={() => onChoose(index - 1)}>
        {index === 0 ? "First measure" : `To ${measureName(measures, index - 1)}`}
      </Button>
      <Button disabled={index === last} onClick={() => onChoose(index + 1)}>
        {index === last ? "Last measure" : `To ${measureName(measures, index + 1)}`}
      </Button>
    </ButtonRow>
  );
}

/** The measure in the address, so that a link can open one and Back closes it. */
function useChosenMeasure(count: number): [number | null, (index: number | null) => void] {
  const [chosen, setChosen] = useState<number | null>(null);
  useEffect(() => {
    const look = () => {
      const index = measureOfHash(window.location.hash);
      setChosen(index !== null && index < count ? index : null);
    };
    look();
    window.addEventListener("hashchange", look);
    return () => window.removeEventListener("hashchange", look);
  }, [count]);
  const choose = useCallback((index: number | null) => {
    setChosen(index);
    const { pathname, search } = window.location;
    const hash = index === null ? "" : `#m${index + 1}`;
    window.history.replaceState(window.history.state, "", `${pathname}${search}${hash}`);
  }, []);
  return [chosen, choose];
}
