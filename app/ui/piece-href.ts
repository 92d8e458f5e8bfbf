/**
 * Address of a piece of this device, or of one of its measures; its id is known
 * to the device alone, so it stays behind the "?".
 * @param measureIndex from 0; the address shows the measure's place, not its printed number, which may be there twice
 */
export function pieceHref(id: string, measureIndex?: number): string {
  const at = measureIndex === undefined ? "" : `#m${measureIndex + 1}`;
  return `/piece?${new URLSearchParams({ id })}${at}`;
}

/** The measure an address names: `#m12` is the twelfth. Null for any other hash. */
export function measureOfHash(hash: string): number | null {
  const match = /^#m(\d{1,6})$/.exec(hash);
  return match && Number(match[1]) > 0 ? Number(match[1]) - 1 : null;
}
