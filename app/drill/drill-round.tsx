"use client";
import Link from "next/link";
import { type KeyboardEvent, useEffect, useId, useMemo, useRef, useState } from "react";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import { createRandom } from "@/lib/memory/random";
import { newId, newSeed, stampNow } from "@/lib/store/clock";
import { Button } from "../ui/button";
import { LINE_SIGNS } from "../ui/line-signs";
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

/** Where the sitting stands: a question open or answered; `done` when the minutes are used; `stopped` before. */
type Turn =
  | { asking: Asking; shownAt: number; hint: Hint | null; told: Told | null }
  | "done"
  | "stopped";

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
  const actions = useRef<HTMLDivElement>(null);
  const reason = useRef<HTMLDivElement>(null);

  const open = typeof turn === "string" ? null : turn;
  const told = open?.told ?? null;
  const asking = open?.asking ?? null;
  // The focus goes where the hand is wanted next: the word to write, the button to go on, else the question.
  useEffect(() => {
    if (!asking) return;
    if (told) {
      actions.current?.querySelector("button")?.focus({ preventScroll: true });
      reason.current?.scrollIntoView({ block: "nearest" });
    } else if (asking.prompt.choices === null) field.current?.focus({ preventScroll: true });
    else head.current?.focus({ preventScroll: true });
    if (!told) window.scrollTo({ top: 0 });
  }, [asking, told]);

  const give = (given: Given) => {
    if (!open || open.told) return;
    const { prompt, entry } = open.asking;
    const now = markGiven(prompt, given, {
      entry,
      index: session.index,
      helped: open.hint !== null,
    });
    const answer = answerOf(prompt, now, { id: newId(), stamp: stampNow(), shownAt: open.shownAt });
    session.take(answer);
    void add([answer]);
    setTurn({ ...open, told: now });
    setSpoken(spokenVerdict(now, prompt, entry.headword));
  };
  const next = () => {
    setSpoken("");
    setTurn(nextTurn(session));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (!open || open.told || event.ctrlKey || event.metaKey || event.altKey) return;
    const choices = open.asking.prompt.choices;
    if (choices === null || event.key.length !== 1) return;
    const letter = LETTERS.indexOf(event.key.toLowerCase());
    const at = letter >= 0 ? letter : Number(event.key) - 1;
    const choice = choices[at];
    const aside = open.hint?.form === "fewer" ? open.hint.aside : [];
    if (!choice || aside.includes(choice.slug)) return;
    event.preventDefault();
    give({ chose: choice.slug });
  };

  const status = (
    <p role="status" className="aside-for-ears">
      {spoken}
    </p>
  );
  if (!open) {
    const stopped = turn === "stopped";
    return (
      <DrillEnd
        job={job}
        session={session}
        entries={entries}
        stopped={stopped}
        more={EXTRA_MINUTES}
        onMore={() => {
          if (!stopped) session.addMinutes(EXTRA_MINUTES);
          next();
        }}
      />
    );
  }
  const { prompt, entry } = open.asking;
  const place = places?.get(prompt.slug) ?? null;
  const hint = told ? null : open.hint;
  const canHint = open.hint === null && hintFor(prompt, entry) !== null;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the letters reach the rows inside, while the focus is in here
    <div className={styles.drill} onKeyDown={onKeyDown}>
      {trouble ? (
        <div className={styles.wide}>
          <Notice kind="error" title={trouble} />
        </div>
      ) : null}
      <div className={styles.top}>
        <span>{minutesLeftWords(open.asking.secondsLeft)}</span>
        {job.piece && place ? (
          <Link href={pieceHref(job.piece.id, place.measureIndex)}>
            {job.piece.title}, measure <b>{place.measure}</b>
          </Link>
        ) : (
          <span>{job.title}</span>
        )}
      </div>
      <QuestionHead
        asking={open.asking}
        source={entries.get(prompt.slug)}
        printed={place?.text ?? null}
        id={id}
        ref={head}
      />
      <div className={styles.answer}>
        {prompt.choices === null ? (
          <TypedAnswer
            key={open.shownAt}
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
        {told ? <Feedback ref={reason} asking={open.asking} told={told} entries={entries} /> : null}
      </div>
      {status}
      <div className={styles.actions} ref={actions}>
        {told ? (
          <>
            <Link href={`/terms/${prompt.slug}`} className={styles.entry}>
              About <i lang={entry.lang}>{entry.headword}</i>
            </Link>
            <Button kind="filled" wide onClick={next}>
              Go on
            </Button>
          </>
        ) : (
          <>
            <Button kind="quiet" onClick={() => setTurn("stopped")}>
              Stop here
            </Button>
            <Button
              disabled={!canHint}
              onClick={() => setTurn({ ...open, hint: hintFor(prompt, entry) })}
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
  return asking ? { asking, shownAt: now.at, hint: null, told: null } : "done";
}
