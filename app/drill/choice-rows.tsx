"use client";
import type { ClientEntry } from "@/lib/glossary/client-entry";
import type { Prompt, PromptChoice } from "@/lib/memory/prompts/build-prompt";
import { SignOnStaff } from "../ui/sign-on-staff";
import { Term } from "../ui/term";
import styles from "./drill.module.css";
import type { Told } from "./mark-given";

export const LETTERS = "abcdefgh";

interface ChoiceRowsProps {
  prompt: Prompt;
  entries: ReadonlyMap<string, ClientEntry>;
  /** Null while the question is open. */
  told: Told | null;
  /** Slugs laid aside by a hint. */
  aside: readonly string[];
  onChoose: (slug: string) => void;
}

/** Alternatives as rows; after the answer the right one is underlined and says so. */
export function ChoiceRows({ prompt, entries, told, aside, onChoose }: ChoiceRowsProps) {
  const choices = prompt.choices ?? [];
  const chose =
    told && typeof told.given === "object" && "chose" in told.given ? told.given.chose : null;
  return (
    <ol className={`${styles.choices} ${prompt.kind === "name>sign" ? styles.drawn : ""}`}>
      {choices.map((choice, i) => {
        const isAside = aside.includes(choice.slug);
        const text = (
          <ChoiceText choice={choice} kind={prompt.kind} source={entries.get(choice.slug)} />
        );
        const tag = told ? tagOf(choice, chose) : isAside ? "laid aside" : (LETTERS[i] ?? "");
        return (
          <li key={choice.slug} data-right={told !== null && choice.right} data-aside={isAside}>
            {told || isAside ? (
              <span className={styles.row}>
                <span className={styles.text}>{text}</span>
                <span className={styles.tag}>{tag}</span>
              </span>
            ) : (
              <button type="button" className={styles.row} onClick={() => onChoose(choice.slug)}>
                <span className={styles.text}>{text}</span>
                <span className={styles.tag} aria-hidden="true">
                  {tag}
                </span>
              </button>
            )}
          </li>
        );
      })}
    </ol>
  );
}

function tagOf(choice: PromptChoice, chose: string | null): string {
  if (choice.right) return "right";
  return choice.slug === chose ? "your answer" : "";
}

function ChoiceText({
  choice,
  kind,
  source,
}: {
  choice: PromptChoice;
  kind: Prompt["kind"];
  source: ClientEntry | undefined;
}) {
  if (kind === "name>sign") return source ? <SignOnStaff entry={source} /> : null;
  if (choice.lang === null) return choice.text;
  return (
    <Term lang={choice.lang} size="row">
      {choice.text}
    </Term>
  );
}
