import Link from "next/link";
import type { ReactNode } from "react";
import styles from "./rows.module.css";

interface RowsProps {
  children: ReactNode;
  /** Names the list for a screen reader where no heading does. */
  label?: string;
  ordered?: boolean;
}

/** A list of rows parted by hairlines. */
export function Rows({ children, label, ordered = false }: RowsProps) {
  const List = ordered ? "ol" : "ul";
  return (
    <List className={styles.rows} aria-label={label}>
      {children}
    </List>
  );
}

interface RowProps {
  /** What the row is about: a term, a sign, a title. */
  lead: ReactNode;
  /** What is said about it; to the right where there is room, else below. */
  note?: ReactNode;
  /** Makes the whole row one link. */
  href?: string;
  /** `below` keeps the note under the lead; `beside` moves it to the side only on a desk (sentences). */
  noteAt?: "side" | "below" | "beside";
}

export function Row({ lead, note, href, noteAt = "side" }: RowProps) {
  const content = (
    <>
      <span className={styles.lead}>{lead}</span>
      {note === undefined ? null : <span className={styles.note}>{note}</span>}
    </>
  );
  const className = `${styles.row} ${styles[noteAt]}`;
  return (
    <li>
      {href === undefined ? (
        <span className={className}>{content}</span>
      ) : (
        <Link href={href} prefetch={false} className={`${className} ${styles.link}`}>
          {content}
        </Link>
      )}
    </li>
  );
}

export interface Fact {
  label: ReactNode;
  value: ReactNode;
  key: string;
}

/** Question and answer pairs: "how loud" / "soft, at once". */
export function FactRows({ facts }: { facts: readonly Fact[] }) {
  return (
    <dl className={styles.facts}>
      {facts.map(({ key, label, value }) => (
        <div key={key} className={styles.fact}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
