"use client";
import Link from "next/link";
import { type KeyboardEvent, useEffect, useId, useMemo, useRef, useState } from "react";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import { createRandom } from "@/lib/memory/random";
import { newId, newSeed, stampNow } from "@/lib/store/clock";
import { Button } from "../ui/button";
import { LINE_SIGNS } from "../ui/line-signs";
import { MeasureNumber } from "../ui/measure-number";
import { Notice } from "../ui/notice";
import { pieceHref } from "../ui/piece-href";
import { useLog } from "../ui/use-log";
import { ChoiceRows, LETTERS } from "./choice-rows";
import { type Asking, createSession, type DrillSession } from "./create-session";
import styles from "./drill.module.css";
import { DrillEnd } from "./drill-end";
import { Feedback } from "./feedback";
import { spokenVerdict } from "./feedback-words";
import { type Hint, hintFor } from "./hint";
import { HintLine } from "./hint-line";
import { answerOf, type Given, markGiven, type Told } from "./mark-given";
import { minutesLeftWords } from "./next-prompt";
import { QuestionHead } from "./question-head";
import { TypedAnswer } from "./typed-answer";
import type { DrillJob } from "./what-to-drill";
import { whereItStood } from "./where-it-stood";

interface DrillRoundProps {
  job: DrillJob;
  entries: ReadonlyMap<string, ClientEntry>;
}

/** Where the sitting stands: a question open, one answered, or the end. */
type Turn = { asking: Asking; shownAt: number; hint: Hint | null; told: Told | null } | "end";

const EXTRA_MINUTES = 5;

/** One prompt after another, until today's minutes are used. */
export function DrillRound({ job, entries }: DrillRoundProps) {
  const { add, trouble } = useLog();
  const [session] = useState<DrillSession>(() =>
    createSession({
      slugs: job.slugs,
      date: job.date,
      minutes: job.minutes,
      answers: useLog.getState().answers ?? [],
      entries,
      random: createRandom(newSeed()),
      isDrawn: (slug) => slug in LINE_SIGNS,
    }),
  );
  const [turn, setTurn] = useState<Turn>(() => nextTurn(session));
  const [spoken, setSpoken] = useState("");
  const places = useMemo(() => (job.piece ? whereItStood(job.piece) : null), [job.piece]);
  const id = useId();
  const head = useRef<HTMLHeadingElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const goOn = useRef<HTMLButtonElement>(null);

  const told = turn === "end" ? null : turn.told;
  const asking = turn === "end" ? null : turn.asking;
  // The focus goes where the hand is wanted next: the word to write, the button to go on, else the question.
  useEffect(() => {
    if (!asking) return;
    if (told) goOn.current?.focus();
    else if (asking.prompt.choices === null) field.current?.focus();
    else head.current?.focus({ preventScroll: true });
    if (!told) window.scrollTo({ top: 0 });
  }, [asking, told]);

  const give = (given: Given) => {
    if (turn === "end" || turn.told) return;
    const { prompt, entry } = turn.asking;
    const now = markGiven(prompt, given, {
      entry,
      index: session.index,
      helped: turn.hint !== null,
    });
    const answer = answerOf(prompt, now, { id: newId(), stamp: stampNow(), shownAt: turn.shownAt });
    session.take(answer);
    void add([answer]);
    setTurn({ ...turn, told: now });
    setSpoken(spokenVerdict(now, prompt, entry.headword));
  };
  const next = () => {
    setSpoken("");
    setTurn(nextTurn(session));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (turn === "end" || turn.told || event.ctrlKey || event.metaKey || event.altKey) return;
    const choices = turn.asking.prompt.choices;
    if (choices === null) return;
    const letter = LETTERS.indexOf(event.key.toLowerCase());
    const at = letter >= 0 ? letter : Number(event.key) - 1;
    const choice = choices[at];
    const aside = turn.hint?.form === "fewer" ? turn.hint.aside : [];
    if (event.key === "" || !choice || aside.includes(choice.slug)) return;
    event.preventDefault();
    give({ chose: choice.slug });
  };

  const status = (
    <p role="status" className="aside-for-ears">
      {spoken}
    </p>
  );
  if (turn === "end" || !asking) {
    return (
      <DrillEnd
        job={job}
        session={session}
        entries={entries}
        onMore={() => {
          session.addMinutes(EXTRA_MINUTES);
          next();
        }}
        more={EXTRA_MINUTES}
      />
    );
  }
  const { prompt, entry } = asking;
  const place = places?.get(prompt.slug) ?? null;
  const hint = turn.told ? null : turn.hint;
  const canHint = turn.hint === null && hintFor(prompt, entry) !== null;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the letters reach the rows inside, while the focus is in here
    <div className={styles.drill} onKeyDown={onKeyDown}>
      {trouble ? <Notice kind="error" title={trouble} /> : null}
      <div className={styles.top}>
        <span>{minutesLeftWords(asking.secondsLeft)}</span>
        {job.piece && place ? (
          <Link href={pieceHref(job.piece.id, place.measureIndex)}>
            {job.piece.title}, measure <MeasureNumber number={place.measure} bare />
          </Link>
        ) : (
          <span>{job.title}</span>
        )}
      </div>
      <QuestionHead
        asking={asking}
        source={entries.get(prompt.slug)}
        printed={place?.text ?? null}
        id={id}
        ref={head}
      />
      <div className={styles.answer}>
        {prompt.choices === null ? (
          <TypedAnswer
            key={turn.shownAt}
            prompt={prompt}
            entry={entry}
            told={told}
            describedBy={`${id} ${id}-asks`}
            ref={field}
            onWrite={(wrote) => give({ wrote })}
          />
        ) : (
          <ChoiceRows
            prompt={prompt}
            entries={entries}
            told={told}
            aside={hint?.form === "fewer" ? hint.aside : []}
            onChoose={(chose) => give({ chose })}
          />
        )}
        {hint ? <HintLine hint={hint} lang={entry.lang} /> : null}
        {told ? <Feedback asking={asking} told={told} entries={entries} /> : null}
      </div>
      {status}
      <div className={styles.actions}>
        {told ? (
          <>
            <Link href={`/terms/${prompt.slug}`} className={styles.entry}>
              About <i lang={entry.lang}>{entry.headword}</i>
            </Link>
            <Button ref={goOn} kind="filled" wide onClick={next}>
              Go on
            </Button>
          </>
        ) : (
          <>
            <Button kind="quiet" onClick={() => setTurn("end")}>
              Stop here
            </Button>
            <Button
              disabled={!canHint}
              onClick={() => setTurn({ ...turn, hint: hintFor(prompt, entry) })}
            >
              A hint
            </Button>
            <Button onClick={() => give("shown")}>Show me</Button>
          </>
        )}
      </div>
    </div>
  );
}

function nextTurn(session: DrillSession): Turn {
  const now = stampNow();
  const asking = session.next(now);
  return asking ? { asking, shownAt: now.at, hint: null, told: null } : "end";
}
