import { memo } from "react";
import type { Ribbon } from "./layout-ribbon";
import styles from "./ribbon.module.css";
import { ShapeView } from "./shape-view";
import type { Shape } from "./shapes";
import { css } from "./units";
import type { ScrollWindow } from "./use-scroll-window";

interface RibbonDrawingProps {
  ribbon: Ribbon;
  view: ScrollWindow;
  /** Units the lane names take at the left. */
  gutter: number;
}

/** The part of the drawing that is in view or near it. */
export const RibbonDrawing = memo(function RibbonDrawing(props: RibbonDrawingProps) {
  const { ribbon, view, gutter } = props;
  const { from } = view;
  const width = Math.max(0, Math.min(view.to, ribbon.width) - from);
  const inView = ({ x0, x1 }: Shape) => x1 >= from && x0 <= from + width;
  return (
    <svg
      className={styles.drawing}
      style={{ left: css(gutter + from), width: css(width), height: css(ribbon.height) }}
      viewBox={`${from} 0 ${width} ${ribbon.height}`}
      aria-hidden="true"
      focusable="false"
    >
      <Shapes shapes={ribbon.rules.filter(inView)} top={0} />
      <Shapes shapes={ribbon.heads.filter(inView)} top={0} />
      {ribbon.lanes.map(({ name, top, shapes }) => (
        <Shapes key={name} shapes={shapes.filter(inView)} top={top} />
      ))}
    </svg>
  );
});

function Shapes({ shapes, top }: { shapes: readonly Shape[]; top: number }) {
  return (
    <g transform={`translate(0 ${top})`}>
      {shapes.map((shape) => (
        // A shape keeps its place in the piece, so it is known by it while the window moves.
        <ShapeView key={shapeKey(shape)} shape={shape} />
      ))}
    </g>
  );
}

function shapeKey(shape: Shape): string {
  const what =
    shape.kind === "path"
      ? shape.d
      : `${shape.kind === "text" ? shape.text : shape.name} ${shape.y}`;
  return `${shape.kind} ${shape.x0} ${what}`;
}
