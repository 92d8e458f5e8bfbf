import { GLYPH_BOXES } from "../ui/glyph-boxes";
import type { Lead } from "../ui/ribbon/mark-lead";
import { Sign } from "../ui/sign";
import { Term } from "../ui/term";
import styles from "./asked-row.module.css";

/** A mark as it opens a row: the word in italic, the sign as its glyph, or what we say of it. */
export function LeadView({ lead }: { lead: Lead }) {
  switch (lead.kind) {
    case "said":
      return <span>{lead.text}</span>;
    case "term":
      return (
        <Term lang={lead.lang} size="row">
          {lead.text}
        </Term>
      );
    case "beat":
      return (
        <span>
          <span className="aside-for-ears">{lead.name} </span>
          {lead.glyphs.map((glyph, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a note and its dots never move
            <Sign key={i} name={glyph} label="" />
          ))}{" "}
          {lead.number}
        </span>
      );
    case "sign":
      if (lead.slug === "slur") {
        return (
          <>
            <Arc /> <span className={styles.name}>{lead.name}</span>
          </>
        );
      }
      return lead.glyph === null || isTall(lead.glyph) ? (
        <span className={styles.bare}>{lead.name}</span>
      ) : (
        <>
          <Sign name={lead.glyph} label="" size="row" />{" "}
          <span className={styles.name}>{lead.name}</span>
        </>
      );
  }
}

/** Signs that would reach into the row above (an arpeggio is five spaces high) are named alone. */
function isTall(glyph: string): boolean {
  const [, bottom = 0, , top = 0] = GLYPH_BOXES[glyph] ?? [];
  return top - bottom > 4.2;
}

/** A slur has no glyph of its own: it is drawn to the length of its notes. */
function Arc() {
  return (
    <svg viewBox="0 0 36 12" className={styles.arc} aria-hidden="true" focusable="false">
      <path d="M1 11C10 0 26 0 35 11C26 2.4 10 2.4 1 11Z" fill="currentColor" />
    </svg>
  );
}
