/** The engraver, in its own thread and loaded only where notation is shown. */
import { VerovioToolkit } from "verovio/esm";
import createVerovioModule from "verovio/wasm";
import { convertScore, needsConversion } from "@/lib/score/convert/convert-score";
import { onePart, scoreText, withoutPartNames } from "@/lib/score/one-part";
import type { FromEngraver, ToEngraver } from "./messages";

/** Staff size in per cent of the engraver's own; a phone at arm's length needs large notes. */
const SCALE = 42;

const toolkit = createVerovioModule().then((module) => new VerovioToolkit(module));
let loaded = "";

async function engravedText(
  bytes: Uint8Array,
  fileName: string,
  partIndex: number,
): Promise<string> {
  if (needsConversion(fileName)) {
    return new TextDecoder().decode((await convertScore(bytes, fileName)).bytes);
  }
  const text = onePart(scoreText(bytes, fileName), partIndex);
  const alone = (text.match(/<score-part(?=[\s>])/g) ?? []).length === 1;
  return alone ? withoutPartNames(text) : text;
}

const say = (message: FromEngraver) => self.postMessage(message);

/** One message after another: a drawing must not overtake the loading it rests on. */
let work: Promise<void> = Promise.resolve();
self.addEventListener("message", ({ data }: MessageEvent<ToEngraver>) => {
  work = work.then(() => answer(data));
});

async function answer(data: ToEngraver): Promise<void> {
  try {
    const engraver = await toolkit;
    if (data.type === "load") {
      const ok = engraver.loadData(await engravedText(data.bytes, data.fileName, data.partIndex));
      if (!ok)
        throw new Error("This score cannot be engraved here; the ribbon shows what it asks.");
      loaded = data.key;
      say({ type: "loaded", key: data.key });
      return;
    }
    if (data.key !== loaded)
      throw new Error("The score is not open any more; load the page again.");
    engraver.setOptions({
      scale: SCALE,
      pageWidth: Math.round((data.width * 100) / SCALE),
      pageHeight: 60_000,
      adjustPageHeight: true,
      // Room for the measure number that stands left of the clef.
      pageMarginLeft: 45,
      pageMarginRight: 0,
      pageMarginTop: 30,
      pageMarginBottom: 30,
      header: "none",
      footer: "none",
      breaks: "auto",
      mnumInterval: 1,
      svgViewBox: true,
      spacingSystem: 8,
    });
    engraver.select({ measureRange: `${data.from + 1}-${data.to + 1}` });
    engraver.redoLayout();
    say({ type: "drawn", job: data.job, svg: engraver.renderToSVG(1) });
  } catch (error) {
    const message = error instanceof Error ? error.message : "The engraver stopped.";
    const job = data.type === "draw" ? data.job : null;
    say({ type: "failed", job, key: data.key, message });
  }
}
