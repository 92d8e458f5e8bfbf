import { entryForSign, type Glossary } from "../glossary/glossary";
import type { Asks } from "../glossary/schema";
import { LEVELS } from "../glossary/vocabulary";
import type { Mark, ScorePart } from "../score/model";
import { type Demand, hasRole } from "../words/compose";
import type { Phrase } from "./gather-phrases";
import { comparePlaces, placeKey } from "./place";
import type { Place } from "./reading";
import { dashesFor, type Spanners } from "./spanners";

/** What a dynamic mark or word does, before it is put in its place in time. */
export type DynamicEvent = Place & { by: string; slugs: string[] } & (
    | {
        type: "level";
        level: string;
        attack: string | null;
        sudden: boolean;
        persist: boolean;
      }
    | { type: "attack"; attack: string }
    | {
        type: "change";
        direction: "rising" | "falling";
        /** Null when only the next mark ends it. */
        end: Place | null;
        toward: string | null;
      }
    /** Louder or softer than before by an amount not written (più forte). */
    | { type: "relative"; direction: "rising" | "falling" }
  );

/** Accents on one note; the level stays. @see MusicXML 4.0 dynamics */
const ONE_NOTE = new Set(["sf", "sfz", "sffz", "fz", "rf", "rfz"]);
/** Compound letters: how the note begins, and the level they leave. */
const LEAVES: Readonly<Record<string, readonly [attack: string, level: string]>> = {
  fp: ["f", "p"],
  sfp: ["sf", "p"],
  sfzp: ["sfz", "p"],
  sfpp: ["sf", "pp"],
  pf: ["p", "f"],
};
/** Softest first; `n` is silence. */
export const LEVEL_ORDER: readonly string[] = LEVELS;

const IS_DYNAMIC = new Set(["wedge", ...ONE_NOTE, ...Object.keys(LEAVES), ...LEVEL_ORDER]);

/** The dynamic events that reach one staff of a part, in order of place. */
export function dynamicEvents(
  part: ScorePart,
  staff: number,
  phrases: readonly Phrase[],
  spanners: Spanners,
  glossary: Glossary,
): DynamicEvent[] {
  const reaches = (m: { staff: number | null }) => m.staff === null || m.staff === staff;
  const here = phrases.filter(reaches);
  const alone = new Map<string, Demand>();
  for (const phrase of here) {
    const bare = phrase.demands.find((d) => d.head === null);
    if (bare) alone.set(placeKey(phrase), bare);
  }
  const events: DynamicEvent[] = [];
  for (const mark of part.marks) {
    if (!IS_DYNAMIC.has(mark.element) || !reaches(mark)) continue;
    const event = fromSign(mark, spanners, alone, glossary);
    if (event) events.push(event);
  }
  for (const phrase of here) {
    for (const demand of phrase.demands) {
      const event = fromWords(demand, phrase, spanners, glossary);
      if (event) events.push(event);
    }
  }
  return events.sort(comparePlaces);
}

function fromSign(
  mark: Mark,
  spanners: Spanners,
  aloneAt: ReadonlyMap<string, Demand>,
  glossary: Glossary,
): DynamicEvent | null {
  const at = { measureIndex: mark.measureIndex, onset: mark.onset };
  const slug = entryForSign(glossary, mark.element, mark.value)?.slug;
  const base = { ...at, by: mark.element, slugs: slug ? [slug] : [] };
  if (mark.element === "wedge") {
    if (mark.role !== "start") return null;
    const stop = spanners.stopOf.get(mark);
    const direction = mark.value === "diminuendo" ? "falling" : "rising";
    const end = stop ? { measureIndex: stop.measureIndex, onset: stop.onset } : null;
    const niente = direction === "falling" && (stop?.niente || mark.niente);
    return { ...base, type: "change", direction, end, toward: niente ? "n" : null };
  }
  if (ONE_NOTE.has(mark.element)) return { ...base, type: "attack", attack: mark.element };
  const compound = LEAVES[mark.element];
  if (compound) {
    const [attack, level] = compound;
    return { ...base, type: "level", level, attack, sudden: true, persist: false };
  }
  // Words beside the letters qualify them: sempre p, subito f, più f.
  const alone = aloneAt.get(placeKey(mark));
  if (alone && (hasRole(alone, "more") || hasRole(alone, "less"))) {
    return relativeTo(mark.element, alone, base);
  }
  return {
    ...base,
    type: "level",
    level: mark.element,
    attack: null,
    sudden: alone !== undefined && hasRole(alone, "at-once"),
    persist: alone !== undefined && hasRole(alone, "always"),
  };
}

function fromWords(
  demand: Demand,
  phrase: Phrase,
  spanners: Spanners,
  glossary: Glossary,
): DynamicEvent | null {
  const asks: Asks["dynamics"] = demand.head
    ? glossary.bySlug.get(demand.head.slug)?.asks.dynamics
    : undefined;
  if (!demand.head || !asks) return null;
  const at = { measureIndex: phrase.measureIndex, onset: phrase.onset };
  const base = { ...at, by: demand.text, slugs: [demand.head.slug] };
  if (hasRole(demand, "not") && asks.change) return null;
  if (asks.change && asks.rate === "at-once") {
    return {
      ...base,
      type: "relative",
      direction: asks.change === "louder" ? "rising" : "falling",
    };
  }
  if (asks.change) {
    const end = dashesFor(spanners, phrase);
    const direction = asks.change === "louder" ? "rising" : "falling";
    return { ...base, type: "change", direction, end, toward: asks.toward ?? null };
  }
  if (asks.level) {
    if (hasRole(demand, "more") || hasRole(demand, "less")) {
      return relativeTo(asks.level, demand, base);
    }
    return {
      ...base,
      type: "level",
      level: asks.level,
      attack: asks.attack && asks.attack !== "accent" ? asks.attack : null,
      sudden: asks.rate === "at-once" || hasRole(demand, "at-once"),
      persist: hasRole(demand, "always"),
    };
  }
  if (asks.attack) return { ...base, type: "attack", attack: demand.text.replace(/\.$/, "") };
  return null;
}

/** "più f" says louder, "più p" softer; how far is not written. */
function relativeTo(
  level: string,
  demand: Demand,
  base: Place & { by: string; slugs: string[] },
): DynamicEvent {
  const loud = LEVEL_ORDER.indexOf(level) > LEVEL_ORDER.indexOf("mp");
  const more = hasRole(demand, "more");
  return {
    ...base,
    by: demand.head ? demand.text : `${demand.text} ${level}`,
    type: "relative",
    direction: loud === more ? "rising" : "falling",
  };
}
