"use client";
import { useEffect, useMemo, useRef } from "react";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import { stampNow } from "@/lib/store/clock";
import { Button, ButtonLink, ButtonRow } from "../ui/button";
import { dateWords } from "../ui/date-words";
import { Forecast } from "../ui/forecast";
import { counted } from "../ui/piece-facts";
import { pieceHref } from "../ui/piece-href";
import { ReadinessLine } from "../ui/readiness-line";
import { FactRows, Row, Rows } from "../ui/rows";
import { Term } from "../ui/term";
import { axisOf, DRILL_AXIS_WORDS } from "./axis-of";
import type { DrillSession } from "./create-session";
import styles from "./end.module.css";
import { summarise } from "./summary";
import type { DrillJob } from "./what-to-drill";

interface DrillEndProps {
  job: DrillJob;
  session: DrillSession;
  entries: ReadonlyMap<string, ClientEntry>;
  /** Ended by the student before the minutes were used. */
  stopped: boolean;
  /** Minutes that can be added. */
  more: number;
  onMore: () => void;
}

/** The end of a sitting: what was recalled, axis by axis, what comes again, what may rest, and the way to the date. */
export function DrillEnd({ job, session, entries, stopped, more, onMore }: DrillEndProps) {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    head.current?.focus();
    window.scrollTo({ top: 0 });
  }, []);
  const summary = useMemo(
    () =>
      summarise(session.asked, (slug) => {
        const entry = entries.get(slug);
        return entry ? axisOf(entry) : "character";
      }),
    [session, entries],
  );
  const sheet = useMemo(() => session.sheet(stampNow()), [session]);
  const asked = summary.rest.length + summary.again.length;
  const isLastEvening = sheet.phase === "last-evening";
  return (
    <div className={styles.end}>
      <header className={styles.head}>
        <p className="lane-name">{job.title}</p>
        <h1 ref={head} tabIndex={-1}>
          {stopped ? "Stopped here" : "Enough for today"}
        </h1>
        <p>
          {asked === 0
            ? stopped
              ? "Nothing was asked."
              : "Today’s minutes are used, and what you recalled today rests until it begins to fade."
            : `${counted(summary.rest.length, "word or sign", "words and signs")} recalled of ${asked} asked. Every answer is kept.`}
          {isLastEvening && !stopped ? " The last evening stays light: now sleep on it." : null}
        </p>
      </header>
      <div className={styles.side}>
        {summary.rows.length > 0 ? (
          <section aria-labelledby="by-axis">
            <h2 id="by-axis">Axis by axis</h2>
            <FactRows
              facts={summary.rows.map(({ axis, of, recalled }) => ({
                key: axis,
                label: DRILL_AXIS_WORDS[axis],
                value: `${recalled} of ${of} recalled`,
              }))}
            />
          </section>
        ) : null}
        {summary.again.length > 0 ? (
          <section aria-labelledby="again">
            <h2 id="again">First next time</h2>
            <Rows>
              {summary.again.map((slug) => (
                <EntryRow key={slug} entry={entries.get(slug)} />
              ))}
            </Rows>
          </section>
        ) : null}
        {summary.rest.length > 0 ? (
          <section aria-labelledby="rest">
            <h2 id="rest">Let rest</h2>
            <p>
              {summary.rest.map((slug, i) => {
                const entry = entries.get(slug);
                return entry ? (
                  <span key={slug}>
                    {i > 0 ? ", " : null}
                    <Term lang={entry.lang}>{entry.headword}</Term>
                  </span>
                ) : null;
              })}
            </p>
            <p className="small soft">
              Recalled today, they are not asked again today: a night between does more than one
              more round.
            </p>
          </section>
        ) : null}
      </div>
      <div className={styles.side}>
        <section aria-labelledby="ready">
          <h2 id="ready">{job.date === null ? "How it stands" : `By ${dateWords(job.date)}`}</h2>
          <div className={styles.ready}>
            {job.date !== null && sheet.phase !== "passed" ? (
              <Forecast slugs={job.slugs} date={job.date} minutes={job.minutes} />
            ) : null}
            <ReadinessLine slugs={job.slugs} date={job.date} />
          </div>
          {job.date === null && job.piece ? (
            <p className="small">
              <ButtonLink kind="quiet" href={pieceHref(job.piece.id)}>
                Set the audition date
              </ButtonLink>
            </p>
          ) : null}
        </section>
        <ButtonRow>
          <Button wide onClick={onMore}>
            {stopped ? "Go on drilling" : `${more} minutes more`}
          </Button>
          {job.piece ? (
            <ButtonLink kind="filled" wide href={`/passage?piece=${job.piece.id}`}>
              One passage
            </ButtonLink>
          ) : (
            <ButtonLink kind="filled" wide href="/drill">
              Another drill
            </ButtonLink>
          )}
        </ButtonRow>
      </div>
    </div>
  );
}

function EntryRow({ entry }: { entry: ClientEntry | undefined }) {
  if (!entry) return null;
  return (
    <Row
      href={`/terms/${entry.slug}`}
      lead={
        <Term lang={entry.lang} size="row">
          {entry.headword}
        </Term>
      }
      note={entry.meaning}
      noteAt="below"
    />
  );
}
