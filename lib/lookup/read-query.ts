import type { Language } from "../glossary/vocabulary";
import { QUESTION_WORDS } from "./english-table";

/** A query with what stands round it taken off. */
export interface Query {
  /** As typed, trimmed. */
  text: string;
  /** Without a bracketed hint, a language asked for, and the words of a question. */
  core: string;
  /** What stands in brackets: "doo (french soft)". */
  hint: string;
  /** Only entries of this language were asked for. */
  lang: Language | null;
}

const LANGUAGE_WORDS: Readonly<Record<string, Language>> = {
  italian: "it",
  italy: "it",
  french: "fr",
  france: "fr",
  german: "de",
  germany: "de",
  latin: "la",
  english: "en",
};

/**
 * @example readQuery("german for slow") // core "slow", lang "de"
 * @example readQuery("what does tenuto mean?") // core "tenuto"
 */
export function readQuery(typed: string): Query {
  const text = typed.trim().replace(/\s+/g, " ");
  let hint = "";
  const outside = text.replace(/\(([^()]*)\)/g, (_, inside: string) => {
    hint = `${hint} ${inside}`.trim();
    return " ";
  });
  const lang = languageOf(outside) ?? languageOf(hint);
  const core = dropQuestion(outside.trim() === "" ? hint : outside);
  return { text, core, hint: lang ? dropLanguage(hint) : hint, lang };
}

function languageOf(text: string): Language | null {
  for (const word of text.toLowerCase().match(/[a-z]+/g) ?? []) {
    const lang = LANGUAGE_WORDS[word];
    if (lang) return lang;
  }
  return null;
}

function dropLanguage(text: string): string {
  return text
    .split(" ")
    .filter((word) => LANGUAGE_WORDS[word.toLowerCase()] === undefined)
    .join(" ");
}

const ASKING = /^(?:what|whats|what's|how|define)$/i;
/** "the meaning of dolce", "symbol for loud". */
const ASKED_FOR =
  /^(?:the )?(?:meaning|definition|def|translation|sign|symbol|word|term) (?:of|for) (?=\S)/i;
const NAMING = /^(?:mean|means|meaning|definition|symbol|sign|notation)$/i;
const ARTICLE = /^(?:the|a|an|this|that|of|to)$/i;

/** Takes off the words of a question only at the ends, and never all there is. */
function dropQuestion(text: string): string {
  const named = languageOf(text) !== null;
  const plain = (named ? dropLanguage(text) : text).replace(/[?!"“”]/g, " ").trim();
  const words = plain.replace(ASKED_FOR, "").split(/\s+/);
  const asks = words.length > 1 && (named || ASKING.test(words[0] ?? ""));
  let from = 0;
  let to = words.length;
  while (asks && from < to - 1 && QUESTION_WORDS.has((words[from] ?? "").toLowerCase())) from += 1;
  // "go back to the sign" speaks of a sign; "trill sign" only says that it is one.
  while (to - from > 1 && NAMING.test(words[to - 1] ?? "") && !ARTICLE.test(words[to - 2] ?? "")) {
    to -= 1;
  }
  return words.slice(from, to).join(" ");
}
