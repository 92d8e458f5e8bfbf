"use client";
import { STEPS, type Step } from "@/lib/memory/readiness";
import styles from "./readiness-line.module.css";
import { DAYS_RULE, STEP_MEANINGS, stepWords } from "./step-words";
import { useReadiness } from "./use-readiness";

interface ReadinessLineProps {
  /** Entries of the set; keep the array from one rendering to the next. */
  slugs: readonly string[];
  /** Audition date, YYYY-MM-DD; without one the present moment counts. */
  date: string | null;
  /** Leaves out what the steps mean, where they are explained nearby. */
  brief?: boolean;
}

/** How far a set is, in four steps: a line as thick as what is known, and the counts in words. */
export function ReadinessLine({ slugs, date, brief = false }: ReadinessLineProps) {
  const set = useReadiness(slugs, date);
  if (!set || set.entries.length === 0) return null;
  return (
    <div>
      <div className={styles.line} aria-hidden="true">
        {[...STEPS]
          .reverse()
          .map((step) =>
            set.steps[step] > 0 ? (
              <span key={step} className={CLASSES[step]} style={{ flexGrow: set.steps[step] }} />
            ) : null,
          )}
      </div>
      <p className={styles.words}>{stepWords(set.steps)}</p>
      {brief ? null : (
        <details className={styles.meanings}>
          <summary>What the steps mean</summary>
          <dl>
            {STEP_MEANINGS.map(({ step, words }) => (
              <div key={step}>
                <dt>{step}</dt>
                <dd>{words}</dd>
              </div>
            ))}
          </dl>
          <p>{DAYS_RULE}</p>
        </details>
      )}
    </div>
  );
}

const CLASSES: Readonly<Record<Step, string | undefined>> = {
  ready: styles.ready,
  nearly: styles.nearly,
  shaky: styles.shaky,
  "not met": styles.unmet,
};
