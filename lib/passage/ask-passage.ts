import { AXES, type Axis } from "../glossary/vocabulary";
import { type Context, shuffled } from "./context";
import type { Question } from "./question";
import { dynamicsQuestions } from "./questions/dynamics";
import { roadQuestions } from "./questions/road";
import { tempoQuestions } from "./questions/tempo";
import { touchQuestions } from "./questions/touch";
import { wordQuestions } from "./questions/words";

/** Most questions on each axis at one sitting: a passage is answered in a few minutes, on a phone. */
const MOST: Readonly<Record<Axis, number>> = {
  tempo: 2,
  dynamics: 2,
  articulation: 1,
  character: 2,
  technique: 1,
  road: 1,
};

/**
 * "What does this passage ask for?" as questions on each axis it speaks to,
 * in the order the ribbon draws the axes. Nothing is asked that the page does
 * not say.
 */
export function askPassage(context: Context): Question[] {
  const all = everyQuestion(context);
  return AXES.flatMap((axis) => {
    const own = all.filter((q) => q.axis === axis);
    const chosen = shuffled(own, context.random).slice(0, MOST[axis]);
    return own.filter((q) => chosen.includes(q));
  });
}

/** All that can be asked, before the choice. */
export function everyQuestion(context: Context): Question[] {
  return [
    ...tempoQuestions(context),
    ...dynamicsQuestions(context),
    ...touchQuestions(context),
    ...wordQuestions(context),
    ...roadQuestions(context),
  ];
}
