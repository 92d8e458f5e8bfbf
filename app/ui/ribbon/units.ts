/** Ribbon units as a CSS length: sixteenths of the root size. */
export function css(units: number): string {
  return `${units / 16}rem`;
}

/** Pixels of one ribbon unit. */
export function unitInPixels(): number {
  return (Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16) / 16;
}
