/** Source: ../shared/reference/standards/in-force.json (MusicXML 4.0 XSD; general theory, worked by hand). */
import { describe, expect, it } from "vitest";
import { stateLine } from "../../lib/cli/read-at";
import { readBytes } from "../reading/read-file";
import { hasShared, sharedBytes, sharedText } from "./shared";

interface Query {
  part: string;
  measure: string;
  beat: number;
  staff?: number;
  expect: Record<string, unknown>;
}
interface Example {
  id: string;
  title: string;
  file: string;
  queries: Query[];
}

const FOLDER = "reference/standards/";
const examples: Example[] = hasShared(`${FOLDER}in-force.json`)
  ? JSON.parse(sharedText(`${FOLDER}in-force.json`)).examples
  : [];

describe("stateAt › worked examples", () => {
  it.each(examples.map((e) => [`${e.id} ${e.title}`, e] as const))("%s", (_, example) => {
    const reading = readBytes(sharedBytes(FOLDER + example.file), example.file);
    for (const { part, measure, beat, staff, expect: wanted } of example.queries) {
      const state = stateLine(reading, { part, measure, beat }, staff, example.file);
      expect(state, `measure ${measure} beat ${beat}`).toMatchObject(wanted);
    }
  });
  it("has examples or says why not", () => {
    expect(examples.length === 0 || examples.length >= 20).toBe(true);
  });
});
