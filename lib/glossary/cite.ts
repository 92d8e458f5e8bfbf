import type { Source } from "./sources";

/**
 * A work cited in a word or two: its author's last name, or its publisher, and the year.
 * @param key of sources.yaml; a key not there is given back as it is
 * @example citeBriefly("gehrkens-1914", sources) // "Gehrkens 1914"
 */
export function citeBriefly(key: string, sources: ReadonlyMap<string, Source>): string {
  const source = sources.get(key);
  if (!source) return key;
  const name = source.by ? source.by.split(" ").at(-1) : source.publisher.split(/,|;| \(/)[0];
  const year = /\d{4}/.exec(String(source.year))?.[0];
  return year === undefined || String(source.year).startsWith("read")
    ? `${name}`
    : `${name} ${year}`;
}
