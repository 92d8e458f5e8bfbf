"use client";
import { useCallback, useMemo, useRef, useState } from "react";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { Reading } from "@/lib/reading/reading";
import { type Carried, carriedAt } from "./carried";
import { LaneNames } from "./lane-names";
import type { Columns } from "./layout-columns";
import { layoutRibbon } from "./layout-ribbon";
import { MeasureButtons } from "./measure-buttons";
import { printedMarks } from "./printed-marks";
import styles from "./ribbon.module.css";
import { RibbonDrawing } from "./ribbon-drawing";
import { RibbonInWords } from "./ribbon-in-words";
import { css } from "./units";
import { useArrows } from "./use-arrows";
import { useScrollWindow } from "./use-scroll-window";

interface RibbonProps {
  reading: Reading;
  partIndex: number;
  /** From 1. */
  staff: number;
  entries: ReadonlyMap<string, ClientEntry>;
  /** More room for lane names and measures. */
  onDesk: boolean;
  /** Index of the measure whose story is open, null for none. */
  chosen: number | null;
  onChoose: (index: number) => void;
}

/** Units for the lane names and the least of a measure. */
const DESK = { gutter: 124, least: 92 };
const HAND = { gutter: 106, least: 72 };

/** Reckoned anew when another measure comes to the left edge, or the ribbon is another. */
interface CarriedFrom {
  columns: Columns;
  index: number;
  lanes: Carried;
}

/** The picture of a reading: lanes from top to bottom, measures from left to right. */
export function Ribbon(props: RibbonProps) {
  const { reading, partIndex, staff, entries, onDesk, chosen, onChoose } = props;
  const scroller = useRef<HTMLDivElement>(null);
  const entryOf = useCallback(
    (slug: string | null) => (slug === null ? undefined : entries.get(slug)),
    [entries],
  );
  const { gutter, least } = onDesk ? DESK : HAND;
  const marks = useMemo(() => printedMarks(reading, partIndex), [reading, partIndex]);
  const ribbon = useMemo(
    () => layoutRibbon(reading, { partIndex, staff, least, entryOf }),
    [reading, partIndex, staff, least, entryOf],
  );
  const { columns, lanes, width, height } = ribbon;

  const [carried, setCarried] = useState<CarriedFrom>({ columns, index: 0, lanes: {} });
  const onEdge = useCallback(
    (edge: number) => {
      const index = columns.edges.findIndex((x) => x >= edge - 1);
      const context = { reading, partIndex, staff, columns, marks, entryOf };
      setCarried((now) =>
        now.columns === columns && now.index === index
          ? now
          : { columns, index, lanes: carriedAt(edge, context) },
      );
    },
    [reading, partIndex, staff, columns, marks, entryOf],
  );
  const view = useScrollWindow(scroller, onEdge);
  const { active, onKeyDown } = useArrows({ scroller, edges: columns.edges, gutter, chosen });

  return (
    <div className={styles.ribbon}>
      <div className={styles.scroll} ref={scroller}>
        <div className={styles.track} style={{ width: css(gutter + width), height: css(height) }}>
          <LaneNames lanes={lanes} carried={carried.lanes} width={gutter} />
          <div role="toolbar" aria-label="Measures" onKeyDown={onKeyDown}>
            <MeasureButtons
              measures={reading.measures}
              columns={columns}
              view={view}
              gutter={gutter}
              active={active}
              chosen={chosen}
              onChoose={onChoose}
            />
          </div>
          <RibbonDrawing ribbon={ribbon} view={view} gutter={gutter} />
        </div>
      </div>
      <RibbonInWords reading={reading} marks={marks} entryOf={entryOf} />
    </div>
  );
}
