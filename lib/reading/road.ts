import type { Score } from "../score/model";
import type { Phrase } from "./gather-phrases";
import { comparePlaces } from "./place";
import type { RoadMark } from "./reading";

type Jump = Pick<RoadMark, "kind" | "until">;

/** What each navigation word does, by slug of its entry. */
const WORDS: Readonly<Record<string, Jump>> = {
  "da-capo": { kind: "dacapo", until: "end" },
  "da-capo-al-fine": { kind: "dacapo", until: "fine" },
  "da-capo-al-coda": { kind: "dacapo", until: "coda" },
  "dal-segno": { kind: "dalsegno", until: "end" },
  "dal-segno-al-fine": { kind: "dalsegno", until: "fine" },
  "dal-segno-al-coda": { kind: "dalsegno", until: "coda" },
  "to-coda": { kind: "tocoda", until: "end" },
  "al-coda": { kind: "tocoda", until: "end" },
  fine: { kind: "fine", until: "end" },
  segno: { kind: "segno", until: "end" },
  coda: { kind: "coda", until: "end" },
};
/** "al Fine", "al Coda" printed apart from their D.C. or D.S. */
const UNTIL: Readonly<Record<string, RoadMark["until"]>> = { "al-fine": "fine", "al-coda": "coda" };

/**
 * Every jump and target of the score, from its playback data and from its
 * signs and words. Where a measure encodes a kind, the print of that kind is
 * not counted again, but still says how far the repeat goes (al Fine).
 */
export function roadMarks(score: Score, phrases: readonly (readonly Phrase[])[]): RoadMark[] {
  const printed = dedupe([...fromWords(phrases), ...fromSigns(score)]);
  settleCodas(printed, score);
  const marks: RoadMark[] = [];
  score.measures.forEach((measure, measureIndex) => {
    const here = printed.filter((m) => m.measureIndex === measureIndex);
    for (const jump of measure.jumps) {
      if (jump.kind === "forward-repeat") continue;
      const twin = here.find((m) => m.kind === jump.kind);
      marks.push({
        kind: jump.kind,
        until: twin?.until ?? "end",
        name: jump.name,
        measureIndex,
        onset: jump.onset,
        encoded: true,
        timeOnly: jump.timeOnly,
      });
    }
    const encoded = new Set(measure.jumps.map((j) => j.kind));
    marks.push(...here.filter((m) => !encoded.has(m.kind)));
  });
  return marks.sort(comparePlaces);
}

function fromWords(phrases: readonly (readonly Phrase[])[]): RoadMark[] {
  return phrases.flat().flatMap((phrase) => {
    const slugs = phrase.words.matches.map((m) => m.slug);
    const jumpsBack = slugs.some((s) => /^(?:da-capo|dal-segno)/.test(s));
    const until = slugs.map((s) => UNTIL[s]).find((u) => u !== undefined);
    return slugs.flatMap((slug): RoadMark[] => {
      const jump = WORDS[slug];
      if (!jump || (jumpsBack && (slug === "al-coda" || slug === "coda" || slug === "segno")))
        return [];
      return [
        {
          ...jump,
          until: jump.until === "end" && jumpsBack && until ? until : jump.until,
          name: "",
          measureIndex: phrase.measureIndex,
          onset: phrase.onset,
          encoded: false,
          timeOnly: null,
        },
      ];
    });
  });
}

function fromSigns(score: Score): RoadMark[] {
  return score.parts.flatMap((part) =>
    part.marks.flatMap((mark): RoadMark[] => {
      if (mark.element !== "segno" && mark.element !== "coda") return [];
      const { element: kind, measureIndex, onset } = mark;
      return [
        { kind, until: "end", name: "", measureIndex, onset, encoded: false, timeOnly: null },
      ];
    }),
  );
}

/** All parts print the road; one of a kind a measure is enough. The most telling wins. */
function dedupe(marks: RoadMark[]): RoadMark[] {
  const byKey = new Map<string, RoadMark>();
  for (const mark of marks) {
    const key = `${mark.measureIndex} ${mark.kind}`;
    const known = byKey.get(key);
    if (!known || (known.until === "end" && mark.until !== "end")) byKey.set(key, mark);
  }
  return [...byKey.values()].sort(comparePlaces);
}

/**
 * A coda sign is printed both where one leaves and where one lands. Beside
 * "To Coda" it is the departure; of several with no words, the first is.
 */
function settleCodas(marks: RoadMark[], score: Score): void {
  const encodedTargets = score.measures.some((m) => m.jumps.some((j) => j.kind === "coda"));
  const departures = new Set(marks.filter((m) => m.kind === "tocoda").map((m) => m.measureIndex));
  for (const mark of marks) {
    if (mark.kind === "coda" && departures.has(mark.measureIndex)) mark.kind = "tocoda";
  }
  const codas = marks.filter((m) => m.kind === "coda");
  const first = codas[0];
  if (departures.size === 0 && codas.length > 1 && first && !encodedTargets) first.kind = "tocoda";
  const seen = new Set<string>();
  for (let i = marks.length - 1; i >= 0; i -= 1) {
    const key = `${marks[i]?.measureIndex} ${marks[i]?.kind}`;
    if (seen.has(key)) marks.splice(i, 1);
    seen.add(key);
  }
}
