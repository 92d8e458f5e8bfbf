"use client";
import { create } from "zustand";
import type { PieceRecord } from "@/lib/store/records";
import { device } from "./device";

interface PiecesState {
  /** Newest first; null until read from the device. */
  pieces: readonly PieceRecord[] | null;
  /** What keeps the device from answering, in one sentence. */
  trouble: string | null;
  /** Reads the pieces anew; every screen that shows them calls it once. */
  load: () => Promise<void>;
  /** Throws StoreError when the device does not take the piece. */
  put: (piece: PieceRecord) => Promise<void>;
  remove: (id: string) => Promise<void>;
}

/** The pieces on this device; its store is where they live. */
export const usePieces = create<PiecesState>((set, get) => ({
  pieces: null,
  trouble: null,
  load: async () => {
    try {
      set({ pieces: await (await device()).pieces(), trouble: null });
    } catch (error) {
      set({ pieces: get().pieces ?? [], trouble: sentenceOf(error) });
    }
  },
  put: async (piece) => {
    await (await device()).putPiece(piece);
    await get().load();
  },
  remove: async (id) => {
    await (await device()).removePiece(id);
    await get().load();
  },
}));

function sentenceOf(error: unknown): string {
  return error instanceof Error ? error.message : "The pieces on this device could not be read.";
}
