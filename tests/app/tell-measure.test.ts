import { describe, expect, it } from "vitest";
import { printedRowList, unknownRowList } from "@/app/piece/printed-row-list";
import { carriedAt } from "@/app/ui/ribbon/carried";
import { leadInWords } from "@/app/ui/ribbon/mark-lead";
import { printedMarks } from "@/app/ui/ribbon/printed-marks";
import { tellMeasure } from "@/app/ui/ribbon/tell-measure";
import type { Reading } from "@/lib/reading/reading";
import {
  articulated,
  beats,
  dynamics,
  entryOf,
  ribbonOf,
  scoreOf,
  wedge,
  words,
} from "./small-score";

const tell = (reading: Reading, index: number) =>
  tellMeasure(index, {
    reading,
    partIndex: 0,
    staff: 1,
    marks: printedMarks(reading, 0),
    entryOf,
  });

describe("printedMarks", () => {
  it("keeps words that belong together, modifier first", () => {
    const marks = printedMarks(scoreOf([words("molto espressivo") + beats]), 0);
    expect(marks.map((m) => m.text)).toEqual(["molto espressivo"]);
    expect(marks[0]?.head.headword).toBe("espressivo");
  });

  it("takes the tempo of another part, once, and leaves its dynamics", () => {
    const reading = scoreOf(
      [words("Allegro") + dynamics("f") + beats, words("rit.") + beats],
      [beats, words("rit.") + dynamics("p") + beats],
    );
    const own = printedMarks(reading, 1);
    expect(own.map((m) => m.text ?? m.sign)).toEqual(["Allegro", "p", "rit."]);
  });

  it("leaves subito with the letter it stands beside", () => {
    const reading = scoreOf([dynamics("p") + words("subito") + words("leggiero") + beats]);
    expect(printedMarks(reading, 0).map((m) => m.text ?? m.sign)).toEqual([
      "p",
      "subito",
      "leggiero",
    ]);
  });
});

describe("tellMeasure", () => {
  const reading = scoreOf([
    words("Allegro") + dynamics("f") + words("risoluto") + beats,
    articulated("staccato") + articulated("staccato") + beats,
    dynamics("p") + wedge("crescendo") + beats,
    beats + wedge("stop"),
    words("rit.") + beats,
    words("a tempo") + beats,
  ]);

  it("says what is new and what still holds, with the measure it is from", () => {
    expect(tell(reading, 0).sentence).toMatch(/^Loud from here, .*; fast\.$/);
    const second = tell(reading, 1);
    expect(second.sentence).toMatch(/^Still loud, .*; the speed stays\.$/);
    const rows = second.rows.map((r) => [leadInWords(r.lead), r.since]);
    expect(rows).toContainEqual(["Allegro", "1"]);
    expect(rows).toContainEqual(["risoluto", "1"]);
    expect(rows).toContainEqual(["forte", "1"]);
    expect(rows).toContainEqual(["staccato dot", null]);
    expect(second.rows.find((r) => r.lead.kind === "sign" && r.since === null)?.asks).toContain(
      "(2 times)",
    );
  });

  it("keeps a word and the sign of the same name apart", () => {
    const both = scoreOf([words("staccato") + articulated("staccato") + articulated("staccato")]);
    expect(tell(both, 0).rows.map((r) => [r.lead.kind, r.asks.includes("times")])).toEqual([
      ["sign", true],
      ["term", false],
    ]);
  });

  it("tells a change by its way, and a return by the measure it goes back to", () => {
    expect(tell(reading, 3).sentence).toMatch(/^Still growing louder from soft/);
    expect(tell(reading, 4).sentence).toContain("slowing");
    expect(tell(reading, 5).sentence).toContain("back to the speed of measure 1");
  });

  it("says so when nothing is printed", () => {
    expect(tell(scoreOf([beats]), 0)).toEqual({
      number: "1",
      sentence: "Nothing is printed for this measure, nor carried into it.",
      rows: [],
    });
  });

  it("orders its rows as the ribbon orders its lanes", () => {
    const axes = tell(reading, 0).rows.map((r) => r.axis);
    expect(axes).toEqual(["tempo", "dynamics", "character"]);
  });
});

describe("printedRowList", () => {
  it("joins a sign repeated from measure to measure and begins anew after a gap", () => {
    const dotted = articulated("staccato") + beats;
    const reading = scoreOf([beats, dotted, dotted, dotted, beats, dotted]);
    const rows = printedRowList(printedMarks(reading, 0), reading);
    expect(rows.map((r) => r.stretch)).toEqual([
      { number: "2", through: "4" },
      { number: "6", through: "6" },
    ]);
  });

  it("lists an unknown word once with all its measures", () => {
    const reading = scoreOf([words("Zvxqorium") + beats, beats, words("Zvxqorium") + beats]);
    expect(unknownRowList(reading.unknown, reading)).toEqual([
      {
        text: "Zvxqorium",
        guess: "",
        stretches: [
          { number: "1", through: "1" },
          { number: "3", through: "3" },
        ],
      },
    ]);
  });
});

describe("unknownRowList › the guess", () => {
  it("says what the reader would guess, as a guess", () => {
    const reading = scoreOf([words("zvumissimo") + beats]);
    expect(unknownRowList(reading.unknown, reading)[0]?.guess).toBe(
      "perhaps Italian: very much so",
    );
  });
});

describe("carriedAt", () => {
  it("names what is out of sight at the left and still holds, and nothing at the start", () => {
    const reading = scoreOf([
      words("Allegro") + dynamics("p") + words("dolce") + beats,
      beats,
      beats,
    ]);
    const { columns } = ribbonOf(reading);
    const context = {
      reading,
      partIndex: 0,
      staff: 1,
      columns,
      marks: printedMarks(reading, 0),
      entryOf,
    };
    expect(carriedAt(0, context)).toEqual({});
    const carried = carriedAt(columns.edges[1] ?? 0, context);
    expect(carried.tempo?.text).toBe("Allegro");
    expect(carried.dynamics?.glyph).toBe("dynamicPiano");
    expect(carried.character?.text).toBe("dolce");
  });
});
