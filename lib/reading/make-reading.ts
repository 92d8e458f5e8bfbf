import type { Glossary } from "../glossary/glossary";
import type { Score } from "../score/model";
import type { Lexicon } from "../words/lexicon";
import { dynamicEvents } from "./dynamic-events";
import { dynamicLine } from "./dynamic-line";
import { findMarks, findUnknown } from "./find-marks";
import { gatherPhrases, type Phrase } from "./gather-phrases";
import { articulationLine, characterLine, techniqueLine } from "./manner-line";
import { markSpans } from "./mark-spans";
import { comparePlaces } from "./place";
import { playingOrder } from "./playing-order";
import type { Reading, StaffLine } from "./reading";
import { roadMarks } from "./road";
import { findSpanners, type Spanners } from "./spanners";
import { tempoLine } from "./tempo-line";

/**
 * Reads all that a score asks.
 * @param score from `readScore`
 * @param lexicon every spelling of the same glossary
 * @returns plain JSON; doubts are in `warnings`. Never throws.
 */
export function makeReading(score: Score, lexicon: Lexicon, glossary: Glossary): Reading {
  const phrases = score.parts.map((part) => gatherPhrases(part, lexicon));
  const spanners = score.parts.map(findSpanners);
  const road = roadMarks(score, phrases);
  const { order, policy, warnings } = playingOrder(score, road);
  return {
    version: 1,
    format: score.format,
    title: score.title,
    parts: score.parts.map(({ id, name, staves }) => ({ id, name, staves })),
    measures: measuresOf(score),
    found: score.parts
      .flatMap((_, p) => findMarks(score, p, phrases[p] ?? [], glossary))
      .sort((a, b) => a.partIndex - b.partIndex || comparePlaces(a, b)),
    unknown: score.parts.flatMap((_, p) => findUnknown(score, p, phrases[p] ?? [], lexicon)),
    tempo: tempoLine(score, phrases, spanners, glossary),
    lines: staffLines(score, phrases, spanners, glossary),
    road,
    spans: markSpans(score),
    playingOrder: order,
    playingPolicy: policy,
    warnings: [...score.warnings, ...warnings],
  };
}

function measuresOf(score: Score): Reading["measures"] {
  const notes = score.parts.map((part) => {
    const counts = new Array<number>(score.measures.length).fill(0);
    for (const note of part.notes) {
      if (note.rest || note.cue || note.tieStop || note.chord) continue;
      counts[note.measureIndex] = (counts[note.measureIndex] ?? 0) + 1;
    }
    return counts;
  });
  return score.measures.map(({ index, number, implicit, length, time, fifths }) => ({
    index,
    number,
    implicit,
    length,
    time,
    fifths,
    notes: notes.map((counts) => counts[index] ?? 0),
  }));
}

function staffLines(
  score: Score,
  phrases: readonly (readonly Phrase[])[],
  spanners: readonly Spanners[],
  glossary: Glossary,
): StaffLine[] {
  return score.parts.flatMap((part, partIndex) =>
    Array.from({ length: Math.max(1, part.staves) }, (_, i): StaffLine => {
      const staff = i + 1;
      const own = spanners[partIndex];
      const phrasesHere = phrases[partIndex] ?? [];
      const here = phrasesHere.filter((p) => p.staff === null || p.staff === staff);
      return {
        partIndex,
        staff,
        dynamics: dynamicLine(
          own ? dynamicEvents(part, staff, phrasesHere, own, glossary) : [],
          score.measures,
        ),
        articulation: articulationLine(part, staff, here, glossary),
        technique: techniqueLine(here, glossary),
        character: characterLine(here, glossary),
      };
    }),
  );
}
