import { SaxesParser } from "saxes";
import { decodeChunks, type TextSource } from "../decode-text";
import { scoreProblem } from "../limits";
import { ScoreReadError } from "../problem";
import type { ElementHandler, ElementTable } from "./elements";

export interface XmlInput {
  source: TextSource;
  /** Deepest nesting allowed. */
  depth: number;
  /** Called between chunks; may throw to stop (clock). */
  check: () => void;
}

const EXPORT_AGAIN = "Export the score again, or fetch a fresh copy of the file.";

/**
 * Walks a document from start to end and calls the handlers of `table`, nested
 * tables inside. No tree is built, no entity is defined, nothing outside the
 * text is read.
 *
 * @throws ScoreReadError `not-well-formed`, `entity`, `too-deep`, or what a handler
 *   throws, with line and column added when missing.
 */
export function walkXml<S>(input: XmlInput, table: ElementTable<S>, state: S): void {
  const walker = new Walker(input, table, state);
  walker.run();
}

class Walker<S> {
  private readonly parser = new SaxesParser({ position: false, xmlns: false as const });
  private readonly handlers: ElementHandler<S>[] = [];
  private readonly tables: (ElementTable<S> | undefined)[];
  private readonly texts: string[] = [];
  /** Elements open inside the one being passed over, itself included; 0 when none is. */
  private skipped = 0;
  private listening = false;
  private prefixed = false;
  private doctype = "";
  private readonly onText = (text: string): void => {
    const depth = this.handlers.length - 1;
    const characters = this.handlers[depth]?.characters;
    if (characters === undefined) this.texts[depth] = (this.texts[depth] ?? "") + text;
    else characters(this.state, text);
  };

  constructor(
    private readonly input: XmlInput,
    table: ElementTable<S>,
    private readonly state: S,
  ) {
    this.tables = [table];
    this.parser.on("opentag", (tag) => this.open(tag.name, tag.attributes));
    this.parser.on("closetag", (tag) => this.close(tag.name));
    this.parser.on("cdata", (text) => {
      if (this.listening) this.onText(text);
    });
    this.parser.on("doctype", (doctype) => {
      this.doctype = doctype;
    });
    this.parser.on("error", (error) => this.refuse(error.message));
  }

  run(): void {
    const { source, check } = this.input;
    try {
      for (const text of decodeChunks(source)) {
        this.parser.write(text);
        check();
      }
      this.parser.close();
    } catch (error) {
      throw this.placed(error);
    }
  }

  private open(fullName: string, attributes: Record<string, string>): void {
    // Prefixes are rare and begin at the root, so the names of most files are taken as they are.
    if (this.handlers.length === 0) this.prefixed = fullName.includes(":");
    const name = this.prefixed ? localName(fullName) : fullName;
    if (this.skipped > 0) {
      this.skipped++;
      if (this.skipped + this.handlers.length > this.input.depth) this.tooDeep();
      return;
    }
    const depth = this.handlers.length;
    if (depth >= this.input.depth) this.tooDeep();
    const table = this.tables[depth];
    const handler = table?.named.get(name) ?? table?.other;
    if (handler === undefined || handler.open?.(this.state, attributes, name) === false) {
      this.skipped = 1;
      this.listen(false);
      return;
    }
    this.handlers.push(handler);
    this.tables.push(handler.children);
    this.listen(wantsText(handler));
    if (this.listening) this.texts[depth] = "";
  }

  private close(fullName: string): void {
    const name = this.prefixed ? localName(fullName) : fullName;
    if (this.skipped > 0) {
      this.skipped--;
    } else {
      const depth = this.handlers.length - 1;
      const handler = this.handlers.pop();
      this.tables.pop();
      handler?.text?.(this.state, this.texts[depth] ?? "", name);
      handler?.close?.(this.state, name);
    }
    if (this.skipped === 0) {
      const outer = this.handlers[this.handlers.length - 1];
      this.listen(outer !== undefined && wantsText(outer));
    }
  }

  /** The parser slices out text only while a listener is set, so it is set only where wanted. */
  private listen(wanted: boolean): void {
    if (wanted === this.listening) return;
    this.listening = wanted;
    if (wanted) this.parser.on("text", this.onText);
    else this.parser.off("text");
  }

  private tooDeep(): never {
    throw scoreProblem(this.input.source.file, "too-deep", {
      found: `elements are nested more than ${this.input.depth} deep`,
      expected: "the few levels a score needs",
      remedy: EXPORT_AGAIN,
    });
  }

  private refuse(message: string): never {
    if (message.startsWith("undefined entity") && this.doctype.includes("<!ENTITY")) {
      throw scoreProblem(this.input.source.file, "entity", {
        found: "the file uses an entity it declares itself, which could pull in other files",
        expected: "plain text in its place",
        remedy: "Export the score again from the program it was written in.",
      });
    }
    throw scoreProblem(this.input.source.file, "not-well-formed", {
      found: `the XML is broken (${message.replace(/\.$/, "")})`,
      expected: "well-formed XML to the end of the file",
      remedy: EXPORT_AGAIN,
    });
  }

  private placed(error: unknown): unknown {
    if (!(error instanceof ScoreReadError) || error.problem.place.line !== undefined) return error;
    const place = { ...error.problem.place, line: this.parser.line, column: this.parser.column };
    return new ScoreReadError({ ...error.problem, place });
  }
}

function wantsText<S>({ text, characters }: ElementHandler<S>): boolean {
  return text !== undefined || characters !== undefined;
}

/** Name without its namespace prefix; some MEI files write mei:note. */
function localName(name: string): string {
  const colon = name.indexOf(":");
  return colon < 0 ? name : name.slice(colon + 1);
}
