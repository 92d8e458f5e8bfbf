import Link from "next/link";
import type { ReactNode } from "react";
import styles from "./term.module.css";

interface TermProps {
  /** The word as printed. */
  children: ReactNode;
  /** BCP 47 language of the word, so that it is spoken right. */
  lang: string;
  /** Slug of the entry to lead to; without it the term is only set, not linked. */
  to?: string;
  /** `text` stands in a sentence, `row` opens a row, `head` is the title of a page. */
  size?: "text" | "row" | "head";
}

/** A performance term as an engraver sets it: in italic, with its language. */
export function Term({ children, lang, to, size = "text" }: TermProps) {
  const word = (
    <i className={`${styles.term} ${styles[size]}`} lang={lang}>
      {children}
    </i>
  );
  if (to === undefined) return word;
  return (
    <Link href={`/terms/${to}`} prefetch={false}>
      {word}
    </Link>
  );
}
