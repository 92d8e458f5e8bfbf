import type { Moment } from "../evidence";
import { blendNext, createFsrs, type Hold, markOf } from "../fsrs";
import type { MemoryModel, Practice, Trace } from "./model";

const fsrs = createFsrs();

/**
 * FSRS-6 with time running `rate` times as fast.
 * Its default weights were fitted to adults; the rate is what fits them to this student.
 */
export function createHoldModel(rate: number, prior: number): MemoryModel {
  return {
    name: "hold",
    rate,
    prior,
    first: (p) => new HoldTrace(rate, blendNext(fsrs, null, 0, p.knew, markOf(p.manner)), p),
  };
}

/** A class rather than closures: thousands are made for one plan. */
class HoldTrace implements Trace {
  constructor(
    private readonly rate: number,
    private readonly hold: Hold,
    private readonly last: Practice,
  ) {}

  recall(at: Moment): number {
    return fsrs.recall((at.days - this.last.at.days) * this.rate, this.hold.holdsDays);
  }

  after(p: Practice): Trace {
    const elapsed = Math.max(0, p.day - this.last.day) * this.rate;
    return new HoldTrace(
      this.rate,
      blendNext(fsrs, this.hold, elapsed, p.knew, markOf(p.manner)),
      p,
    );
  }
}
