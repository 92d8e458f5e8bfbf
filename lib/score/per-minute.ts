const NUMBERS = /\d+(?:[.,]\d+)?/g;

/** The one number in a printed speed such as "c. 66"; null for none, a range or 0. */
export function readPerMinute(text: string): number | null {
  const numbers = text.match(NUMBERS);
  if (numbers === null || numbers.length !== 1) return null;
  const value = Number((numbers[0] ?? "").replace(",", "."));
  return value > 0 ? value : null;
}
