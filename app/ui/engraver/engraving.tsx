"use client";
import { useEffect, useRef, useState } from "react";
import { engraver } from "./engraver";
import styles from "./engraving.module.css";
import { safeSvg } from "./safe-svg";

interface EngravingProps {
  /** Names the score and part. */
  pieceKey: string;
  bytes: Uint8Array;
  fileName: string;
  partIndex: number;
  from: number;
  to: number;
  /** Measure numbers of the excerpt in order, for the ears. */
  numbers: readonly string[];
  /** Said instead of the picture. */
  inWords: string;
  chosen?: readonly number[];
  /** Given: each measure can be tapped, or chosen by keyboard. */
  onTap?: (measureIndex: number) => void;
}

type State = { at: "waiting" } | { at: "drawn"; svg: string } | { at: "failed"; message: string };

/** An excerpt as engraved notation, in the page's own ink. */
export function Engraving(props: EngravingProps) {
  const { pieceKey, bytes, fileName, partIndex, from, to, numbers, inWords, chosen, onTap } = props;
  const holder = useRef<HTMLDivElement>(null);
  const drawing = useRef<HTMLDivElement>(null);
  const tap = useRef(onTap);
  tap.current = onTap;
  const width = useWidth(holder);
  const [state, setState] = useState<State>({ at: "waiting" });

  useEffect(() => {
    if (width === 0) return;
    let current = true;
    engraver.draw({ bytes, fileName, partIndex, key: pieceKey, from, to, width }).then(
      (svg) => current && setState({ at: "drawn", svg }),
      (error: Error) => current && setState({ at: "failed", message: error.message }),
    );
    return () => {
      current = false;
    };
  }, [bytes, fileName, partIndex, pieceKey, from, to, width]);

  const tappable = onTap !== undefined;
  useEffect(() => {
    const place = drawing.current;
    if (!place || state.at !== "drawn") return;
    const svg = safeSvg(state.svg);
    if (!svg) return;
    svg.setAttribute("aria-hidden", tappable ? "false" : "true");
    place.replaceChildren(svg);
    if (tappable) makeTappable(svg, from, numbers, (m) => tap.current?.(m));
  }, [state, tappable, from, numbers]);

  useEffect(() => {
    const measures = drawing.current?.querySelectorAll("g.measure") ?? [];
    measures.forEach((measure, i) => {
      const is = chosen?.includes(from + i) ?? false;
      measure.setAttribute("data-chosen", String(is));
      // The engraver's own sheet, which names the drawing by id, strokes every rectangle.
      const rect = measure.querySelector<SVGRectElement>(":scope > rect.tap");
      if (rect) rect.style.stroke = is ? "var(--pencil)" : "none";
      if (tappable) measure.setAttribute("aria-pressed", String(is));
    });
  });

  return (
    <div className={styles.leaf}>
      <div ref={holder}>
        {state.at === "waiting" ? <p className={styles.waiting}>Engraving…</p> : null}
        {state.at === "failed" ? (
          <p className={styles.failed} role="status">
            {state.message}
          </p>
        ) : null}
        <div
          ref={drawing}
          className={`${styles.drawing} ${tappable ? styles.tappable : ""}`}
          hidden={state.at !== "drawn"}
        />
        <p className="aside-for-ears">{inWords}</p>
      </div>
    </div>
  );
}

/** Whole pixels, and only real changes: a scroll bar must not start a new engraving. */
function useWidth(ref: React.RefObject<HTMLDivElement | null>): number {
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const element = ref.current;
    if (!element) return;
    const observer = new ResizeObserver(([entry]) => {
      const next = Math.floor(entry?.contentRect.width ?? 0);
      setWidth((now) => (Math.abs(next - now) > 16 ? next : now));
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [ref]);
  return width;
}

function makeTappable(
  svg: SVGSVGElement,
  from: number,
  numbers: readonly string[],
  onTap: (measureIndex: number) => void,
): void {
  svg.querySelectorAll<SVGGElement>("g.measure").forEach((measure, i) => {
    const box = measure.getBBox();
    const rect = document.createElementNS("http://www.w3.org/2000/svg", "rect");
    rect.setAttribute("class", "tap");
    rect.setAttribute("x", String(box.x));
    rect.setAttribute("y", String(box.y - 200));
    rect.setAttribute("width", String(box.width));
    rect.setAttribute("height", String(box.height + 400));
    measure.prepend(rect);
    measure.setAttribute("tabindex", "0");
    measure.setAttribute("role", "button");
    measure.setAttribute("aria-label", `measure ${numbers[i] ?? i + 1}`);
    measure.addEventListener("click", () => onTap(from + i));
    measure.addEventListener("keydown", (event) => {
      if (event.key !== "Enter" && event.key !== " ") return;
      event.preventDefault();
      onTap(from + i);
    });
  });
}
