import type { Ref } from "react";
import { asksInWords } from "@/lib/glossary/asks-words";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import { Term } from "../ui/term";
import type { Asking } from "./create-session";
import styles from "./drill.module.css";
import { contrastWith, verdictOf } from "./feedback-words";
import type { Told } from "./mark-given";

interface FeedbackProps {
  ref: Ref<HTMLDivElement>;
  asking: Asking;
  told: Told;
  entries: ReadonlyMap<string, ClientEntry>;
}

/** The verdict, the reason, and what sets the answer given apart from the right one. */
export function Feedback({ asking, told, entries, ref }: FeedbackProps) {
  const { prompt, entry } = asking;
  const verdict = verdictOf(told, entry.headword);
  const contrast = contrastWith(prompt.slug, told.instead, entries);
  return (
    <div ref={ref} className={styles.feedback}>
      <p>
        <b>{verdict.text}</b>
        {verdict.word === null ? null : (
          <>
            {" "}
            <Term lang={entry.lang}>{verdict.word}</Term>.
          </>
        )}{" "}
        <Reason asking={asking} />
      </p>
      {prompt.difference !== null ? (
        <p>{prompt.difference}</p>
      ) : contrast === null ? null : contrast.isDifference ? (
        <p>{contrast.text}</p>
      ) : (
        <p>
          Your answer is <Term lang={contrast.lang}>{contrast.headword}</Term>: {contrast.text}.
        </p>
      )}
    </div>
  );
}

/** The meaning; where question or answer say it already, what it asks of the player. */
function Reason({ asking: { prompt, entry } }: Pick<FeedbackProps, "asking">) {
  const saysMeaning =
    prompt.kind === "word>meaning" || prompt.kind === "meaning>word" || prompt.kind === "alike";
  const asks = asksInWords(entry.asks).map(({ words }) => words);
  if (saysMeaning && asks.length === 0) return null;
  return (
    <>
      <Term lang={entry.lang}>{entry.headword}</Term>
      {saysMeaning ? ` asks: ${asks.join("; ")}.` : `: ${entry.meaning}.`}
    </>
  );
}
