/**
 * The faces, self-hosted. One family a subset, joined again in tokens.css, so
 * that only what a page shows is fetched; the plain latin files are preloaded.
 * The build reads these calls without running them, so every value is a literal.
 */
import localFont from "next/font/local";

const garamond = localFont({
  variable: "--face-garamond",
  display: "swap",
  adjustFontFallback: false,
  src: [
    {
      path: "../../node_modules/@fontsource-variable/eb-garamond/files/eb-garamond-latin-wght-normal.woff2",
      style: "normal",
      weight: "400 800",
    },
    {
      path: "../../node_modules/@fontsource-variable/eb-garamond/files/eb-garamond-latin-wght-italic.woff2",
      style: "italic",
      weight: "400 800",
    },
  ],
});

const garamondExt = localFont({
  variable: "--face-garamond-ext",
  display: "swap",
  preload: false,
  adjustFontFallback: false,
  declarations: [
    {
      prop: "unicode-range",
      value: "U+0100-024F,U+1E00-1E9F,U+1EF2-1EFF,U+2020,U+20A0-20AB,U+20AD-20C0,U+2113",
    },
  ],
  src: [
    {
      path: "../../node_modules/@fontsource-variable/eb-garamond/files/eb-garamond-latin-ext-wght-normal.woff2",
      style: "normal",
      weight: "400 800",
    },
    {
      path: "../../node_modules/@fontsource-variable/eb-garamond/files/eb-garamond-latin-ext-wght-italic.woff2",
      style: "italic",
      weight: "400 800",
    },
  ],
});

const phonetic = localFont({
  variable: "--face-phonetic",
  display: "swap",
  preload: false,
  adjustFontFallback: false,
  declarations: [
    {
      prop: "unicode-range",
      value: "U+014B,U+0250-02AF,U+02C8-02D1,U+0300-036F,U+03B2,U+03B8,U+03C7",
    },
  ],
  src: "./fonts/phonetic-roman.woff2",
  weight: "400 800",
});

const atkinson = localFont({
  variable: "--face-atkinson",
  display: "swap",
  adjustFontFallback: false,
  src: "../../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2",
  weight: "200 800",
});

const atkinsonExt = localFont({
  variable: "--face-atkinson-ext",
  display: "swap",
  preload: false,
  adjustFontFallback: false,
  declarations: [
    {
      prop: "unicode-range",
      value: "U+0100-024F,U+1E00-1E9F,U+1EF2-1EFF,U+2020,U+20A0-20AB,U+20AD-20C0,U+2113",
    },
  ],
  src: "../../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-wght-normal.woff2",
  weight: "200 800",
});

/** Signs block rather than swap: their code points show as empty boxes in any other face. */
const signs = localFont({
  variable: "--face-signs",
  display: "block",
  preload: false,
  adjustFontFallback: false,
  src: "./fonts/signs.woff2",
  weight: "400",
});

export const faces = [garamond, garamondExt, phonetic, atkinson, atkinsonExt, signs]
  .map((face) => face.variable)
  .join(" ");
