/// <reference lib="webworker" />
/** Plays a plan forward off the page's own thread: on a phone it takes seconds. */
import { foldLog } from "@/lib/memory/fold-log";
import { forecast } from "@/lib/memory/forecast";
import type { FromForecaster, ToForecaster } from "./forecast-messages";

self.addEventListener("message", ({ data }: MessageEvent<ToForecaster>) => {
  const { answers, ...options } = data;
  const rows = forecast({ fold: foldLog(answers), ...options });
  const message: FromForecaster = { rows };
  self.postMessage(message);
});
