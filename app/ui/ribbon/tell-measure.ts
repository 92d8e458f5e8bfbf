/** What is in force in one measure and why, in words. */

import { asksInWords } from "@/lib/glossary/asks-words";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import { AXES, type Axis, LEVELS, type Level } from "@/lib/glossary/vocabulary";
import { samePlace } from "@/lib/reading/place";
import type { DynamicState, MannerWord, Reading, TempoState } from "@/lib/reading/reading";
import { type InForce, stateAt } from "@/lib/reading/state-at";
import { laneOf, printedText } from "./lane-context";
import { isForStaff } from "./layout-dynamics";
import { BEAT_GLYPHS } from "./layout-tempo";
import { measureName } from "./measure-name";
import { waysOn, wayWords } from "./playing-words";
import { isTelling, type PrintedMark } from "./printed-marks";

/** How a mark opens its row. */
export type Lead =
  | { kind: "term"; text: string; lang: string; slug: string | null }
  | { kind: "sign"; glyph: string | null; name: string; lang: string; slug: string | null }
  | { kind: "beat"; glyphs: readonly string[]; number: string; name: string; slug: string | null }
  | { kind: "said"; text: string };

export interface MeasureRow {
  key: string;
  axis: Axis;
  lead: Lead;
  /** What it asks. */
  asks: string;
  /** Printed measure number it stands in, null for this very measure. */
  since: string | null;
}

export interface MeasureTold {
  number: string;
  /** One sentence, what a player thinks before the downbeat. */
  sentence: string;
  rows: MeasureRow[];
}

interface TellContext {
  reading: Reading;
  partIndex: number;
  staff: number;
  marks: readonly PrintedMark[];
  entryOf(slug: string | null): ClientEntry | undefined;
}

/** @param index of the measure, from 0 */
export function tellMeasure(index: number, context: TellContext): MeasureTold {
  const { reading, partIndex, staff } = context;
  const force = stateAt(reading, partIndex, { measureIndex: index, onset: [0, 1] }, staff);
  const rows = [
    ...printedRows(index, context),
    ...carriedRows(index, force, context),
    ...roadRows(index, context),
  ].sort((a, b) => AXES.indexOf(a.axis) - AXES.indexOf(b.axis));
  return {
    number: numberOf(reading, index),
    sentence: sentenceFor(index, force, context),
    rows,
  };
}

function numberOf({ measures }: Reading, index: number): string {
  return measureName(measures, index);
}

/** The rows of what is printed in the measure, each thing once. */
function printedRows(index: number, context: TellContext): MeasureRow[] {
  const here = context.marks.filter(
    (m) => m.measureIndex === index && isTelling(m) && isForStaff(m, context.staff),
  );
  const rows = new Map<string, { mark: PrintedMark; times: number }>();
  for (const mark of here) {
    if (mark.sign === "bar-style") continue;
    const key = mark.sign ?? printedText(mark);
    const row = rows.get(key);
    if (row) row.times += 1;
    else rows.set(key, { mark, times: 1 });
  }
  return [...rows].map(([key, { mark, times }]) => ({
    key,
    axis: laneOf(mark, context.marks) ?? "technique",
    lead: leadOf(mark, context),
    asks: meaningOf(mark, context) + (times > 1 ? ` (${times} times)` : ""),
    since: null,
  }));
}

export function leadOf(
  mark: PrintedMark,
  { entryOf, reading }: Pick<TellContext, "entryOf" | "reading">,
): Lead {
  const { head, sign } = mark;
  if (sign === "metronome") {
    const tempo = reading.tempo.find((t) => samePlace(t, mark));
    const lead = tempo ? beatLead(tempo, head.slug) : null;
    if (lead) return lead;
  }
  if (sign === null) {
    return { kind: "term", text: printedText(mark), lang: head.lang, slug: head.slug };
  }
  const glyph = entryOf(head.slug)?.sign?.glyph ?? null;
  const printed = sign === "rehearsal" || sign === "ending" || sign === "other-dynamics";
  if (printed) return { kind: "term", text: head.text, lang: head.lang, slug: head.slug };
  const name = entryOf(head.slug)?.headword ?? head.headword;
  return { kind: "sign", glyph, name, lang: head.lang, slug: head.slug };
}

