"use client";
import { useMemo, useState } from "react";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { PieceRecord, SetRecord } from "@/lib/store/records";
import { ButtonLink } from "../ui/button";
import { dateWords, daysWords } from "../ui/date-words";
import { Notice } from "../ui/notice";
import { ReadinessLine } from "../ui/readiness-line";
import { Row, Rows } from "../ui/rows";
import { DRILL_AXES, DRILL_AXIS_WORDS, type DrillAxis } from "./axis-of";
import styles from "./choice.module.css";
import { MINUTES_OFFERED, USUAL_MINUTES, usualSlugs } from "./what-to-drill";

const AXIS_NOTES: Readonly<Record<DrillAxis, string>> = {
  tempo: "how fast",
  dynamics: "how loud",
  articulation: "how touched",
  character: "what mood",
  technique: "how produced",
  road: "where next",
  degree: "poco, molto, più",
};

interface DrillChoiceProps {
  sets: readonly SetRecord[];
  pieces: readonly PieceRecord[];
  entries: ReadonlyMap<string, ClientEntry>;
}

/** What to drill: the words of a piece, or the usual words of one axis. */
export function DrillChoice({ sets, pieces, entries }: DrillChoiceProps) {
  const dated = useMemo(() => [...sets].sort(byDate), [sets]);
  const loose = pieces.filter((piece) => !sets.some((set) => set.pieceId === piece.id));
  const [next, ...others] = dated;
  return (
    <div className={styles.choice}>
      <h1>Drill</h1>
      <div className={styles.own}>
        {next ? (
          <section aria-labelledby="next-set">
            <h2 id="next-set">{whenWords(next) || "Your set"}</h2>
            <p className={styles.title}>{next.title}</p>
            <div className={styles.ready}>
              <ReadinessLine slugs={next.slugs} date={next.date} />
            </div>
            <ButtonLink kind="filled" wide href={`/drill?set=${next.id}`}>
              Drill, {next.minutesADay} min
            </ButtonLink>
          </section>
        ) : null}
        {others.length + loose.length > 0 ? (
          <section aria-labelledby="pieces">
            <h2 id="pieces">{next ? "Other pieces and sets" : "Your pieces"}</h2>
            <Rows>
              {others.map((set) => (
                <Row
                  key={set.id}
                  href={`/drill?set=${set.id}`}
                  lead={<span className={styles.lead}>{set.title}</span>}
                  note={[whenWords(set), `${set.minutesADay} min`].filter(Boolean).join(", ")}
                />
              ))}
              {loose.map((piece) => (
                <Row
                  key={piece.id}
                  href={`/drill?piece=${piece.id}`}
                  lead={<span className={styles.lead}>{piece.title}</span>}
                  note="no date yet"
                />
              ))}
            </Rows>
          </section>
        ) : null}
        {!next && pieces.length === 0 ? (
          <Notice
            kind="empty"
            title="No piece is open yet."
            action={
              <ButtonLink kind="filled" href="/pieces">
                Open a score
              </ButtonLink>
            }
          >
            Open the score of a piece, or a demo piece, and its own words and signs are drilled
            here.
          </Notice>
        ) : null}
      </div>
      <Usual entries={entries} />
    </div>
  );
}

/** The words and signs met in most parts, axis by axis. */
function Usual({ entries }: Pick<DrillChoiceProps, "entries">) {
  const [minutes, setMinutes] = useState<number>(USUAL_MINUTES);
  const shelves = useMemo(
    () => DRILL_AXES.map((axis) => ({ axis, slugs: usualSlugs(axis, entries) })),
    [entries],
  );
  return (
    <section aria-labelledby="usual">
      <h2 id="usual">Met in most parts</h2>
      <fieldset className={styles.minutes}>
        <legend>Minutes</legend>
        {MINUTES_OFFERED.map((offered) => (
          <label key={offered}>
            <input
              type="radio"
              name="minutes"
              className="aside-for-ears"
              checked={minutes === offered}
              onChange={() => setMinutes(offered)}
            />
            <span>{offered}</span>
          </label>
        ))}
      </fieldset>
      <Rows>
        {shelves.map(({ axis, slugs }) => (
          <Row
            key={axis}
            href={`/drill?axis=${axis}&minutes=${minutes}`}
            lead={<span className={styles.lead}>{DRILL_AXIS_WORDS[axis]}</span>}
            note={`${AXIS_NOTES[axis]}, ${slugs.length} in all`}
          />
        ))}
      </Rows>
    </section>
  );
}

/** The nearest date first, sets without a date after, dates past last. */
function byDate(a: SetRecord, b: SetRecord): number {
  return rank(a) - rank(b) || (a.date ?? "").localeCompare(b.date ?? "");
}

function rank({ date }: SetRecord): number {
  if (date === null) return 1;
  return daysWords(date) === "past" ? 2 : 0;
}

function whenWords({ date }: SetRecord): string {
  return date === null ? "" : `${dateWords(date)}, ${daysWords(date)}`;
}
