import { describe, expect, it } from "vitest";
import { findEncoding } from "@/lib/score/decode-text";
import { ScoreReadError } from "@/lib/score/problem";
import { type ElementTable, elementTable } from "@/lib/score/xml/elements";
import { findRoot } from "@/lib/score/xml/find-root";
import { walkXml } from "@/lib/score/xml/walk-xml";
import { bytesOf } from "../support";

type Log = string[];

const input = (text: string, depth = 50) => ({
  source: findEncoding(bytesOf(text), "x.xml").source,
  depth,
  check: () => {},
});

const TABLE: ElementTable<Log> = elementTable<Log>({
  root: {
    open: (log, { a }) => log.push(`root a=${a}`),
    children: elementTable<Log>(
      {
        word: { text: (log, text) => log.push(`word ${text}`) },
        skip: { open: () => false, text: (log) => log.push("never") },
        mixed: {
          characters: (log, text) => log.push(`[${text}]`),
          close: (log, name) => log.push(`/${name}`),
          children: elementTable<Log>({ b: { open: (log) => log.push("<b>") } }),
        },
      },
      { open: (log, _a, name) => log.push(`other ${name}`) },
    ),
  },
});

function walk(text: string, depth?: number): Log {
  const log: Log = [];
  walkXml(input(text, depth), TABLE, log);
  return log;
}

function problem(text: string, depth?: number): ScoreReadError["problem"] {
  try {
    walk(text, depth);
  } catch (error) {
    if (error instanceof ScoreReadError) return error.problem;
  }
  throw new Error("not refused");
}

describe("walkXml", () => {
  it("calls handlers by table, in order", () => {
    expect(walk('<root a="1"><word>one</word><x><word>no</word></x></root>')).toEqual([
      "root a=1",
      "word one",
      "other x",
    ]);
  });

  it("joins text around comments, CDATA, entities and skipped children", () => {
    expect(
      walk("<root><word>a<!-- x -->b<![CDATA[<c>]]>&amp;<d>no</d>e&#233;</word></root>"),
    ).toEqual(["root a=undefined", "word ab<c>&eé"]);
  });

  it("passes over everything inside an element whose open returns false", () => {
    expect(walk("<root><skip><word>x</word></skip><word>y</word></root>")).toEqual([
      "root a=undefined",
      "word y",
    ]);
  });

  it("reports mixed content in place", () => {
    expect(walk("<root><mixed>a<b/>c<q>d</q>e</mixed></root>")).toEqual([
      "root a=undefined",
      "[a]",
      "<b>",
      "[c]",
      "[e]",
      "/mixed",
    ]);
  });

  it("reads names without their prefix", () => {
    expect(walk('<m:root xmlns:m="urn:x"><m:word>a</m:word></m:root>')).toEqual([
      "root a=undefined",
      "word a",
    ]);
  });

  it("refuses nesting past the limit, in passed-over parts, too", () => {
    const deep = (name: string) =>
      `<root>${`<${name}>`.repeat(60)}${`</${name}>`.repeat(60)}</root>`;
    expect(problem(deep("word"), 50).code).toBe("too-deep");
    expect(problem(deep("skip"), 50).code).toBe("too-deep");
    expect(walk(deep("skip"), 61)).toEqual(["root a=undefined"]);
  });

  it("names line and column of broken XML", () => {
    expect(problem("<root>\n <word>x</root>")).toMatchObject({
      code: "not-well-formed",
      place: { file: "x.xml", line: 2 },
    });
    expect(problem("<root><word>x</word>").found).toContain("unclosed");
  });

  it("accepts a doctype, refuses an entity it declares once used", () => {
    const doctype = '<!DOCTYPE root [<!ENTITY e SYSTEM "file:///etc/passwd">]>';
    expect(walk(`${doctype}<root/>`)).toEqual(["root a=undefined"]);
    expect(problem(`${doctype}<root><word>&e;</word></root>`).code).toBe("entity");
    expect(problem(`${doctype}<root a="&e;"/>`).code).toBe("entity");
    expect(problem(`${doctype}<root><skip>&e;</skip></root>`).code).toBe("entity");
    expect(problem("<root>&nbsp;</root>").code).toBe("not-well-formed");
    expect(walk('<!DOCTYPE root PUBLIC "-//x//EN" "http://example.invalid/x.dtd"><root/>')).toEqual(
      ["root a=undefined"],
    );
  });

  it("finds the root element without reading on", () => {
    const root = (text: string) => findRoot(findEncoding(bytesOf(text), "x").source);
    expect(root('<?xml version="1.0"?><!-- <a/> --><mei:mei xmlns:mei="x"><broken')).toBe("mei");
    expect(root("nothing")).toBe("");
    expect(root(`<!--${"x".repeat(200_000)}--><score-partwise/>`)).toBe("score-partwise");
  });
});
