"use client";
import { useMemo, useState } from "react";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { Reading } from "@/lib/reading/reading";
import { Button } from "../ui/button";
import { leadOf, meaningOf } from "../ui/ribbon/mark-lead";
import type { PrintedMark } from "../ui/ribbon/printed-marks";
import { Rows } from "../ui/rows";
import { AskedRow } from "./asked-row";
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
          const key = `${first} ${mark.onset.join("/")} ${mark.sign} ${mark.text} ${mark.head.text}`;
          return (
            <AskedRow key={key} lead={leadOf(mark, { entryOf, reading })} at={stretch}>
              {meaningOf(mark, { entryOf })}
            </AskedRow>
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
