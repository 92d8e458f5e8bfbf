import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { Answer } from "../memory/answer";
import { compareAnswers } from "../memory/log";
import { type PieceRecord, type SetRecord, type SettingValue, StoreError } from "./records";

interface Schema extends DBSchema {
  answers: { key: string; value: Answer };
  pieces: { key: string; value: PieceRecord };
  sets: { key: string; value: SetRecord };
  settings: { key: string; value: SettingValue };
}

const VERSION = 1;

/** What one device keeps: the log of answers, pieces, sets, settings. */
export interface DeviceStore {
  /** The whole log, in order. */
  answers(): Promise<Answer[]>;
  /** Adds lines whose id is not there yet; a line once written never changes. */
  addAnswers(answers: readonly Answer[]): Promise<number>;
  pieces(): Promise<PieceRecord[]>;
  piece(id: string): Promise<PieceRecord | undefined>;
  putPiece(piece: PieceRecord): Promise<void>;
  removePiece(id: string): Promise<void>;
  sets(): Promise<SetRecord[]>;
  putSet(set: SetRecord): Promise<void>;
  removeSet(id: string): Promise<void>;
  setting(key: string): Promise<SettingValue | undefined>;
  putSetting(key: string, value: SettingValue): Promise<void>;
  settings(): Promise<Record<string, SettingValue>>;
  close(): void;
}

/**
 * Opens the device's store, making or upgrading it as needed.
 * @throws StoreError with one sentence where the browser keeps nothing (private mode, blocked, full)
 */
export async function openDeviceStore(name = "passagework"): Promise<DeviceStore> {
  const db = await told(() =>
    openDB<Schema>(name, VERSION, {
      upgrade(database) {
        database.createObjectStore("answers", { keyPath: "id" });
        database.createObjectStore("pieces", { keyPath: "id" });
        database.createObjectStore("sets", { keyPath: "id" });
        database.createObjectStore("settings");
      },
      // Another tab with a newer version must not wait for this one.
      blocking(_current, _blocked, event) {
        (event.target as IDBDatabase | null)?.close();
      },
    }),
  );
  return storeOf(db);
}

function storeOf(db: IDBPDatabase<Schema>): DeviceStore {
  return {
    answers: () => told(async () => (await db.getAll("answers")).sort(compareAnswers)),
    addAnswers: (answers) => told(() => appendAnswers(db, answers)),
    pieces: () =>
      told(async () => (await db.getAll("pieces")).sort((a, b) => b.addedAt - a.addedAt)),
    piece: (id) => told(() => db.get("pieces", id)),
    putPiece: (piece) => told(async () => void (await db.put("pieces", piece))),
    removePiece: (id) => told(() => db.delete("pieces", id)),
    sets: () => told(() => db.getAll("sets")),
    putSet: (set) => told(async () => void (await db.put("sets", set))),
    removeSet: (id) => told(() => db.delete("sets", id)),
    setting: (key) => told(() => db.get("settings", key)),
    putSetting: (key, value) => told(async () => void (await db.put("settings", value, key))),
    settings: () =>
      told(async () => {
        const [keys, values] = await Promise.all([
          db.getAllKeys("settings"),
          db.getAll("settings"),
        ]);
        return Object.fromEntries(keys.map((key, i) => [key, values[i] ?? null]));
      }),
    close: () => db.close(),
  };
}

/** Strict durability: an answer shown as taken is on the disk, even if the tab is killed now. */
async function appendAnswers(
  db: IDBPDatabase<Schema>,
  answers: readonly Answer[],
): Promise<number> {
  const tx = db.transaction("answers", "readwrite", { durability: "strict" });
  let added = 0;
  for (const answer of answers) {
    if ((await tx.store.getKey(answer.id)) !== undefined) continue;
    await tx.store.add(answer);
    added += 1;
  }
  await tx.done;
  return added;
}

/** Turns the browser's reasons into one sentence each. */
async function told<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw new StoreError(sentenceFor(error), { cause: error });
  }
}

function sentenceFor(error: unknown): string {
  const name = error instanceof Error || error instanceof DOMException ? error.name : "";
  if (name === "QuotaExceededError") {
    return "This device's storage is full: remove a piece or free some space, then try again.";
  }
  if (name === "VersionError" || name === "InvalidStateError") {
    return "A newer version is open in another tab: close the other tabs and load this page again.";
  }
  if (name === "SecurityError" || name === "UnknownError" || typeof indexedDB === "undefined") {
    return "This browser keeps nothing here (a private window, or storage is blocked): answers are lost when the page closes.";
  }
  return "The device's store did not answer: load the page again.";
}
