"use client";
import { useId, useRef, useState } from "react";
import { importState, MOST_STATE_BYTES } from "@/lib/store/whole-state";
import { Button } from "../ui/button";
import { device } from "../ui/device";
import { Notice } from "../ui/notice";
import styles from "./keep.module.css";
import { importWords, sizeWords } from "./keep-words";

type State =
  | { at: "rest" }
  | { at: "work"; name: string }
  | { at: "done"; name: string; said: readonly string[] }
  | { at: "refused"; sentence: string };

/** A file in: what is new is added, nothing here is taken away. */
export function StateIn({ onChanged }: { onChanged: () => Promise<void> }) {
  const [state, setState] = useState<State>({ at: "rest" });
  const input = useRef<HTMLInputElement>(null);
  const id = useId();
  const onFile = async (file: File) => {
    setState({ at: "work", name: file.name });
    try {
      const said = importWords(await takeIn(file));
      setState({ at: "done", name: file.name, said });
      await onChanged();
    } catch (error) {
      const sentence =
        error instanceof Error ? error.message : "It could not be read; try once more.";
      setState({ at: "refused", sentence: `${file.name}: ${sentence}` });
    }
  };
  return (
    <section aria-labelledby={id} className={styles.part}>
      <h2 id={id}>In, from a file</h2>
      <p>
        What the file has and this device has not is added. Nothing kept here is lost; of a piece or
        date changed on both, the later change stands.
      </p>
      <input
        ref={input}
        type="file"
        accept="application/json,.json"
        className="aside-for-ears"
        tabIndex={-1}
        aria-hidden="true"
        onChange={(event) => {
          const file = event.target.files?.[0];
          // The same file may be chosen again.
          event.target.value = "";
          if (file) void onFile(file);
        }}
      />
      <Button disabled={state.at === "work"} onClick={() => input.current?.click()}>
        Choose a file
      </Button>
      <div aria-live="polite">
        {state.at === "work" ? <p>Taking in {state.name}. One moment.</p> : null}
        {state.at === "done" ? (
          <ul>
            {state.said.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        ) : null}
      </div>
      {state.at === "refused" ? <Notice kind="error" title={state.sentence} /> : null}
    </section>
  );
}

async function takeIn(file: File) {
  if (file.size > MOST_STATE_BYTES) {
    throw new Error(
      `It has ${sizeWords(file.size)}, more than anything this site saves: choose another.`,
    );
  }
  return importState(await device(), await file.text());
}
