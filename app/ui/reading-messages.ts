import type { ClientGlossary } from "@/lib/glossary/client-entry";
import type { Reading } from "@/lib/reading/reading";

/** What the page asks of the reader's worker: one file, then it is done. */
export interface ToReader {
  bytes: Uint8Array;
  fileName: string;
  glossary: ClientGlossary;
}

/** What the worker says; `refused` is one sentence to show as it is. */
export type FromReader =
  | { type: "reading" }
  | { type: "done"; reading: Reading }
  | { type: "refused"; sentence: string };
