import { AXIS_QUESTIONS, asksInWords } from "@/lib/glossary/asks-words";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import { asSentence } from "@/lib/glossary/family-words";
import { Term } from "../ui/term";
import type { Asking } from "./create-session";
import styles from "./drill.module.css";
import { contrastWith, verdictWords } from "./feedback-words";
import type { Told } from "./mark-given";

interface FeedbackProps {
  asking: Asking;
  told: Told;
  entries: ReadonlyMap<string, ClientEntry>;
}

/** The verdict, the reason, and what sets the answer given apart from the right one. */
export function Feedback({ asking, told, entries }: FeedbackProps) {
  const { prompt, entry } = asking;
  const contrast = contrastWith(prompt.slug, told.instead, entries);
  return (
    <div className={styles.feedback}>
      <p>
        <b>{verdictWords(told, entry.headword)}</b> <Reason asking={asking} />
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

/** The meaning, or, where the row above says it already, what it asks axis by axis. */
function Reason({ asking: { prompt, entry } }: Pick<FeedbackProps, "asking">) {
  const word = (
    <Term lang={entry.lang}>{entry.headword}</Term>
  );
  if (prompt.kind === "meaning>word" || prompt.kind === "alike") return <Asks entry={entry} lead={word} />;
  if (prompt.kind === "word>meaning") return <Asks entry={entry} lead={word} />;
  return (
    <>
      {word}: {asSentence(entry.meaning)}
    </>
  );
}

function Asks({ entry, lead }: { entry: Asking["entry"]; lead: React.ReactNode }) {
  const asks = asksInWords(entry.asks).map(
    ({ axis, words }) => `${AXIS_QUESTIONS[axis]}: ${words}`,
  );
  if (asks.length === 0) {
    return (
      <>
        {lead}: {asSentence(entry.meaning)}
      </>
    );
  }
  return (
    <>
      {lead} says {asks.join("; ")}.
    </>
  );
}
