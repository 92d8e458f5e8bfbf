import type { Answer } from "@/lib/memory/answer";
import { foldLog, type LogFold } from "@/lib/memory/fold-log";

const folds = new WeakMap<readonly Answer[], LogFold>();

/** The log folded, once for all that is shown of it. For reading only: who takes answers folds for themselves. */
export function foldOf(answers: readonly Answer[]): LogFold {
  const known = folds.get(answers);
  if (known) return known;
  const fold = foldLog(answers);
  folds.set(answers, fold);
  return fold;
}
