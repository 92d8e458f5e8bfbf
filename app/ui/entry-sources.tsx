import Link from "next/link";
import type { Entry } from "@/lib/glossary/schema";
import type { Source } from "@/lib/glossary/sources";
import styles from "./entry-sources.module.css";

interface EntrySourcesProps {
  entry: Entry;
  sources: ReadonlyMap<string, Source>;
}

/** The works an entry rests on, what each adds, and how to decide where they differ. */
export function EntrySources({ entry, sources }: EntrySourcesProps) {
  return (
    <section aria-labelledby="sources" className={styles.sources}>
      {entry.disagree ? (
        <div className={styles.disagree}>
          <h2 id="disagree">Where the books disagree</h2>
          <p>{entry.disagree}</p>
        </div>
      ) : null}
      <h2 id="sources">Where this comes from</h2>
      <ul className={styles.list}>
        {entry.sources.map(({ key, note }) => {
          const source = sources.get(key);
          return (
            <li key={key}>
              <Link href={`/sources#${key}`} prefetch={false}>
                {source ? source.title : key}
              </Link>
              {source && source.year !== "none" ? `, ${source.year}` : null}
              {note ? `: ${note}` : null}
            </li>
          );
        })}
      </ul>
      <p className={styles.checked}>
        Checked <time dateTime={entry.reviewed}>{dayInWords(entry.reviewed)}</time>
      </p>
    </section>
  );
}

/** "25 November 2026" from an ISO day, the same wherever the page is built. */
function dayInWords(isoDay: string): string {
  return new Date(`${isoDay}T00:00:00Z`).toLocaleDateString("en-GB", {
    day: "numeric",
    month: "long",
    year: "numeric",
    timeZone: "UTC",
  });
}
