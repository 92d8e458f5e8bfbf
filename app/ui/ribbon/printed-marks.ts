import type { Kind } from "@/lib/glossary/vocabulary";
import { comparePlaces, samePlace } from "@/lib/reading/place";
import type { Found, Place, Reading } from "@/lib/reading/reading";

/** One thing as it stands on the page: a sign, or words that belong together ("molto espressivo"). */
export interface PrintedMark extends Place {
  /** Its entries in printed order. */
  found: Found[];
  /** The entry that says what is asked; the others say how much of it. */
  head: Found;
  kind: Kind;
  /** Words as printed, null for a sign. */
  text: string | null;
  /** MusicXML element name, null for words. */
  sign: string | null;
}

/** Signs and kinds that hold for everybody, though a file may print them in one part alone. */
const FOR_ALL_SIGNS =
  /^(?:metronome|bar-style|repeat-(?:forward|backward)|ending|segno|coda|rehearsal)$/;
const FOR_ALL_KINDS: ReadonlySet<Kind> = new Set(["tempo", "tempo-change"]);
const FOR_ALL_WORDS = /^(?:da-capo|dal-segno|to-coda|al-coda|al-fine|fine|segno|coda)(?:-|$)/;
/** Beside p or f these speak of the loudness, whatever word comes next. */
const AT_ONCE = new Set(["subito", "subitement", "plotzlich", "suddenly"]);
/** What every score has in every measure, and nobody drills. */
const PLUMBING = new Set(["tied", "stem", "beam", "time", "symbol"]);

/**
 * All that is printed for one part, in order of place: its own marks, and the
 * tempo and road of the other parts where it does not repeat them itself.
 */
export function printedMarks(reading: Reading, partIndex: number): PrintedMark[] {
  const isForAll = forAllTest(reading);
  const own = groupWords(reading.found.filter((f) => f.partIndex === partIndex));
  const others = reading.parts.flatMap((_, p) =>
    p === partIndex
      ? []
      : groupWords(reading.found.filter((f) => f.partIndex === p && isForAll(f))),
  );
  const seen = new Set<string>();
  const once = (mark: PrintedMark) => {
    if (!mark.found.some(isForAll)) return true;
    const what = (mark.text ?? mark.sign ?? "").toLowerCase();
    const key = `${placeKey(mark)} ${what} ${mark.head.text}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  };
  return [...own, ...others].filter(once).sort(comparePlaces);
}

function placeKey({ measureIndex, onset }: Place): string {
  return `${measureIndex} ${onset.join("/")}`;
}

/** Whether a mark is worth a row and a question: not what every measure of every score has. */
export function isTelling(mark: PrintedMark): boolean {
  return mark.sign === null || !PLUMBING.has(mark.sign);
}

function forAllTest(reading: Reading): (found: Found) => boolean {
  const isTempo = (f: Found) => f.sign === null && FOR_ALL_KINDS.has(f.kind);
  const tempi = new Set(reading.found.filter(isTempo).map((f) => `${f.partIndex} ${placeKey(f)}`));
  return (found) => {
    if (found.sign !== null) return FOR_ALL_SIGNS.test(found.sign);
    if (FOR_ALL_KINDS.has(found.kind)) return true;
    if (found.kind === "navigation") return FOR_ALL_WORDS.test(found.slug ?? "");
    // "Pas" of "Pas vite" goes with its tempo.
    return found.kind === "modifier" && tempi.has(`${found.partIndex} ${placeKey(found)}`);
  };
}

/** Words at one place: a modifier goes with the next word that asks something, else with the one before. */
function groupWords(found: readonly Found[]): PrintedMark[] {
  const marks: PrintedMark[] = [];
  let waiting: Found[] = [];
  const besideLetters = (f: Found) =>
    found.some((other) => other.sign !== null && other.kind === "dynamic" && samePlace(other, f));
  const flush = () => {
    const last = marks.at(-1);
    const first = waiting[0];
    if (!first) return;
    if (last && last.sign === null && samePlace(last, first)) add(last, waiting);
    else marks.push(markOf(waiting));
    waiting = [];
  };
  for (const f of found) {
    if (waiting[0] && !samePlace(waiting[0], f)) flush();
    if (f.sign !== null) marks.push(markOf([f]));
    else if (f.slug !== null && AT_ONCE.has(f.slug) && besideLetters(f)) marks.push(markOf([f]));
    else if (f.kind === "modifier") waiting.push(f);
    else {
      marks.push(markOf([...waiting, f]));
      waiting = [];
    }
  }
  flush();
  return marks;
}

function add(mark: PrintedMark, found: readonly Found[]): void {
  mark.found.push(...found);
  mark.text = [mark.text, ...found.map((f) => f.text)].join(" ");
}

function markOf(found: Found[]): PrintedMark {
  const head = found.at(-1);
  if (!head) throw new RangeError("a mark has at least one entry");
  const { measureIndex, onset, kind, sign } = head;
  const text = sign === null ? found.map((f) => f.text).join(" ") : null;
  return { found, head, kind, text, sign, measureIndex, onset };
}
