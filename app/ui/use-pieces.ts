"use client";
import { useEffect } from "react";
import { create } from "zustand";
import { type PieceRecord, StoreError } from "@/lib/store/records";
import { openDevice } from "./device";

interface PiecesState {
  /** `waiting` until the store has answered once. */
  state: "waiting" | "ready" | "failed";
  /** Newest first. */
  pieces: readonly PieceRecord[];
  /** One sentence for the reader, when `failed`. */
  problem: string | null;
  load: () => Promise<void>;
  put: (piece: PieceRecord) => Promise<void>;
  remove: (id: string) => Promise<void>;
}

const usePiecesStore = create<PiecesState>()((set, get) => ({
  state: "waiting",
  pieces: [],
  problem: null,
  load: async () => {
    try {
      set({ pieces: await (await openDevice()).pieces(), state: "ready", problem: null });
    } catch (error) {
      set({ state: "failed", problem: sentenceOf(error) });
    }
  },
  put: async (piece) => {
    await (await openDevice()).putPiece(piece);
    await get().load();
  },
  remove: async (id) => {
    await (await openDevice()).removePiece(id);
    await get().load();
  },
}));

/**
 * The pieces on this device, read from its store when a screen first asks.
 * `put` and `remove` throw StoreError when the device refuses.
 */
export function usePieces(): PiecesState {
  const all = usePiecesStore();
  const { state, load } = all;
  useEffect(() => {
    if (state === "waiting") void load();
  }, [state, load]);
  return all;
}

function sentenceOf(error: unknown): string {
  if (error instanceof StoreError) return error.message;
  throw error;
}
