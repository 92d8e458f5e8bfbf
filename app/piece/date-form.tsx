"use client";
import { type FormEvent, useState } from "react";
import { readDate } from "@/lib/memory/day";
import { newId, stampNow } from "@/lib/store/clock";
import type { PieceRecord, SetRecord } from "@/lib/store/records";
import { Button } from "../ui/button";
import { dateWords, daysWords, todayNumber } from "../ui/date-words";
import { Field } from "../ui/field";
import { pieceSlugs } from "../ui/piece-facts";
import { useSets } from "../ui/use-sets";
import styles from "./page.module.css";

const MOST_MINUTES = 120;
const USUAL_MINUTES = 6;

interface DateFormProps {
  piece: PieceRecord;
  /** The piece's set, when it has one. */
  set: SetRecord | null;
}

/** The audition date and the minutes a day: what the plan of the drill is made from. */
export function DateForm({ piece, set }: DateFormProps) {
  const { put } = useSets();
  const [date, setDate] = useState(set?.date ?? "");
  const [minutes, setMinutes] = useState(String(set?.minutesADay ?? USUAL_MINUTES));
  const [errors, setErrors] = useState<{ date?: string; minutes?: string }>({});
  const [said, setSaid] = useState("");

  const onSubmit = async (event: FormEvent) => {
    event.preventDefault();
    const found = { date: dateError(date), minutes: minutesError(minutes) };
    setErrors(found);
    setSaid("");
    if (found.date || found.minutes) return;
    try {
      await put({
        id: set?.id ?? newId(),
        title: piece.title,
        slugs: pieceSlugs(piece.reading, piece.partIndex),
        pieceId: piece.id,
        date: date === "" ? null : date,
        minutesADay: Number(minutes),
        changedAt: stampNow().at,
      });
      setSaid(
        date === "" ? "Kept without a date." : `Kept: ${dateWords(date)}, ${daysWords(date)}.`,
      );
    } catch (error) {
      setSaid(error instanceof Error ? error.message : "It could not be kept; try once more.");
    }
  };

  return (
    <details className={styles.fold}>
      <summary className={styles.summary}>
        {set?.date ? `${dateWords(set.date)}, ${daysWords(set.date)}` : "Set the audition date"}
      </summary>
      <form className={styles.form} onSubmit={(event) => void onSubmit(event)} noValidate>
        <Field
          label="Date"
          name="date"
          type="date"
          value={date}
          error={errors.date}
          onChange={(event) => setDate(event.target.value)}
        />
        <Field
          label="Minutes a day"
          name="minutes"
          type="number"
          inputMode="numeric"
          min={1}
          max={MOST_MINUTES}
          value={minutes}
          error={errors.minutes}
          onChange={(event) => setMinutes(event.target.value)}
        />
        <Button type="submit">{set?.date ? "Keep the change" : "Set the date"}</Button>
        <p className="small soft" role="status">
          {said}
        </p>
      </form>
    </details>
  );
}

function dateError(date: string): string | undefined {
  if (date === "") return undefined;
  const day = readDate(date);
  if (day === null) return "This is no date; choose one from the calendar.";
  return day < todayNumber() ? "This date is past; choose today or a coming day." : undefined;
}

function minutesError(minutes: string): string | undefined {
  const number = Number(minutes);
  const isFine =
    minutes.trim() !== "" && Number.isInteger(number) && number >= 1 && number <= MOST_MINUTES;
  return isFine ? undefined : `Write a whole number from 1 to ${MOST_MINUTES}.`;
}
