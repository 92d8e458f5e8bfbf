import type { Reading } from "../reading/reading";

/** A piece as this device keeps it. The file itself never leaves the device. */
export interface PieceRecord {
  id: string;
  title: string;
  fileName: string;
  /** The score as opened, for engraving; absent in a shared reading. */
  bytes: Uint8Array | null;
  reading: Reading;
  /** The player's own part. */
  partIndex: number;
  addedAt: number;
  changedAt: number;
}

/** A chosen list of entries, with an optional piece and date. */
export interface SetRecord {
  id: string;
  title: string;
  slugs: string[];
  pieceId: string | null;
  /** Audition date, YYYY-MM-DD in the student's own calendar. */
  date: string | null;
  minutesADay: number;
  changedAt: number;
}

export type SettingValue = string | number | boolean | null | readonly string[];

/** Said to the person as it is. */
export class StoreError extends Error {
  override readonly name = "StoreError";
}
