"use client";
import { create } from "zustand";
import type { SetRecord } from "@/lib/store/records";
import { device } from "./device";

interface SetsState {
  /** In no order; null until read from the device. */
  sets: readonly SetRecord[] | null;
  /** What keeps the device from answering, in one sentence. */
  trouble: string | null;
  load: () => Promise<void>;
  /** Throws StoreError when the device does not take the set. */
  put: (set: SetRecord) => Promise<void>;
  remove: (id: string) => Promise<void>;
}

/** The sets on this device; its store is where they live. */
export const useSets = create<SetsState>((set, get) => ({
  sets: null,
  trouble: null,
  load: async () => {
    try {
      set({ sets: await (await device()).sets(), trouble: null });
    } catch (error) {
      set({ sets: get().sets ?? [], trouble: sentenceOf(error) });
    }
  },
  put: async (record) => {
    await (await device()).putSet(record);
    await get().load();
  },
  remove: async (id) => {
    await (await device()).removeSet(id);
    await get().load();
  },
}));

function sentenceOf(error: unknown): string {
  return error instanceof Error ? error.message : "The sets on this device could not be read.";
}
