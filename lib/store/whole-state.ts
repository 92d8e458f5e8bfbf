import { z } from "zod";
import type { Answer } from "../memory/answer";
import { parseLog } from "../memory/log";
import type { DeviceStore } from "./device-store";
import { type PieceRecord, type SetRecord, type SettingValue, StoreError } from "./records";

/** Everything of one device as one JSON file. */
const FORMAT = "passagework-state";
const FORMAT_VERSION = 1;
/** Larger files are refused before they are parsed. */
export const MOST_STATE_BYTES = 200_000_000;

const fileSchema = z.object({
  format: z.literal(FORMAT),
  version: z.number().int().min(1),
  answers: z.array(z.unknown()),
  pieces: z.array(
    z.object({
      id: z.string().min(1),
      title: z.string(),
      fileName: z.string(),
      bytes: z.string().nullable(),
      reading: z.object({ version: z.literal(1), measures: z.array(z.unknown()) }).loose(),
      partIndex: z.number().int().min(0),
      addedAt: z.number(),
      changedAt: z.number(),
    }),
  ),
  sets: z.array(
    z.object({
      id: z.string().min(1),
      title: z.string(),
      slugs: z.array(z.string()),
      pieceId: z.string().nullable(),
      date: z
        .string()
        .regex(/^\d{4}-\d{2}-\d{2}$/)
        .nullable(),
      minutesADay: z.number().min(1).max(600),
      changedAt: z.number(),
    }),
  ),
  settings: z.record(z.string(), z.unknown()),
});

export interface ImportReport {
  answersAdded: number;
  answersKnown: number;
  /** One sentence each. */
  refused: string[];
  pieces: number;
  sets: number;
}

export async function exportState(store: DeviceStore): Promise<string> {
  const [answers, pieces, sets, settings] = await Promise.all([
    store.answers(),
    store.pieces(),
    store.sets(),
    store.settings(),
  ]);
  return JSON.stringify({
    format: FORMAT,
    version: FORMAT_VERSION,
    answers,
    pieces: pieces.map((p) => ({ ...p, bytes: p.bytes ? toBase64(p.bytes) : null })),
    sets,
    settings,
  });
}

/**
 * Takes in a file made by `exportState`: the union of the logs; of pieces and
 * sets the later change wins; settings of this device stay.
 * @throws StoreError with one sentence when the file is none of ours; then nothing has changed
 */
export async function importState(store: DeviceStore, text: string): Promise<ImportReport> {
  const file = parseFile(text);
  const { answers, refused } = parseLog(file.answers);
  const answersAdded = await store.addAnswers(answers as Answer[]);
  const [held, heldSets] = await Promise.all([store.pieces(), store.sets()]);
  let pieces = 0;
  for (const piece of file.pieces) {
    const mine = held.find((p) => p.id === piece.id);
    if (mine && mine.changedAt >= piece.changedAt) continue;
    const bytes = piece.bytes === null ? null : fromBase64(piece.bytes);
    await store.putPiece({ ...piece, bytes } as unknown as PieceRecord);
    pieces += 1;
  }
  let sets = 0;
  for (const set of file.sets as SetRecord[]) {
    const mine = heldSets.find((s) => s.id === set.id);
    if (mine && mine.changedAt >= set.changedAt) continue;
    await store.putSet(set);
    sets += 1;
  }
  const mine = await store.settings();
  for (const [key, value] of Object.entries(file.settings)) {
    if (!(key in mine)) await store.putSetting(key, value as SettingValue);
  }
  return {
    answersAdded,
    answersKnown: answers.length - answersAdded,
    refused: refused.map((r) => r.reason),
    pieces,
    sets,
  };
}

function parseFile(text: string): z.infer<typeof fileSchema> {
  if (text.length > MOST_STATE_BYTES) {
    throw new StoreError("This file is larger than anything this site saves: choose another.");
  }
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    throw new StoreError("This file is not JSON: choose a file saved by this site.", {
      cause: error,
    });
  }
  const parsed = fileSchema.safeParse(data);
  if (!parsed.success) {
    const where = parsed.error.issues[0]?.path.join(".") || "its first line";
    throw new StoreError(`This file was not saved by this site (${where}): choose another.`);
  }
  if (parsed.data.version > FORMAT_VERSION) {
    throw new StoreError(
      "This file comes from a newer version: load this page again, then try once more.",
    );
  }
  return parsed.data;
}

const CHUNK = 0x8000;

function toBase64(bytes: Uint8Array): string {
  let text = "";
  for (let i = 0; i < bytes.length; i += CHUNK) {
    text += String.fromCharCode(...bytes.subarray(i, i + CHUNK));
  }
  return btoa(text);
}

function fromBase64(text: string): Uint8Array {
  try {
    return Uint8Array.from(atob(text), (c) => c.charCodeAt(0));
  } catch (error) {
    throw new StoreError(
      "A piece in this file is damaged: save the file again on the other device.",
      {
        cause: error,
      },
    );
  }
}
