import type { TempoState } from "../../reading/reading";
import { stateAt } from "../../reading/state-at";
import {
  type Context,
  distractors,
  evidenceOf,
  meaningOption,
  numberOf,
  shuffled,
} from "../context";
import type { Question } from "../question";

/** A teacher takes a speed within this share of the mark as right (common practice). */
const TEMPO_TOLERANCE = 0.05;

const MOVES: readonly (readonly [id: string, text: string])[] = [
  ["slowing", "slows down bit by bit"],
  ["speeding", "speeds up bit by bit"],
  ["slower", "slower at once"],
  ["faster", "faster at once"],
  ["return", "back to an earlier speed"],
  ["free", "the beat is free"],
];

export function tempoQuestions(context: Context): Question[] {
  return [...atTheStart(context), ...changes(context)];
}

function atTheStart(context: Context): Question[] {
  const { reading, passage, random } = context;
  const { tempo } = stateAt(reading, passage.partIndex, {
    measureIndex: passage.from,
    onset: [0, 1],
  });
  if (tempo?.change !== "none") return [];
  const questions: Question[] = [];
  const source = tempo.restoredFrom ?? tempo.measureIndex;
  const entry = tempo.slugs.map((s) => context.entries.get(s)).find((e) => e?.asks.tempo?.pace);
  if (
    tempo.word &&
    entry &&
    tempo.slugs.filter((s) => context.entries.get(s)?.kind === "tempo").length === 1
  ) {
    const others = distractors(context, entry, 3);
    if (others.length >= 2) {
      questions.push({
        id: "tempo-start",
        axis: "tempo",
        form: "one",
        prompt: `How fast does measure ${numberOf(reading, passage.from)} begin?`,
        options: shuffled([entry, ...others], random).map(meaningOption),
        right: entry.slug,
        evidence: [evidenceOf(reading, source, tempo.word, entry.slug)],
        slugs: [entry.slug],
        reason: `${tempo.word}, from measure ${numberOf(reading, source)}: ${entry.meaning}.`,
      });
    }
  }
  if (tempo.beat?.perMinute) {
    const { unit, dots, perMinute } = tempo.beat;
    const beat = `${"dotted ".repeat(dots)}${unit}`;
    questions.push({
      id: "tempo-number",
      axis: "tempo",
      form: "number",
      prompt: `How many ${beat} notes a minute?`,
      right: perMinute,
      tolerance: Math.max(1, Math.round(perMinute * TEMPO_TOLERANCE)),
      unit: `${beat} notes a minute`,
      evidence: [
        evidenceOf(reading, source, `${beat} = ${perMinute}`, "metronome-mark", "metronome"),
      ],
      slugs: ["metronome-mark"],
      reason: `${beat} = ${perMinute}, printed in measure ${numberOf(reading, source)}.`,
    });
  }
  return questions;
}

function changes({ reading, passage, random }: Context): Question[] {
  const moved: { state: TempoState; move: string }[] = [];
  reading.tempo.forEach((state, i, all) => {
    if (state.measureIndex < passage.from || state.measureIndex > passage.to) return;
    if (state.measureIndex === passage.from && state.onset[0] === 0) return;
    const move = moveOf(all[i - 1], state);
    if (move) moved.push({ state, move });
  });
  const measures = [...new Set(moved.map((m) => m.state.measureIndex))];
  const questions: Question[] = [];
  if (moved.length > 0 && measures.length < passage.to - passage.from + 1) {
    questions.push({
      id: "tempo-changes",
      axis: "tempo",
      form: "measures",
      prompt: "In which measures does the speed begin to change?",
      right: measures,
      evidence: moved.map(({ state }) =>
        evidenceOf(reading, state.measureIndex, state.by, state.slugs[0] ?? null),
      ),
      slugs: [...new Set(moved.flatMap((m) => m.state.slugs))],
      reason: moved
        .map((m) => `${numberOf(reading, m.state.measureIndex)}: ${m.state.by}, ${textOf(m.move)}`)
        .join("; "),
    });
  }
  const single = moved.filter(
    (m) =>
      m.move !== "new" &&
      moved.filter((o) => o.state.measureIndex === m.state.measureIndex).length === 1,
  );
  const [pick] = shuffled(single, random);
  if (pick) {
    const measure = numberOf(reading, pick.state.measureIndex);
    questions.push({
      id: "tempo-how",
      axis: "tempo",
      form: "one",
      prompt: `What does the speed do at measure ${measure}?`,
      options: MOVES.map(([id, text]) => ({ id, text, lang: "en" })),
      right: pick.move,
      evidence: [
        evidenceOf(reading, pick.state.measureIndex, pick.state.by, pick.state.slugs[0] ?? null),
      ],
      slugs: pick.state.slugs,
      reason: `Measure ${measure}: ${pick.state.by}, ${textOf(pick.move)}.`,
    });
  }
  return questions;
}

function textOf(move: string): string {
  return MOVES.find(([id]) => id === move)?.[1] ?? "a new speed";
}

function moveOf(before: TempoState | undefined, now: TempoState): string | null {
  if (now.by === "" || (before && now.by === before.by && now.playbackBpm !== before.playbackBpm))
    return null;
  if (now.change !== "none") return now.change;
  if (now.settled) return null;
  if (now.restoredFrom !== null) return "return";
  if (now.free && !before?.free) return "free";
  if (now.belowBpm !== null) return "slower";
  if (now.aboveBpm !== null) return "faster";
  if (!before || before.by === "") return null;
  const [a, b] = [before.quarterBpm ?? before.baseBpm, now.quarterBpm];
  if (a !== null && b !== null && before.change === "none")
    return b > a ? "faster" : b < a ? "slower" : null;
  return now.word !== before.word || b !== null ? "new" : null;
}
