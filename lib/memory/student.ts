import { createEase, type Ease, logistic, logit } from "./ease";
import type { Moment, Trial } from "./evidence";
import { knewIt } from "./fsrs";
import { createActivationModel } from "./models/activation-model";
import { createHalfLifeModel } from "./models/half-life-model";
import { createHoldModel } from "./models/hold-model";
import type { MemoryModel, Practice, Trace } from "./models/model";
import { createPosterior, type Posterior } from "./posterior";

/** Forgetting rates tried for each model, 1 the model's default, and how likely each is beforehand. */
const RATES = {
  hold: [0.25, 1, 4, 16, 64],
  activation: [0.6, 0.8, 1, 1.3, 1.7],
  halfLife: [0.3, 0.55, 1, 1.8, 3.3],
} as const;
const SHARES = [0.1, 0.25, 0.3, 0.25, 0.1] as const;
/** The first two rest on many studies; the third, blind to gaps, guards against students unlike both. */
const BELIEF = { hold: 0.4, activation: 0.4, halfLife: 0.2 } as const;

/** A student knows about one entry in six before the first question; the student's own share is learnt. */
const KNOWN_PRIOR = { yes: 1, no: 5 } as const;

/** Three memory models over their grids of forgetting rates; priors sum to 1. */
export function standardModels(): MemoryModel[] {
  const prior = (belief: number, i: number) => belief * (SHARES[i] ?? 0);
  return [
    ...RATES.hold.map((rate, i) => createHoldModel(rate, prior(BELIEF.hold, i))),
    ...RATES.activation.map((rate, i) => createActivationModel(rate, prior(BELIEF.activation, i))),
    ...RATES.halfLife.map((rate, i) => createHalfLifeModel(rate, prior(BELIEF.halfLife, i))),
  ];
}

/** What is believed of one student's memory. */
export interface Beliefs {
  readonly models: readonly MemoryModel[];
  readonly posterior: Posterior;
  /** Memory of an entry under each model; undefined when it was never met. */
  traces(item: string): readonly Trace[] | undefined;
  /** Logits by which an entry is easier for this student than model `index` says. */
  ease(index: number, item: string): number;
  /** Chance that an entry never met is known already. */
  knownBefore(): number;
  /** Expected recall, 0..1, over all models; null for an entry never met. */
  recall(item: string, at: Moment): number | null;
  /** Recall under each model; null for an entry never met. */
  recalls(item: string, at: Moment): number[] | null;
}

/** Beliefs folded from trials in order of time. */
export interface Student extends Beliefs {
  /** Takes in what happened. Trials must come in order of time. */
  observe(trial: Trial): void;
  /** A copy in which practice can be imagined; beliefs about the student stay as they are. */
  fork(): ImaginedStudent;
}

export interface ImaginedStudent extends Beliefs {
  imagine(item: string, practice: Practice): void;
}

/** A student of whom nothing is known yet. */
export function createStudent(models: readonly MemoryModel[] = standardModels()): Student {
  const posterior = createPosterior(models.map((m) => m.prior));
  const eases = models.map(() => createEase());
  return build({ models, posterior, eases, known: { ...KNOWN_PRIOR }, traces: new Map() });
}

/** Folds trials in order of time. */
export function foldStudent(trials: readonly Trial[]): Student {
  const student = createStudent();
  for (const trial of trials) student.observe(trial);
  return student;
}

interface Parts {
  models: readonly MemoryModel[];
  posterior: Posterior;
  eases: readonly Ease[];
  known: { yes: number; no: number };
  traces: Map<string, readonly Trace[]>;
}

function build(parts: Parts): Student & ImaginedStudent {
  const { models, posterior, eases, known, traces } = parts;
  const ease = (index: number, item: string) => eases[index]?.of(item) ?? 0;
  const knownBefore = () => known.yes / (known.yes + known.no);
  const recalls = (item: string, at: Moment) =>
    traces.get(item)?.map((trace, i) => easedRecall(trace.recall(at), ease(i, item))) ?? null;

  const first = (trial: Trial): void => {
    const knew = knewIt(trial.got, trial.guess, knownBefore()) * (trial.got === 0.5 ? 0.5 : 1);
    known.yes += knew;
    known.no += 1 - knew;
    const practice = { at: trial.at, day: trial.day, knew, manner: trial.manner };
    traces.set(
      trial.item,
      models.map((model) => model.first(practice)),
    );
  };
  const again = (trial: Trial, held: readonly Trace[]): void => {
    const likelihoods: number[] = [];
    const next = held.map((trace, i) => {
      const before = easedRecall(trace.recall(trial.at), ease(i, trial.item));
      likelihoods.push(likelihood(trial, before));
      const knew = knewIt(trial.got, trial.guess, before);
      eases[i]?.learn(trial.item, before, trial.got === 0.5 ? 0.5 : knew);
      return trace.after({ at: trial.at, day: trial.day, knew, manner: trial.manner });
    });
    posterior.update(likelihoods);
    traces.set(trial.item, next);
  };

  return {
    models,
    posterior,
    traces: (item) => traces.get(item),
    ease,
    knownBefore,
    recalls,
    recall(item, at) {
      const all = recalls(item, at);
      return all?.reduce((sum, recall, i) => sum + recall * (posterior.weights[i] ?? 0), 0) ?? null;
    },
    observe(trial) {
      const held = traces.get(trial.item);
      if (held) again(trial, held);
      else first(trial);
    },
    imagine(item, practice) {
      const held = traces.get(item);
      const next = held ? held.map((t) => t.after(practice)) : models.map((m) => m.first(practice));
      traces.set(item, next);
    },
    fork: () => build({ ...parts, known: { ...known }, traces: new Map(traces) }),
  };
}

/** A model's recall moved by an entry's ease; kept off 0 and 1, since no model is certain. */
export function easedRecall(recall: number, ease: number): number {
  return 0.002 + 0.996 * logistic(logit(recall) + ease);
}

function likelihood(trial: Trial, recall: number): number {
  const right = recall + (1 - recall) * trial.guess;
  if (trial.got === 1) return right;
  if (trial.got === 0) return 1 - right;
  // In part: as likely as half a success and half a failure.
  return Math.sqrt(Math.max(1e-6, right * (1 - right)));
}
