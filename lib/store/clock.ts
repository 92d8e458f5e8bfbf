/** The only place that asks the device for the time, its zone, or chance. */
export interface Stamp {
  at: number;
  offset: number;
}

/** Now, and minutes east of UTC here. */
export function stampNow(): Stamp {
  const now = new Date();
  return { at: now.getTime(), offset: -now.getTimezoneOffset() };
}

export function newId(): string {
  return crypto.randomUUID();
}

/** A seed for chance that is then an argument everywhere. */
export function newSeed(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
}
