import type { FromEngraver, ToEngraver } from "./messages";

export interface Excerpt {
  bytes: Uint8Array;
  fileName: string;
  partIndex: number;
  /** Names the score and part; the same key is loaded once. */
  key: string;
  from: number;
  to: number;
  /** Width to fill, CSS pixels. */
  width: number;
}

interface Waiting {
  done: (svg: string) => void;
  failed: (error: Error) => void;
}

/** One worker for all engravings of the page; it keeps the score it drew last. */
class Engraver {
  private worker: Worker | null = null;
  private key = "";
  private nextJob = 1;
  private readonly waiting = new Map<number, Waiting>();

  /** @returns SVG text, to be taken in as a picture, never as page markup */
  draw(excerpt: Excerpt): Promise<string> {
    const worker = this.start();
    const { bytes, fileName, partIndex, key, from, to, width } = excerpt;
    if (this.key !== key) {
      this.key = key;
      this.send(worker, { type: "load", key, bytes, fileName, partIndex });
    }
    const job = this.nextJob++;
    return new Promise((done, failed) => {
      this.waiting.set(job, { done, failed });
      this.send(worker, { type: "draw", job, key, from, to, width });
    });
  }

  private start(): Worker {
    if (this.worker) return this.worker;
    const worker = new Worker(new URL("./engraver.worker.ts", import.meta.url), { type: "module" });
    worker.addEventListener("message", ({ data }: MessageEvent<FromEngraver>) => this.hear(data));
    worker.addEventListener("error", () => {
      this.fail("The engraver could not be loaded: it needs the network once.");
      this.worker = null;
      this.key = "";
    });
    this.worker = worker;
    return worker;
  }

  private send(worker: Worker, message: ToEngraver): void {
    worker.postMessage(message);
  }

  private hear(message: FromEngraver): void {
    if (message.type === "loaded") return;
    if (message.type === "drawn") {
      this.waiting.get(message.job)?.done(message.svg);
      this.waiting.delete(message.job);
      return;
    }
    if (message.job === null) {
      this.key = "";
      this.fail(message.message);
      return;
    }
    this.waiting.get(message.job)?.failed(new Error(message.message));
    this.waiting.delete(message.job);
  }

  private fail(message: string): void {
    for (const { failed } of this.waiting.values()) failed(new Error(message));
    this.waiting.clear();
  }
}

export const engraver = new Engraver();
