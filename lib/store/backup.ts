import { z } from "zod";
import { parseLog, type RefusedAnswer } from "@/lib/memory/log";
import { fromBase64, toBase64 } from "./base64";
import type { Clock } from "./clock";
import type { DeviceStore, RecordOf, RecordStore } from "./device-store";
import { markSchema, pieceSchema, setSchema, settingsSchema } from "./records";
import { StoreError } from "./store-problem";

export const BACKUP_FORMAT = "passagework-backup";
export const BACKUP_VERSION = 1;

/** A piece in a backup: its bytes as base64. */
const pieceInBackup = pieceSchema.omit({ bytes: true }).extend({
  bytes: z.string().transform((text, context) => {
    const bytes = fromBase64(text);
    if (bytes) return bytes;
    context.addIssue({ code: "custom", message: "expected base64" });
    return z.NEVER;
  }),
});

const envelope = z.looseObject({
  format: z.literal(BACKUP_FORMAT),
  version: z.number().int().min(1),
});

export interface PartReport {
  added: number;
  /** Newer in the backup than here. */
  replaced: number;
  /** Here already, as new or newer. */
  kept: number;
  /** One sentence for each record that could not be read; the rest was taken. */
  refused: string[];
}

export interface ImportReport {
  answers: { added: number; kept: number; differing: string[]; refused: RefusedAnswer[] };
  pieces: PartReport;
  sets: PartReport;
  marks: PartReport;
  settings: "added" | "replaced" | "kept" | "absent" | "refused";
}

/**
 * Everything this device keeps, as the text of one JSON file.
 *
 * @returns `{ format, version, savedAt, answers, pieces, sets, marks, settings }`
 */
export async function exportBackup(store: DeviceStore, clock: Clock): Promise<string> {
  const [answers, pieces, sets, marks, settings] = await Promise.all([
    store.readAnswers(),
    store.readAll("pieces"),
    store.readAll("sets"),
    store.readAll("marks"),
    store.readSettings(),
  ]);
  return JSON.stringify({
    format: BACKUP_FORMAT,
    version: BACKUP_VERSION,
    savedAt: clock.now(),
    answers,
    pieces: pieces.map((piece) => ({ ...piece, bytes: toBase64(piece.bytes) })),
    sets,
    marks,
    settings,
  });
}

/**
 * Takes a backup in: the union of the answers, of all else the newer of each id.
 * Importing twice, or in any order, gives the same store.
 *
 * @param text text of a file made by {@link exportBackup}
 * @throws StoreError when the text is no backup or was written by a newer version; then nothing changed
 */
export async function importBackup(store: DeviceStore, text: string): Promise<ImportReport> {
  const backup = readEnvelope(text);
  const log = parseLog(backup.answers ?? []);
  const appended = await store.appendAnswers(log.answers);
  return {
    answers: { ...appended, refused: log.refused },
    pieces: await takeIn(store, "pieces", pieceInBackup, backup.pieces),
    sets: await takeIn(store, "sets", setSchema, backup.sets),
    marks: await takeIn(store, "marks", markSchema, backup.marks),
    settings: await takeSettings(store, backup.settings),
  };
}

function readEnvelope(text: string): Record<string, unknown> {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (cause) {
    throw new StoreError("not-readable", { cause });
  }
  const parsed = envelope.safeParse(json);
  if (!parsed.success) throw new StoreError("not-readable", { cause: parsed.error });
  if (parsed.data.version > BACKUP_VERSION) throw new StoreError("newer-version");
  return parsed.data;
}

async function takeIn<S extends RecordStore>(
  store: DeviceStore,
  name: S,
  schema: z.ZodType<RecordOf<S>>,
  list: unknown,
): Promise<PartReport> {
  const report: PartReport = { added: 0, replaced: 0, kept: 0, refused: [] };
  if (list === undefined) return report;
  if (!Array.isArray(list)) {
    report.refused.push(`${name}: expected a list; nothing of it was taken.`);
    return report;
  }
  for (const [index, item] of list.entries()) {
    const parsed = schema.safeParse(item);
    if (parsed.success) {
      report[await store.putIfNewer(name, parsed.data)] += 1;
    } else {
      const issue = parsed.error.issues[0];
      const where = issue && issue.path.length > 0 ? `, ${issue.path.join(".")}` : "";
      report.refused.push(
        `${name} ${index + 1}${where}: ${issue?.message ?? "not readable"}; it was left out.`,
      );
    }
  }
  return report;
}

async function takeSettings(store: DeviceStore, value: unknown): Promise<ImportReport["settings"]> {
  if (value === undefined || value === null) return "absent";
  const parsed = settingsSchema.safeParse(value);
  return parsed.success ? store.putSettingsIfNewer(parsed.data) : "refused";
}
