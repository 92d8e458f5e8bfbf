import { ENGLISH_CONCEPTS, ENGLISH_FILLER } from "./english-table";
import { splitEnglish } from "./split-english";
import { stem } from "./stem";

/** A word or phrase of the table, with what it may mean. */
export interface Phrase {
  stems: string[];
  concepts: string[];
}

const { phrases, known } = readTable(ENGLISH_CONCEPTS);

function readTable(table: string): { phrases: Map<string, Phrase[]>; known: Set<string> } {
  const byText = new Map<string, Phrase>();
  for (const line of table.trim().split("\n")) {
    const [concept = "", list = ""] = line.split(": ", 2);
    for (const text of list.split(", ")) {
      const stems = splitEnglish(text).map(stem);
      const key = stems.join(" ");
      const phrase = byText.get(key);
      if (!phrase) byText.set(key, { stems, concepts: [concept] });
      else if (!phrase.concepts.includes(concept)) phrase.concepts.push(concept);
    }
  }
  const first = new Map<string, Phrase[]>();
  const words = new Set<string>();
  for (const phrase of byText.values()) {
    const start = phrase.stems[0] ?? "";
    first.set(start, [...(first.get(start) ?? []), phrase]);
    // "non" of "non stop" is no English word by itself.
    const alone = phrase.stems.length === 1;
    for (const s of phrase.stems) if (alone || s.length > 3) words.add(s);
  }
  for (const list of first.values()) list.sort((a, b) => b.stems.length - a.stems.length);
  return { phrases: first, known: words };
}

/** The longest phrases of the table that begin with a stem, longest first. */
export function phrasesFrom(start: string): readonly Phrase[] {
  return phrases.get(start) ?? [];
}

export function isFiller(word: string): boolean {
  return ENGLISH_FILLER.has(word);
}

/** True for a word that the table of plain English holds, or that only fills. */
export function isPlainEnglish(word: string): boolean {
  return ENGLISH_FILLER.has(word) || known.has(stem(word)) || /^\d+$/.test(word);
}
