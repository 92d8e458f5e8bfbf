import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { Place, Reading } from "@/lib/reading/reading";
import { stateAt } from "@/lib/reading/state-at";
import type { Columns } from "./layout-columns";
import type { LaneName } from "./layout-ribbon";
import type { PrintedMark } from "./printed-marks";

/** What holds at the left edge though its mark is out of sight. */
export type Carried = Partial<
  Record<LaneName, { text: string; lang: string; glyph: string | null }>
>;

interface CarriedContext {
  reading: Reading;
  partIndex: number;
  staff: number;
  columns: Columns;
  marks: readonly PrintedMark[];
  entryOf(slug: string | null): ClientEntry | undefined;
}

/** @param edge units from the start of the ribbon that are out of sight at the left */
export function carriedAt(edge: number, context: CarriedContext): Carried {
  const { reading, columns, partIndex, staff, entryOf, marks } = context;
  const index = columns.edges.findIndex((x) => x >= edge - 1);
  if (index <= 0) return {};
  const force = stateAt(reading, partIndex, { measureIndex: index, onset: [0, 1] }, staff);
  const isPast = (place: Place) => columns.x(place) < edge;
  const carried: Carried = {};
  const { tempo, dynamic } = force;
  if (tempo && tempo.by !== "" && isPast(tempo)) {
    const lang = entryOf(tempo.slugs[0] ?? null)?.lang ?? "it";
    const isSteady = tempo.change === "none" && !tempo.free;
    const number = tempo.beat?.text ?? tempo.beat?.perMinute?.toString() ?? "";
    const text = isSteady ? (tempo.word ?? `= ${number}`) : tempo.by;
    carried.tempo = { text, lang, glyph: null };
  }
  if (dynamic?.level && isPast(dynamic)) {
    const printed = marks.find((m) => m.sign === dynamic.level);
    const glyph = entryOf(printed?.head.slug ?? null)?.sign?.glyph ?? null;
    // A cresc. in words is what the player has in mind; a hairpin is seen.
    const inWords = dynamic.change !== "none" && dynamic.by !== "wedge";
    carried.dynamics = inWords
      ? { text: dynamic.by, lang: "it", glyph: null }
      : { text: dynamic.level, lang: "it", glyph };
  }
  for (const axis of ["articulation", "character", "technique"] as const) {
    const words = force[axis].filter(
      (w) => w.source < index && isPast({ measureIndex: w.source, onset: [0, 1] }),
    );
    const [first] = words;
    if (!first) continue;
    const lang = entryOf(first.slug)?.lang ?? "it";
    carried[axis] = { text: words.map((w) => w.text).join(" "), lang, glyph: null };
  }
  return carried;
}
