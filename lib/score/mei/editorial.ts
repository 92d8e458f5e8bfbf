import type { XmlElement } from "../xml/element-tree";
import { dynamicLetters, noteCharacter } from "./glyphs";

/** Editorial wrappers that are read as if only their content stood there. */
const TRANSPARENT = new Set(
  "abbr add corr damage expan lem orig rdg reg restore sic supplied unclear handShift".split(" "),
);

/** Choices in order of preference: the editor's text over what the source shows. */
const PREFERRED = ["corr", "reg", "expan"];

/** Struck out or missing in the source, or remarks of an editor. */
const PASSED_OVER = new Set(["del", "gap", "annot"]);

const elementsOf = (element: XmlElement): XmlElement[] =>
  element.children.filter((child): child is XmlElement => typeof child !== "string");

/** The one reading to follow where the file gives several: lemma or first reading, correction, addition. */
function chosen(element: XmlElement): XmlElement | undefined {
  const options = elementsOf(element);
  if (element.name === "app") return options.find(({ name }) => name === "lem") ?? options[0];
  if (element.name === "subst") return options.find(({ name }) => name === "add") ?? options[0];
  return options.find(({ name }) => PREFERRED.includes(name)) ?? options[0];
}

function isChoice({ name }: XmlElement): boolean {
  return name === "app" || name === "choice" || name === "subst";
}

/** Content with editorial markup resolved: strings and elements in document order. */
export function contentOf(element: XmlElement): (XmlElement | string)[] {
  return element.children.flatMap((child) => {
    if (typeof child === "string") return [child];
    if (PASSED_OVER.has(child.name)) return [];
    if (isChoice(child)) {
      const choice = chosen(child);
      return choice === undefined ? [] : contentOf(choice);
    }
    return TRANSPARENT.has(child.name) ? contentOf(child) : [child];
  });
}

/** Elements directly inside, editorial markup resolved. */
export function childrenOf(element: XmlElement): XmlElement[] {
  return contentOf(element).filter((child): child is XmlElement => typeof child !== "string");
}

export function childNamed(element: XmlElement, name: string): XmlElement | undefined {
  return childrenOf(element).find((child) => child.name === name);
}

/** Text as printed: line breaks become spaces, drawn symbols are left out, ends are trimmed. */
export function textOf(element: XmlElement): string {
  return rawText(element).replace(/\s+/g, " ").trim();
}

function rawText(element: XmlElement): string {
  return contentOf(element).reduce<string>((text, child) => {
    if (typeof child === "string") return text + child;
    if (child.name === "lb") return `${text} `;
    const more = child.name === "symbol" ? symbolText(child) : rawText(child);
    // Two formatted pieces written without a space are two directions when a stop parts them.
    const isApart = child.name === "rend" && /[.,;:)]$/.test(text) && /^\p{L}/u.test(more);
    return text + (isApart ? " " : "") + more;
  }, "");
}

/** A symbol given by code point stands in the text as that character, a note value or dynamic also by name. */
function symbolText({ attributes }: XmlElement): string {
  const named = noteCharacter(attributes["glyph.name"]) ?? dynamicLetters(attributes["glyph.name"]);
  if (named !== null) return named;
  const code = /^(?:U\+|#x|0x)?([0-9A-Fa-f]{4,6})$/.exec(attributes["glyph.num"] ?? "")?.[1];
  return code === undefined
    ? ""
    : String.fromCodePoint(Math.min(Number.parseInt(code, 16), 0x10ffff));
}

/** Symbols anywhere inside, in order. */
export function symbolsIn(element: XmlElement): XmlElement[] {
  return childrenOf(element).flatMap((child) =>
    child.name === "symbol" ? [child] : symbolsIn(child),
  );
}
