/** Address of a piece of this device; its id is known to the device alone, so it stays behind the "?". */
export function pieceHref(id: string): string {
  return `/pieces?${new URLSearchParams({ piece: id })}`;
}
