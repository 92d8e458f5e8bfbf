import type { Metadata } from "next";
import { ButtonLink } from "@/app/ui/button";
import { EntryFilterLinks } from "@/app/ui/entry-filter-links";
import { EntryShelf } from "@/app/ui/entry-shelf";
import { Notice } from "@/app/ui/notice";
import { Row, Rows } from "@/app/ui/rows";
import { SHELF_NAMES } from "@/lib/glossary/family-words";
import {
  entryFilterQuery,
  filterEntries,
  parseEntryFilter,
  SHELVES,
  shelveEntries,
} from "@/lib/glossary/list-entries";
import { loadGlossary } from "@/lib/glossary/load";
import styles from "./page.module.css";

export const metadata: Metadata = {
  title: "All words and signs",
  description: "Every performance term and sign, by language and letter, with what it means.",
};

/** Unfiltered, the page is a table of contents and the usual words: 1400 rows at once serve nobody. */
export default async function TermsPage({ searchParams }: PageProps<"/terms">) {
  const filter = parseEntryFilter(await searchParams);
  const all = loadGlossary().entries;
  const isWhole = Object.values(filter).every((choice) => choice === undefined);
  const entries = filterEntries(all, isWhole ? { tier: 1 } : filter);
  return (
    <div className={styles.page}>
      <div className={styles.head}>
        <h1>All words and signs</h1>
        <p className="soft">{countWords(isWhole ? all.length : entries.length)}</p>
      </div>
      <div className={styles.filter}>
        <EntryFilterLinks filter={filter} />
      </div>
      <div className={styles.list}>
        {isWhole ? (
          <>
            <Rows label="By language">
              {SHELVES.map((shelf) => ({ shelf, count: filterEntries(all, { shelf }).length }))
                .filter(({ count }) => count > 0)
                .map(({ shelf, count }) => (
                  <Row
                    key={shelf}
                    href={`/terms${entryFilterQuery({ shelf })}`}
                    lead={SHELF_NAMES[shelf]}
                    note={countWords(count)}
                  />
                ))}
            </Rows>
            <p className="soft">Met in most parts:</p>
          </>
        ) : null}
        {entries.length === 0 ? (
          <Notice
            kind="empty"
            title="No entry answers all of these."
            action={<ButtonLink href="/terms">Show all of them</ButtonLink>}
          >
            Take one of the choices back.
          </Notice>
        ) : (
          shelveEntries(entries).map((shelf) => <EntryShelf key={shelf.shelf} shelf={shelf} />)
        )}
      </div>
    </div>
  );
}

function countWords(count: number): string {
  return count === 1 ? "one entry" : `${count} entries`;
}
