const MAX_PASS = 99;
const MAX_LENGTH = 500;

/** Passes named by an ending's number: "1, 2", "1-3" or "1.2."; empty when it names none. */
export function readPasses(text: string): number[] {
  const passes = new Set<number>();
  for (const match of text.slice(0, MAX_LENGTH).matchAll(/(\d+)(?:\s*[-\u2013]\s*(\d+))?/g)) {
    const first = Number(match[1]);
    const last = Math.min(Number(match[2] ?? match[1]), MAX_PASS);
    for (let pass = first; pass <= last; pass++) passes.add(pass);
  }
  return [...passes].sort((a, b) => a - b);
}

/** Bracket text that says more than numbers, else null. */
export function endingText(text: string): string | null {
  const trimmed = text.trim();
  return /[^\d\s.,;:\u2013-]/.test(trimmed) ? trimmed : null;
}
