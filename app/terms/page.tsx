import type { Metadata } from "next";
import { ButtonLink } from "@/app/ui/button";
import { EntryFilterLinks } from "@/app/ui/entry-filter-links";
import { EntryShelf } from "@/app/ui/entry-shelf";
import { Notice } from "@/app/ui/notice";
import { filterEntries, parseEntryFilter, shelveEntries } from "@/lib/glossary/list-entries";
import { loadGlossary } from "@/lib/glossary/load";
import styles from "./page.module.css";

export const metadata: Metadata = {
  title: "All words and signs",
  description: "Every performance term and sign, by language and letter, with what it means.",
};

export default async function TermsPage({ searchParams }: PageProps<"/terms">) {
  const filter = parseEntryFilter(await searchParams);
  const entries = filterEntries(loadGlossary().entries, filter);
  return (
    <div className={styles.page}>
      <div className={styles.head}>
        <h1>All words and signs</h1>
        <p className="soft">{entries.length === 1 ? "One entry" : `${entries.length} entries`}</p>
      </div>
      <div className={styles.filter}>
        <EntryFilterLinks filter={filter} />
      </div>
      <div className={styles.list}>
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
