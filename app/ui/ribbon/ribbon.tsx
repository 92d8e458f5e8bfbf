"use client";
import { type KeyboardEvent, useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { Reading } from "@/lib/reading/reading";
import { Sign } from "../sign";
import { type Carried, carriedAt } from "./carried";
import { type LaneName, layoutRibbon, type PlacedLane } from "./layout-ribbon";
import { measureName } from "./measure-name";
import { printedMarks } from "./printed-marks";
import styles from "./ribbon.module.css";
import { RibbonInWords } from "./ribbon-in-words";
import { ShapeView } from "./shape-view";
import type { Shape } from "./shapes";
import { unitInPixels, useScrollWindow } from "./use-scroll-window";

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

const LANE_WORDS: Readonly<Record<LaneName, string>> = {
  tempo: "tempo",
  dynamics: "dynamics",
  articulation: "articulation",
  character: "character",
  technique: "technique",
  road: "road",
  marks: "my marks",
};

/** Units to a CSS length. */
const css = (units: number) => `${units / 16}rem`;

/** The picture of a reading: lanes from top to bottom, measures from left to right. */
export function Ribbon(props: RibbonProps) {
  const { reading, partIndex, staff, entries, onDesk, chosen, onChoose } = props;
  const scroller = useRef<HTMLDivElement>(null);
  const entryOf = useCallback(
    (slug: string | null) => (slug === null ? undefined : entries.get(slug)),
    [entries],
  );
  const gutter = onDesk ? 124 : 106;
  const marks = useMemo(() => printedMarks(reading, partIndex), [reading, partIndex]);
  const ribbon = useMemo(
    () => layoutRibbon(reading, { partIndex, staff, least: onDesk ? 92 : 72, entryOf }),
    [reading, partIndex, staff, onDesk, entryOf],
  );
  const { columns, lanes, width, height } = ribbon;

  const [carried, setCarried] = useState<{ index: number; lanes: Carried }>({
    index: 0,
    lanes: {},
  });
  const onEdge = useCallback(
    (edge: number) => {
      const index = columns.edges.findIndex((x) => x >= edge - 1);
      const context = { reading, partIndex, staff, columns, marks, entryOf };
      setCarried((now) => (now.index === index ? now : { index, lanes: carriedAt(edge, context) }));
    },
    [reading, partIndex, staff, columns, marks, entryOf],
  );
  const view = useScrollWindow(scroller, onEdge);
  const { active, onKeyDown } = useArrows({ scroller, columns, gutter, chosen });

  const inView = ({ x0, x1 }: { x0: number; x1: number }) => x1 >= view.from && x0 <= view.to;
  const shown = reading.measures.filter((_, i) => {
    const [x0, x1] = [columns.edges[i] ?? 0, columns.edges[i + 1] ?? 0];
    return inView({ x0, x1 }) || i === active;
  });
  const right = Math.min(view.to, width);

  return (
    <div className={styles.ribbon}>
      <div className={styles.scroll} ref={scroller}>
        <div className={styles.track} style={{ width: css(gutter + width), height: css(height) }}>
          <LaneNames lanes={lanes} carried={carried.lanes} width={gutter} />
          <div role="toolbar" aria-label="Measures" onKeyDown={onKeyDown}>
            {shown.map(({ index }) => (
              <button
                key={index}
                type="button"
                className={styles.measure}
                data-measure={index}
                tabIndex={index === active ? 0 : -1}
                aria-pressed={index === chosen}
                style={{
                  left: css(gutter + (columns.edges[index] ?? 0)),
                  width: css((columns.edges[index + 1] ?? 0) - (columns.edges[index] ?? 0)),
                }}
                onClick={() => onChoose(index)}
              >
                <span className="aside-for-ears">measure </span>
                {measureName(reading.measures, index)}
              </button>
            ))}
          </div>
          <svg
            className={styles.drawing}
            style={{
              left: css(gutter + view.from),
              width: css(right - view.from),
              height: css(height),
            }}
            viewBox={`${view.from} 0 ${right - view.from} ${height}`}
            aria-hidden="true"
            focusable="false"
          >
            <Shapes shapes={ribbon.rules.filter(inView)} top={0} />
            <Shapes shapes={ribbon.heads.filter(inView)} top={0} />
            {lanes.map((lane) => (
              <Shapes key={lane.name} shapes={lane.shapes.filter(inView)} top={lane.top} />
            ))}
          </svg>
        </div>
      </div>
      <RibbonInWords reading={reading} marks={marks} entryOf={entryOf} />
    </div>
  );
}

function Shapes({ shapes, top }: { shapes: readonly Shape[]; top: number }) {
  return (
    <g transform={`translate(0 ${top})`}>
      {shapes.map((shape, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no identity of their own
        <ShapeView key={i} shape={shape} />
      ))}
    </g>
  );
}

/** Names of the lanes and, under each, what is carried on from out of sight. */
function LaneNames({
  lanes,
  carried,
  width,
}: {
  lanes: readonly PlacedLane[];
  carried: Carried;
  width: number;
}) {
  return (
    <div className={styles.names} style={{ width: css(width) }} aria-hidden="true">
      {lanes.map(({ name, top, nameAt }) => {
        const held = carried[name];
        return (
          <div key={name} className={styles.name} style={{ top: css(top + nameAt - 8) }}>
            <span className={styles.lane}>{LANE_WORDS[name]}</span>
            {held === undefined ? null : held.glyph ? (
              <span className={styles.carriedSign}>
                <Sign name={held.glyph} label="" />
              </span>
            ) : (
              <span className={styles.carried} lang={held.lang}>
                {held.text}
              </span>
            )}
          </div>
        );
      })}
    </div>
  );
}

interface ArrowsOptions {
  scroller: { current: HTMLElement | null };
  columns: { edges: readonly number[] };
  gutter: number;
  chosen: number | null;
}

/** One stop for Tab; arrows, Home and End walk from measure to measure. */
function useArrows({ scroller, columns, gutter, chosen }: ArrowsOptions) {
  const [active, setActive] = useState(chosen ?? 0);
  const [walks, setWalks] = useState(0);
  useEffect(() => {
    if (chosen !== null) setActive(chosen);
  }, [chosen]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a walk is what moves the focus
  useEffect(() => {
    if (walks === 0) return;
    scroller.current
      ?.querySelector<HTMLElement>(`[data-measure="${active}"]`)
      ?.focus({ preventScroll: true });
  }, [walks]);
  const onKeyDown = (event: KeyboardEvent) => {
    const last = columns.edges.length - 2;
    const to = { ArrowLeft: active - 1, ArrowRight: active + 1, Home: 0, End: last }[event.key];
    if (to === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const index = Math.max(0, Math.min(last, to));
    setActive(index);
    setWalks((n) => n + 1);
    showColumn(
      scroller.current,
      [columns.edges[index] ?? 0, columns.edges[index + 1] ?? 0],
      gutter,
    );
  };
  return { active, onKeyDown };
}

/** Scrolls as little as needed to have a column in full view beside the lane names. */
export function showColumn(
  element: HTMLElement | null,
  [left, right]: readonly [number, number],
  gutter: number,
): void {
  if (!element) return;
  const unit = unitInPixels();
  const room = element.clientWidth - gutter * unit;
  if (left * unit < element.scrollLeft) element.scrollLeft = left * unit;
  else if (right * unit > element.scrollLeft + room) {
    element.scrollLeft = Math.min(left * unit, right * unit - room);
  }
}
