"use client";
import { useId, useState } from "react";
import { stampNow } from "@/lib/store/clock";
import type { PieceRecord, SetRecord } from "@/lib/store/records";
import { partName, pieceSlugs } from "../ui/piece-facts";
import { usePieces } from "../ui/use-pieces";
import { useSets } from "../ui/use-sets";
import styles from "./page.module.css";

interface PartChoiceProps {
  piece: PieceRecord;
  set: SetRecord | null;
  /** From 1. */
  staff: number;
  onStaff: (staff: number) => void;
}

/** Which part is the player's own, and which staff of it the ribbon shows; nothing where there is no choice. */
export function PartChoice({ piece, set, staff, onStaff }: PartChoiceProps) {
  const { reading, partIndex } = piece;
  const id = useId();
  const { put } = usePieces();
  const { put: putSet } = useSets();
  const [trouble, setTrouble] = useState<string | null>(null);
  const staves = reading.parts[partIndex]?.staves ?? 1;
  if (reading.parts.length < 2 && staves < 2) return null;

  const onPart = async (index: number) => {
    const changedAt = stampNow().at;
    try {
      await put({ ...piece, partIndex: index, changedAt });
      onStaff(1);
      if (set) await putSet({ ...set, slugs: pieceSlugs(reading, index), changedAt });
      setTrouble(null);
    } catch (error) {
      setTrouble(
        error instanceof Error ? error.message : "The part could not be kept; try once more.",
      );
    }
  };

  return (
    <details className={styles.fold}>
      <summary className={styles.summary}>
        Your part: {partName(reading, partIndex)}
        {staves > 1 ? `, ${staffName(staff, staves)} staff` : ""}
      </summary>
      <div className={styles.form}>
        {reading.parts.length > 1 ? (
          <div>
            <label htmlFor={`${id}-part`} className={styles.label}>
              Your part
            </label>
            <select
              id={`${id}-part`}
              className={styles.select}
              value={partIndex}
              onChange={(event) => void onPart(Number(event.target.value))}
            >
              {reading.parts.map((part, index) => (
                <option key={part.id} value={index}>
                  {partName(reading, index)}
                </option>
              ))}
            </select>
          </div>
        ) : null}
        {staves > 1 ? (
          <div>
            <label htmlFor={`${id}-staff`} className={styles.label}>
              Staff in the ribbon
            </label>
            <select
              id={`${id}-staff`}
              className={styles.select}
              value={staff}
              onChange={(event) => onStaff(Number(event.target.value))}
            >
              {Array.from({ length: staves }, (_, i) => i + 1).map((number) => (
                <option key={number} value={number}>
                  {staffName(number, staves)}
                </option>
              ))}
            </select>
          </div>
        ) : null}
        {trouble === null ? null : <p role="alert">{trouble}</p>}
      </div>
    </details>
  );
}

/** Two staves are the upper and the lower; more are counted from the top. */
function staffName(staff: number, staves: number): string {
  const pair = staves === 2 ? ["upper", "lower"][staff - 1] : undefined;
  return pair ?? `${staff}. from the top`;
}
