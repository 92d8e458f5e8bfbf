import fc from "fast-check";
import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { ScoreReadError } from "@/lib/score/problem";
import { readScore } from "@/lib/score/read-score";
import { direction, mei, meiQuarter, musicXml, notations, quarter, staff } from "./support";

const MUSICXML = musicXml(
  `<barline location="left"><repeat direction="forward"/></barline>${direction("<words>dolce</words><metronome><beat-unit>quarter</beat-unit><per-minute>96</per-minute></metronome>", '<offset>2</offset><sound tempo="96" dacapo="yes"/>')}${quarter()}${notations('<articulations><accent/></articulations><ornaments><tremolo type="single">3</tremolo></ornaments>')}<backup><duration>8</duration></backup><forward><duration>3</duration></forward>${direction('<wedge type="crescendo"/>')}`,
  `<attributes><divisions>6</divisions><time><beats>3</beats><beat-type>8</beat-type></time></attributes>${quarter()}<barline><ending number="1" type="start"/></barline>`,
);
const MEI = mei([
  `${staff(`<tuplet num="3" numbase="2">${meiQuarter('xml:id="a" tie="i"')}${meiQuarter()}${meiQuarter()}</tuplet>`)}<hairpin form="cres" staff="1" tstamp="1" tstamp2="1m+2"/><slur startid="#a" endid="#b"/><tempo tstamp="1.33" mm="96" mm.unit="4">Allegro</tempo>`,
  `${staff(meiQuarter('xml:id="b"'))}<octave dis="8" dis.place="above" startid="#b" endid="#b"/>`,
]);
const MXL = zipSync({
  "META-INF/container.xml": strToU8(
    '<container><rootfiles><rootfile full-path="s.xml"/></rootfiles></container>',
  ),
  "s.xml": strToU8(MUSICXML),
});
const UTF16 = Uint8Array.from(
  [...`\uFEFF${MUSICXML}`].flatMap((c) => [c.charCodeAt(0) & 255, c.charCodeAt(0) >> 8]),
);

/** Many more were run by hand (20 000 each) when the readers were written. */
const RUNS = 20000;

const FIXTURES: Record<string, Uint8Array> = {
  musicxml: strToU8(MUSICXML),
  mei: strToU8(MEI),
  mxl: MXL,
  utf16: UTF16,
};

/** One damage: bytes overwritten, cut out, doubled or thrown in. */
interface Damage {
  kind: "set" | "cut" | "double" | "insert";
  at: number;
  length: number;
  bytes: Uint8Array;
}

const damages: fc.Arbitrary<Damage[]> = fc.array(
  fc.record({
    kind: fc.constantFrom("set", "cut", "double", "insert"),
    at: fc.nat(1 << 16),
    length: fc.nat(300),
    bytes: fc.uint8Array({ minLength: 1, maxLength: 4 }),
  }),
  { minLength: 1, maxLength: 6 },
);

function apply(bytes: Uint8Array, { kind, at, length, bytes: fresh }: Damage): Uint8Array {
  const from = at % (bytes.length + 1);
  const to = Math.min(from + length, bytes.length);
  const join = (...pieces: Uint8Array[]): Uint8Array =>
    Uint8Array.from(pieces.flatMap((p) => [...p]));
  const before = bytes.subarray(0, from);
  if (kind === "set")
    return join(before, fresh, bytes.subarray(Math.min(from + fresh.length, bytes.length)));
  if (kind === "cut") return join(before, bytes.subarray(to));
  if (kind === "double") return join(before, bytes.subarray(from, to), bytes.subarray(from));
  return join(before, fresh, bytes.subarray(from));
}

/** Reads and judges: a score, or a refusal in plain words, in time. */
function outcome(bytes: Uint8Array): "read" | "refused" {
  const begin = performance.now();
  try {
    const { measures, parts } = readScore(bytes, "damaged");
    for (const { marks, notes } of parts) {
      for (const { onset, measureIndex } of [...marks, ...notes]) {
        expect(onset.every(Number.isSafeInteger) && onset[0] >= 0 && onset[1] > 0).toBe(true);
        expect(measures[measureIndex]).toBeDefined();
      }
    }
    return "read";
  } catch (error) {
    if (!(error instanceof ScoreReadError)) throw error;
    expect(error.message).not.toContain("\n");
    return "refused";
  } finally {
    expect(performance.now() - begin).toBeLessThan(10_000);
  }
}

describe("readScore › damaged files", () => {
  it.each(Object.entries(FIXTURES))("reads %s undamaged", (_name, bytes) => {
    expect(outcome(bytes)).toBe("read");
  });

  it.each(Object.entries(FIXTURES))("throws nothing but ScoreReadError: %s", (_name, bytes) => {
    fc.assert(
      fc.property(damages, (list) => {
        outcome(list.reduce(apply, bytes));
      }),
      { numRuns: RUNS },
    );
  });

  it("survives any bytes at all", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        outcome(bytes);
      }),
      { numRuns: RUNS },
    );
  });

  it("survives any text in the places where numbers stand", () => {
    const value = fc.oneof(
      fc.string({ maxLength: 12 }),
      fc.double().map(String),
      fc.bigInt().map(String),
    );
    const escapeXml = (text: string): string =>
      text
        .replace(/&/g, "&amp;")
        .replace(/</g, "&lt;")
        .replace(/"/g, "&quot;")
        .replace(/>/g, "&gt;");
    fc.assert(
      fc.property(value, fc.nat(30), (raw, place) => {
        const text = escapeXml(raw);
        let n = 0;
        const numbers = /(?<=>)\d+(?=<)|(?<==")\d+(?=")/g;
        const change = (source: string): string => {
          n = 0;
          return source.replace(numbers, (old) => (n++ === place ? text : old));
        };
        for (const source of [MUSICXML, MEI]) outcome(strToU8(change(source)));
      }),
      { numRuns: RUNS },
    );
  });
});
