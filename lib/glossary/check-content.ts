import { fold, foldTight } from "./fold";
import type { EntryProblem, ParsedEntry } from "./parse-entry";
import type { Entry } from "./schema";

/** Components an entry's body may use. Anything else in angle brackets is a mistake. */
export const BODY_COMPONENTS = ["Term", "Sign", "Try", "Caution"] as const;

export interface ContentFacts {
  sourceKeys: ReadonlySet<string>;
  glyphNames: ReadonlySet<string>;
  /** `folded spelling` to the reason why two entries may share it. */
  sharedSpellings: ReadonlyMap<string, string>;
}

/**
 * Everything wrong with the entries, all at once.
 * @param parsed every entry file, including those that failed to parse
 */
export function checkContent(parsed: readonly ParsedEntry[], facts: ContentFacts): EntryProblem[] {
  const problems = parsed.flatMap((p) => p.problems);
  const good = parsed.filter((p): p is ParsedEntry & { entry: Entry } => p.entry !== null);
  const slugs = new Map<string, Entry>();
  const report = (entry: Entry, found: string, remedy: string) =>
    problems.push({ file: `${entry.folder}/${entry.slug}.mdx`, line: 1, found, remedy });

  for (const { entry } of good) {
    const twin = slugs.get(entry.slug);
    if (twin) {
      report(
        entry,
        `slug "${entry.slug}" is also in ${twin.folder}`,
        "Add the language: -fr, -de.",
      );
    }
    slugs.set(entry.slug, entry);
  }
  for (const { entry, body } of good) {
    checkLinks(entry, body, slugs, report);
    checkData(entry, facts, report);
    checkBody(entry, body, report);
  }
  checkSpellings(
    good.map((p) => p.entry),
    facts.sharedSpellings,
    report,
  );
  checkSentences(good, report);
  return problems;
}

type Report = (entry: Entry, found: string, remedy: string) => void;

function checkLinks(entry: Entry, body: string, slugs: Map<string, Entry>, report: Report): void {
  const wanted = [
    ...(entry.alikes ?? []).map((a) => a.slug),
    ...(entry.composed ?? []),
    ...(entry.means ? [entry.means] : []),
    ...[...body.matchAll(/<Term to="([^"]*)"/g)].map((m) => m[1] ?? ""),
  ];
  for (const slug of new Set(wanted)) {
    if (!slugs.has(slug)) report(entry, `names "${slug}", which is no entry`, "Mend the slug.");
    if (slug === entry.slug) report(entry, "names itself", "Take the link out.");
  }
}

function checkData(entry: Entry, facts: ContentFacts, report: Report): void {
  for (const { key } of entry.sources) {
    if (!facts.sourceKeys.has(key)) {
      report(entry, `source "${key}" is not in content/sources.yaml`, "Use a key listed there.");
    }
  }
  for (const range of entry.asks.tempo?.ranges ?? []) {
    if (!facts.sourceKeys.has(range.source)) {
      report(entry, `range source "${range.source}" is unknown`, "Use a key of sources.yaml.");
    }
  }
  const glyph = entry.sign?.glyph;
  if (glyph && !facts.glyphNames.has(glyph)) {
    report(entry, `glyph "${glyph}" is no SMuFL name known here`, "See lib/glossary/smufl.ts.");
  }
  const free = entry.kind === "modifier" || entry.kind === "form";
  if (!free && Object.keys(entry.asks).length === 0) {
    report(entry, "asks nothing", "Fill `asks` on at least one axis.");
  }
  if ((entry.kind === "modifier") !== (entry.modifies !== undefined)) {
    report(entry, "kind modifier and `modifies` go together", "Give both or neither.");
  }
  if (entry.folder === "signs" && !entry.sign) {
    report(entry, "stands in signs without a `sign` block", "Add it, or move the file.");
  }
  if (["it", "fr", "de"].includes(entry.lang) && entry.folder !== "signs") {
    if (!entry.ipa || !entry.say) report(entry, "no pronunciation", "Give `ipa` and `say`.");
  }
}

function checkBody(entry: Entry, body: string, report: Report): void {
  for (const [, name] of body.matchAll(/<\/?([A-Za-z][\w.]*)/g)) {
    if (!BODY_COMPONENTS.some((known) => known === name)) {
      report(entry, `<${name}> is no component of a body`, `Use ${BODY_COMPONENTS.join(", ")}.`);
    }
  }
  if (/[{}]/.test(body) || /^\s*(import|export)\s/m.test(body)) {
    report(entry, "code in the body", "Prose and listed components only.");
  }
  if (entry.tier === 1 && entry.kind !== "modifier" && body === "") {
    report(entry, "tier 1 without teaching prose", "Write two to four sentences.");
  }
}

/** Ways of writing that lead to this entry, folded; a compound read as parts claims none. */
export function spellingsOf(entry: Entry): string[] {
  const all = [
    entry.headword,
    ...(entry.spellings ?? []),
    ...(entry.abbreviations ?? []),
    ...(entry.inflections ?? []),
  ];
  return [...new Set(all.flatMap((s) => [fold(s), foldTight(s)]))];
}

function checkSpellings(
  entries: readonly Entry[],
  shared: ReadonlyMap<string, string>,
  report: Report,
): void {
  const owners = new Map<string, Entry>();
  for (const entry of entries) {
    for (const spelling of spellingsOf(entry)) {
      const owner = owners.get(spelling);
      if (!owner) owners.set(spelling, entry);
      else if (owner.means !== entry.slug && entry.means !== owner.slug && !shared.has(spelling)) {
        report(
          entry,
          `"${spelling}" is also claimed by ${owner.folder}/${owner.slug}`,
          "Leave it to one of them, or give the reason in content/shared-spellings.yaml.",
        );
      }
    }
  }
}

function checkSentences(good: readonly (ParsedEntry & { entry: Entry })[], report: Report): void {
  const seen = new Map<string, Entry>();
  for (const { entry, body } of good) {
    const texts = [
      body.replace(/<[^>]*>/g, ""),
      entry.meaning,
      ...Object.values(entry.how ?? {}),
      ...(entry.alikes ?? []).map((a) => a.difference),
    ];
    for (const sentence of texts.flatMap((t) => t.split(/(?<=[.!?])\s+|\n+/))) {
      const key = sentence.trim().toLowerCase();
      if (key.split(/\s+/).length < 4) continue;
      const owner = seen.get(key);
      if (owner && owner !== entry) {
        report(entry, `shares a sentence with ${owner.slug}: "${sentence.trim()}"`, "Reword it.");
      }
      seen.set(key, entry);
    }
  }
}
