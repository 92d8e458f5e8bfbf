"use client";
import Link from "next/link";
import { useMemo, useRef, useState } from "react";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { Answer } from "@/lib/memory/answer";
import { createRandom } from "@/lib/memory/random";
import { askPassage } from "@/lib/passage/ask-passage";
import { type Chosen, choosePassages, parseRange } from "@/lib/passage/choose-passages";
import { describePassage } from "@/lib/passage/describe-passage";
import { markAnswer } from "@/lib/passage/mark-answer";
import type { Given, Marked, Passage } from "@/lib/passage/question";
import { newId, newSeed, stampNow } from "@/lib/store/clock";
import type { PieceRecord } from "@/lib/store/records";
import { Button, ButtonRow } from "../ui/button";
import { Engraving } from "../ui/engraver/engraving";
import { Field } from "../ui/field";
import { Notice } from "../ui/notice";
import { useLog } from "../ui/use-log";
import styles from "./passage.module.css";
import { QuestionRow } from "./question-row";
import { Result } from "./result";

interface RoundProps {
  piece: PieceRecord;
  entries: ReadonlyMap<string, ClientEntry>;
}

/** One passage after another of one piece. `at`: a measure the first one holds; NaN for the most telling. */
export function PassageRound({ piece, entries, at }: RoundProps & { at: number }) {
  const { reading, partIndex } = piece;
  const answers = useLog((s) => s.answers);
  const weight = useMemo(() => weightFrom(answers ?? []), [answers]);
  // Chosen once: what is answered now must not reshuffle what comes next.
  const passages = useRef<Chosen[] | null>(null);
  passages.current ??= startingAt(choosePassages(reading, partIndex, weight), at);
  const [turn, setTurn] = useState(0);
  const [typed, setTyped] = useState<Passage | null>(null);
  const list = passages.current;
  const passage = typed ?? list[turn % Math.max(1, list.length)];

  if (!passage) {
    return (
      <Notice kind="empty" title="This part has no notes to ask about.">
        Choose another part on the <Link href={`/piece?id=${piece.id}`}>page of the piece</Link>.
      </Notice>
    );
  }
  const numbers = reading.measures.slice(passage.from, passage.to + 1).map((m) => m.number);
  return (
    <>
      <p className={styles.where}>
        <Link href={`/piece?id=${piece.id}`}>{piece.title}</Link>
        <span>
          measures <b>{numbers[0]}</b>–<b>{numbers.at(-1)}</b>
        </span>
      </p>
      <h1 className={styles.title}>What does this passage ask for?</h1>
      <OnePassage
        key={`${passage.from}-${passage.to}-${turn}`}
        piece={piece}
        passage={passage}
        entries={entries}
        numbers={numbers}
        onNext={() => {
          setTyped(null);
          setTurn((t) => t + 1);
        }}
      />
      <RangeForm piece={piece} onChoose={setTyped} />
    </>
  );
}

interface OneProps extends RoundProps {
  passage: Passage;
  numbers: readonly string[];
  onNext: () => void;
}

