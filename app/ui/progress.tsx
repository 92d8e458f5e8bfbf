"use client";
import { useId } from "react";
import { Button } from "./button";
import styles from "./progress.module.css";

interface ProgressProps {
  /** What is going on: "Reading Mill Race Study". */
  label: string;
  /** Steps done; left out while the length of the work is unknown. */
  value?: number;
  max?: number;
  /** What one step is, for "12 of 40 measures". */
  unit?: string;
  /** Stops the work. Every work that lasts longer than a second can be stopped. */
  onCancel?: () => void;
}

/** A long work, its state in words and a line, and the way out of it. */
export function Progress({ label, value, max = 100, unit, onCancel }: ProgressProps) {
  const id = useId();
  const inWords =
    value === undefined
      ? "one moment"
      : unit === undefined
        ? `${Math.round((100 * value) / Math.max(max, 1))} per cent`
        : `${value} of ${max} ${unit}`;
  return (
    <div className={styles.progress}>
      <p className={styles.words}>
        <span id={id}>{label}</span>
        <span className={styles.state}>{inWords}</span>
      </p>
      <progress className={styles.line} aria-labelledby={id} value={value} max={max} />
      {onCancel === undefined ? null : (
        <Button kind="quiet" onClick={onCancel}>
          Stop
        </Button>
      )}
    </div>
  );
}
