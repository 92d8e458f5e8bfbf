import type { Moment } from "../evidence";
import type { MemoryModel, Practice, Trace } from "./model";

/**
 * Activation of a memory as a sum of decaying presentations.
 *
 * @see Pavlik & Anderson 2005, Cognitive Science 29(4):559-586; 2008, J Exp Psychol Applied
 *   14(2):101-117. Formulas by reference memory/memory-models.json; the numbers of 2005 are
 *   marked there as from memory.
 */
export const ACTIVATION_2005 = { a: 0.177, c: 0.217, tau: -0.704, s: 0.255, h: 0.025 } as const;
export type ActivationParameters = { [K in keyof typeof ACTIVATION_2005]: number };

/** Seconds below which a presentation is not told from the one before. */
const SHORTEST_AGE = 1;
/** What a student who knew the entry at the first question had behind them, in days before it. */
const BEFORE_DAYS = [20, 5, 1] as const;
/** Beyond this the question whether it was known beforehand counts as settled. */
const SETTLED = 0.01;

/**
 * Decay of each presentation: d = c·exp(m) + a, with m the activation just before it.
 *
 * @param times moments of the presentations in seconds, rising
 */
export function decaysOf(times: readonly number[], p: ActivationParameters): number[] {
  const decays: number[] = [];
  for (const time of times) decays.push(p.c * strength(times, decays, time) + p.a);
  return decays;
}

/** Activation m at a moment; minus infinity before the first presentation. */
export function activationAt(
  times: readonly number[],
  decays: readonly number[],
  now: number,
): number {
  return Math.log(strength(times, decays, now));
}

/** Recall for an activation m: 1 / (1 + exp((tau - m) / s)). */
export function recallOf(activation: number, p: ActivationParameters): number {
  return 1 / (1 + Math.exp((p.tau - activation) / p.s));
}

/** exp(m): the sum over the presentations already made, one for each decay. */
function strength(times: readonly number[], decays: readonly number[], now: number): number {
  let sum = 0;
  for (let k = 0; k < decays.length; k += 1) {
    sum += Math.max(SHORTEST_AGE, now - (times[k] ?? now)) ** -(decays[k] ?? ACTIVATION_2005.a);
  }
  return sum;
}

/**
 * The activation model with decay `rate` times the default.
 * Time between sessions counts h times as much as time inside one.
 */
export function createActivationModel(rate: number, prior: number): MemoryModel {
  const p = { ...ACTIVATION_2005, a: ACTIVATION_2005.a * rate, c: ACTIVATION_2005.c * rate };
  return {
    name: "activation",
    rate,
    prior,
    first: (practice) =>
      new ActivationTrace(p, [felt(practice.at, p)], [p.a], settle(practice.knew)),
  };
}

/** Seconds as memory feels them. */
function felt(at: Moment, p: ActivationParameters): number {
  return p.h * at.days * 86_400 + (1 - p.h) * at.study;
}

function settle(known: number): number {
  return known < SETTLED ? 0 : known > 1 - SETTLED ? 1 : known;
}

/** A class rather than closures: thousands are made for one plan. */
class ActivationTrace implements Trace {
  /** @param known chance that there was practice before the first question, which nobody saw */
  constructor(
    private readonly p: ActivationParameters,
    private readonly times: readonly number[],
    private readonly decays: readonly number[],
    private readonly known: number,
  ) {}

  recall(at: Moment): number {
    const now = felt(at, this.p);
    const seen = strength(this.times, this.decays, now);
    return this.known * this.having(seen, now) + (1 - this.known) * this.without(seen);
  }

  after(practice: Practice): Trace {
    const now = felt(practice.at, this.p);
    const seen = strength(this.times, this.decays, now);
    const decay = this.p.c * seen + this.p.a;
    const known =
      this.known > 0 && this.known < 1 ? this.knownAfter(practice.knew, seen, now) : this.known;
    return new ActivationTrace(this.p, [...this.times, now], [...this.decays, decay], known);
  }

  private without(seen: number): number {
    return recallOf(Math.log(seen), this.p);
  }

  private having(seen: number, now: number): number {
    if (this.known === 0) return 0;
    const since = now - (this.times[0] ?? now);
    let sum = seen;
    for (const days of BEFORE_DAYS) sum += (since + this.p.h * days * 86_400) ** -this.p.a;
    return recallOf(Math.log(sum), this.p);
  }

  /** Bayes on whether it was known beforehand. */
  private knownAfter(knew: number, seen: number, now: number): number {
    const fits = (recall: number) => knew * recall + (1 - knew) * (1 - recall);
    const yes = this.known * fits(this.having(seen, now));
    const no = (1 - this.known) * fits(this.without(seen));
    return yes + no > 0 ? settle(yes / (yes + no)) : this.known;
  }
}
