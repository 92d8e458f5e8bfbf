"use client";
import { useEffect } from "react";
import { create } from "zustand";
import type { ClientEntry, ClientGlossary } from "@/lib/glossary/client-entry";

interface GlossaryState {
  bySlug: ReadonlyMap<string, ClientEntry> | null;
  trouble: string | null;
  load: () => void;
}

let asked = false;

const useStore = create<GlossaryState>((set) => ({
  bySlug: null,
  trouble: null,
  load: () => {
    if (asked) return;
    asked = true;
    fetchGlossary().then(
      ({ entries }) => set({ bySlug: new Map(entries.map((e) => [e.slug, e])), trouble: null }),
      () => {
        asked = false;
        set({ trouble: "The glossary could not be fetched: it needs the network once." });
      },
    );
  },
}));

export async function fetchGlossary(): Promise<ClientGlossary> {
  const response = await fetch("/data/glossary.json");
  if (!response.ok) throw new Error(`glossary: ${response.status}`);
  return response.json();
}

/** All entries by slug, fetched once; null while they come. */
export function useGlossary(): Omit<GlossaryState, "load"> {
  const { bySlug, trouble, load } = useStore();
  useEffect(load, [load]);
  return { bySlug, trouble };
}
