/**
 * The few parts a drawn staff needs, in units of a tenth of a staff space:
 * the top line is at y 40, the bottom line at 80. Parts take their colour from
 * the group they stand in.
 */
import { SMUFL_CODEPOINTS } from "@/lib/glossary/smufl";
import { GLYPH_BOXES } from "./glyph-boxes";
import styles from "./staff-parts.module.css";

export const SPACE = 10;
export const TOP = 40;
export const MIDDLE = 60;
export const BOTTOM = 80;
/** Width of a black note head; where stems meet it, above or below its centre. */
const HEAD = 1.18 * SPACE;
const STEM_AT = 0.168 * SPACE;

/** Glyphs of the staff itself, beside the signs of the glossary. */
const CONTEXT = { gClef: 0xe050, noteheadBlack: 0xe0a4, timeSig4: 0xe084, eighthFlagDown: 0xe241 };

export function StaffLines({ from = 0, to }: { from?: number; to: number }) {
  const lines = [0, 1, 2, 3, 4].map((i) => `M${from} ${TOP + i * SPACE}H${to}`).join("");
  return <path d={lines} stroke="currentColor" strokeWidth="1" fill="none" />;
}

export function Barline({ x, heavy = false }: { x: number; heavy?: boolean }) {
  return <path d={`M${x} ${TOP}V${BOTTOM}`} stroke="currentColor" strokeWidth={heavy ? 5 : 1.6} />;
}

export function Glyph({
  code,
  x,
  y,
  size = 4 * SPACE,
}: {
  code: number;
  x: number;
  y: number;
  size?: number;
}) {
  return (
    <text x={x} y={y} fontSize={size} className={styles.glyph}>
      {String.fromCodePoint(code)}
    </text>
  );
}

export function Clef() {
  return <Glyph code={CONTEXT.gClef} x={4} y={70} />;
}

interface NoteProps {
  /** Left edge and centre of the head. */
  x: number;
  y: number;
  stem?: "up" | "down" | "none";
  small?: boolean;
}

export function Note({ x, y, stem = "down", small = false }: NoteProps) {
  const scale = small ? 0.66 : 1;
  const length = 35 * scale;
  const path =
    stem === "up"
      ? `M${x + HEAD * scale - 0.6} ${y - STEM_AT}V${y - length}`
      : `M${x + 0.6} ${y + STEM_AT}V${y + length}`;
  return (
    <>
      <Glyph code={CONTEXT.noteheadBlack} x={x} y={y} size={4 * SPACE * scale} />
      {stem === "none" ? null : <path d={path} stroke="currentColor" strokeWidth={1.2 * scale} />}
    </>
  );
}

/** Centre line of a note head drawn at x. */
export function middleOf(x: number): number {
  return x + HEAD / 2;
}

interface PlacedProps {
  name: string;
  /** Where the glyph's box is to stand: its middle, or one of its edges. */
  x: number;
  y: number;
  hold?: "middle" | "left" | "right";
  rest?: "middle" | "bottom" | "top" | "origin";
}

/** A glyph set by its own extent rather than its origin, which differs from sign to sign. */
export function Placed({ name, x, y, hold = "middle", rest = "middle" }: PlacedProps) {
  const code = SMUFL_CODEPOINTS[name];
  const box = GLYPH_BOXES[name];
  if (code === undefined || box === undefined) return null;
  const [left, bottom, right, top] = box;
  const offsetX = hold === "left" ? left : hold === "right" ? right : (left + right) / 2;
  const offsetY =
    rest === "origin" ? 0 : rest === "bottom" ? bottom : rest === "top" ? top : (bottom + top) / 2;
  return <Glyph code={code} x={x - offsetX * SPACE} y={y + offsetY * SPACE} />;
}

/** A curve that swells in the middle and tapers to its ends, arched upwards by `height`. */
export function Slur({
  from,
  to,
  y,
  height = 12,
}: {
  from: number;
  to: number;
  y: number;
  height?: number;
}) {
  const third = (to - from) * 0.25;
  const outer = y - height * 1.33;
  const inner = outer + 3;
  return (
    <path
      d={`M${from} ${y}C${from + third} ${outer} ${to - third} ${outer} ${to} ${y}C${to - third} ${inner} ${from + third} ${inner} ${from} ${y}z`}
      fill="currentColor"
      stroke="currentColor"
      strokeWidth="0.8"
      strokeLinejoin="round"
    />
  );
}

interface BracketProps {
  from: number;
  to: number;
  y: number;
  /** Length of the hooks. */
  hook?: number;
  open?: boolean;
}

export function Bracket({ from, to, y, hook = 8, open = false }: BracketProps) {
  return (
    <path
      d={`M${from} ${y + hook}V${y}H${to}${open ? "" : `v${hook}`}`}
      fill="none"
      stroke="currentColor"
      strokeWidth="1.6"
    />
  );
}

interface WordsProps {
  x: number;
  y: number;
  children: string;
  italic?: boolean;
  size?: number;
  bold?: boolean;
}

export function Words({ x, y, children, italic = false, size = 16, bold = false }: WordsProps) {
  return (
    <text
      x={x}
      y={y}
      fontSize={size}
      className={styles.words}
      fontStyle={italic ? "italic" : undefined}
      fontWeight={bold ? 700 : undefined}
    >
      {children}
    </text>
  );
}
