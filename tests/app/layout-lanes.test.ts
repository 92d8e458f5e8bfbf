import { describe, expect, it } from "vitest";
import { layoutColumns } from "@/app/ui/ribbon/layout-columns";
import { bandPieces } from "@/app/ui/ribbon/layout-dynamics";
import { printedMarks } from "@/app/ui/ribbon/printed-marks";
import { tempoLevels } from "@/app/ui/ribbon/tempo-levels";
import type { Reading } from "@/lib/reading/reading";
import {
  articulated,
  beats,
  dynamics,
  entryOf,
  glyphs,
  laneShapes,
  metronome,
  note,
  ribbonOf,
  scoreOf,
  texts,
  wedge,
  words,
} from "./small-score";

const levelsOf = (reading: Reading) =>
  tempoLevels(reading.tempo, printedMarks(reading, 0), entryOf);
const bandOf = (reading: Reading) => {
  const columns = layoutColumns(reading.measures, 80, { demand: [], rows: [] });
  return bandPieces(reading.lines[0]?.dynamics ?? [], columns);
};

// What each word does to the speed: Gehrkens 1914, sections 117-120 (rit. gradually slower, a tempo the former speed).
describe("tempo lane", () => {
  it("sinks in a rit. and jumps back to where it was at a tempo", () => {
    const levels = levelsOf(
      scoreOf([words("Allegro") + beats, words("rit.") + beats, words("a tempo") + beats]),
    );
    const [allegro, rit, back] = levels;
    expect(rit?.from).toBe(allegro?.to);
    expect(rit?.to).toBeLessThan(rit?.from ?? 0);
    expect(back).toEqual(allegro);
  });

  it("stands the higher the faster the word, and rises in an accel.", () => {
    const [largo, andante, presto, accel] = levelsOf(
      scoreOf([
        words("Largo") + beats,
        words("Andante") + beats,
        words("Presto") + beats,
        words("accel.") + beats,
      ]),
    );
    expect(largo?.to).toBeLessThan(andante?.to ?? 0);
    expect(andante?.to).toBeLessThan(presto?.to ?? 0);
    expect(accel?.to).toBeGreaterThan(accel?.from ?? 9);
  });

  it("steps up for più mosso and down for meno mosso, from wherever it was", () => {
    const [moderato, faster, slower] = levelsOf(
      scoreOf([words("Moderato") + beats, words("più mosso") + beats, words("meno mosso") + beats]),
    );
    expect(faster?.to).toBeGreaterThan(moderato?.to ?? 9);
    expect(slower?.to).toBeLessThan(faster?.to ?? 0);
  });

  it("sets the number beside its word, and breaks the line where time is free", () => {
    const reading = scoreOf([words("Andante") + metronome(76) + beats, words("ad lib.") + beats]);
    const shapes = laneShapes(ribbonOf(reading), "tempo");
    expect(texts(shapes)).toEqual(["Andante", "= 76", "ad lib."]);
    expect(glyphs(shapes)).toEqual(["metNoteQuarterUp"]);
    const lines = shapes.filter((s) => s.kind === "path");
    expect(lines.map((s) => s.kind === "path" && s.dash !== undefined)).toEqual([false, true]);
  });

  it("draws no line where no tempo is printed", () => {
    expect(laneShapes(ribbonOf(scoreOf([beats, beats])), "tempo")).toEqual([]);
  });
});

