"use client";
import { useMemo, useState } from "react";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { Reading } from "@/lib/reading/reading";
import { Button } from "../ui/button";
import { MeasureNumber } from "../ui/measure-number";
import type { PrintedMark } from "../ui/ribbon/printed-marks";
import { leadOf, meaningOf } from "../ui/ribbon/tell-measure";
import { Row, Rows } from "../ui/rows";
import { LeadView } from "./lead-view";
import styles from "./page.module.css";
import { printedRowList } from "./printed-row-list";

/** Rows shown at once; a long piece has hundreds. */
const FIRST_ROWS = 40;

interface PrintedRowsProps {
  reading: Reading;
  marks: readonly PrintedMark[];
  entryOf(slug: string | null): ClientEntry | undefined;
}

/** Every word and sign of the part by measure, with what it means. */
export function PrintedRows({ reading, marks, entryOf }: PrintedRowsProps) {
  const [all, setAll] = useState(false);
  const rows = useMemo(() => printedRowList(marks, reading), [marks, reading]);
  const shown = all ? rows : rows.slice(0, FIRST_ROWS);
  return (
    <section aria-labelledby="printed">
      <h2 id="printed">Words and signs by measure</h2>
      <Rows>
        {shown.map(({ mark, first, stretch }) => {
          const slug = mark.head.slug;
          return (
            <Row
              key={`${first} ${mark.onset.join("/")} ${mark.sign} ${mark.text} ${mark.head.text}`}
              href={slug === null ? undefined : `/terms/${slug}`}
              lead={
                <span className={styles.lead}>
                  <span className={styles.number}>
                    <MeasureNumber {...stretch} />
                  </span>
                  <LeadView lead={leadOf(mark, { entryOf })} />
                </span>
              }
              note={meaningOf(mark, { entryOf })}
            />
          );
        })}
      </Rows>
      {shown.length < rows.length ? (
        <Button kind="quiet" onClick={() => setAll(true)}>
          Show all {rows.length} rows
        </Button>
      ) : null}
    </section>
  );
}
