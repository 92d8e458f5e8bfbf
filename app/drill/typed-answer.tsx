"use client";
import { type Ref, useState } from "react";
import type { Prompt } from "@/lib/memory/prompts/build-prompt";
import { Button } from "../ui/button";
import { Field } from "../ui/field";
import { Term } from "../ui/term";
import styles from "./drill.module.css";
import { QUESTIONS } from "./feedback-words";
import type { Told } from "./mark-given";
import type { DrillEntry } from "./prompt-entries";

interface TypedAnswerProps {
  prompt: Prompt;
  entry: DrillEntry;
  told: Told | null;
  /** Element that holds what is asked about. */
  describedBy: string;
  ref: Ref<HTMLInputElement>;
  onWrite: (text: string) => void;
}

/** A word to write; after the answer what was written and the right word, as rows. */
export function TypedAnswer({ prompt, entry, told, describedBy, ref, onWrite }: TypedAnswerProps) {
  const [text, setText] = useState("");
  const [error, setError] = useState<string>();
  if (told) {
    const wrote = typeof told.given === "object" && "wrote" in told.given ? told.given.wrote : null;
    const isSame = told.outcome === "right" || (told.helped && told.outcome === "partly");
    return (
      <ol className={styles.choices}>
        <li data-right="true">
          <span className={styles.row}>
            <span className={styles.text}>
              <Term lang={entry.lang} size="row">
                {told.spelling ?? entry.headword}
              </Term>
            </span>
            <span className={styles.tag}>right</span>
          </span>
        </li>
        {wrote !== null && !isSame ? (
          <li>
            <span className={styles.row}>
              <span className={styles.text}>{wrote}</span>
              <span className={styles.tag}>your answer</span>
            </span>
          </li>
        ) : null}
      </ol>
    );
  }
  return (
    <form
      className={styles.typed}
      onSubmit={(event) => {
        event.preventDefault();
        if (text.trim() === "") setError("Write the word, or have it shown.");
        else onWrite(text.trim());
      }}
    >
      <Field
        ref={ref}
        label={QUESTIONS[prompt.kind]}
        labelAt="quiet"
        look="engraved"
        name="word"
        autoComplete="off"
        autoCapitalize="none"
        autoCorrect="off"
        spellCheck={false}
        enterKeyHint="done"
        maxLength={60}
        value={text}
        {...(error === undefined ? { hint: "accents and capitals are free" } : { error })}
        onChange={(event) => {
          setText(event.target.value);
          setError(undefined);
        }}
        aria-labelledby={describedBy}
      />
      <Button type="submit" kind="filled">
        That is it
      </Button>
    </form>
  );
}
