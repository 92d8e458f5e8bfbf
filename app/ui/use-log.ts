"use client";
import { create } from "zustand";
import type { Answer } from "@/lib/memory/answer";
import { mergeLogs } from "@/lib/memory/log";
import { device } from "./device";

interface LogState {
  /** Null until read from the device. */
  answers: Answer[] | null;
  /** What keeps the log from being kept, in one sentence. */
  trouble: string | null;
  load: () => Promise<void>;
  /** Shows the answers at once and keeps them on the device. */
  add: (answers: readonly Answer[]) => Promise<void>;
}

/** The log of answers; the device's store is where it lives. */
export const useLog = create<LogState>((set, get) => ({
  answers: null,
  trouble: null,
  load: async () => {
    try {
      const kept = await (await device()).answers();
      set({ answers: mergeLogs(kept, get().answers ?? []) });
    } catch (error) {
      set({ answers: get().answers ?? [], trouble: sentenceOf(error) });
    }
  },
  add: async (answers) => {
    set({ answers: mergeLogs(get().answers ?? [], answers) });
    try {
      await (await device()).addAnswers(answers);
    } catch (error) {
      set({ trouble: sentenceOf(error) });
    }
  },
}));

function sentenceOf(error: unknown): string {
  return error instanceof Error ? error.message : "The answers could not be kept on this device.";
}
