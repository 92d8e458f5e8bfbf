import { memo } from "react";
import type { ReadingMeasure } from "@/lib/reading/reading";
import type { Columns } from "./layout-columns";
import { measureName } from "./measure-name";
import styles from "./ribbon.module.css";
import { css } from "./units";
import type { ScrollWindow } from "./use-scroll-window";

interface MeasureButtonsProps {
  measures: readonly ReadingMeasure[];
  columns: Columns;
  view: ScrollWindow;
  gutter: number;
  /** The one stop for Tab. */
  active: number;
  chosen: number | null;
  onChoose: (index: number) => void;
}

/** One button a measure, as high as the ribbon, its number on top; only those near the view. */
export const MeasureButtons = memo(function MeasureButtons(props: MeasureButtonsProps) {
  const { measures, columns, view, gutter, active, chosen, onChoose } = props;
  const edge = (index: number) => columns.edges[index] ?? 0;
  const shown = measures.filter(
    ({ index }) => index === active || (edge(index + 1) >= view.from && edge(index) <= view.to),
  );
  return shown.map(({ index }) => (
    <button
      key={index}
      type="button"
      className={styles.measure}
      data-measure={index}
      tabIndex={index === active ? 0 : -1}
      aria-pressed={index === chosen}
      style={{ left: css(gutter + edge(index)), width: css(edge(index + 1) - edge(index)) }}
      onClick={() => onChoose(index)}
    >
      <span className="aside-for-ears">measure </span>
      {measureName(measures, index)}
    </button>
  ));
});
