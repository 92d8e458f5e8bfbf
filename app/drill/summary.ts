import { DRILL_AXES, type DrillAxis } from "./axis-of";
import type { Asked } from "./next-prompt";

export interface AxisRow {
  axis: DrillAxis;
  /** Entries asked. */
  of: number;
  /** Of them recalled without help, at the last time of asking. */
  recalled: number;
}

export interface Summary {
  rows: AxisRow[];
  /** Slugs recalled; they rest till they begin to fade. */
  rest: string[];
  /** Slugs not recalled yet; they come first next time. */
  again: string[];
}

/** A session by axis; of an entry asked twice its last answer counts. */
export function summarise(asked: readonly Asked[], axisOf: (slug: string) => DrillAxis): Summary {
  const last = new Map<string, boolean>();
  for (const { slug, outcome, helped } of asked) {
    last.set(slug, !helped && (outcome === "right" || outcome === "slip"));
  }
  const slugs = [...last.keys()];
  const rows = DRILL_AXES.flatMap((axis) => {
    const own = slugs.filter((slug) => axisOf(slug) === axis);
    if (own.length === 0) return [];
    return [{ axis, of: own.length, recalled: own.filter((slug) => last.get(slug)).length }];
  });
  return {
    rows,
    rest: slugs.filter((slug) => last.get(slug)),
    again: slugs.filter((slug) => !last.get(slug)),
  };
}
