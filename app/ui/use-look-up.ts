"use client";
import { useEffect, useState } from "react";
import { createLookUp } from "@/lib/lookup/look-up";
import { type LookUpEntry, type LookUpIndex, unpackEntries } from "@/lib/lookup/look-up-index";

/** From what is typed to the entries to show, best first. */
export type Find = (query: string, limit: number) => LookUpEntry[];

let made: Promise<Find> | null = null;

async function fetchLookUp(): Promise<Find> {
  const response = await fetch("/data/lookup.json");
  if (!response.ok) throw new Error(`look-up index: ${response.status}`);
  const index = (await response.json()) as LookUpIndex;
  const lookUp = createLookUp(index);
  const bySlug = new Map(unpackEntries(index).map((entry) => [entry.slug, entry]));
  return (query, limit) =>
    lookUp(query, limit).flatMap(({ slug }) => {
      const entry = bySlug.get(slug);
      return entry ? [entry] : [];
    });
}

/** The look-up, made once a page from the index; null while it comes, a sentence when it does not. */
export function useLookUp(): Find | string | null {
  const [lookUp, setLookUp] = useState<{ it: Find | string } | null>(null);
  useEffect(() => {
    let current = true;
    made ??= fetchLookUp();
    made.then(
      (it) => current && setLookUp({ it }),
      () => {
        made = null;
        if (current)
          setLookUp({ it: "The glossary could not be fetched: it needs the network once." });
      },
    );
    return () => {
      current = false;
    };
  }, []);
  return lookUp?.it ?? null;
}
