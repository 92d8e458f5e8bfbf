import type { Answer } from "@/lib/memory/answer";
import type { ForecastDay } from "@/lib/memory/forecast";
import type { Now, PlanItem } from "@/lib/memory/plan";

/** What the page asks of the forecast's worker: one forecast, then it is done. */
export interface ToForecaster {
  answers: readonly Answer[];
  items: readonly PlanItem[];
  date: string;
  minutes: number;
  now: Now;
}

export interface FromForecaster {
  rows: ForecastDay[];
}