/** A lead for the ears. */
export function leadInWords(lead: Lead): string {
  if (lead.kind === "sign") return lead.name;
  return lead.kind === "beat" ? `${lead.name} ${lead.number}` : lead.text;
}

/** What a mark asks, modifiers first: "much; slower, little by little". */
export function meaningOf(mark: PrintedMark, { entryOf }: Pick<TellContext, "entryOf">): string {
  const meanings = mark.found.map((f) => entryOf(f.slug)?.meaning ?? "");
  return meanings.filter((m) => m !== "").join("; ") || "the glossary only names it";
}

function carriedRows(index: number, force: InForce, context: TellContext): MeasureRow[] {
  const rows: MeasureRow[] = [];
  const { reading, entryOf } = context;
  const { tempo, dynamic } = force;
  if (tempo && tempo.measureIndex < index && tempo.by !== "") rows.push(tempoRow(tempo, context));
  if (dynamic?.level && dynamic.source !== null && dynamic.source < index) {
    const since = numberOf(reading, dynamic.source);
    rows.push(dynamicRow(dynamic.level, since, context));
  }
  if (dynamic && dynamic.change !== "none" && dynamic.measureIndex < index) {
    const entry = entryOf(dynamic.slugs[0] ?? null);
    rows.push({
      key: "change",
      axis: "dynamics",
      lead: entry?.sign
        ? signLead(entry)
        : { kind: "term", text: dynamic.by, lang: entry?.lang ?? "it", slug: entry?.slug ?? null },
      asks: changeWords(dynamic, reading),
      since: numberOf(reading, dynamic.measureIndex),
    });
  }
  const held = (axis: Axis, words: readonly MannerWord[]) => {
    for (const word of words) {
      if (word.source >= index) continue;
      const entry = entryOf(word.slug);
      const lang = entry?.lang ?? "it";
      rows.push({
        key: `${axis} ${word.slug}`,
        axis,
        lead: { kind: "term", text: word.text, lang, slug: word.slug },
        asks: entry?.meaning ?? "",
        since: numberOf(reading, word.source),
      });
    }
  };
  held("articulation", force.articulation);
  held("character", force.character);
  held("technique", force.technique);
  return rows;
}

function signLead(entry: ClientEntry): Lead {
  const { headword: name, lang, slug, sign } = entry;
  return { kind: "sign", glyph: sign?.glyph ?? null, name, lang, slug };
}

/** A metronome mark as it is printed, and in words. */
function beatLead({ beat }: TempoState, slug: string | null): Lead | null {
  const glyph = beat ? BEAT_GLYPHS[beat.unit] : undefined;
  const number = beat?.text ?? beat?.perMinute?.toString();
  if (!beat || !glyph || number === undefined) return null;
  const glyphs = [glyph, ...new Array<string>(beat.dots).fill("metAugmentationDot")];
  return { kind: "beat", glyphs, number: `= ${number}`, name: beatWords(beat), slug };
}

/** "dotted quarter note". */
function beatWords({ unit, dots }: NonNullable<TempoState["beat"]>): string {
  const dotted = dots === 0 ? "" : dots === 1 ? "dotted " : "double-dotted ";
  return `${dotted}${unit} note`;
}

function tempoRow(tempo: TempoState, { reading, entryOf }: TellContext): MeasureRow {
  const entry = entryOf(tempo.slugs[0] ?? null);
  const beat = tempo.quarterBpm === null ? null : beatLead(tempo, "metronome-mark");
  const isWord = tempo.slugs[0] !== "metronome-mark";
  const inWords = beat?.kind === "beat" ? `${beat.name} ${beat.number}` : "";
  const term: Lead = {
    kind: "term",
    text: tempo.by,
    lang: entry?.lang ?? "it",
    slug: entry?.slug ?? null,
  };
  return {
    key: "tempo",
    axis: "tempo",
    lead: isWord ? term : (beat ?? term),
    asks: [entry?.meaning, isWord ? inWords : ""].filter(Boolean).join("; "),
    since: numberOf(reading, tempo.measureIndex),
  };
}

