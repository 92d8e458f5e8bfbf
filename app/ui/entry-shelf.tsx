import { SHELF_NAMES } from "@/lib/glossary/family-words";
import type { ShelfOfEntries } from "@/lib/glossary/list-entries";
import { EntryLead } from "./entry-lead";
import styles from "./entry-shelf.module.css";
import { Row, Rows } from "./rows";

/** Letters are worth jumping to once a list is longer than a few screens. */
const LONG = 60;

/** All entries of one language, letter by letter, as a dictionary sets them. */
export function EntryShelf({ shelf: { shelf, letters } }: { shelf: ShelfOfEntries }) {
  const name = SHELF_NAMES[shelf];
  const count = letters.reduce((sum, { entries }) => sum + entries.length, 0);
  const anchor = (letter: string) => `${shelf}-${letter === "#" ? "other" : letter.toLowerCase()}`;
  return (
    <section aria-labelledby={`shelf-${shelf}`}>
      <h2 id={`shelf-${shelf}`}>
        {name} <span className={styles.count}>{count}</span>
      </h2>
      {count > LONG ? (
        <nav aria-label={`${name} by letter`}>
          <ul className={styles.jumps}>
            {letters.map(({ letter }) => (
              <li key={letter}>
                <a href={`#${anchor(letter)}`}>{letter}</a>
              </li>
            ))}
          </ul>
        </nav>
      ) : null}
      {letters.map(({ letter, entries }) => (
        <div key={letter} id={anchor(letter)} className={styles.letter}>
          <h3 className={styles.initial}>{letter}</h3>
          <Rows>
            {entries.map((entry) => (
              <Row
                key={entry.slug}
                href={`/terms/${entry.slug}`}
                lead={<EntryLead entry={entry} />}
                note={entry.meaning}
                noteAt="beside"
              />
            ))}
          </Rows>
        </div>
      ))}
    </section>
  );
}
