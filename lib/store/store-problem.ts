/** Why the device's store did not do what was asked. */
export type StoreProblemCode =
  | "no-storage"
  | "storage-full"
  | "other-tab"
  | "newer-version"
  | "closed"
  | "not-readable"
  | "failed";

const SENTENCES: Readonly<Record<StoreProblemCode, string>> = {
  "no-storage":
    "This browser window keeps nothing (a private window, or storage switched off); open the page in an ordinary window to keep your answers.",
  "storage-full":
    "This device has no room left; remove a piece or free some space, then try again. What was saved before is still there.",
  "other-tab":
    "Another tab holds an older version of this page; close that tab and load this page again.",
  "newer-version":
    "What is stored here was written by a newer version of this page; load the page again while online.",
  closed: "The store of this page was closed by a newer tab; load this page again.",
  "not-readable": "This file is no backup of this site; choose the file saved by Save a copy.",
  failed:
    "This browser could not save or read its store; load the page again, and save a copy of your answers.",
};

/** A failure of the device's store; `message` is one sentence for the student. */
export class StoreError extends Error {
  override readonly name = "StoreError";
  constructor(
    readonly code: StoreProblemCode,
    options?: ErrorOptions,
  ) {
    super(SENTENCES[code], options);
  }
}

/**
 * Turns what a browser throws into one sentence.
 *
 * @see Indexed Database API 3.0 (W3C) and Web IDL: names of DOMException
 */
export function toStoreError(cause: unknown, opening: boolean = false): StoreError {
  if (cause instanceof StoreError) return cause;
  return new StoreError(codeOf(nameOf(cause), opening), { cause });
}

function codeOf(name: string, opening: boolean): StoreProblemCode {
  if (name === "QuotaExceededError") return "storage-full";
  if (name === "VersionError") return "newer-version";
  if (name === "SecurityError" || name === "NotAllowedError") return "no-storage";
  // Private windows of some browsers refuse the opening itself, with one of several names.
  if (opening) return "no-storage";
  return name === "InvalidStateError" ? "closed" : "failed";
}

function nameOf(cause: unknown): string {
  if (typeof cause !== "object" || cause === null) return "";
  // idb rejects with the transaction's error; the quota may stand one step behind it.
  if ("name" in cause && cause.name === "AbortError" && "cause" in cause)
    return nameOf(cause.cause);
  return "name" in cause && typeof cause.name === "string" ? cause.name : "";
}
