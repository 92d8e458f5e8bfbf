/** Signs that say how a note is touched, with the words a question uses. */
export const articulationSigns: ReadonlyMap<string, { glyph: string | null; words: string }> =
  new Map([
    ["staccato", { glyph: "articStaccatoAbove", words: "short and light" }],
    ["staccatissimo", { glyph: "articStaccatissimoWedgeAbove", words: "as short as can be" }],
    ["tenuto", { glyph: "articTenutoAbove", words: "held to the full" }],
    ["detached-legato", { glyph: "articTenutoStaccatoAbove", words: "long but gently parted" }],
    ["accent", { glyph: "articAccentAbove", words: "started with more force" }],
    ["strong-accent", { glyph: "articMarcatoAbove", words: "hit hard" }],
    ["slur", { glyph: null, words: "joined under a curve" }],
  ]);
