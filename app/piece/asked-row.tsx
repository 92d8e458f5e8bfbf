import Link from "next/link";
import type { ReactNode } from "react";
import { MeasureNumber } from "../ui/measure-number";
import type { MeasureStretch } from "../ui/measure-stretches";
import type { Lead } from "../ui/ribbon/mark-lead";
import styles from "./asked-row.module.css";
import { LeadView } from "./lead-view";

interface AskedRowProps {
  lead: Lead;
  /** What it asks. */
  children: ReactNode;
  /** Opens the row with its measures. */
  at?: MeasureStretch;
}

/** A mark and what it asks: beside one another on a desk, under one another in the hand. */
export function AskedRow({ lead, children, at }: AskedRowProps) {
  const slug = lead.kind === "said" ? null : lead.slug;
  const content = (
    <>
      {at ? (
        <span className={styles.number}>
          <MeasureNumber {...at} />
        </span>
      ) : null}
      <span className={styles.lead}>
        <LeadView lead={lead} />
      </span>
      <span className={styles.asks}>{children}</span>
    </>
  );
  const look = `${styles.row} ${at ? styles.numbered : ""}`;
  return (
    <li>
      {slug === null ? (
        <span className={look}>{content}</span>
      ) : (
        <Link href={`/terms/${slug}`} prefetch={false} className={`${look} ${styles.link}`}>
          {content}
        </Link>
      )}
    </li>
  );
}
