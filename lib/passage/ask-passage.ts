import { AXES } from "../glossary/vocabulary";
import type { Context } from "./context";
import type { Question } from "./question";
import { dynamicsQuestions } from "./questions/dynamics";
import { roadQuestions } from "./questions/road";
import { tempoQuestions } from "./questions/tempo";
import { touchQuestions } from "./questions/touch";
import { wordQuestions } from "./questions/words";

/**
 * "What does this passage ask for?" as questions on each axis it speaks to,
 * in the order the ribbon draws the axes. Nothing is asked that the page does
 * not say.
 */
export function askPassage(context: Context): Question[] {
  const questions = [
    ...tempoQuestions(context),
    ...dynamicsQuestions(context),
    ...touchQuestions(context),
    ...wordQuestions(context),
    ...roadQuestions(context),
  ];
  return questions.sort((a, b) => AXES.indexOf(a.axis) - AXES.indexOf(b.axis));
}
