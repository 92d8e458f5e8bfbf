import { AXES } from "@/lib/glossary/vocabulary";
import type { Marked } from "@/lib/passage/question";
import styles from "./passage.module.css";

/** The passage marked axis by axis, in words. */
export function Result({ marked }: { marked: readonly Marked[] }) {
  const axes = AXES.filter((axis) => marked.some((m) => m.question.axis === axis));
  return (
    <section className={styles.result} aria-live="polite">
      <h2>Axis by axis</h2>
      <dl>
        {axes.map((axis) => {
          const own = marked.filter((m) => m.question.axis === axis);
          const right = own.filter((m) => m.outcome === "right").length;
          return (
            <div key={axis}>
              <dt>{axis}</dt>
              <dd>
                {right} of {own.length} right
              </dd>
            </div>
          );
        })}
      </dl>
    </section>
  );
}
