import { asSentence } from "@/lib/glossary/family-words";
import type { Glossary } from "@/lib/glossary/glossary";
import type { Entry } from "@/lib/glossary/schema";
import { EntryLead } from "./entry-lead";
import { Row, Rows } from "./rows";

interface EntryKinProps {
  entry: Entry;
  glossary: Glossary;
}

/** The entries round this one: what it is made of, its signs, and those it is mixed up with. */
export function EntryKin({ entry, glossary }: EntryKinProps) {
  const parts = found(entry.composed ?? [], glossary);
  const means = found(entry.means ? [entry.means] : [], glossary);
  const signs = glossary.entries.filter((other) => other.means === entry.slug);
  const alikes = (entry.alikes ?? []).flatMap(({ slug, difference }) => {
    const other = glossary.bySlug.get(slug);
    return other ? [{ other, difference }] : [];
  });
  return (
    <>
      <Group id="parts" title="Made of" entries={parts} />
      <Group id="means" title="The sign for" entries={means} />
      <Group id="signs" title="Its signs" entries={signs} />
      {alikes.length > 0 ? (
        <section aria-labelledby="alikes">
          <h2 id="alikes">Not the same as</h2>
          <Rows>
            {alikes.map(({ other, difference }) => (
              <Row
                key={other.slug}
                href={`/terms/${other.slug}`}
                lead={<EntryLead entry={other} />}
                note={difference}
                noteAt="below"
              />
            ))}
          </Rows>
        </section>
      ) : null}
    </>
  );
}

function Group({ id, title, entries }: { id: string; title: string; entries: readonly Entry[] }) {
  if (entries.length === 0) return null;
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      <Rows>
        {entries.map((other) => (
          <Row
            key={other.slug}
            href={`/terms/${other.slug}`}
            lead={<EntryLead entry={other} />}
            note={asSentence(other.meaning)}
            noteAt="below"
          />
        ))}
      </Rows>
    </section>
  );
}

function found(slugs: readonly string[], glossary: Glossary): Entry[] {
  return slugs.flatMap((slug) => glossary.bySlug.get(slug) ?? []);
}
