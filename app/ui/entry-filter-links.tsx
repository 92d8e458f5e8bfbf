import Link from "next/link";
import { AXIS_QUESTIONS } from "@/lib/glossary/asks-words";
import { SHELF_NAMES, TIER_WORDS } from "@/lib/glossary/family-words";
import { type EntryFilter, entryFilterQuery, SHELVES } from "@/lib/glossary/list-entries";
import { AXES } from "@/lib/glossary/vocabulary";
import styles from "./entry-filter-links.module.css";

const TIERS = [1, 2, 3] as const;

/** The choices of the list of entries. Plain links, so that they work without a script and can be kept. */
export function EntryFilterLinks({ filter }: { filter: EntryFilter }) {
  const groups = [
    {
      title: "Language",
      all: { ...filter, shelf: undefined },
      choices: SHELVES.map((shelf) => ({
        words: SHELF_NAMES[shelf],
        chosen: filter.shelf === shelf,
        to: { ...filter, shelf },
      })),
    },
    {
      title: "What it says",
      all: { ...filter, axis: undefined },
      choices: AXES.map((axis) => ({
        words: AXIS_QUESTIONS[axis],
        chosen: filter.axis === axis,
        to: { ...filter, axis },
      })),
    },
    {
      title: "How often",
      all: { ...filter, tier: undefined },
      choices: TIERS.map((tier) => ({
        words: TIER_WORDS[tier],
        chosen: filter.tier === tier,
        to: { ...filter, tier },
      })),
    },
  ];
  const chosen = groups.flatMap(({ choices }) =>
    choices.filter((c) => c.chosen).map((c) => c.words),
  );
  return (
    <details className={styles.filter}>
      <summary className={styles.summary}>
        {chosen.length === 0 ? "Choose fewer" : `Only: ${chosen.join("; ")}`}
      </summary>
      <nav aria-label="Choose entries" className={styles.groups}>
        {groups.map(({ title, all, choices }) => (
          <div key={title}>
            <h2>{title}</h2>
            <ul className={styles.choices}>
              <Choice words="all" to={all} chosen={!choices.some((c) => c.chosen)} />
              {choices.map((choice) => (
                <Choice key={choice.words} {...choice} />
              ))}
            </ul>
          </div>
        ))}
      </nav>
    </details>
  );
}

function Choice({ words, to, chosen }: { words: string; to: EntryFilter; chosen: boolean }) {
  return (
    <li>
      <Link
        href={`/terms${entryFilterQuery(to)}`}
        prefetch={false}
        scroll={false}
        className={styles.choice}
        aria-current={chosen ? "true" : undefined}
      >
        {words}
      </Link>
    </li>
  );
}
