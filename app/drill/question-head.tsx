import type { Ref } from "react";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import { asSentence } from "@/lib/glossary/family-words";
import { foldSpelling } from "@/lib/memory/prompts/mark-typed";
import { SignOnStaff } from "../ui/sign-on-staff";
import { Term } from "../ui/term";
import type { Asking } from "./create-session";
import styles from "./drill.module.css";
import { QUESTIONS } from "./feedback-words";

/** Letters that a phone takes on one line at the largest size. */
const LONG = 13;

interface QuestionHeadProps {
  asking: Asking;
  source: ClientEntry | undefined;
  /** Word as printed in the piece, where it stands there. */
  printed: string | null;
  id: string;
  ref: Ref<HTMLHeadingElement>;
}

/** The thing asked about, large, and the question under it. */
export function QuestionHead({ asking, source, printed, id, ref }: QuestionHeadProps) {
  const { prompt } = asking;
  return (
    <div className={styles.question}>
      {/* Focused when a new prompt is put, so that it is read out and the keys a to d reach it. */}
      <h1 ref={ref} tabIndex={-1} id={id} aria-describedby={`${id}-asks`} className={styles.shown}>
        <Shown asking={asking} source={source} printed={printed} />
      </h1>
      <p id={`${id}-asks`} className={styles.asks}>
        {asking.again ? "Once more. " : null}
        {QUESTIONS[prompt.kind]}
        {prompt.choices === null && prompt.hint !== null ? (
          <>
            {" "}
            It begins <Term lang={asking.entry.lang}>{prompt.hint}</Term>
          </>
        ) : null}
      </p>
    </div>
  );
}

function Shown({
  asking,
  source,
  printed,
}: Pick<QuestionHeadProps, "asking" | "source" | "printed">) {
  const { prompt, entry } = asking;
  if (prompt.kind === "sign>name") {
    return <span className={styles.sign}>{source ? <SignOnStaff entry={source} /> : null}</span>;
  }
  if (prompt.kind === "meaning>word" || prompt.kind === "alike") {
    return <span className={styles.sense}>{asSentence(prompt.question.text)}</span>;
  }
  const lang = prompt.question.lang ?? entry.lang;
  const word =
    prompt.kind === "word>meaning" ? wordAsPrinted(asking, printed) : prompt.question.text;
  return (
    <>
      {prompt.kind === "word>meaning" && entry.isSign && source ? (
        <span className={styles.sign}>
          <SignOnStaff entry={source} />
        </span>
      ) : null}
      <span className={word.length > LONG || entry.isSign ? styles.long : undefined}>
        <Term lang={lang} size="head">
          {word}
        </Term>
      </span>
    </>
  );
}

/** The word as the page has it (rall., Allegro) where that spells the entry, else the headword. */
export function wordAsPrinted({ entry, prompt }: Asking, printed: string | null): string {
  if (printed === null || entry.isSign) return prompt.question.text;
  const key = foldSpelling(printed);
  const spellings = [
    entry.headword,
    ...entry.spellings,
    ...entry.abbreviations,
    ...entry.inflections,
  ];
  return spellings.some((spelling) => foldSpelling(spelling) === key)
    ? printed
    : prompt.question.text;
}
