"use client";
import { useId } from "react";
import type { Given, Marked, Option, Passage, Question } from "@/lib/passage/question";
import { Field } from "../ui/field";
import { Sign } from "../ui/sign";
import styles from "./passage.module.css";

const OUTCOME_WORDS = { right: "right", partly: "partly right", missed: "not yet" } as const;

interface QuestionRowProps {
  question: Question;
  given: Given;
  marked: Marked | null;
  passage: Passage;
  numbers: readonly string[];
  /** Taps on the engraving go to this question. */
  active: boolean;
  onActivate: () => void;
  onGive: (value: Given) => void;
  onToggle: (measureIndex: number) => void;
}

/** One question with its ways of answering; after marking, the right answer and why. */
export function QuestionRow(props: QuestionRowProps) {
  const { question, marked } = props;
  const id = useId();
  return (
    <li className={styles.question} data-outcome={marked?.outcome}>
      <fieldset disabled={marked !== null}>
        <legend>
          <span className={styles.axis}>{question.axis}</span>
          <span className={styles.prompt}>{question.prompt}</span>
        </legend>
        {question.form === "measures" ? (
          <MeasureChoice {...props} />
        ) : question.form === "number" ? (
          <NumberAnswer {...props} />
        ) : (
          <OptionList {...props} name={id} options={question.options} />
        )}
      </fieldset>
      {marked ? (
        <p className={styles.reason}>
          <b>{OUTCOME_WORDS[marked.outcome]}</b>. {question.reason}
        </p>
      ) : null}
    </li>
  );
}

function OptionList({
  question,
  given,
  marked,
  onGive,
  name,
  options,
}: QuestionRowProps & { name: string; options: readonly Option[] }) {
  const many = question.form === "many";
  const chosen = Array.isArray(given) ? given.map(String) : given === null ? [] : [String(given)];
  const rights =
    question.form === "many"
      ? question.right
      : [String(question.form === "one" ? question.right : "")];
  const choose = (option: string) => {
    if (!many) onGive(option);
    else onGive(chosen.includes(option) ? chosen.filter((c) => c !== option) : [...chosen, option]);
  };
  return (
    <div className={styles.options}>
      {options.map((option) => (
        <label
          key={option.id}
          className={styles.option}
          data-right={marked !== null && rights.includes(option.id)}
        >
          <input
            type={many ? "checkbox" : "radio"}
            name={name}
            checked={chosen.includes(option.id)}
            onChange={() => choose(option.id)}
          />
          {option.glyph ? <Sign name={option.glyph} label="" size="row" /> : null}
          <span className={styles.text} lang={option.lang}>
            {option.text}
          </span>
          {marked && rights.includes(option.id) ? (
            <span className={styles.verdict}>right</span>
          ) : null}
          {marked && chosen.includes(option.id) && !rights.includes(option.id) ? (
            <span className={styles.verdict}>your answer</span>
          ) : null}
        </label>
      ))}
    </div>
  );
}

function MeasureChoice({
  question,
  given,
  marked,
  passage,
  numbers,
  active,
  onActivate,
  onToggle,
}: QuestionRowProps) {
  const chosen = Array.isArray(given) ? given : [];
  const rights = question.form === "measures" ? question.right : [];
  return (
    <>
      {marked ? null : (
        <p className={styles.tap} data-active={active}>
          {active ? (
            "Tap the measures above, or here."
          ) : (
            <button type="button" onClick={onActivate}>
              tap the measures
            </button>
          )}
        </p>
      )}
      <div className={styles.measures}>
        {numbers.map((number, i) => {
          const index = passage.from + i;
          const is = chosen.some((c) => c === index);
          const right = marked !== null && rights.includes(index);
          return (
            <button
              key={index}
              type="button"
              aria-pressed={is}
              data-right={right}
              className={styles.measure}
              onClick={() => onToggle(index)}
            >
              <b>{number || index + 1}</b>
              {right ? <span className={styles.verdict}>right</span> : null}
              {marked && is && !right ? <span className={styles.verdict}>no</span> : null}
            </button>
          );
        })}
      </div>
    </>
  );
}

function NumberAnswer({ question, given, marked, onGive }: QuestionRowProps) {
  if (question.form !== "number") return null;
  return (
    <Field
      label={question.unit}
      labelAt="quiet"
      name={question.id}
      inputMode="numeric"
      autoComplete="off"
      value={given === null ? "" : String(given)}
      onChange={(e) => onGive(e.target.value.trim() === "" ? null : e.target.value)}
      hint={
        marked
          ? `${question.right} ${question.unit}; within ${question.tolerance} counts`
          : `${question.unit}; within ${question.tolerance} counts as right`
      }
    />
  );
}
