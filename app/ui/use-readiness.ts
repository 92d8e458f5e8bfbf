"use client";
import { useEffect, useMemo } from "react";
import { momentOf, readDate } from "@/lib/memory/day";
import { readiness, type SetReadiness } from "@/lib/memory/readiness";
import { stampNow } from "@/lib/store/clock";
import { foldOf } from "./fold-of";
import { useLog } from "./use-log";

/**
 * Readiness of entries on a date, from the log as far as it is read.
 * @param date YYYY-MM-DD; without one, or once it is past, the present moment counts
 * @returns null before the log is read
 */
export function useReadiness(slugs: readonly string[], date: string | null): SetReadiness | null {
  const { answers, load } = useLog();
  useEffect(() => {
    if (useLog.getState().answers === null) void load();
  }, [load]);
  return useMemo(() => {
    if (!answers) return null;
    const { at, offset } = stampNow();
    const day = date === null ? null : readDate(date);
    const on = day === null ? at : Math.max(at, momentOf(day, offset));
    return readiness(foldOf(answers), slugs, on);
  }, [answers, slugs, date]);
}
