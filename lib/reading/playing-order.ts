import type { Score, ScoreWarning } from "../score/model";
import type { RoadMark } from "./reading";
import { findRepeatBlocks, type RepeatBlock } from "./repeat-blocks";

export interface PlayingOrder {
  /** Measure indices as they are played. */
  order: number[];
  /** The conventions that decided where the print leaves a choice. */
  policy: string;
  warnings: ScoreWarning[];
}

/** Longest order kept; whatever a file says, the walk ends. */
export const MOST_PLAYED = 200_000;

const POLICY = {
  plain: "repeats are played twice unless a number says otherwise",
  afterJump: "after D.C. or D.S. repeats are not taken again and the last ending is played",
  again: "repeats are taken again after the jump where the file says so",
  openStart: "a repeat without a forward sign goes back to the end of the repeat before it",
  nested: "an inner repeat is played in full on each pass of the outer one",
  expansion: "the order is the one the file's own expansion lists",
};

/**
 * The order of playing: repeats, endings, D.C., D.S., Coda and Fine. A jump is
 * taken once, after any repeat in its measure is used up; To Coda and Fine
 * wait for the jump.
 * @see MusicXML 4.0 sound, repeat and ending types; MEI expansion
 */
export function playingOrder(score: Score, road: readonly RoadMark[]): PlayingOrder {
  const { measures } = score;
  if (score.expansion) return { order: score.expansion, policy: POLICY.expansion, warnings: [] };
  const blocks = findRepeatBlocks(measures);
  const walk = new Walk(score, blocks, road);
  const order = walk.run();
  const policy = [POLICY.plain];
  if (walk.jumped) policy.push(POLICY.afterJump);
  if (walk.jumped && blocks.some((b) => b.afterJump)) policy.push(POLICY.again);
  if (blocks.some((b) => b.openStart === "after-last")) policy.push(POLICY.openStart);
  if (blocks.some((b) => blocks.some((o) => o !== b && isInside(b, o)))) policy.push(POLICY.nested);
  return { order, policy: policy.join("; "), warnings: walk.warnings };
}

function isInside(inner: RepeatBlock, outer: RepeatBlock): boolean {
  return outer.start <= inner.start && inner.end <= outer.end && inner !== outer;
}

/** One walk through the measures; its state is what a player keeps in mind. */
class Walk {
  readonly warnings: ScoreWarning[] = [];
  /** The jump already made, null before it. */
  jumped: RoadMark | null = null;
  private readonly pass = new Map<RepeatBlock, number>();
  private readonly taken = new Set<RoadMark>();
  private toCodaDone = false;

  constructor(
    private readonly score: Score,
    private readonly blocks: readonly RepeatBlock[],
    private readonly road: readonly RoadMark[],
  ) {}

  run(): number[] {
    const { measures } = this.score;
    const order: number[] = [];
    let at = 0;
    while (at < measures.length) {
      at = this.enter(at);
      if (at >= measures.length) break;
      if (order.length >= MOST_PLAYED) {
        this.warn("playing-order-cut", `Playing order cut after ${MOST_PLAYED} measures.`, at);
        break;
      }
      order.push(at);
      const next = this.leave(at);
      if (next === null) break;
      at = next;
    }
    return order;
  }

  /** Sets the pass of blocks that begin here and skips endings of other passes. */
  private enter(at: number): number {
    let here = at;
    for (const block of this.blocks) {
      if (block.start === here && !this.pass.has(block)) {
        this.pass.set(block, this.jumped && !block.afterJump ? block.times : 1);
      }
    }
    for (let hops = 0; hops <= this.blocks.length + 1; hops += 1) {
      const skip = this.skippedEnding(here);
      if (skip === null) return here;
      here = skip;
    }
    return here;
  }

  private skippedEnding(at: number): number | null {
    for (const block of this.blocks) {
      const inner = block.inner.find((e) => e.from === at);
      if (inner && !inner.passes.includes(this.pass.get(block) ?? block.times)) return inner.to + 1;
      const ending = block.endings.find((e) => e.from === at);
      if (!ending) continue;
      const pass = this.pass.get(block) ?? block.times;
      if (ending.passes.includes(pass)) continue;
      // When no bracket names this pass the last one is played.
      const named = block.endings.some((e) => e.passes.includes(pass));
      if (!named && ending === block.endings.at(-1)) continue;
      return ending.to + 1;
    }
    return null;
  }

