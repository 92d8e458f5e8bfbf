import { scoreProblem } from "../limits";
import type { ScoreWarning } from "../model";

/** Formats that are read through Verovio's conversion to MEI, by the ending of the file name. */
const CONVERTED: readonly (readonly [ending: RegExp, name: string, lost: string])[] = [
  [/\.abc$/i, "ABC", "hairpins, most decorations, text annotations and tempo numbers may be lost"],
  [/\.(?:krn|hum)$/i, "Humdrum", "directions outside **kern and **dynam may be lost"],
];
/** Text formats are small; a larger file is something else. */
const MOST_BYTES = 2_000_000;

interface Toolkit {
  loadData(text: string): boolean | number;
  getMEI(options: object): string;
}

export interface Converted {
  /** MEI, to be read by `readScore`. */
  bytes: Uint8Array;
  warning: ScoreWarning;
}

/** True for a name whose file must go through `convertScore` first. */
export function needsConversion(fileName: string): boolean {
  return CONVERTED.some(([ending]) => ending.test(fileName));
}

/**
 * ABC or Humdrum as MEI. Verovio is loaded only now: it is large.
 * @throws ScoreReadError when Verovio cannot read the text
 */
export async function convertScore(bytes: Uint8Array, fileName: string): Promise<Converted> {
  const [, name, lost] = CONVERTED.find(([ending]) => ending.test(fileName)) ?? CONVERTED[0] ?? [];
  const refuse = (found: string) =>
    scoreProblem(fileName, "not-music", {
      found,
      expected: `${name} text with notes`,
      remedy: "Export the piece as MusicXML and open that file.",
    });
  if (bytes.length > MOST_BYTES) throw refuse(`it has ${Math.round(bytes.length / 1e6)} MB`);
  const [{ default: createModule }, { VerovioToolkit }] = await Promise.all([
    import("verovio/wasm-hum"),
    import("verovio/esm"),
  ]);
  const toolkit: Toolkit = new VerovioToolkit(await createModule());
  const text = new TextDecoder().decode(bytes);
  const mei = toolkit.loadData(text) ? toolkit.getMEI({}) : "";
  if (!/<note[\s>]/.test(mei)) throw refuse("no notes were found in it");
  return {
    bytes: new TextEncoder().encode(mei),
    warning: {
      code: "converted",
      message: `${name} is read by way of MEI: ${lost}. Open MusicXML where you have it.`,
      measureNumber: null,
      partId: null,
    },
  };
}
