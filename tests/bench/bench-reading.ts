import { SaxesParser } from "saxes";
import { VerovioToolkit } from "verovio/esm";
import createVerovioModule from "verovio/wasm";
import { makeReading } from "../../lib/reading/make-reading";
import { readScore } from "../../lib/score/read-score";
import { glossary, lexicon } from "../reading/read-file";
import { bigScore } from "./big-score";
import { bestOf, ms, type Row, times } from "./row";

/** From bytes to a full reading, beside Verovio's load of the same file and bare saxes (the floor). */
export async function benchReading(): Promise<Row[]> {
  const rows: Row[] = [];
  const xml = bigScore(5);
  const bytes = new TextEncoder().encode(xml);
  const read = () => makeReading(readScore(bytes, "big.musicxml"), lexicon, glossary);
  read();
  globalThis.gc?.();
  const before = process.memoryUsage().rss;
  const ours = bestOf(3, read);
  const grown = (process.memoryUsage().rss - before) / 1e6;
  const floor = bestOf(3, () => {
    const parser = new SaxesParser();
    parser.on("opentag", () => {});
    parser.write(xml).close();
  });
  const toolkit = new VerovioToolkit(await createVerovioModule());
  const verovio = bestOf(1, () => void toolkit.loadData(xml));
  const size = `${(bytes.length / 1e6).toFixed(1)} MB MusicXML to a reading`;
  rows.push({
    what: `${size}, against Verovio's load`,
    ours: ms(ours),
    alternative: ms(verovio),
    ratio: times(ours, verovio),
  });
  rows.push({
    what: `${size}, against bare saxes`,
    ours: ms(ours),
    alternative: ms(floor),
    ratio: times(ours, floor),
  });
  rows.push({
    what: `${size}: memory grown`,
    ours: `${Math.round(grown)} MB`,
    alternative: "-",
    ratio: "-",
  });
  for (const megabytes of [0.5, 50]) {
    const other = new TextEncoder().encode(bigScore(megabytes));
    const time = bestOf(megabytes > 5 ? 1 : 3, () => {
      makeReading(
        readScore(other, "other.musicxml", {
          measures: 1_000_000,
          bytes: 100_000_000,
          text: 100_000_000,
        } as object),
        lexicon,
        glossary,
      );
    });
    rows.push({
      what: `linear: ${megabytes} MB against 5 MB, a megabyte`,
      ours: ms(time / megabytes),
      alternative: ms(ours / 5),
      ratio: times(time / megabytes, ours / 5),
    });
  }
  return rows;
}
