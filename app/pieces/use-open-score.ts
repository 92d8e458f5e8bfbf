"use client";
import { useCallback, useEffect, useRef, useState } from "react";
import type { Reading } from "@/lib/reading/reading";
import { newId, stampNow } from "@/lib/store/clock";
import type { PieceRecord } from "@/lib/store/records";
import { type ReadJob, type ReadStep, readInWorker, type ScoreFile } from "../ui/read-in-worker";
import { fetchGlossary } from "../ui/use-glossary";
import { usePieces } from "../ui/use-pieces";

/** Where the opening of a score has come to. */
export type Opening =
  | { at: "rest" }
  | { at: "work"; name: string; step: ReadStep }
  /** Read, but it has several parts: which one is yours? */
  | { at: "parts"; name: string; bytes: Uint8Array; reading: Reading }
  | { at: "keeping"; name: string }
  | { at: "refused"; sentence: string };

interface OpenScore {
  opening: Opening;
  open: (file: ScoreFile) => void;
  choosePart: (partIndex: number) => void;
  refuse: (sentence: string) => void;
  /** Stops the work, or leaves the choice or the refusal; nothing is kept. */
  rest: () => void;
}

/**
 * Opens a score: reads it in a worker, asks for the part, keeps the piece.
 * @param onKept told the id of the piece once the device has it
 */
export function useOpenScore(onKept: (id: string) => void): OpenScore {
  const [opening, setOpening] = useState<Opening>({ at: "rest" });
  const job = useRef<ReadJob | null>(null);
  useEffect(() => () => job.current?.stop(), []);

  const refuse = useCallback((sentence: string) => setOpening({ at: "refused", sentence }), []);
  const rest = useCallback(() => {
    job.current?.stop();
    job.current = null;
    setOpening({ at: "rest" });
  }, []);

  const keep = useCallback(
    async (score: { name: string; bytes: Uint8Array; reading: Reading }, partIndex: number) => {
      setOpening({ at: "keeping", name: score.name });
      try {
        onKept(await keepPiece(score, partIndex));
      } catch (error) {
        refuse(sentenceOf(error, score.name));
      }
    },
    [onKept, refuse],
  );

  const open = useCallback(
    (file: ScoreFile) => {
      job.current?.stop();
      const { name } = file;
      setOpening({ at: "work", name, step: "opening" });
      const started = readInWorker(file, fetchGlossary, (step) =>
        setOpening({ at: "work", name, step }),
      );
      job.current = started;
      started.result.then(
        ({ bytes, reading }) => {
          if (reading.parts.length > 1) setOpening({ at: "parts", name, bytes, reading });
          else void keep({ name, bytes, reading }, 0);
        },
        (error: unknown) => refuse(sentenceOf(error, name)),
      );
    },
    [keep, refuse],
  );

  const choosePart = useCallback(
    (partIndex: number) => {
      if (opening.at === "parts") void keep(opening, partIndex);
    },
    [opening, keep],
  );
  return { opening, open, choosePart, refuse, rest };
}

function sentenceOf(error: unknown, name: string): string {
  return error instanceof Error ? error.message : `${name}: it could not be opened; try once more.`;
}

/** The same file opened again is the same piece, read anew. */
async function keepPiece(
  { name, bytes, reading }: { name: string; bytes: Uint8Array; reading: Reading },
  partIndex: number,
): Promise<string> {
  const { put } = usePieces.getState();
  const known = usePieces.getState().pieces?.find((p) => p.bytes && sameBytes(p.bytes, bytes));
  const { at } = stampNow();
  const piece: PieceRecord = {
    id: known?.id ?? newId(),
    title: known?.title ?? titleOf(reading, name),
    fileName: name,
    bytes,
    reading,
    partIndex,
    addedAt: known?.addedAt ?? at,
    changedAt: at,
  };
  await put(piece);
  return piece.id;
}

function titleOf({ title }: Reading, fileName: string): string {
  return title?.trim() || fileName.replace(/\.[a-z]+$/i, "").replace(/[-_]+/g, " ");
}

function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, i) => byte === b[i]);
}