  private leave(at: number): number | null {
    const back = this.repeatBack(at);
    if (back !== null) return back;
    for (const block of this.blocks) if (block.end === at) this.pass.delete(block);

    const here = this.road.filter((m) => m.measureIndex === at);
    if (this.isLastFine(here, at)) return null;
    const until = this.jumped?.until;
    if (this.jumped) {
      const fine = here.find((m) => m.kind === "fine" && this.holds(m, at));
      if (fine && until !== "coda") return null;
      if (fine && this.toCodaDone) return null;
      const toCoda = here.find((m) => m.kind === "tocoda");
      if (toCoda && until !== "fine" && !this.toCodaDone) {
        const coda = this.target("coda", toCoda.name, at);
        if (coda !== null) {
          this.toCodaDone = true;
          return this.land(coda);
        }
        this.warn("no-coda", "To Coda, but no coda is marked; playing goes straight on.", at);
      }
    }
    const jump = here.find(
      (m) =>
        (m.kind === "dacapo" || m.kind === "dalsegno") && !this.taken.has(m) && this.holds(m, at),
    );
    if (!jump) return at + 1;
    this.taken.add(jump);
    const to =
      jump.kind === "dacapo" ? this.movementStart(at) : this.target("segno", jump.name, at);
    if (to === null) {
      this.warn("no-segno", "D.S., but no segno is marked; playing goes straight on.", at);
      return at + 1;
    }
    this.jumped = jump;
    this.toCodaDone = false;
    return this.land(to);
  }

  /** With no D.C. or D.S. in the whole piece, Fine ends the last pass of the repeat it stands in. */
  private isLastFine(here: readonly RoadMark[], at: number): boolean {
    if (!here.some((m) => m.kind === "fine")) return false;
    if (this.road.some((m) => m.kind === "dacapo" || m.kind === "dalsegno")) return false;
    const block = this.blocks.find((b) => b.start <= at && at < b.end);
    return block !== undefined && (this.pass.get(block) ?? 0) >= block.times;
  }

  /** Back to the start of the innermost repeat that ends here and still has plays left. */
  private repeatBack(at: number): number | null {
    const measure = this.score.measures[at];
    if (!measure?.repeatEnd) return null;
    const ending = this.blocks
      .filter((b) => b.start <= at && at <= b.end && closesAt(b, at))
      .sort((a, b) => b.start - a.start);
    for (const block of ending) {
      const pass = this.pass.get(block) ?? block.times;
      if (pass >= block.times) continue;
      for (const inner of this.blocks) if (isInside(inner, block)) this.pass.delete(inner);
      this.pass.set(block, pass + 1);
      return block.start;
    }
    return null;
  }

  /** A jump to a measure inside a repeat finds it on its last pass. */
  private land(to: number): number {
    this.pass.clear();
    for (const block of this.blocks) {
      if (block.start < to && to <= block.end) this.pass.set(block, block.times);
    }
    return to;
  }

  private holds(mark: RoadMark, at: number): boolean {
    if (!mark.timeOnly) return true;
    const block = this.blocks.find((b) => b.start <= at && at <= b.end);
    const pass = (block && this.pass.get(block)) ?? (this.jumped ? 2 : 1);
    return mark.timeOnly.includes(pass);
  }

  /** The target by its name, else the nearest one a player would take. */
  private target(kind: "segno" | "coda", name: string, at: number): number | null {
    const targets = this.road.filter((m) => m.kind === kind);
    const named = targets.find((m) => name !== "" && m.name === name);
    if (named) return named.measureIndex;
    const start = this.movementStart(at);
    const near =
      kind === "segno"
        ? targets.findLast((m) => m.measureIndex <= at && m.measureIndex >= start)
        : targets.find((m) => m.measureIndex > at);
    return (near ?? targets[0])?.measureIndex ?? null;
  }

  private movementStart(at: number): number {
    return this.score.measures.findLastIndex((m, i) => i <= at && m.movementStart) || 0;
  }

  private warn(code: string, message: string, at: number): void {
    if (this.warnings.some((w) => w.code === code)) return;
    const measureNumber = this.score.measures[at]?.number ?? null;
    this.warnings.push({ code, message, measureNumber, partId: null });
  }
}

function closesAt(block: RepeatBlock, at: number): boolean {
  if (block.endings.length === 0) return block.end === at;
  return block.endings.some((e) => e.to === at);
}
