"use client";
import { useId } from "react";
import { dateWords, daysWords } from "./date-words";
import styles from "./forecast.module.css";
import { type ForecastNumbers, forecastCurve, forecastNumbers } from "./forecast-curve";
import { type ForecastWanted, useForecast } from "./use-forecast";

const BOX = { width: 320, height: 72 };

/**
 * How much of a set will be known on its date if the plan is kept: one curve,
 * its range shaded, today marked, and the numbers in words.
 * Nothing is shown once the date is past.
 */
export function Forecast({ slugs, date, minutes }: ForecastWanted) {
  const rows = useForecast({ slugs, date, minutes });
  const id = useId();
  if (daysWords(date) === "past") return null;
  if (!rows) return <div className={styles.waiting} aria-hidden="true" />;
  const numbers = forecastNumbers(rows, slugs.length, date);
  if (!numbers) return null;
  const curve = forecastCurve(rows, BOX);
  return (
    <figure className={styles.figure} aria-labelledby={id}>
      {curve ? (
        <svg
          className={styles.curve}
          viewBox={`0 0 ${BOX.width} ${BOX.height}`}
          preserveAspectRatio="none"
          aria-hidden="true"
        >
          <path className={styles.all} d={`M0 0H${BOX.width}`} />
          <path className={styles.range} d={curve.range} />
          <path className={styles.foot} d={`M0 ${BOX.height}H${BOX.width}`} />
          <path className={styles.line} d={curve.line} />
          {/* A line of no length with round ends: a dot that stays round when the box is stretched. */}
          <path className={styles.today} d={`M${curve.today.join(" ")}h0`} />
        </svg>
      ) : null}
      <figcaption id={id}>
        <p className={styles.ends}>
          <span>
            today <b>{numbers.today}</b> of {numbers.of}
          </span>
          {curve ? (
            <span>
              on {dateWords(date)} about <b>{numbers.onDate}</b> of {numbers.of}
            </span>
          ) : null}
        </p>
        <p className={styles.meaning}>{meaning(numbers, minutes, curve !== null)}</p>
      </figcaption>
    </figure>
  );
}

function meaning(numbers: ForecastNumbers, minutes: number, isPlanned: boolean) {
  const { low, high, onDate, until } = numbers;
  const counted = "Counted is what would still be known on the date";
  if (!isPlanned) return `${counted}.`;
  const plan = minutes === 1 ? "one minute a day" : `${minutes} minutes a day`;
  const reach = until === null ? "" : ` till ${dateWords(until)}`;
  const range = low < onDate || high > onDate ? `: probably ${low} to ${high}` : "";
  return `${counted}: today’s number if you stopped now, the other with ${plan}${reach}${range}.`;
}
