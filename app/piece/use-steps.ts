"use client";
import { useEffect, useMemo } from "react";
import { momentOf, readDate } from "@/lib/memory/day";
import { foldLog } from "@/lib/memory/fold-log";
import { readiness, STEPS } from "@/lib/memory/readiness";
import { stampNow } from "@/lib/store/clock";
import { useLog } from "../ui/use-log";

/**
 * How far a set is by its date, in words: "19 ready, 7 nearly, 5 not met".
 * @param date of the audition; without one today counts
 * @returns null before the log is read, and while nothing of the set was ever answered
 */
export function useSteps(slugs: readonly string[], date: string | null): string | null {
  const { answers, load } = useLog();
  useEffect(() => {
    void load();
  }, [load]);
  return useMemo(() => {
    if (!answers?.some((a) => slugs.includes(a.entry))) return null;
    const { at, offset } = stampNow();
    const day = date === null ? null : readDate(date);
    const { steps } = readiness(
      foldLog(answers),
      slugs,
      day === null ? at : Math.max(at, momentOf(day, offset)),
    );
    return [...STEPS]
      .reverse()
      .filter((step) => steps[step] > 0)
      .map((step) => `${steps[step]} ${step}`)
      .join(", ");
  }, [answers, slugs, date]);
}
