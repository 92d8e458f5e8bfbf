/** What is in force in one measure and why, in words. */

import type { ClientEntry } from "@/lib/glossary/client-entry";
import { AXES, type Axis } from "@/lib/glossary/vocabulary";
import type { DynamicState, MannerWord, Reading, TempoState } from "@/lib/reading/reading";
import { type InForce, stateAt } from "@/lib/reading/state-at";
import { laneOf, printedText } from "./lane-context";
import { isForStaff } from "./layout-dynamics";
import { beatLead, type Lead, leadOf, meaningOf } from "./mark-lead";
import { measureName } from "./measure-name";
import { levelWords, measureSentence } from "./measure-sentence";
import { waysOn, wayWords } from "./playing-words";
import { isTelling, type PrintedMark } from "./printed-marks";

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
  ].sort((a, b) => AXES.indexOf(a.axis) - AXES.indexOf(b.axis) || beatLast(a) - beatLast(b));
  return {
    number: numberOf(reading, index),
    sentence: measureSentence(index, force, context),
    rows,
  };
}

/** "Allegro" stands before its number. */
function beatLast({ lead }: MeasureRow): number {
  return lead.kind === "beat" ? 1 : 0;
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
    if (mark.sign === "bar-style" || mark.sign === "rehearsal") continue;
    const key = mark.sign === null ? `words ${printedText(mark)}` : `sign ${mark.sign}`;
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

function changeWords(dynamic: DynamicState, reading: Reading): string {
  const way = dynamic.change === "rising" ? "growing louder" : "growing softer";
  if (dynamic.toward === "n") return `${way}, down to nothing`;
  const end = dynamic.span ? numberOf(reading, dynamic.span[1]) : "";
  const goal = dynamic.toward ? `, to ${levelWords(dynamic.toward)}` : "";
  return `${way}${goal}${end === "" ? "" : `, up to measure ${end}`}`;
}
