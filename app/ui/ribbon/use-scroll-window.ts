"use client";
import { type RefObject, useCallback, useEffect, useState } from "react";
import { unitInPixels } from "./units";

/** The stretch of a wide drawing that is worth drawing now, in its own units. */
export interface ScrollWindow {
  from: number;
  to: number;
}

/** The window moves in steps, so that scrolling inside a step draws nothing anew. */
const STEP = 480;

/**
 * Follows a sideways scroller.
 * @param onEdge told how far it is scrolled, in units, at most once a frame
 * @returns the units in view, with a step of margin on both sides
 */
export function useScrollWindow(
  scroller: RefObject<HTMLElement | null>,
  onEdge: (edge: number) => void,
): ScrollWindow {
  const [view, setView] = useState<ScrollWindow>({ from: 0, to: 3 * STEP });
  const look = useCallback(() => {
    const element = scroller.current;
    if (!element) return;
    const unit = unitInPixels();
    const left = element.scrollLeft / unit;
    const right = left + element.clientWidth / unit;
    onEdge(left);
    const next = {
      from: Math.max(0, (Math.floor(left / STEP) - 1) * STEP),
      to: (Math.ceil(right / STEP) + 1) * STEP,
    };
    setView((now) => (now.from === next.from && now.to === next.to ? now : next));
  }, [scroller, onEdge]);

  useEffect(() => {
    const element = scroller.current;
    if (!element) return;
    let frame = 0;
    const onScroll = () => {
      if (frame !== 0) return;
      frame = requestAnimationFrame(() => {
        frame = 0;
        look();
      });
    };
    look();
    element.addEventListener("scroll", onScroll, { passive: true });
    const sizes = new ResizeObserver(look);
    sizes.observe(element);
    return () => {
      cancelAnimationFrame(frame);
      element.removeEventListener("scroll", onScroll);
      sizes.disconnect();
    };
  }, [scroller, look]);
  return view;
}
