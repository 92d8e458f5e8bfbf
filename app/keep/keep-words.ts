import type { ImportReport } from "@/lib/store/whole-state";
import { counted } from "../ui/piece-facts";

/** What came in with a file, one sentence each, the most wanted first. */
export function importWords(report: ImportReport): string[] {
  const { answersAdded, answersKnown, pieces, sets, refused } = report;
  const added = [
    ...(answersAdded > 0 ? [counted(answersAdded, "answer")] : []),
    ...(pieces > 0 ? [counted(pieces, "piece")] : []),
    ...(sets > 0 ? [counted(sets, "set")] : []),
  ];
  const first =
    added.length === 0
      ? "Nothing in this file is new here; nothing has changed."
      : `Taken in: ${listed(added)}.`;
  const known =
    answersKnown > 0 && added.length > 0
      ? [`${startCase(counted(answersKnown, "answer"))} ${isAre(answersKnown)} here already.`]
      : [];
  const left =
    refused.length > 0
      ? [
          `${startCase(counted(refused.length, "answer"))} could not be read and ${
            refused.length === 1 ? "was" : "were"
          } left out. ${refused[0]}`,
        ]
      : [];
  return [first, ...known, ...left];
}

/** "one piece, 3 sets and 412 answers" */
export function listed(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join("");
  return `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}

/** "820 KB", "3.4 MB": as files are counted, 1000 by 1000. */
export function sizeWords(bytes: number): string {
  if (bytes < 1_000_000) return `${Math.max(1, Math.round(bytes / 1000))} KB`;
  const mega = bytes / 1_000_000;
  return `${mega < 10 ? mega.toFixed(1) : Math.round(mega)} MB`;
}

/** The name of the file written: by day, so that the newest is told from the rest. */
export function stateFileName(date: string): string {
  return `passagework-${date}.json`;
}

function startCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function isAre(count: number): string {
  return count === 1 ? "is" : "are";
}
