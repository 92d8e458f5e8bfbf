import type { ReactNode } from "react";
import type { Entry, SignInfo } from "@/lib/glossary/schema";
import { LINE_SIGNS, type LineSign } from "./line-signs";
import styles from "./sign-on-staff.module.css";
import {
  Barline,
  BOTTOM,
  Clef,
  MIDDLE,
  middleOf,
  Note,
  Placed,
  StaffLines,
  TOP,
} from "./staff-parts";

const WIDTH = 160;
const lines = <StaffLines to={WIDTH} />;
const HIGH = 55;

/** A sign where it stands on the page: the staff and its notes in soft ink, the sign itself in ink. */
export function SignOnStaff({ entry }: { entry: Pick<Entry, "slug" | "sign" | "headword"> }) {
  const { sign } = entry;
  if (!sign) return null;
  const drawing =
    LINE_SIGNS[entry.slug] ?? (sign.glyph ? setGlyph(sign.glyph, sign.stands) : undefined);
  if (!drawing) return null;
  return (
    <svg
      className={styles.staff}
      viewBox={`0 ${cropOf(entry.slug, sign.stands)} ${WIDTH} 86`}
      role="img"
      aria-label={`Drawn: ${sign.looks[0] ?? entry.headword}`}
    >
      <g className={styles.around}>{drawing.around}</g>
      <g>{drawing.sign}</g>
    </svg>
  );
}

/** Where the picture begins, so that no empty paper stands over or under the sign. */
function cropOf(slug: string, stands: SignInfo["stands"]): number {
  if (stands === "below-staff" || slug === "dashed-line") return 30;
  return stands === "above-staff" || stands === "on-note" ? 6 : 18;
}

/** Sets a glyph by the place its entry names. */
function setGlyph(name: string, stands: SignInfo["stands"]): LineSign {
  const note = 72;
  const oneNote: ReactNode = (
    <>
      {lines}
      <Note x={note} y={HIGH} />
    </>
  );
  switch (stands) {
    case "on-note":
      if (/^note(head|Shape)/.test(name)) return onHead(name, note);
      return {
        around: oneNote,
        sign: <Placed name={name} x={middleOf(note)} y={TOP - 5} rest="bottom" />,
      };
    case "above-staff": {
      // A breath or a break stands after its note and across the top line.
      const isBreak = /^(breath|caesura)/.test(name);
      return {
        around: oneNote,
        sign: isBreak ? (
          <Placed
            name={name}
            x={118}
            y={TOP + 2}
            rest={name.startsWith("breath") ? "bottom" : "middle"}
          />
        ) : (
          <Placed name={name} x={middleOf(note)} y={TOP - 6} rest="bottom" />
        ),
      };
    }
    case "below-staff":
      return {
        around: (
          <>
            {lines}
            <Note x={note} y={65} stem="up" />
          </>
        ),
        sign: <Placed name={name} x={middleOf(note)} y={BOTTOM + 22} />,
      };
    case "on-stem":
      return {
        around: (
          <>
            {lines}
            <Note x={note} y={75} stem="up" />
          </>
        ),
        sign: <Placed name={name} x={note + 11.2} y={55} />,
      };
    case "before-note":
      return {
        around: oneNote,
        sign: name.startsWith("grace") ? (
          <Placed name={name} x={note - 7} y={HIGH} hold="right" rest="origin" />
        ) : (
          <Placed
            name={name}
            x={note - 4}
            y={name.startsWith("arpegg") ? MIDDLE : HIGH}
            hold="right"
          />
        ),
      };
    case "after-note":
      return {
        around: oneNote,
        sign: <Placed name={name} x={note + 15} y={HIGH} hold="left" />,
      };
    case "between-notes":
      return betweenNotes(name);
    case "in-staff":
      return {
        around: (
          <>
            {lines}
            <Barline x={8} />
            <Barline x={WIDTH - 8} />
          </>
        ),
        sign: <Placed name={name} x={WIDTH / 2} y={MIDDLE} />,
      };
    case "at-barline":
      return atBarline(name);
    case "at-start":
      return {
        around: (
          <>
            {lines}
            <Clef />
          </>
        ),
        sign: <Placed name={name} x={38} y={MIDDLE} hold="left" />,
      };
  }
}

/** A sign that is the note head itself, or stands round it. */
function onHead(name: string, x: number): LineSign {
  const isRound = name === "noteheadParenthesis";
  return {
    around: (
      <>
        {lines}
        {isRound ? (
          <Note x={x} y={HIGH} />
        ) : (
          <path d={`M${x + 0.6} ${HIGH + 2}V90`} stroke="currentColor" strokeWidth="1.2" />
        )}
      </>
    ),
    sign: isRound ? (
      <Placed name={name} x={middleOf(x)} y={HIGH} />
    ) : (
      <Placed name={name} x={x} y={HIGH} hold="left" />
    ),
  };
}

function betweenNotes(name: string): LineSign {
  const turns = name.startsWith("ornament");
  const climbs = name.startsWith("glissando");
  return {
    around: (
      <>
        {lines}
        <Note x={28} y={climbs ? 75 : 65} stem="up" />
        <Note x={120} y={climbs ? 50 : 65} stem={climbs ? "down" : "up"} />
      </>
    ),
    sign: turns ? (
      <Placed name={name} x={80} y={TOP - 6} rest="bottom" />
    ) : (
      <Placed name={name} x={82} y={climbs ? 62 : 46} />
    ),
  };
}

/** Barlines end or open the staff, or divide it. */
function atBarline(name: string): LineSign {
  const ends = name === "barlineFinal" || name === "repeatRight";
  const opens = name === "repeatLeft";
  const x = ends ? WIDTH - 12 : opens ? 12 : WIDTH / 2;
  return {
    around: (
      <>
        <StaffLines from={opens ? 12 : 0} to={ends ? WIDTH - 12 : WIDTH} />
        {ends ? <Note x={60} y={HIGH} /> : <Note x={112} y={HIGH} />}
        {ends || opens ? null : <Note x={36} y={HIGH} />}
      </>
    ),
    sign: <Placed name={name} x={x} y={MIDDLE} hold={ends ? "right" : opens ? "left" : "middle"} />,
  };
}
