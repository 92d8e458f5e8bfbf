interface Numbered {
  number: string;
}

/** A measure's printed number; an unnumbered one gets its place from the start in brackets, as editors do. */
export function measureName(measures: readonly Numbered[], index: number): string {
  return measures[index]?.number || `[${index + 1}]`;
}
