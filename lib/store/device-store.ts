import { type DBSchema, deleteDB, type IDBPDatabase, openDB } from "idb";
import type { Answer } from "@/lib/memory/answer";
import { compareAnswers } from "@/lib/memory/log";
import { type Clock, deviceClock } from "./clock";
import {
  type DrillSet,
  FIRST_SETTINGS,
  type Mark,
  type Piece,
  type Settings,
  type Unstamped,
} from "./records";
import { StoreError, toStoreError } from "./store-problem";

const NAME = "passagework";
/** Raise it with each step added to {@link upgrade}; a step once published is never changed. */
const VERSION = 1;
const SETTINGS_KEY = "settings";

export interface DeviceSchema extends DBSchema {
  answers: { key: string; value: Answer; indexes: { entry: string } };
  pieces: { key: string; value: Piece };
  sets: { key: string; value: DrillSet };
  marks: { key: string; value: Mark; indexes: { pieceId: string } };
  settings: { key: string; value: Settings };
}
export type RecordStore = "pieces" | "sets" | "marks";
export type RecordOf<S extends RecordStore> = DeviceSchema[S]["value"];

export interface AppendReport {
  added: number;
  /** Ids already held; nothing was written for them. */
  kept: number;
  /** Of these, ids held with another content: the line that came first stands. */
  differing: string[];
}

/** Everything this device keeps. All failures are a {@link StoreError} of one sentence. */
export interface DeviceStore {
  /** Adds answers and waits until the device has them on disk, where it offers that. */
  appendAnswers(answers: readonly Answer[]): Promise<AppendReport>;
  /** The whole log in order (at, id). */
  readAnswers(): Promise<Answer[]>;
  readAll<S extends RecordStore>(store: S): Promise<RecordOf<S>[]>;
  read<S extends RecordStore>(store: S, id: string): Promise<RecordOf<S> | null>;
  /** Writes a record, stamped with the moment of the change, and gives it back. */
  put<S extends RecordStore>(store: S, record: Unstamped<RecordOf<S>>): Promise<RecordOf<S>>;
  /** Writes a record from a backup as it is; only when it is newer than the one held. */
  putIfNewer<S extends RecordStore>(
    store: S,
    record: RecordOf<S>,
  ): Promise<"added" | "replaced" | "kept">;
  remove(store: RecordStore, id: string): Promise<void>;
  readSettings(): Promise<Settings>;
  changeSettings(change: Partial<Unstamped<Settings>>): Promise<Settings>;
  putSettingsIfNewer(settings: Settings): Promise<"added" | "replaced" | "kept">;
  /** Asks the browser not to clear this store when the device runs short; false where it will not promise. */
  askToPersist(): Promise<boolean>;
  /** Deletes everything kept here: "forget me on this device". The store is closed afterwards. */
  forgetAll(): Promise<void>;
  close(): void;
}

type Db = IDBPDatabase<DeviceSchema>;

/**
 * Opens the store of this device, bringing an older one up to date.
 *
 * @throws StoreError when the browser keeps nothing, or another tab or a newer version is in the way
 */
export async function openDeviceStore(
  options: { clock?: Clock; name?: string } = {},
): Promise<DeviceStore> {
  const { clock = deviceClock, name = NAME } = options;
  if (typeof indexedDB === "undefined") throw new StoreError("no-storage");
  try {
    return storeOf(await open(name), clock, name);
  } catch (cause) {
    throw toStoreError(cause, true);
  }
}

function open(name: string): Promise<Db> {
  return new Promise((resolve, reject) => {
    openDB<DeviceSchema>(name, VERSION, {
      upgrade,
      blocked: () => reject(new StoreError("other-tab")),
      // A newer tab wants to upgrade: make way, the next call here says what to do.
      blocking: (_current, _wanted, event) => {
        if (event.target instanceof IDBDatabase) event.target.close();
      },
    }).then(resolve, reject);
  });
}

/** Steps from each version to the next. */
function upgrade(db: Db, oldVersion: number): void {
  if (oldVersion < 1) {
    db.createObjectStore("answers", { keyPath: "id" }).createIndex("entry", "entry");
    db.createObjectStore("pieces", { keyPath: "id" });
    db.createObjectStore("sets", { keyPath: "id" });
    db.createObjectStore("marks", { keyPath: "id" }).createIndex("pieceId", "pieceId");
    db.createObjectStore("settings");
  }
}

/** Runs one piece of work, its failure turned into a sentence. */
async function safely<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (cause) {
    throw toStoreError(cause);
  }
}

