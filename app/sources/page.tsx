import type { Metadata } from "next";
import { loadGlossary } from "@/lib/glossary/load";
import { loadSources } from "@/lib/glossary/sources";
import styles from "./page.module.css";

export const metadata: Metadata = {
  title: "Works cited",
  description: "The books, dictionaries and standards the entries rest on.",
};

export default function SourcesPage() {
  const counts = new Map<string, number>();
  for (const { sources } of loadGlossary().entries) {
    for (const { key } of sources) counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return (
    <>
      <h1>Works cited</h1>
      <p className={styles.lead}>
        Facts come from these; every sentence is our own. Where they disagree, the entry says so and
        how a player decides.
      </p>
      <ul className={styles.works}>
        {[...loadSources()].map(([key, { title, by, year, publisher, used }]) => (
          <li key={key} id={key} className={styles.work}>
            <p>
              <cite>{title}</cite>
              {year === "none" ? null : <span className="soft">, {year}</span>}
            </p>
            <p className="small soft">{by ? `${by}. ${publisher}` : publisher}</p>
            <p className="small">
              Taken from it: {used}. <span className="soft">{citedBy(counts.get(key) ?? 0)}</span>
            </p>
          </li>
        ))}
      </ul>
    </>
  );
}

function citedBy(count: number): string {
  if (count === 0) return "No entry cites it yet.";
  return count === 1 ? "One entry cites it." : `${count} entries cite it.`;
}
