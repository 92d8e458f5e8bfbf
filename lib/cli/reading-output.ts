import type { Reading } from "../reading/reading";

/** The reading as the `read` command prints it: the contract of design.md, no more. */
export function readingOutput(reading: Reading) {
  const partId = (index: number) => reading.parts[index]?.id ?? "";
  return {
    format: reading.format,
    title: reading.title,
    parts: reading.parts.map(({ id, name }) => ({ id, name })),
    measures: reading.measures.map(({ index, number }) => ({ index, number })),
    found: reading.found.map((f) => ({
      headword: f.headword,
      kind: f.kind,
      lang: f.lang,
      text: f.text,
      sign: f.sign,
      partId: partId(f.partIndex),
      measureIndex: f.measureIndex,
      measureNumber: f.measureNumber,
      onset: f.onset,
    })),
    unknown: reading.unknown.map((u) => ({
      text: u.text,
      partId: partId(u.partIndex),
      measureIndex: u.measureIndex,
      measureNumber: u.measureNumber,
    })),
    playingOrder: reading.playingOrder,
    playingPolicy: reading.playingPolicy,
    warnings: reading.warnings.map(({ code, message, measureNumber }) => ({
      code,
      message,
      measureNumber,
    })),
  };
}