function dynamicRow(level: string, since: string, { entryOf, marks }: TellContext): MeasureRow {
  const printed = marks.find((m) => m.sign === level);
  const entry = entryOf(printed?.head.slug ?? null);
  return {
    key: "level",
    axis: "dynamics",
    lead: entry?.sign ? signLead(entry) : { kind: "said", text: levelWords(level) },
    asks: levelWords(level),
    since,
  };
}

function roadRows(index: number, { reading }: TellContext): MeasureRow[] {
  const ways = waysOn(reading).get(index);
  if (!ways) return [];
  return [
    {
      key: "way",
      axis: "road",
      lead: { kind: "said", text: "after this measure" },
      asks: wayWords(index, ways, reading.measures),
      since: null,
    },
  ];
}

export function levelWords(level: string): string {
  const known = LEVELS.find((l): l is Level => l === level);
  return known ? (asksInWords({ dynamics: { level: known } })[0]?.words ?? level) : level;
}

function changeWords(dynamic: DynamicState, reading: Reading): string {
  const way = dynamic.change === "rising" ? "growing louder" : "growing softer";
  if (dynamic.toward === "n") return `${way}, down to nothing`;
  const end = dynamic.span ? numberOf(reading, dynamic.span[1]) : "";
  const goal = dynamic.toward ? `, to ${levelWords(dynamic.toward)}` : "";
  return `${way}${goal}${end === "" ? "" : `, up to measure ${end}`}`;
}

function sentenceFor(index: number, force: InForce, context: TellContext): string {
  const clauses = [
    [loudness(index, force.dynamic), ...moods(force, context)].filter(Boolean).join(", "),
    speed(index, force.tempo, context),
  ].filter((clause) => clause !== "");
  if (clauses.length === 0) return "Nothing is printed for this measure, nor carried into it.";
  const text = clauses.join("; ");
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function loudness(index: number, dynamic: DynamicState | null): string {
  if (!dynamic) return "";
  const { level, change, measureIndex } = dynamic;
  const isNew = measureIndex === index;
  if (change !== "none") {
    const way = change === "rising" ? "growing louder" : "growing softer";
    const goal =
      dynamic.toward === null
        ? ""
        : dynamic.toward === "n"
          ? " down to nothing"
          : ` towards ${levelWords(dynamic.toward)}`;
    return `${isNew ? "" : "still "}${way}${level === null ? "" : ` from ${levelWords(level)}`}${goal}`;
  }
  if (level === null) return "";
  if (dynamic.louderThan) return `louder than ${levelWords(level)}, how much is not printed`;
  if (dynamic.softerThan) return `softer than ${levelWords(level)}, how much is not printed`;
  const words = levelWords(level);
  const start = dynamic.attack === null ? "" : ", the first note struck harder";
  if (!isNew || dynamic.source !== index) return `still ${words}${start}`;
  return `${dynamic.sudden ? "all at once " : ""}${words}${dynamic.sudden ? "" : " from here"}${start}`;
}

/** At most three qualities, of the latest words first. */
function moods({ character }: InForce, { entryOf }: TellContext): string[] {
  const words = character.flatMap((w) => entryOf(w.slug)?.asks.character ?? []);
  return [...new Set(words)].slice(0, 3);
}

function speed(index: number, tempo: TempoState | null, { reading, entryOf }: TellContext): string {
  if (!tempo || tempo.by === "") return "";
  const isNew = tempo.measureIndex === index;
  if (tempo.change !== "none") {
    const way = tempo.change === "slowing" ? "slowing" : "getting faster";
    const end = tempo.span ? numberOf(reading, tempo.span[1]) : "";
    const until = end === "" || end === numberOf(reading, index) ? "" : `, up to measure ${end}`;
    return `${isNew ? "" : "still "}${way}${until}`;
  }
  if (tempo.free) return "the beat may bend";
  if (tempo.settled)
    return `${tempo.settled === "slowed" ? "slower" : "faster"} than before, and steady`;
  if (isNew && tempo.restoredFrom !== null) {
    return `back to the speed of measure ${numberOf(reading, tempo.restoredFrom)}`;
  }
  const pace = entryOf(tempo.slugs[0] ?? null)?.asks.tempo;
  const words = pace ? (asksInWords({ tempo: pace })[0]?.words ?? "") : "";
  if (isNew) return words === "" ? "a new speed" : words;
  return "the speed stays";
}
