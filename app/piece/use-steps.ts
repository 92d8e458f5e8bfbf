"use client";
import { useMemo } from "react";
import { STEPS } from "@/lib/memory/readiness";
import { useReadiness } from "../ui/use-readiness";

/**
 * How far a set is by its date, in words: "19 ready, 7 nearly, 5 not met".
 * @param date of the audition; without one today counts
 * @returns null before the log is read, and while nothing of the set was ever answered
 */
export function useSteps(slugs: readonly string[], date: string | null): string | null {
  const readiness = useReadiness(slugs, date);
  return useMemo(() => {
    if (!readiness?.entries.some((entry) => entry.answers > 0)) return null;
    return [...STEPS]
      .reverse()
      .filter((step) => readiness.steps[step] > 0)
      .map((step) => `${readiness.steps[step]} ${step}`)
      .join(", ");
  }, [readiness]);
}
