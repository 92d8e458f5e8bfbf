import { FAMILY_WORDS } from "@/lib/glossary/family-words";
import type { Entry } from "@/lib/glossary/schema";
import { FAMILIES } from "@/lib/glossary/vocabulary";
import styles from "./entry-how.module.css";

/** What to do on the next note, for each family of instruments that has its own way. */
export function EntryHow({ how }: { how: Entry["how"] }) {
  const advice = FAMILIES.flatMap((family) => {
    const text = how?.[family];
    return text === undefined ? [] : [{ family, text }];
  });
  if (advice.length === 0) return null;
  return (
    <section className={styles.how} aria-label="How to do it">
      {advice.map(({ family, text }) => (
        <div key={family}>
          <h2>{FAMILY_WORDS[family]}</h2>
          <p>{text}</p>
        </div>
      ))}
    </section>
  );
}
