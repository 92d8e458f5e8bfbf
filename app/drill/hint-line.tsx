import { Term } from "../ui/term";
import styles from "./drill.module.css";
import type { Hint } from "./hint";

/** The help taken, in words; read out when it appears. */
export function HintLine({ hint, lang }: { hint: Hint; lang: string }) {
  return (
    <p role="status" className={styles.hint}>
      {hint.form === "letters" ? (
        <>
          It begins <Term lang={lang}>{hint.text}</Term>
        </>
      ) : hint.form === "sense" ? (
        `Half of it: ${hint.text}.`
      ) : (
        "Some rows are laid aside: it is one of the others."
      )}{" "}
      With a hint it counts as partly.
    </p>
  );
}
