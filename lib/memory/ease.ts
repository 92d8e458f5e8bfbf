/**
 * How easy an entry is for a student, beyond what a memory model says, in logits.
 * The student's own mean is learnt from all entries; each entry's difference from it is
 * shrunk towards 0 and grows only with that entry's own answers.
 */
const MEAN_VARIANCE = 2;
const ITEM_VARIANCE = 0.6;
/** Keeps the mean able to follow a student who changes; per answer. */
const DRIFT = 0.002;
const LIMIT = 6;

export interface Ease {
  /** Logits to add to a model's recall of this entry. */
  of(item: string): number;
  /**
   * One step of an extended Kalman filter on the logit.
   *
   * @param predicted recall foretold with this ease, inside (0, 1)
   * @param knew probability that it was recalled
   */
  learn(item: string, predicted: number, knew: number): void;
}

export function createEase(): Ease {
  let mean = 0;
  let meanVariance = MEAN_VARIANCE;
  const items = new Map<string, { shift: number; variance: number }>();
  return {
    of: (item) => mean + (items.get(item)?.shift ?? 0),
    learn(item, predicted, knew) {
      const own = items.get(item) ?? { shift: 0, variance: ITEM_VARIANCE };
      const information = Math.max(0.01, predicted * (1 - predicted));
      const scale = 1 + information * (meanVariance + own.variance);
      const surprise = (knew - predicted) / scale;
      mean = clamp(mean + meanVariance * surprise);
      own.shift = clamp(own.shift + own.variance * surprise);
      meanVariance -= (meanVariance * meanVariance * information) / scale;
      meanVariance = Math.min(MEAN_VARIANCE, meanVariance + DRIFT);
      own.variance -= (own.variance * own.variance * information) / scale;
      items.set(item, own);
    },
  };
}

function clamp(value: number): number {
  return Math.max(-LIMIT, Math.min(LIMIT, value));
}

export function logit(p: number): number {
  const q = Math.max(0.001, Math.min(0.999, p));
  return Math.log(q / (1 - q));
}

export function logistic(x: number): number {
  return 1 / (1 + Math.exp(-x));
}
