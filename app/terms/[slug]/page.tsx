import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { EntryAsks } from "@/app/ui/entry-asks";
import { EntryBody } from "@/app/ui/entry-body";
import { EntryHead } from "@/app/ui/entry-head";
import { EntryHow } from "@/app/ui/entry-how";
import { EntryKin } from "@/app/ui/entry-kin";
import { EntrySources } from "@/app/ui/entry-sources";
import { InYourPieces } from "@/app/ui/in-your-pieces";
import { loadGlossary, readEntryBody } from "@/lib/glossary/load";
import { loadSources } from "@/lib/glossary/sources";
import styles from "./page.module.css";

export const dynamicParams = false;

export function generateStaticParams() {
  return loadGlossary().entries.map(({ slug }) => ({ slug }));
}

export async function generateMetadata({ params }: PageProps<"/terms/[slug]">): Promise<Metadata> {
  const entry = loadGlossary().bySlug.get((await params).slug);
  return entry ? { title: entry.headword, description: entry.meaning } : {};
}

export default async function EntryPage({ params }: PageProps<"/terms/[slug]">) {
  const glossary = loadGlossary();
  const entry = glossary.bySlug.get((await params).slug);
  if (!entry) notFound();
  const sources = loadSources();
  const signs = glossary.entries.filter(({ means }) => means === entry.slug);
  return (
    <article className={styles.entry}>
      <div className={styles.head}>
        <EntryHead entry={entry} />
      </div>
      <div className={styles.does}>
        <EntryAsks entry={entry} sources={sources} />
        <EntryHow how={entry.how} />
        <EntryBody source={readEntryBody(entry)} />
      </div>
      <div className={styles.beside}>
        <EntryKin entry={entry} glossary={glossary} />
        <InYourPieces slug={entry.slug} signs={signs.map(({ slug }) => slug)} />
        <EntrySources entry={entry} sources={sources} />
      </div>
    </article>
  );
}
