import { LEVELS as LEVEL_ORDER } from "../../glossary/vocabulary";
import type { DynamicState } from "../../reading/reading";
import { stateAt } from "../../reading/state-at";
import { type Context, evidenceOf, numberOf, shuffled } from "../context";
import type { Option, Question } from "../question";

/** Levels in order, with the words a player would use. */
const LEVELS: readonly (readonly [level: string, glyph: string, words: string])[] = [
  ["ppp", "dynamicPPP", "as soft as can be"],
  ["pp", "dynamicPP", "very soft"],
  ["p", "dynamicPiano", "soft"],
  ["mp", "dynamicMP", "medium soft"],
  ["mf", "dynamicMF", "medium loud"],
  ["f", "dynamicForte", "loud"],
  ["ff", "dynamicFF", "very loud"],
  ["fff", "dynamicFFF", "as loud as can be"],
];

const MOVES: readonly (readonly [id: string, text: string])[] = [
  ["grows", "grows bit by bit"],
  ["fades", "fades bit by bit"],
  ["louder", "louder at once"],
  ["softer", "softer at once"],
  ["note", "one note leaps out, the rest stays"],
];

export function dynamicsQuestions(context: Context): Question[] {
  return [atTheStart(context), ...turns(context)].filter((q) => q !== null);
}

function atTheStart({ reading, passage, random }: Context): Question | null {
  const { dynamic } = stateAt(
    reading,
    passage.partIndex,
    { measureIndex: passage.from, onset: [0, 1] },
    passage.staff,
  );
  const at = LEVELS.findIndex(([level]) => level === dynamic?.level);
  if (!dynamic || at < 0 || dynamic.source === null) return null;
  if (dynamic.change !== "none" || dynamic.louderThan || dynamic.softerThan || dynamic.attack) {
    return null;
  }
  const [level = "", , words = ""] = LEVELS[at] ?? [];
  const others = shuffled(
    LEVELS.filter((_, i) => i !== at && Math.abs(i - at) <= 3),
    random,
  ).slice(0, 3);
  const shown = LEVELS.filter((l) => l[0] === level || others.includes(l));
  const options = shown.map(([id, glyph, text]): Option => ({ id, glyph, text, lang: "en" }));
  const source = dynamic.source;
  const earlier = source < passage.from;
  return {
    id: "dynamics-start",
    axis: "dynamics",
    form: "one",
    prompt: "How loud is the first note?",
    options,
    right: level,
    evidence: [evidenceOf(reading, source, level, dynamic.slugs[0] ?? null, level)],
    slugs: dynamic.slugs,
    reason: earlier
      ? `${level} (${words}) was set in measure ${numberOf(reading, source)} and still holds.`
      : `${level} (${words}) stands at the first note.`,
  };
}

interface Turn {
  state: DynamicState;
  move: string;
}

function turns(context: Context): Question[] {
  const { reading, passage } = context;
  const line = reading.lines.find(
    (l) => l.partIndex === passage.partIndex && l.staff === passage.staff,
  );
  const found: Turn[] = [];
  (line?.dynamics ?? []).forEach((state, i, all) => {
    const before = all[i - 1];
    if (state.measureIndex < passage.from || state.measureIndex > passage.to) return;
    if (state.measureIndex === passage.from && state.onset[0] === 0) return;
    const move = moveOf(before, state);
    if (move) found.push({ state, move });
  });
  if (found.length === 0) return [];
  const measures = [...new Set(found.map((t) => t.state.measureIndex))];
  const questions: Question[] = [];
  if (measures.length < passage.to - passage.from + 1) {
    questions.push({
      id: "dynamics-turns",
      axis: "dynamics",
      form: "measures",
      prompt:
        "In which measures does the loudness turn? A turn is a new level, or the place where growing, fading or an accent begins.",
      right: measures,
      evidence: found.map(({ state }) =>
        evidenceOf(reading, state.measureIndex, state.by, state.slugs[0] ?? null),
      ),
      slugs: [...new Set(found.flatMap((t) => t.state.slugs))],
      reason: found
        .map((t) => `${numberOf(reading, t.state.measureIndex)}: ${textOf(t.move)} (${t.state.by})`)
        .join("; "),
    });
  }
  return [...questions, ...howItTurns(context, found)];
}

/** One measure with exactly one turn: what happens there? */
function howItTurns({ reading, random }: Context, found: readonly Turn[]): Question[] {
  const single = found.filter(
    (t) => found.filter((o) => o.state.measureIndex === t.state.measureIndex).length === 1,
  );
  const [turn] = shuffled(single, random);
  if (!turn) return [];
  const { state, move } = turn;
  const measure = numberOf(reading, state.measureIndex);
  return [
    {
      id: "dynamics-how",
      axis: "dynamics",
      form: "one",
      prompt: `What does the loudness do at measure ${measure}?`,
      options: MOVES.map(([id, text]) => ({ id, text, lang: "en" })),
      right: move,
      evidence: [evidenceOf(reading, state.measureIndex, state.by, state.slugs[0] ?? null)],
      slugs: state.slugs,
      reason: `Measure ${measure}: ${state.by}, ${textOf(move)}.`,
    },
  ];
}

function textOf(move: string): string {
  return MOVES.find(([id]) => id === move)?.[1] ?? move;
}

const ORDER: readonly string[] = LEVEL_ORDER;

/** Null where nothing turns: a reminder, the goal of a change reached, the plain end of a hairpin. */
function moveOf(before: DynamicState | undefined, now: DynamicState): string | null {
  if (now.change === "rising") return "grows";
  if (now.change === "falling") return "fades";
  if (now.attack) return "note";
  if (!before || before.level === null || now.level === null) return null;
  if (before.change !== "none" && now.level === before.toward) return null;
  if (before.change !== "none" && now.source === before.source) return null;
  const step = ORDER.indexOf(now.level) - ORDER.indexOf(before.level);
  if (before.louderThan || before.softerThan) {
    // How loud it had become is not written, so only a clear step counts.
    if (before.louderThan && step < 0) return "softer";
    if (before.softerThan && step > 0) return "louder";
    return null;
  }
  if (before.change === "rising" && step <= 0) return "softer";
  if (before.change === "falling" && step >= 0) return step === 0 ? null : "louder";
  if (before.change !== "none") return null;
  if (step > 0) return "louder";
  return step < 0 ? "softer" : null;
}
