import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { PieceRecord, SetRecord } from "@/lib/store/records";
import { pieceSlugs } from "../ui/piece-facts";
import { axisOf, DRILL_AXES, DRILL_AXIS_WORDS, type DrillAxis } from "./axis-of";

/** Minutes offered where a set names none. */
export const MINUTES_OFFERED = [3, 5, 10, 15] as const;
export const USUAL_MINUTES = 5;
const MOST_MINUTES = 120;

/** What one drill is about. */
export interface DrillJob {
  /** Changes with the job: a new drill begins. */
  key: string;
  title: string;
  slugs: string[];
  /** Audition date, YYYY-MM-DD. */
  date: string | null;
  minutes: number;
  piece: PieceRecord | null;
}

/** The address of a drill: one of set, piece and axis, and minutes. */
export interface DrillAddress {
  set: string | null;
  piece: string | null;
  axis: string | null;
  minutes: string | null;
}

interface OnDevice {
  sets: readonly SetRecord[];
  pieces: readonly PieceRecord[];
  entries: ReadonlyMap<string, ClientEntry>;
}

/**
 * @returns the job; "none" when the address names nothing, "gone" when this device does not have what it names
 */
export function whatToDrill(address: DrillAddress, device: OnDevice): DrillJob | "none" | "gone" {
  const { sets, pieces } = device;
  if (address.set !== null) {
    const set = sets.find((s) => s.id === address.set);
    return set ? jobOfSet(set, address, device) : "gone";
  }
  if (address.piece !== null) {
    const piece = pieces.find((p) => p.id === address.piece);
    const set = sets.find((s) => s.pieceId === address.piece);
    if (set) return jobOfSet(set, address, device);
    if (!piece) return "gone";
    return {
      key: `piece ${piece.id}`,
      title: piece.title,
      slugs: known(pieceSlugs(piece.reading, piece.partIndex), device),
      date: null,
      minutes: minutesOf(address.minutes) ?? USUAL_MINUTES,
      piece,
    };
  }
  if (address.axis === null) return "none";
  const axis = DRILL_AXES.find((a) => a === address.axis);
  if (!axis) return "gone";
  return {
    key: `axis ${axis}`,
    title: `Usual words and signs: ${DRILL_AXIS_WORDS[axis]}`,
    slugs: usualSlugs(axis, device.entries),
    date: null,
    minutes: minutesOf(address.minutes) ?? USUAL_MINUTES,
    piece: null,
  };
}

function jobOfSet(set: SetRecord, address: DrillAddress, device: OnDevice): DrillJob {
  return {
    key: `set ${set.id}`,
    title: set.title,
    slugs: known(set.slugs, device),
    date: set.date,
    minutes: minutesOf(address.minutes) ?? set.minutesADay,
    piece: device.pieces.find((p) => p.id === set.pieceId) ?? null,
  };
}

/** Entries met in most parts, of one axis. */
export function usualSlugs(axis: DrillAxis, entries: ReadonlyMap<string, ClientEntry>): string[] {
  return [...entries.values()]
    .filter((entry) => entry.tier === 1 && axisOf(entry) === axis)
    .map((entry) => entry.slug);
}

/** A set may come from another version of the glossary. */
function known(slugs: readonly string[], { entries }: OnDevice): string[] {
  return [...new Set(slugs)].filter((slug) => entries.has(slug));
}

function minutesOf(text: string | null): number | null {
  const minutes = Number(text);
  return text !== null && Number.isInteger(minutes) && minutes >= 1 && minutes <= MOST_MINUTES
    ? minutes
    : null;
}
