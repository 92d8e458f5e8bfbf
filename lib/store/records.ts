import { z } from "zod";
import { readDate } from "@/lib/memory/day";

const id = z.string().min(1).max(100);
const slug = z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, "expected a slug");
const moment = z.number().int().min(0).max(8.64e15);
const date = z
  .string()
  .refine((text) => readDate(text) !== null, "expected a date as in 2027-03-05");

/** A student's own piece. The page itself (`bytes`) never leaves the device but in a copy the student saves. */
export const pieceSchema = z.object({
  id,
  title: z.string().max(200),
  fileName: z.string().max(255),
  bytes: z.instanceof(Uint8Array<ArrayBuffer>),
  /** What was read from it, as lib/reading made it; null when it could not be read. */
  reading: z.json(),
  /** Milliseconds since 1970 UTC. */
  addedAt: moment,
  changedAt: moment,
});

/** A chosen list of entries, with an optional piece and date. */
export const setSchema = z.object({
  id,
  title: z.string().max(200),
  slugs: z.array(slug).max(2000),
  pieceId: id.nullable(),
  /** `YYYY-MM-DD` of the audition. */
  date: date.nullable(),
  /** Minutes a day; null for the setting's. */
  minutes: z.number().min(1).max(180).nullable(),
  changedAt: moment,
});

/** What the student wrote into a piece: a pencil mark at a measure. */
export const markSchema = z.object({
  id,
  pieceId: id,
  /** From 0 in document order; null for the piece as a whole. */
  measureIndex: z.number().int().min(0).nullable(),
  partId: z.string().max(100).nullable(),
  /** Entry the mark is about: how a doubtful or unknown word is to be read. */
  entry: slug.nullable(),
  text: z.string().max(300),
  changedAt: moment,
});

/** One record. Further keys of later versions are kept. */
export const settingsSchema = z.looseObject({
  theme: z.enum(["system", "light", "dark"]),
  minutesADay: z.number().int().min(1).max(180),
  /** Family of instruments whose playing notes are shown first. */
  family: z.enum(["all", "winds", "strings", "percussion", "voice", "keyboard"]),
  /** Single-key answers (WCAG 2.1.4: can be turned off). */
  keys: z.boolean(),
  changedAt: moment,
});

export type Piece = z.infer<typeof pieceSchema>;
export type DrillSet = z.infer<typeof setSchema>;
export type Mark = z.infer<typeof markSchema>;
export type Settings = z.infer<typeof settingsSchema>;

/** A record as a caller hands it over: the store notes the moment of the change. */
export type Unstamped<T extends { changedAt: number }> = Omit<T, "changedAt">;

/** Before the student chose anything; a session of 5 to 10 minutes (learning-guidance, rule 19). */
export const FIRST_SETTINGS: Settings = {
  theme: "system",
  minutesADay: 8,
  family: "all",
  keys: true,
  changedAt: 0,
};
