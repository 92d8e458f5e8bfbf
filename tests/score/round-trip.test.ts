/** Random valid scores, written as MusicXML by a generator of ours and read back, must come back as they were. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { read } from "./support";

const SEED = 90210;

/** A sign or word before note `at` (or on it), in divisions of 4. */
const SIGNS = [
  "p",
  "mf",
  "ff",
  "sfz",
  "staccato",
  "accent",
  "tenuto",
  "fermata",
  "dolce",
  "rit.",
] as const;
const anyMark = fc.record({ at: fc.nat(3), sign: fc.constantFrom(...SIGNS) });
const anyMeasure = fc.record({
  marks: fc.uniqueArray(anyMark, { maxLength: 5, selector: (m) => `${m.at} ${m.sign}` }),
  repeat: fc.boolean(),
  number: fc.constantFrom("", "a"),
});
type Measure = { marks: { at: number; sign: string }[]; repeat: boolean; number: string };

const DYNAMICS = new Set(["p", "mf", "ff", "sfz"]);
const ON_NOTE = new Set(["staccato", "accent", "tenuto"]);
const WORDS = new Set(["dolce", "rit."]);

function write(measures: Measure[]): string {
  const body = measures.map((measure, m) => {
    const notes = [0, 1, 2, 3].map((at) => {
      const here = measure.marks.filter((k) => k.at === at).map((k) => k.sign);
      const before = here
        .filter((s) => DYNAMICS.has(s) || WORDS.has(s))
        .map(
          (s) =>
            `<direction><direction-type>${WORDS.has(s) ? `<words>${s}</words>` : `<dynamics><${s}/></dynamics>`}</direction-type></direction>`,
        );
      const on = here
        .filter((s) => ON_NOTE.has(s))
        .map((s) => `<${s}/>`)
        .join("");
      const hold = here.includes("fermata") ? "<fermata/>" : "";
      const notations =
        on || hold
          ? `<notations>${on ? `<articulations>${on}</articulations>` : ""}${hold}</notations>`
          : "";
      return `${before.join("")}<note><pitch><step>G</step><octave>4</octave></pitch><duration>4</duration><voice>1</voice><type>quarter</type>${notations}</note>`;
    });
    const start =
      m === 0
        ? "<attributes><divisions>4</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>"
        : "";
    const end = measure.repeat
      ? '<barline location="right"><repeat direction="backward"/></barline>'
      : "";
    return `<measure number="${m + 1}${measure.number}">${start}${notes.join("")}${end}</measure>`;
  });
  return `<score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Flute</part-name></score-part></part-list><part id="P1">${body.join("")}</part></score-partwise>`;
}

it("readScore › gives back every mark, place and repeat of a random score (property)", () => {
  fc.assert(
    fc.property(fc.array(anyMeasure, { minLength: 1, maxLength: 6 }), (measures) => {
      const score = read(write(measures));
      expect(score.warnings).toEqual([]);
      expect(score.measures.map((m) => m.number)).toEqual(
        measures.map((m, i) => `${i + 1}${m.number}`),
      );
      expect(score.measures.map((m) => m.repeatEnd !== null)).toEqual(
        measures.map((m) => m.repeat),
      );
      expect(score.parts[0]?.notes).toHaveLength(measures.length * 4);
      const wanted = measures
        .flatMap((m, i) => m.marks.map((k) => `${i} ${k.at} ${k.sign}`))
        .sort();
      const found = (score.parts[0]?.marks ?? [])
        .filter((k) => k.element !== "repeat" && k.element !== "time")
        .map((k) => `${k.measureIndex} ${k.onset[0] / k.onset[1]} ${k.text ?? k.element}`)
        .sort();
      expect(found).toEqual(wanted);
    }),
    { seed: SEED, numRuns: 300 },
  );
});
