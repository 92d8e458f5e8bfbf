/** The device's clock, calendar and source of ids; the only place of the program that reads them. */
export interface Clock {
  /** Milliseconds since 1970 UTC. */
  now(): number;
  /** Minutes east of UTC at a moment, summer time included. */
  offset(at: number): number;
  /** A fresh id, unlike any other: 122 random bits, saying nothing about the device. */
  newId(): string;
}

export const deviceClock: Clock = {
  now: () => Date.now(),
  offset: (at) => -new Date(at).getTimezoneOffset(),
  newId: () => (typeof crypto.randomUUID === "function" ? crypto.randomUUID() : uuid4()),
};

/** A page served over plain http in the band room has no `randomUUID`; random bytes it has. */
export function uuid4(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x40;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = [...bytes].map((b) => b.toString(16).padStart(2, "0")).join("");
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    hex.slice(12, 16),
    hex.slice(16, 20),
    hex.slice(20),
  ].join("-");
}
