import type { Mark, MarkRole } from "../model";
import {
  type Attributes,
  type ElementHandler,
  type ElementTable,
  elementTable,
} from "../xml/elements";
import type { ReaderState } from "./reader-state";

export type Handler = ElementHandler<ReaderState>;
export type Table = ElementTable<ReaderState>;

/** How one element becomes a mark. The mark's element is the XML name. */
export interface MarkRule {
  /** Attribute that becomes the value. */
  value?: string;
  /** Value when that attribute is missing: the schema's own default. */
  otherwise?: string;
  /** Attribute that means something only when "yes", and the value it then gives. */
  yes?: readonly [attribute: string, value: string];
  /** `type` start, stop or continue becomes the role; any other type becomes the value. */
  spans?: boolean;
  /** Where the text inside goes; `text` keeps the smufl attribute as the value. */
  content?: "value" | "text";
}

export const PLAIN: MarkRule = {};

export function roleOf(type: string | undefined): MarkRole {
  return type === "start" || type === "stop" || type === "continue" ? type : "point";
}

export function placementOf(attributes: Attributes): "above" | "below" | null {
  const { placement } = attributes;
  return placement === "above" || placement === "below" ? placement : null;
}

/** Fills text or value from the content of an element; blank content leaves null. */
export function setContent(mark: Mark | undefined, content: "value" | "text", raw: string): void {
  const text = raw.trim();
  if (mark !== undefined && text !== "") mark[content] = text;
}

function ruleValue(rule: MarkRule, attributes: Attributes, role: MarkRole): string | null {
  if (rule.yes !== undefined && attributes[rule.yes[0]] === "yes") return rule.yes[1];
  if (rule.value !== undefined) return attributes[rule.value] ?? rule.otherwise ?? null;
  if (rule.spans === true && role === "point") return attributes.type ?? null;
  return rule.content === "text" ? (attributes.smufl ?? null) : null;
}

/** Handler that turns each such element into a mark by `rule`. */
export function markHandler(rule: MarkRule, children?: Table): Handler {
  const handler: Handler = {
    open(state, attributes, name) {
      const role = rule.spans === true ? roleOf(attributes.type) : "point";
      const mark = state.mark(name, ruleValue(rule, attributes, role), role);
      mark.number = attributes.number ?? null;
      mark.placement = placementOf(attributes);
    },
  };
  const { content } = rule;
  if (content !== undefined) {
    handler.text = (state, text) => setContent(state.lastMark, content, text);
  }
  if (children !== undefined) handler.children = children;
  return handler;
}

/** Table of marks from rules; a name it does not know is still kept as a mark, with a warning. */
export function markTable(parent: string, rules: Readonly<Record<string, MarkRule>>): Table {
  const handlers: Record<string, Handler> = {};
  for (const [name, rule] of Object.entries(rules)) handlers[name] = markHandler(rule);
  return elementTable(handlers, unknownMark(parent));
}

/** Keeps an element no rule knows as a mark by its own name. */
export function unknownMark(parent: string): Handler {
  return {
    open(state, attributes, name) {
      const mark = state.mark(name);
      mark.placement = placementOf(attributes);
      state.warn("unknown-element", `"${name}" in ${parent} is not known; it is kept by its name.`);
    },
    text: (state, text) => setContent(state.lastMark, "text", text),
  };
}

/** Handler for the content of an element, trimmed. */
export function textOf(set: (state: ReaderState, text: string) => void): Handler {
  return { text: (state, text) => set(state, text.trim()) };
}
