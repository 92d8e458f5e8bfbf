/** Source: ../shared/reference/standards/playing-order.json (MusicXML 4.0 XSD, music21 and LilyPond test structures, rules R1-R16). */
import { describe, expect, it } from "vitest";
import { readBytes } from "../reading/read-file";
import { hasShared, sharedBytes, sharedText } from "./shared";

interface Example {
  id: string;
  structure: string;
  file: string;
  expected_order: string[];
}

const FOLDER = "reference/standards/";
const examples: Example[] = hasShared(`${FOLDER}playing-order.json`)
  ? JSON.parse(sharedText(`${FOLDER}playing-order.json`)).examples
  : [];

describe("playingOrder › worked examples", () => {
  it.each(examples.map((e) => [`${e.id} ${e.structure}`, e] as const))("%s", (_, example) => {
    const reading = readBytes(sharedBytes(FOLDER + example.file), example.file);
    const order = reading.playingOrder.map((i) => reading.measures[i]?.number);
    expect(order).toEqual(example.expected_order);
    expect(reading.playingPolicy).not.toBe("");
  });
  it("has examples or says why not", () => {
    expect(examples.length === 0 || examples.length >= 8).toBe(true);
  });
});
