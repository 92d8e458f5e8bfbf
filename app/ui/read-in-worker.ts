import type { ClientGlossary } from "@/lib/glossary/client-entry";
import type { Reading } from "@/lib/reading/reading";
import { MAX_BYTES, scoreProblem } from "@/lib/score/limits";
import type { FromReader, ToReader } from "./reading-messages";

/** `opening`: fetching the file's bytes and the glossary. `reading`: the worker is at it. */
export type ReadStep = "opening" | "reading";

/** A file of this device or of this site, by name and bytes. */
export interface ScoreFile {
  name: string;
  /** Bytes, as far as known before they are fetched. */
  size: number | null;
  bytes(): Promise<Uint8Array>;
  /** What to say when the bytes cannot be had. */
  trouble: string;
}

export interface ReadResult {
  bytes: Uint8Array;
  reading: Reading;
}

export interface ReadJob {
  /** Rejects with one sentence as its message; never settles once stopped. */
  result: Promise<ReadResult>;
  stop(): void;
}

const NO_WORKER =
  "The reader could not be started: load this page again with the network on, then open the score.";

/**
 * Reads a score in a worker of its own. Nothing leaves the device.
 * @param file refused by its size before a byte of it is read
 * @param onStep called at every step reached
 */
export function readInWorker(
  file: ScoreFile,
  fetchGlossary: () => Promise<ClientGlossary>,
  onStep: (step: ReadStep) => void,
): ReadJob {
  let worker: Worker | null = null;
  let stopped = false;
  const result = new Promise<ReadResult>((resolve, reject) => {
    const settle = (act: () => void) => {
      worker?.terminate();
      worker = null;
      if (!stopped) act();
    };
    const start = async () => {
      refuseLarge(file);
      onStep("opening");
      const [bytes, glossary] = await Promise.all([openFile(file), openGlossary(fetchGlossary)]);
      if (stopped) return;
      worker = new Worker(new URL("./reading.worker.ts", import.meta.url), { type: "module" });
      worker.addEventListener("message", ({ data }: MessageEvent<FromReader>) => {
        if (data.type === "reading") onStep("reading");
        else if (data.type === "done") settle(() => resolve({ bytes, reading: data.reading }));
        else settle(() => reject(new Error(data.sentence)));
      });
      worker.addEventListener("error", (event) => {
        event.preventDefault();
        const started = event.message !== undefined && event.message !== "";
        const sentence = started
          ? `${file.name}: reading stopped through a fault of ours; the score is unchanged. Try once more, or export it again.`
          : NO_WORKER;
        settle(() => reject(new Error(sentence)));
      });
      const message: ToReader = { bytes, fileName: file.name, glossary };
      worker.postMessage(message);
    };
    start().catch((error: unknown) => settle(() => reject(error)));
  });
  return {
    result,
    stop: () => {
      stopped = true;
      worker?.terminate();
      worker = null;
    },
  };
}

/** A file past the limit is told so at once, without loading it. */
export function refuseLarge({ name, size }: Pick<ScoreFile, "name" | "size">): void {
  if (size === null || size <= MAX_BYTES) return;
  throw scoreProblem(name, "too-large", {
    found: `the file has ${Math.ceil(size / 1024 / 1024)} MB`,
    expected: `at most ${Math.round(MAX_BYTES / 1024 / 1024)} MB`,
    remedy: "Export single movements or parts and open those.",
  });
}

async function openFile(file: ScoreFile): Promise<Uint8Array> {
  try {
    return await file.bytes();
  } catch (error) {
    throw new Error(file.trouble, { cause: error });
  }
}

async function openGlossary(fetchGlossary: () => Promise<ClientGlossary>): Promise<ClientGlossary> {
  try {
    return await fetchGlossary();
  } catch (error) {
    const sentence =
      "The glossary is not on this device yet: open this page once with the network on, then the score can be read without it.";
    throw new Error(sentence, { cause: error });
  }
}