describe("dynamics lane", () => {
  it("is the thicker the louder, in the order of the standard", () => {
    // Order of MusicXML 4.0 <dynamics>: pppppp to ffffff.
    const order = ["ppp", "pp", "p", "mp", "mf", "f", "ff", "fff"];
    const pieces = bandOf(scoreOf(order.map((level) => dynamics(level) + beats)));
    const thick = pieces.map(({ from }) => from);
    expect(thick).toHaveLength(order.length);
    expect([...thick].sort((a, b) => a - b)).toEqual(thick);
    expect(new Set(thick).size).toBe(order.length);
  });

  it("tapers a hairpin to its goal and steps where there is none", () => {
    const reading = scoreOf([
      dynamics("p") + beats,
      wedge("crescendo") + beats,
      wedge("stop") + dynamics("f") + beats,
      dynamics("pp") + beats,
    ]);
    const [p, hairpin, f, pp] = bandOf(reading);
    expect([hairpin?.from, hairpin?.to]).toEqual([p?.to, f?.from]);
    expect(hairpin?.sure).toBe(true);
    expect(f?.to).toBe(f?.from);
    expect(pp?.x0).toBe(f?.x1);
    expect(pp?.from).toBeLessThan(f?.from ?? 0);
    expect(glyphs(laneShapes(ribbonOf(reading), "dynamics"))).toEqual([
      "dynamicPiano",
      "dynamicForte",
      "dynamicPP",
    ]);
  });

  it("draws only the outline where the goal is not printed", () => {
    const reading = scoreOf([
      dynamics("p") + beats,
      wedge("crescendo") + beats,
      wedge("stop") + beats,
    ]);
    expect(bandOf(reading).map(({ sure }) => sure)).toEqual([true, false, false]);
    const paths = laneShapes(ribbonOf(reading), "dynamics").filter((s) => s.kind === "path");
    expect(paths.map((s) => s.kind === "path" && s.fill !== undefined)).toEqual([
      true,
      false,
      false,
    ]);
  });

  it("spikes for a one-note mark and goes on at the level before", () => {
    const reading = scoreOf([dynamics("p") + beats, dynamics("sfz") + beats]);
    const pieces = bandOf(reading);
    expect(pieces.at(-1)?.from).toBe(pieces[0]?.from);
    expect(laneShapes(ribbonOf(reading), "dynamics").filter((s) => s.kind === "path")).toHaveLength(
      pieces.length + 1,
    );
  });
});

describe("articulation lane", () => {
  it("stacks the signs of one note and arcs every slur from its first note to its last", () => {
    const slurred =
      note('<slur type="start" number="1"/>') + note() + note('<slur type="stop" number="1"/>');
    const reading = scoreOf([
      note("<articulations><staccato/><accent/></articulations>") + articulated("tenuto") + note(),
      slurred,
    ]);
    const ribbon = ribbonOf(reading);
    const shapes = laneShapes(ribbon, "articulation");
    expect(glyphs(shapes)).toEqual(["articAccentAbove"]);
    const paths = shapes.filter((s) => s.kind === "path");
    expect(paths).toHaveLength(3);
    const arc = paths[0];
    expect(arc?.x0).toBeCloseTo(ribbon.columns.x({ measureIndex: 1, onset: [0, 1] }) - 1, 5);
    expect(arc?.x1).toBeCloseTo(ribbon.columns.x({ measureIndex: 1, onset: [2, 1] }) + 3, 5);
  });

  it("gives crowded notes the room to stand apart", () => {
    const dot = note("<articulations><staccato/></articulations>", "eighth", 0.5);
    const crowded = Array.from({ length: 16 }, () => dot).join("");
    const xml = scoreOf([crowded.replaceAll("<duration>0.5", "<duration>1")]);
    const xs = laneShapes(ribbonOf(xml), "articulation").map((s) => s.x0);
    const gaps = xs.slice(1).map((x, i) => x - (xs[i] ?? 0));
    expect(Math.min(...gaps)).toBeGreaterThan(8);
  });
});

describe("character lane", () => {
  it("draws a hairline from each word to the one that ends it", () => {
    const reading = scoreOf([words("dolce") + beats, beats, words("con fuoco") + beats, beats]);
    const ribbon = ribbonOf(reading);
    const shapes = laneShapes(ribbon, "character");
    expect(texts(shapes)).toEqual(["dolce", "con fuoco"]);
    const [first, second] = shapes.filter((s) => s.kind === "path");
    expect(first?.x1).toBeLessThan(ribbon.columns.x({ measureIndex: 2, onset: [0, 1] }));
    expect(first?.x1).toBeGreaterThan(ribbon.columns.edges[1] ?? 0);
    expect(second?.x1).toBeGreaterThan(ribbon.columns.width - 10);
  });
});

it("lanes keep one order and do not overlap", () => {
  const { lanes, height } = ribbonOf(scoreOf([words("dolce") + beats]));
  expect(lanes.map((l) => l.name)).toEqual([
    "tempo",
    "dynamics",
    "articulation",
    "character",
    "technique",
    "road",
    "marks",
  ]);
  lanes.forEach((lane, i) => {
    expect(lane.top + lane.height).toBe(lanes[i + 1]?.top ?? height);
  });
});
