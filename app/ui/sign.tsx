import { SMUFL_CODEPOINTS } from "@/lib/glossary/smufl";
import styles from "./sign.module.css";

interface SignProps {
  /** SMuFL glyph name: `articStaccatoAbove`. A name not in the table draws nothing and is read out alone. */
  name: string;
  /** What a screen reader says; `""` where the words beside it already say it. Default: the glyph name in words. */
  label?: string;
  /** `text` sits in a line of words; `row` opens a row; `head` is the title of a page. */
  size?: "text" | "row" | "head";
}

/** A sign of music notation, drawn from the music font. */
export function Sign({ name, label, size = "text" }: SignProps) {
  const codepoint = SMUFL_CODEPOINTS[name];
  const spoken = label ?? signInWords(name);
  return (
    <>
      {codepoint === undefined ? null : (
        <span className={`${styles.sign} ${styles[size]}`} aria-hidden="true">
          {String.fromCodePoint(codepoint)}
        </span>
      )}
      {spoken === "" ? null : <span className="aside-for-ears">{spoken}</span>}
    </>
  );
}

/** `articStaccatoAbove` to "staccato sign": the standard's own name without the words of its filing. */
export function signInWords(name: string): string {
  const words = name
    .replace(/(Above|Below|Up|Down)$/, "")
    .replace(
      /^(artic|dynamic|ornament|strings|brass|wind|pluckedTechnique|keyboard|breath)(?=[A-Z])/,
      "",
    )
    .replace(/([a-z0-9])([A-Z])/g, "$1 $2")
    .toLowerCase();
  return `${words} sign`;
}