function storeOf(db: Db, clock: Clock, name: string): DeviceStore {
  return {
    appendAnswers: (answers) => safely(() => append(db, answers)),
    readAnswers: () => safely(async () => (await db.getAll("answers")).sort(compareAnswers)),
    readAll: (store) => safely(() => db.getAll(store)),
    read: (store, id) => safely(async () => (await db.get(store, id)) ?? null),
    put: (store, record) => safely(() => put(db, store, record, clock.now())),
    putIfNewer: (store, record) => safely(() => putIfNewer(db, store, record)),
    remove: (store, id) => safely(() => remove(db, store, id)),
    readSettings: () =>
      safely(async () => (await db.get("settings", SETTINGS_KEY)) ?? FIRST_SETTINGS),
    changeSettings: (change) => safely(() => changeSettings(db, change, clock.now())),
    putSettingsIfNewer: (settings) => safely(() => putSettingsIfNewer(db, settings)),
    askToPersist: async () => {
      if (typeof navigator === "undefined" || !navigator.storage?.persist) return false;
      return navigator.storage.persist().catch(() => false);
    },
    forgetAll: () =>
      safely(async () => {
        db.close();
        await deleteDB(name);
      }),
    close: () => db.close(),
  };
}

async function append(db: Db, answers: readonly Answer[]): Promise<AppendReport> {
  const report: AppendReport = { added: 0, kept: 0, differing: [] };
  // Strict: told "saved" only when it is on disk, so that a phone that dies loses nothing.
  const tx = db.transaction("answers", "readwrite", { durability: "strict" });
  for (const answer of answers) {
    const held = await tx.store.get(answer.id);
    if (held === undefined) {
      await tx.store.add(answer);
      report.added += 1;
    } else {
      report.kept += 1;
      if (!sameAnswer(held, answer)) report.differing.push(answer.id);
    }
  }
  await tx.done;
  return report;
}

function sameAnswer(a: Answer, b: Answer): boolean {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].every((key) => Reflect.get(a, key) === Reflect.get(b, key));
}

async function put<S extends RecordStore>(
  db: Db,
  store: S,
  record: Unstamped<RecordOf<S>>,
  now: number,
): Promise<RecordOf<S>> {
  const tx = db.transaction(store, "readwrite", { durability: "strict" });
  const held = await tx.store.get(record.id);
  // A clock set back must not make the newer change look older.
  const changedAt = Math.max(now, (held?.changedAt ?? 0) + 1);
  const stamped = { ...record, changedAt } as RecordOf<S>;
  await tx.store.put(stamped);
  await tx.done;
  return stamped;
}

async function putIfNewer<S extends RecordStore>(
  db: Db,
  store: S,
  record: RecordOf<S>,
): Promise<"added" | "replaced" | "kept"> {
  const tx = db.transaction(store, "readwrite", { durability: "strict" });
  const held = await tx.store.get(record.id);
  const newer = held === undefined || record.changedAt > held.changedAt;
  if (newer) await tx.store.put(record);
  await tx.done;
  return held === undefined ? "added" : newer ? "replaced" : "kept";
}

/** A piece takes the marks written into it along. */
async function remove(db: Db, store: RecordStore, id: string): Promise<void> {
  const tx = db.transaction([store, "marks"], "readwrite", { durability: "strict" });
  await tx.objectStore(store).delete(id);
  if (store === "pieces") {
    const marks = tx.objectStore("marks");
    for (const key of await marks.index("pieceId").getAllKeys(id)) await marks.delete(key);
  }
  await tx.done;
}

async function changeSettings(
  db: Db,
  change: Partial<Unstamped<Settings>>,
  now: number,
): Promise<Settings> {
  const tx = db.transaction("settings", "readwrite", { durability: "strict" });
  const held = (await tx.store.get(SETTINGS_KEY)) ?? FIRST_SETTINGS;
  const changed = { ...held, ...change, changedAt: Math.max(now, held.changedAt + 1) };
  await tx.store.put(changed, SETTINGS_KEY);
  await tx.done;
  return changed;
}

async function putSettingsIfNewer(
  db: Db,
  settings: Settings,
): Promise<"added" | "replaced" | "kept"> {
  const tx = db.transaction("settings", "readwrite", { durability: "strict" });
  const held = await tx.store.get(SETTINGS_KEY);
  const newer = held === undefined || settings.changedAt > held.changedAt;
  if (newer) await tx.store.put(settings, SETTINGS_KEY);
  await tx.done;
  return held === undefined ? "added" : newer ? "replaced" : "kept";
}
