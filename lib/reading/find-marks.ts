import { entryForSign, type Glossary, meantBy } from "../glossary/glossary";
import type { Kind } from "../glossary/vocabulary";
import type { Mark, Score } from "../score/model";
import { explainUnknown } from "../words/explain-unknown";
import type { Lexicon } from "../words/lexicon";
import type { Phrase } from "./gather-phrases";
import { comparePlaces } from "./place";
import type { Found, Unknown } from "./reading";

/** Elements that carry no demand of their own: read elsewhere or only playback. */
const SILENT = new Set(["words", "sound", "dashes", "other-direction"]);
/** One sign for a whole chord, though each of its notes may carry it. */
const ONCE_A_CHORD = new Set(["arpeggiate", "non-arpeggiate"]);
/** Signs whose type is part of their name. */
const NAMED_BY_VALUE = new Set(["wedge", "repeat"]);

/** Kind of a sign that the glossary has no entry for, by the family it belongs to. */
const FAMILY_KINDS: readonly (readonly [RegExp, Kind])[] = [
  [/^(?:p{1,6}|f{1,6}|m[pf]|s?f{1,2}z?p{0,2}|rfz?|fz|pf|n|other-dynamics)$/, "dynamic"],
  [/^wedge$/, "dynamic-change"],
  [/trill|turn|mordent|schleifer|haydn|tremolo|wavy|grace|ornament|vertical/, "ornament"],
  [
    /segno|coda|repeat|ending|bar-style|rehearsal|fermata|multiple-rest|measure-repeat/,
    "navigation",
  ],
  [
    /accent|staccat|tenuto|legato|spiccato|stress|breath|caesura|articulation|slur|tied/,
    "articulation",
  ],
  [/metronome|tuplet|time|notehead/, "form"],
];

/** The signs and terms of one part, in order of place. */
export function findMarks(
  score: Score,
  partIndex: number,
  phrases: readonly Phrase[],
  glossary: Glossary,
): Found[] {
  const part = score.parts[partIndex];
  if (!part) return [];
  const numberOf = (index: number) => score.measures[index]?.number ?? "";
  const found: Found[] = [];
  const chords = new Set<string>();
  const known = new Map<string, SignBase>();
  for (const mark of part.marks) {
    if (!isListed(mark)) continue;
    if (ONCE_A_CHORD.has(mark.element)) {
      const key = `${mark.element} ${mark.measureIndex} ${mark.onset.join("/")} ${mark.voice}`;
      if (chords.has(key)) continue;
      chords.add(key);
    }
    found.push({
      ...foundSign(mark, signBase(mark, glossary, known)),
      partIndex,
      measureNumber: numberOf(mark.measureIndex),
    });
  }
  for (const phrase of phrases) {
    for (const match of phrase.words.matches) {
      found.push({
        slug: match.slug,
        headword: match.headword,
        kind: match.kind,
        lang: match.lang,
        text: match.text,
        sign: null,
        partIndex,
        measureIndex: phrase.measureIndex,
        measureNumber: numberOf(phrase.measureIndex),
        onset: phrase.onset,
        staff: phrase.staff,
        sure: match.sure,
        how: match.how,
        ...(match.also.length > 0 ? { also: match.also } : {}),
      });
    }
  }
  return found.sort(comparePlaces);
}

/** Words that no entry explains: listed, never dropped. */
export function findUnknown(
  score: Score,
  partIndex: number,
  phrases: readonly Phrase[],
  lexicon: Lexicon,
): Unknown[] {
  return phrases.flatMap((phrase) =>
    phrase.words.unmatched.map((text) => ({
      text,
      guess: explainUnknown(text, lexicon),
      partIndex,
      measureIndex: phrase.measureIndex,
      measureNumber: score.measures[phrase.measureIndex]?.number ?? "",
      onset: phrase.onset,
    })),
  );
}

/** The value as sign ids write it: lower case, hyphens, and what other fields of the mark say. */
export function signValue(mark: Mark): string | null {
  if (mark.metronome?.equals) return "modulation";
  if (mark.element === "tuplet") return mark.value?.split(":")[0] ?? null;
  if (mark.element === "tremolo" && mark.value === null && mark.role === "start") return "start";
  return mark.value?.toLowerCase().replaceAll(" ", "-") ?? null;
}

function isListed(mark: Mark): boolean {
  if (SILENT.has(mark.element)) return false;
  // Lifting and pressing the pedal again is something to do, though the line goes on.
  const again = mark.element === "pedal" && mark.role === "continue" && mark.value !== null;
  if (mark.role === "stop" || (mark.role === "continue" && !again)) return false;
  return !(mark.element === "bar-style" && mark.value === "regular");
}

type SignBase = Pick<Found, "slug" | "headword" | "kind" | "lang" | "sign"> & { name: string };

/** What is the same for every sign of one kind, looked up once a reading. */
function signBase(mark: Mark, glossary: Glossary, known: Map<string, SignBase>): SignBase {
  const value = signValue(mark);
  const key = `${mark.element}:${value}`;
  const cached = known.get(key);
  if (cached) return cached;
  const entry = entryForSign(glossary, mark.element, value);
  const meant = entry && meantBy(glossary, entry);
  const named = NAMED_BY_VALUE.has(mark.element) && mark.value !== null;
  const name = mark.element.replaceAll("-", " ");
  const base: SignBase = {
    slug: entry?.slug ?? null,
    headword: meant?.headword ?? name,
    kind: meant?.kind ?? FAMILY_KINDS.find(([test]) => test.test(mark.element))?.[1] ?? "technique",
    lang: meant?.lang ?? "en",
    sign: named ? `${mark.element}-${mark.value}` : mark.element,
    name: entry?.headword ?? name,
  };
  known.set(key, base);
  return base;
}

function foundSign(
  mark: Mark,
  { name, ...base }: SignBase,
): Omit<Found, "partIndex" | "measureNumber"> {
  return {
    ...base,
    text: mark.text ?? name,
    measureIndex: mark.measureIndex,
    onset: mark.onset,
    staff: mark.staff,
  };
}
