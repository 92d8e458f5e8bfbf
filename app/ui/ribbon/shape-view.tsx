import { memo } from "react";
import { SMUFL_CODEPOINTS } from "@/lib/glossary/smufl";
import styles from "./ribbon.module.css";
import type { Face, Shape, Tone } from "./shapes";

const TONES: Readonly<Record<Tone, string | undefined>> = {
  ink: styles.ink,
  band: styles.band,
  soft: styles.soft,
  rule: styles.rule,
};
const FACES: Readonly<Record<Face, string | undefined>> = {
  term: styles.term,
  tempo: styles.tempo,
  read: styles.read,
  mark: styles.mark,
};

/** One shape of a ribbon as SVG. */
export const ShapeView = memo(function ShapeView({ shape }: { shape: Shape }) {
  switch (shape.kind) {
    case "path":
      return (
        <path
          d={shape.d}
          className={TONES[shape.fill ?? shape.stroke ?? "ink"]}
          fill={shape.fill ? "currentColor" : "none"}
          stroke={shape.stroke ? "currentColor" : "none"}
          strokeWidth={shape.weight}
          strokeDasharray={shape.dash}
        />
      );
    case "text":
      return (
        <text
          x={shape.x}
          y={shape.y}
          lang={shape.lang}
          className={`${FACES[shape.face]} ${TONES[shape.tone]}`}
          fill="currentColor"
        >
          {shape.text}
        </text>
      );
    case "glyph": {
      const codepoint = SMUFL_CODEPOINTS[shape.name];
      if (codepoint === undefined) return null;
      return (
        <text
          x={shape.x}
          y={shape.y}
          fontSize={shape.size}
          className={`${styles.glyph} ${TONES[shape.tone]}`}
          fill="currentColor"
        >
          {String.fromCodePoint(codepoint)}
        </text>
      );
    }
  }
});
