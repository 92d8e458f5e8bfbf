/**
 * SMuFL glyphs that stand in the text of MEI elements, by code point.
 * @see SMuFL 1.4: dynamics U+E520–U+E53D, metronome marks U+ECA0–U+ECB7
 */
const DYNAMIC_GLYPHS: readonly (readonly [code: number, letters: string, name: string])[] = [
  [0xe520, "p", "dynamicPiano"],
  [0xe521, "m", "dynamicMezzo"],
  [0xe522, "f", "dynamicForte"],
  [0xe523, "r", "dynamicRinforzando"],
  [0xe524, "s", "dynamicSforzando"],
  [0xe525, "z", "dynamicZ"],
  [0xe526, "n", "dynamicNiente"],
  [0xe527, "pppppp", "dynamicPPPPPP"],
  [0xe528, "ppppp", "dynamicPPPPP"],
  [0xe529, "pppp", "dynamicPPPP"],
  [0xe52a, "ppp", "dynamicPPP"],
  [0xe52b, "pp", "dynamicPP"],
  [0xe52c, "mp", "dynamicMP"],
  [0xe52d, "mf", "dynamicMF"],
  [0xe52e, "pf", "dynamicPF"],
  [0xe52f, "ff", "dynamicFF"],
  [0xe530, "fff", "dynamicFFF"],
  [0xe531, "ffff", "dynamicFFFF"],
  [0xe532, "fffff", "dynamicFFFFF"],
  [0xe533, "ffffff", "dynamicFFFFFF"],
  [0xe534, "fp", "dynamicFortePiano"],
  [0xe535, "fz", "dynamicForzando"],
  [0xe536, "sf", "dynamicSforzando1"],
  [0xe537, "sfp", "dynamicSforzandoPiano"],
  [0xe538, "sfpp", "dynamicSforzandoPianissimo"],
  [0xe539, "sfz", "dynamicSforzato"],
  [0xe53a, "sfzp", "dynamicSforzatoPiano"],
  [0xe53b, "sffz", "dynamicSforzatoFF"],
  [0xe53c, "rf", "dynamicRinforzando1"],
  [0xe53d, "rfz", "dynamicRinforzando2"],
];

const LETTERS_BY_CODE = new Map(DYNAMIC_GLYPHS.map(([code, letters]) => [code, letters]));
const LETTERS_BY_NAME = new Map(DYNAMIC_GLYPHS.map(([, letters, name]) => [name, letters]));

/** Text with dynamic glyphs spelled as letters. */
export function spellDynamics(text: string): string {
  return text.replace(
    /[\uE520-\uE53D]/g,
    (glyph) => LETTERS_BY_CODE.get(glyph.charCodeAt(0)) ?? glyph,
  );
}

/** Letters a dynamic glyph name stands for, null for any other glyph. */
export function dynamicLetters(glyphName: string | undefined): string | null {
  return LETTERS_BY_NAME.get(glyphName ?? "") ?? null;
}

/** Note values by the glyphs and characters that draw them in a line of text. */
const NOTE_GLYPHS: ReadonlyMap<string, string> = new Map([
  ["\uECA0", "breve"],
  ["\uECA1", "breve"],
  ["\uECA2", "whole"],
  ["\uECA3", "half"],
  ["\uECA4", "half"],
  ["\uECA5", "quarter"],
  ["\uECA6", "quarter"],
  ["\uECA7", "eighth"],
  ["\uECA8", "eighth"],
  ["\uECA9", "16th"],
  ["\uECAA", "16th"],
  ["\uECAB", "32nd"],
  ["\uECAC", "32nd"],
  ["\uE1D2", "whole"],
  ["\uE1D3", "half"],
  ["\uE1D4", "half"],
  ["\uE1D5", "quarter"],
  ["\uE1D6", "quarter"],
  ["\uE1D7", "eighth"],
  ["\uE1D8", "eighth"],
  ["\uE1D9", "16th"],
  ["\uE1DA", "16th"],
  ["\u2669", "quarter"],
  ["\u266A", "eighth"],
  ["\u{1D15D}", "whole"],
  ["\u{1D15E}", "half"],
  ["\u{1D15F}", "quarter"],
  ["\u{1D160}", "eighth"],
  ["\u{1D161}", "16th"],
  ["\u{1D162}", "32nd"],
]);
/** Augmentation dots: SMuFL metronome and plain, Unicode, and a full stop after a note. */
const DOTS = new Set(["\uECB7", "\uE1E7", "\u{1D16D}", "."]);

/** Note values by SMuFL name, as in a symbol element. */
const NOTE_NAMES: Readonly<Record<string, string>> = {
  metNoteDoubleWhole: "\uECA0",
  metNoteWhole: "\uECA2",
  metNoteHalfUp: "\uECA3",
  metNoteHalfDown: "\uECA4",
  metNoteQuarterUp: "\uECA5",
  metNoteQuarterDown: "\uECA6",
  metNote8thUp: "\uECA7",
  metNote8thDown: "\uECA8",
  metNote16thUp: "\uECA9",
  metNote16thDown: "\uECAA",
  metNote32ndUp: "\uECAB",
  metNote32ndDown: "\uECAC",
  metAugmentationDot: "\uECB7",
};

/** The character of a note value or dot named by its glyph, null for any other glyph. */
export function noteCharacter(glyphName: string | undefined): string | null {
  return NOTE_NAMES[glyphName ?? ""] ?? null;
}

export function noteOfCharacter(character: string): string | null {
  return NOTE_GLYPHS.get(character) ?? null;
}

export function isDot(character: string): boolean {
  return DOTS.has(character);
}
