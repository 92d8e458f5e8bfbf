"use client";
import { useEffect, useState } from "react";
import type { ForecastDay } from "@/lib/memory/forecast";
import type { PlanItem } from "@/lib/memory/plan";
import { stampNow } from "@/lib/store/clock";
import type { FromForecaster, ToForecaster } from "./forecast-messages";
import { useGlossary } from "./use-glossary";
import { useLog } from "./use-log";

export interface ForecastWanted {
  /** Entries of the set; keep the array from one rendering to the next. */
  slugs: readonly string[];
  /** Audition date, YYYY-MM-DD. */
  date: string;
  minutes: number;
}

/**
 * The forecast of a set, reckoned in a worker from the log.
 * @returns null while it is reckoned, and where the browser starts no worker
 */
export function useForecast({ slugs, date, minutes }: ForecastWanted): ForecastDay[] | null {
  const { answers, load } = useLog();
  const { bySlug } = useGlossary();
  const [rows, setRows] = useState<ForecastDay[] | null>(null);
  useEffect(() => {
    if (useLog.getState().answers === null) void load();
  }, [load]);
  useEffect(() => {
    if (!answers || !bySlug || slugs.length === 0) return;
    const items: PlanItem[] = slugs.map((slug) => ({
      slug,
      alikes: (bySlug.get(slug)?.alikes ?? []).map((a) => a.slug),
      asks: [],
    }));
    const worker = new Worker(new URL("./forecast.worker.ts", import.meta.url), { type: "module" });
    worker.addEventListener("message", ({ data }: MessageEvent<FromForecaster>) => {
      setRows(data.rows);
      worker.terminate();
    });
    const message: ToForecaster = { answers, items, date, minutes, now: stampNow() };
    worker.postMessage(message);
    return () => worker.terminate();
  }, [answers, bySlug, slugs, date, minutes]);
  return rows;
}
