/**
 * What is believed of one student: a weight for each supposition (model and forgetting rate).
 *
 * No model is the truth. Answers therefore count with a power below 1, so that a long log of
 * answers that no model explains well does not leave a single model alone.
 */
export const TEMPER = 0.9;
/** No supposition falls below this share of its prior: students change, and models are wrong. */
const FLOOR = 0.02;

export interface Posterior {
  /** Weights, one for each supposition, summing to 1. */
  readonly weights: readonly number[];
  /** @param likelihoods chance of what was seen, under each supposition, each above 0 */
  update(likelihoods: readonly number[]): void;
}

/** @param priors weights before any answer, summing to 1 */
export function createPosterior(priors: readonly number[]): Posterior {
  const logs = priors.map((prior) => Math.log(prior));
  const weights = [...priors];
  return {
    weights,
    update(likelihoods) {
      let top = Number.NEGATIVE_INFINITY;
      for (let i = 0; i < logs.length; i += 1) {
        const log = (logs[i] ?? 0) + TEMPER * Math.log(Math.max(1e-6, likelihoods[i] ?? 1));
        logs[i] = log;
        if (log > top) top = log;
      }
      let sum = 0;
      for (let i = 0; i < logs.length; i += 1) sum += Math.exp((logs[i] ?? 0) - top);
      for (let i = 0; i < logs.length; i += 1) {
        const share = Math.exp((logs[i] ?? 0) - top) / sum;
        weights[i] = (1 - FLOOR) * share + FLOOR * (priors[i] ?? 0);
      }
    },
  };
}

/**
 * Weighted quantile.
 *
 * @param share 0..1
 */
export function weightedQuantile(
  values: readonly number[],
  weights: readonly number[],
  share: number,
): number {
  const order = values.map((_, i) => i).sort((a, b) => (values[a] ?? 0) - (values[b] ?? 0));
  let seen = 0;
  for (const i of order) {
    seen += weights[i] ?? 0;
    if (seen >= share - 1e-12) return values[i] ?? 0;
  }
  return values[order.at(-1) ?? 0] ?? 0;
}
