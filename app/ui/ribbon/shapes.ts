/**
 * What a ribbon is drawn from. All lengths are ribbon units: sixteenths of the
 * root font size, so that a reader's larger letters make a larger ribbon.
 */

/** `ink` is printed; `band` is a surface of it; `soft` is carried on; `rule` is a hairline of the page. */
export type Tone = "ink" | "band" | "soft" | "rule";

/** `term`: italic as printed. `tempo`: the same, heavier, for a new speed. `read`: said by us. `mark`: boxed letter. */
export type Face = "term" | "tempo" | "read" | "mark";

/** Everything drawn says from where to where it reaches, so that only what is in view is drawn. */
interface Reach {
  x0: number;
  x1: number;
}

export interface PathShape extends Reach {
  kind: "path";
  d: string;
  fill?: Tone;
  stroke?: Tone;
  weight?: number;
  /** SVG dash pattern; a broken line is something the page leaves open. */
  dash?: string;
}

export interface TextShape extends Reach {
  kind: "text";
  x: number;
  /** Baseline. */
  y: number;
  text: string;
  face: Face;
  tone: Tone;
  lang?: string;
}

export interface GlyphShape extends Reach {
  kind: "glyph";
  /** Left edge of its ink. */
  x: number;
  /** Where the glyph's own zero line stands. */
  y: number;
  /** SMuFL glyph name. */
  name: string;
  /** Height of four staff spaces. */
  size: number;
  tone: Tone;
}

export type Shape = PathShape | TextShape | GlyphShape;

/** Two decimals at most: paths stay short and tests readable. */
export function num(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** A straight line. */
export function line(
  [x0, y0]: readonly [number, number],
  [x1, y1]: readonly [number, number],
  look: Pick<PathShape, "stroke" | "weight" | "dash">,
): PathShape {
  return {
    kind: "path",
    d: `M${num(x0)} ${num(y0)}L${num(x1)} ${num(y1)}`,
    x0: Math.min(x0, x1),
    x1: Math.max(x0, x1),
    ...look,
  };
}
