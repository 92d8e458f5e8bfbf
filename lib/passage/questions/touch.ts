import { articulationSigns } from "../articulation-signs";
import { type Context, evidenceOf, foundIn, numberOf, shuffled } from "../context";
import type { Option, Question } from "../question";

/** How the notes are touched: which signs stand here, and where the short notes are. */
export function touchQuestions(context: Context): Question[] {
  const { reading, passage, random, entries } = context;
  const here = foundIn(context).filter((f) => f.sign !== null && articulationSigns.has(f.sign));
  const bySign = new Map<string, typeof here>();
  for (const f of here) bySign.set(f.sign ?? "", [...(bySign.get(f.sign ?? "") ?? []), f]);
  const questions: Question[] = [];
  if (bySign.size > 0 && bySign.size <= 4) {
    const absent = shuffled(
      [...articulationSigns].filter(([sign]) => !bySign.has(sign)),
      random,
    ).slice(0, Math.max(2, 5 - bySign.size));
    const shown = [...articulationSigns].filter(
      ([sign]) => bySign.has(sign) || absent.some(([other]) => other === sign),
    );
    questions.push({
      id: "touch-which",
      axis: "articulation",
      form: "many",
      prompt: "How are the notes touched here? Choose every way the signs ask for.",
      options: shown.map(
        ([id, { glyph, words }]): Option => ({
          id,
          text: words,
          lang: "en",
          ...(glyph ? { glyph } : {}),
        }),
      ),
      right: [...bySign.keys()],
      evidence: [...bySign.values()].flatMap((list) => {
        const first = list[0];
        return first
          ? [evidenceOf(reading, first.measureIndex, first.text, first.slug, first.sign)]
          : [];
      }),
      slugs: [...new Set(here.map((f) => f.slug).filter((s) => s !== null))],
      reason: [...bySign.entries()]
        .map(
          ([sign, list]) =>
            `${articulationSigns.get(sign)?.words} (measure ${numberOf(reading, list[0]?.measureIndex ?? 0)})`,
        )
        .join("; "),
    });
  }
  const count = passage.to - passage.from + 1;
  const askable = [...bySign.entries()].filter(([sign, list]) => {
    const measures = new Set(list.map((f) => f.measureIndex));
    return sign !== "slur" && sign !== "tied" && measures.size < count;
  });
  const [pick] = shuffled(askable, random);
  if (pick) {
    const [sign, list] = pick;
    const measures = [...new Set(list.map((f) => f.measureIndex))];
    const slug = list[0]?.slug ?? null;
    questions.push({
      id: "touch-where",
      axis: "articulation",
      form: "measures",
      prompt: `In which measures does a note ask for this: ${articulationSigns.get(sign)?.words}?`,
      right: measures,
      evidence: measures.map((m) => evidenceOf(reading, m, list[0]?.text ?? sign, slug, sign)),
      slugs: slug ? [slug] : [],
      reason: `${entries.get(slug ?? "")?.headword ?? sign}: measures ${measures.map((m) => numberOf(reading, m)).join(", ")}.`,
    });
  }
  return questions;
}
