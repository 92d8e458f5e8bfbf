import { entryForSign, type Glossary, meantBy } from "../glossary/glossary";
import type { Entry } from "../glossary/schema";
import type { Mark, ScorePart } from "../score/model";
import type { TermMatch } from "../words/match-terms";
import type { Phrase } from "./gather-phrases";
import { comparePlaces, samePlace } from "./place";
import type { MannerState, MannerWord, Place } from "./reading";

interface Line {
  states: MannerState[];
}

/** Words that ask for ordinary playing again: nothing special is in force after them. */
const ORDINARY = new Set(["modo-ordinario"]);

function put(line: Line, at: Place, words: MannerWord[]): void {
  const place = { measureIndex: at.measureIndex, onset: at.onset };
  const last = line.states.at(-1);
  if (last && samePlace(last, place)) last.words = words;
  else line.states.push({ ...place, words });
}

function wordOf(match: TermMatch, phrase: Phrase): MannerWord {
  return { text: match.text, slug: match.slug, source: phrase.measureIndex };
}

/** Character words hold until the next character or tempo word; words at one place hold together. */
export function characterLine(phrases: readonly Phrase[], glossary: Glossary): MannerState[] {
  const line: Line = { states: [] };
  for (const phrase of phrases) {
    const here: MannerWord[] = [];
    let tempo = false;
    for (const demand of phrase.demands) {
      const head = demand.head;
      if (!head || isNegated(demand.modifiers)) continue;
      const asks = glossary.bySlug.get(head.slug)?.asks;
      if (head.kind === "character") {
        here.push({ ...wordOf(head, phrase), text: demand.text });
      }
      if (asks?.tempo?.pace && head.kind === "tempo") tempo = true;
    }
    if (here.length > 0 || (tempo && line.states.length > 0)) put(line, phrase, here);
  }
  return line.states;
}

/** Techniques last until another of their group: arco ends pizz., senza sord. ends con sord. */
export function techniqueLine(phrases: readonly Phrase[], glossary: Glossary): MannerState[] {
  const line: Line = { states: [] };
  const inForce = new Map<string, MannerWord>();
  for (const phrase of phrases) {
    let changed = false;
    for (const match of phrase.words.matches) {
      const technique = glossary.bySlug.get(match.slug)?.asks.technique;
      if (match.kind !== "technique" || !technique) continue;
      changed = true;
      if (ORDINARY.has(match.slug)) {
        inForce.delete("bow-place");
        inForce.delete("bow-or-pluck");
      }
      const key = technique.group === "other" ? match.slug : technique.group;
      inForce.delete(key);
      inForce.set(key, wordOf(match, phrase));
    }
    if (changed) put(line, phrase, [...inForce.values()]);
  }
  return line.states;
}

/**
 * Articulation words (legato, staccato) last until the next; simile keeps the
 * manner of the notes just before it; signs act on their own notes and are
 * read off the notes.
 */
export function articulationLine(
  part: ScorePart,
  staff: number,
  phrases: readonly Phrase[],
  glossary: Glossary,
): MannerState[] {
  const line: Line = { states: [] };
  const signs = part.marks
    .filter((m) => m.note !== null && (m.staff === null || m.staff === staff))
    .filter((m) => articulationOf(m, glossary) !== null);
  let nextSign = 0;
  let carried: MannerWord[] = [];
  for (const phrase of phrases) {
    let latest: Place | null = null;
    for (; nextSign < signs.length; nextSign += 1) {
      const sign = signs[nextSign];
      if (!sign || comparePlaces(sign, phrase) >= 0) break;
      if (carried.length > 0 && line.states.at(-1)?.words === carried) {
        put(line, sign, []);
        carried = [];
      }
      latest = sign;
    }
    const words = phrase.words.matches
      .filter((m) => m.kind === "articulation")
      .map((m) => wordOf(m, phrase));
    if (words.length > 0) put(line, phrase, words);
    const simile = phrase.words.matches.some((m) => m.slug === "simile");
    if (simile) {
      const last = latest ?? signs[nextSign - 1];
      if (!last) continue;
      carried = signs
        .filter((s) => samePlace(s, last))
        .flatMap((s) => {
          const entry = articulationOf(s, glossary);
          return entry ? [{ text: entry.headword, slug: entry.slug, source: s.measureIndex }] : [];
        });
      put(line, phrase, carried);
    }
  }
  return line.states;
}

/** The manner an attached sign asks for, by the word it means; null when it is of another kind. */
export function articulationOf(mark: Mark, glossary: Glossary): Entry | null {
  const entry = entryForSign(glossary, mark.element, mark.value);
  if (entry?.kind !== "articulation") return null;
  if (["slur", "tied", "breath-mark", "caesura"].includes(mark.element)) return null;
  return meantBy(glossary, entry);
}

function isNegated(modifiers: readonly TermMatch[]): boolean {
  return modifiers.some((m) => m.role === "not");
}
