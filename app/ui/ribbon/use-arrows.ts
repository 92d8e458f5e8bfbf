"use client";
import { type KeyboardEvent, type RefObject, useEffect, useState } from "react";
import { unitInPixels } from "./units";

interface ArrowsOptions {
  scroller: RefObject<HTMLElement | null>;
  /** Left edge of every measure, and the right edge of the last, in units. */
  edges: readonly number[];
  /** Units the lane names take at the left. */
  gutter: number;
  chosen: number | null;
}

/** One stop for Tab; arrows, Home and End walk from measure to measure. */
export function useArrows({ scroller, edges, gutter, chosen }: ArrowsOptions) {
  const [active, setActive] = useState(chosen ?? 0);
  const [walks, setWalks] = useState(0);
  useEffect(() => {
    if (chosen === null) return;
    setActive(chosen);
    showColumn(scroller.current, [edges[chosen] ?? 0, edges[chosen + 1] ?? 0], gutter);
  }, [chosen, edges, gutter, scroller]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a walk is what moves the focus
  useEffect(() => {
    if (walks === 0) return;
    const button = scroller.current?.querySelector<HTMLElement>(`[data-measure="${active}"]`);
    button?.focus({ preventScroll: true });
  }, [walks]);
  const onKeyDown = (event: KeyboardEvent) => {
    const last = edges.length - 2;
    const to = { ArrowLeft: active - 1, ArrowRight: active + 1, Home: 0, End: last }[event.key];
    if (to === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const index = Math.max(0, Math.min(last, to));
    setActive(index);
    setWalks((n) => n + 1);
    showColumn(scroller.current, [edges[index] ?? 0, edges[index + 1] ?? 0], gutter);
  };
  return { active, onKeyDown };
}

/** Scrolls as little as needed to have a column in full view beside the lane names. */
function showColumn(
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
