import { samePlace, toNumber } from "@/lib/reading/place";
import type { Place, ReadingMeasure } from "@/lib/reading/reading";

/** Room between a barline and the first onset, and between the last and the next barline. */
export const PAD_LEFT = 9;
const PAD_RIGHT = 7;
/** Widest a measure is drawn to keep its words apart; beyond that words are moved instead. */
export const MOST_COLUMN = 232;
/** Least room between two things in one row. */
export const GAP = 10;

/** Something that takes room in a row of a lane, from its place on. */
export interface RowItem extends Place {
  width: number;
}

/** Measures from left to right. */
export interface Columns {
  /** Left edge of every measure, and the right edge of the last. */
  edges: number[];
  width: number;
  /** Where an onset stands; the measure's length stands at its right barline. */
  x(place: Place): number;
}

/**
 * Gives every measure a column: at least `least` wide, wider where its notes
 * carry many signs or its words would run into the next ones.
 * @param demand units each measure asks for by itself, by measure index
 * @param rows items by row, each row in order of place
 */
export function layoutColumns(
  measures: readonly ReadingMeasure[],
  least: number,
  { demand, rows }: { demand: readonly number[]; rows: readonly (readonly RowItem[])[] },
): Columns {
  const widths = measures.map((_, i) => Math.min(MOST_COLUMN, Math.max(least, demand[i] ?? 0)));
  for (const row of rows) {
    // Items at one place stand after one another and are kept clear of the next place together.
    let cluster = null as RowItem | null;
    for (const item of row) {
      if (cluster && samePlace(cluster, item)) {
        cluster = { ...cluster, width: cluster.width + GAP + item.width };
        continue;
      }
      if (cluster) widenBetween(measures, widths, cluster, item);
      cluster = item;
    }
  }
  const edges = [0];
  for (const width of widths) edges.push((edges.at(-1) ?? 0) + width);
  const width = edges.at(-1) ?? 0;
  return {
    edges,
    width,
    x: (place) => {
      const left = edges[place.measureIndex];
      if (left === undefined) return width;
      return left + within(measures, widths, place);
    },
  };
}

function within(
  measures: readonly ReadingMeasure[],
  widths: readonly number[],
  { measureIndex, onset }: Place,
): number {
  const width = widths[measureIndex] ?? 0;
  const share = shareOf(measures, { measureIndex, onset });
  if (share >= 1) return width;
  return PAD_LEFT + share * Math.max(0, width - PAD_LEFT - PAD_RIGHT);
}

/** How far into its measure a place stands, 0 to 1. */
function shareOf(measures: readonly ReadingMeasure[], { measureIndex, onset }: Place): number {
  const length = measures[measureIndex]?.length;
  const total = length ? toNumber(length) : 0;
  return total <= 0 ? 0 : Math.min(1, toNumber(onset) / total);
}

/** Widens the first item's measure until the second has room, as far as a measure may grow. */
function widenBetween(
  measures: readonly ReadingMeasure[],
  widths: number[],
  before: RowItem,
  after: RowItem,
): void {
  const m = before.measureIndex;
  let between = within(measures, widths, after) - within(measures, widths, before);
  for (let i = m; i < after.measureIndex; i += 1) between += widths[i] ?? 0;
  const missing = before.width + GAP - between;
  if (missing <= 0) return;
  const start = shareOf(measures, before);
  const gain = after.measureIndex > m ? 1 - start : shareOf(measures, after) - start;
  if (gain <= 0.02) return;
  widths[m] = Math.min(MOST_COLUMN, (widths[m] ?? 0) + missing / gain);
}

/**
 * Where the items of one row stand: at their place, or moved on where the item
 * before still has the room.
 */
export function placeRow(columns: Columns, row: readonly RowItem[]): number[] {
  let free = 0;
  return row.map((item) => {
    const x = Math.max(columns.x(item), free);
    free = x + item.width + GAP;
    return x;
  });
}
