/** How a mark opens a row, and what it asks. */
import type { ClientEntry } from "@/lib/glossary/client-entry";
import { samePlace } from "@/lib/reading/place";
import type { Reading, TempoState } from "@/lib/reading/reading";
import { printedText } from "./lane-context";
import { BEAT_GLYPHS } from "./layout-tempo";
import type { PrintedMark } from "./printed-marks";

export type Lead =
  | { kind: "term"; text: string; lang: string; slug: string | null }
  | { kind: "sign"; glyph: string | null; name: string; lang: string; slug: string | null }
  | { kind: "beat"; glyphs: readonly string[]; number: string; name: string; slug: string | null }
  | { kind: "said"; text: string };

interface LeadContext {
  reading: Reading;
  entryOf(slug: string | null): ClientEntry | undefined;
}

export function leadOf(mark: PrintedMark, { entryOf, reading }: LeadContext): Lead {
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
export function meaningOf(mark: PrintedMark, { entryOf }: Pick<LeadContext, "entryOf">): string {
  const meanings = mark.found.map((f) => entryOf(f.slug)?.meaning ?? "");
  return meanings.filter((m) => m !== "").join("; ") || "the glossary only names it";
}

/** A metronome mark as it is printed, and in words. */
export function beatLead({ beat }: TempoState, slug: string | null): Lead | null {
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