function OnePassage({ piece, passage, entries, numbers, onNext }: OneProps) {
  const add = useLog((s) => s.add);
  const [asked] = useState(() => {
    const random = createRandom(newSeed());
    return {
      at: stampNow().at,
      questions: askPassage({ reading: piece.reading, passage, entries, random }),
    };
  });
  const { questions } = asked;
  const [given, setGiven] = useState<Readonly<Record<string, Given>>>({});
  const [marked, setMarked] = useState<Marked[] | null>(null);
  const tapQuestions = questions.filter((q) => q.form === "measures");
  const [tapping, setTapping] = useState<string | null>(tapQuestions[0]?.id ?? null);
  const active = marked ? null : tapping;
  const give = (id: string, value: Given) => setGiven((g) => ({ ...g, [id]: value }));
  const toggle = (id: string, measure: number) => {
    const now = given[id];
    const list = Array.isArray(now) ? now.filter((m) => typeof m === "number") : [];
    give(id, list.includes(measure) ? list.filter((m) => m !== measure) : [...list, measure]);
  };
  const chosen = active ? given[active] : null;

  const mark = () => {
    const results = questions.map((q) => markAnswer(q, given[q.id] ?? null));
    setMarked(results);
    const stamp = stampNow();
    const ms = Math.round((stamp.at - asked.at) / Math.max(1, questions.length));
    void add(results.flatMap((r) => toAnswers(r, stamp, ms)));
  };

  return (
    <div className={styles.round}>
      {piece.bytes && piece.reading.format !== "text" ? (
        <Engraving
          pieceKey={`${piece.id} ${piece.partIndex}`}
          bytes={piece.bytes}
          fileName={piece.fileName}
          partIndex={piece.partIndex}
          from={passage.from}
          to={passage.to}
          numbers={numbers}
          inWords={describePassage(piece.reading, passage)}
          chosen={Array.isArray(chosen) ? chosen.filter((m) => typeof m === "number") : []}
          {...(active ? { onTap: (m: number) => toggle(active, m) } : {})}
        />
      ) : (
        <Notice kind="empty" title={`Have your page at measure ${numbers[0]}.`}>
          This piece was read without its notation.
        </Notice>
      )}
      <div className={styles.asked}>
        {questions.length === 0 ? (
          <Notice kind="empty" title="Nothing is printed here that can be asked.">
            Go on to the next passage, or choose the measures yourself.
          </Notice>
        ) : (
          <ol className={styles.questions}>
            {questions.map((question, i) => (
              <QuestionRow
                key={question.id}
                question={question}
                given={given[question.id] ?? null}
                marked={marked?.[i] ?? null}
                passage={passage}
                numbers={numbers}
                active={active === question.id}
                onActivate={() => setTapping(question.id)}
                onGive={(value) => give(question.id, value)}
                onToggle={(measure) => {
                  setTapping(question.id);
                  toggle(question.id, measure);
                }}
              />
            ))}
          </ol>
        )}
        {marked ? <Result marked={marked} /> : null}
        <ButtonRow>
          {marked || questions.length === 0 ? (
            <Button kind="filled" wide onClick={onNext}>
              Next passage
            </Button>
          ) : (
            <Button kind="filled" wide onClick={mark} disabled={Object.keys(given).length === 0}>
              Mark my answers
            </Button>
          )}
        </ButtonRow>
      </div>
    </div>
  );
}

function RangeForm({ piece, onChoose }: { piece: PieceRecord; onChoose: (p: Passage) => void }) {
  const [text, setText] = useState("");
  const [error, setError] = useState<string>();
  return (
    <form
      className={styles.range}
      onSubmit={(event) => {
        event.preventDefault();
        const result = parseRange(text, piece.reading, piece.partIndex);
        if (typeof result === "string") setError(result);
        else {
          setError(undefined);
          onChoose(result);
          window.scrollTo({ top: 0 });
        }
      }}
    >
      <Field
        label="Other measures"
        name="range"
        inputMode="text"
        autoComplete="off"
        value={text}
        onChange={(e) => setText(e.target.value)}
        {...(error ? { error } : { hint: "For example 9-16." })}
      />
      <Button type="submit">Ask these</Button>
    </form>
  );
}

function startingAt(list: Chosen[], at: number): Chosen[] {
  const first = list.find((p) => p.from <= at && at <= p.to);
  return first ? [first, ...list.filter((p) => p !== first)] : list;
}

/** A mark weighs more where this student last missed it, less where it held. */
function weightFrom(answers: readonly Answer[]): (slug: string) => number {
  const last = new Map<string, Answer["outcome"]>();
  for (const a of answers) last.set(a.entry, a.outcome);
  return (slug) => {
    const outcome = last.get(slug);
    if (outcome === undefined) return 1;
    return outcome === "missed" ? 1.5 : outcome === "partly" ? 1.2 : 0.6;
  };
}

function toAnswers(
  { question, given, outcome }: Marked,
  stamp: { at: number; offset: number },
  ms: number,
): Answer[] {
  if (given === null) return [];
  const chose =
    question.form === "one" && outcome === "missed"
      ? question.options.find((o) => o.id === given)?.slug
      : undefined;
  return question.slugs.map((entry) => ({
    id: newId(),
    at: stamp.at,
    offset: stamp.offset,
    entry,
    prompt: "passage>asks",
    outcome,
    ms,
    help: false,
    ...(chose && chose !== entry ? { chose } : {}),
    ...(question.form === "one" ? { options: question.options.length } : {}),
  }));
}
