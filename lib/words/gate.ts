import type { Lexicon, Written } from "./lexicon";
import type { Candidate, TermMatch } from "./match-terms";
import type { Token } from "./tokenise";

/** Modifier roles that only join; they are read but never listed. */
const SILENT_ROLES = new Set(["link", "but", "with", "until"]);
/** Single letters and pairs that are dynamics only when printed small. */
const LETTERS = /^(?:[pfn]|[mprs]?[pf]{1,6}|s?f{1,2}z?p{0,2}|rfz?|fz)$/;
/** Composers' dates, rights and addresses: page furniture, whatever words it holds. */
const FURNITURE = /(?:^|[^\d])(?:1[4-9]|20)\d\d(?:[^\d]|$)|©|https?:|www\.|copyright/i;
const ENGLISH_SMALL = new Set(
  "the of my thy thou thee is are was were be been me you your he she they we i it its his her their our this that who which shall will would".split(
    " ",
  ),
);
/** Shortest word taken for another when nothing round it is known. */
const ALONE = { one: 7, two: 9 };

/**
 * Looks at the whole direction before a candidate counts: prose, lyrics and
 * names share words with the glossary, so weak evidence needs company.
 */
export function gate(
  tokens: readonly Token[],
  candidates: readonly Candidate[],
  lexicon: Lexicon,
  text: string,
): { kept: TermMatch[]; taken: boolean[] } {
  const taken = tokens.map(() => false);
  if (candidates.length === 0 || FURNITURE.test(text)) return { kept: [], taken };
  const votes = languageVotes(candidates);
  const lettered = tokens.filter((t) => /\p{L}{2}/u.test(t.text)).length;
  const firm = candidates.filter((c) => isFirm(c, tokens));
  const known = firm.reduce((n, c) => n + c.to - c.from, 0);
  const languages = new Set(firm.map((c) => c.lang));
  const english = tokens.some((t) => ENGLISH_SMALL.has(t.key));
  const prose = lettered >= 5 && known * 4 < lettered;

  const kept: TermMatch[] = [];
  candidates.forEach((found, i) => {
    const c = byLanguage(found, votes, lexicon);
    const beside =
      isKnown(candidates[i - 1], firm, c.from, "to") ||
      isKnown(candidates[i + 1], firm, c.to, "from");
    if (
      !stands(c, tokens, {
        firm: firm.includes(found),
        beside,
        prose,
        lettered,
        known,
        languages,
        english,
      })
    )
      return;
    for (let k = c.from; k < c.to; k += 1) taken[k] = true;
    if (c.role && SILENT_ROLES.has(c.role)) return;
    if (c.kind === "form" && !formIsAsked(candidates[i - 1], c)) return;
    const { signName: _sign, key: _key, ...match } = c;
    kept.push(match);
  });
  return { kept, taken };
}

interface Surroundings {
  firm: boolean;
  beside: boolean;
  prose: boolean;
  lettered: number;
  known: number;
  /** Small words of English prose stand here. */
  english: boolean;
  /** Languages of the firm words round it. */
  languages: ReadonlySet<string>;
}

function stands(c: Candidate, tokens: readonly Token[], at: Surroundings): boolean {
  // "Swing = 160" is the name alone: numbers do not count.
  const whole = tokens.every((t, i) => (i >= c.from && i < c.to) || /^\d+$/.test(t.key));
  if (c.signName) return whole;
  if (LETTERS.test(c.key) && c.kind === "dynamic" && c.to - c.from === 1) {
    const printed = tokens[c.from]?.text ?? "";
    if (printed !== printed.toLowerCase()) return false;
    return c.key.length > 1 ? !at.prose : whole || at.beside || at.lettered <= 2;
  }
  if (c.how === "abbreviation" && !isFirm(c, tokens)) return whole || at.beside;
  if (c.lang === "en" && !whole) {
    // A line of verse: little in it is known and its small words are English.
    if (at.english && at.known * 2 < at.lettered) return false;
    if (c.kind === "modifier" && !at.beside) return false;
  }
  // "Come with me", "as": likening words need what they liken.
  if (c.role === "like" && (!at.beside || tokens[c.to]?.breakBefore)) return whole;
  if (c.how === "misspelling") {
    if (c.sure < 0.6 && c.key.length < ALONE.two) return false;
    // "which" beside English words is no slip for German weich.
    if (at.known > 0 && !at.languages.has(c.lang)) return false;
    if (at.known > 0) return at.known >= at.lettered - at.known - 1;
    return at.lettered === 1 && c.key.length >= (c.sure < 0.7 ? ALONE.two : ALONE.one);
  }
  if (c.how === "compound") return !at.prose;
  if (at.prose && (c.kind === "modifier" || c.to - c.from === 1)) {
    const long = c.key.length >= (c.lang === "it" ? 5 : 7);
    return c.lang !== "en" && c.kind !== "modifier" && c.how !== "inflection" && long;
  }
  return true;
}

/** Strong on its own: a listed spelling of some length, or an abbreviation with its stop. */
function isFirm(c: Candidate, tokens: readonly Token[]): boolean {
  if (c.signName || c.role === "link") return false;
  if (c.how === "misspelling" || c.how === "compound") return false;
  const last = tokens[c.to - 1];
  if (c.how === "abbreviation" && c.to - c.from === 1) {
    return c.key.length >= 4 || (last?.stop ?? false) || LETTERS.test(c.key);
  }
  return c.key.length >= 3 || c.kind === "dynamic";
}

function isKnown(
  neighbour: Candidate | undefined,
  firm: readonly Candidate[],
  at: number,
  side: "from" | "to",
): boolean {
  return neighbour !== undefined && neighbour[side] === at && firm.includes(neighbour);
}

/** Names of forms (trio, menuetto) head a page; only "quasi recitativo", "come un valse" ask something. */
function formIsAsked(before: Candidate | undefined, c: Candidate): boolean {
  return before?.to === c.from && (before.role === "like" || before.role === "almost");
}

function languageVotes(candidates: readonly Candidate[]): Map<string, number> {
  const votes = new Map<string, number>();
  for (const c of candidates) {
    if (c.also.length > 0) continue;
    votes.set(c.lang, (votes.get(c.lang) ?? 0) + (c.to - c.from));
  }
  return votes;
}

/** A spelling of two languages goes with the words beside it. */
function byLanguage(c: Candidate, votes: Map<string, number>, lexicon: Lexicon): Candidate {
  if (c.also.length === 0 || votes.size === 0) return c;
  const options: readonly Written[] = lexicon.phrases.get(c.key) ?? [];
  const best = options.reduce<Written | undefined>(
    (a, b) => ((votes.get(b.lang) ?? 0) > (a ? (votes.get(a.lang) ?? 0) : -1) ? b : a),
    undefined,
  );
  if (!best || best.slug === c.slug) return c;
  return {
    ...c,
    slug: best.slug,
    headword: best.headword,
    kind: best.kind,
    lang: best.lang,
    role: best.role,
    also: options.filter((w) => w.slug !== best.slug).map((w) => w.slug),
  };
}
