import { decodeChunks, findEncoding, type TextSource } from "./decode-text";
import { type ReadLimits, scoreProblem } from "./limits";
import type { ScoreWarning } from "./model";
import { type ArchiveEntry, isUnsafePath, listArchive, unpackEntry } from "./unpack-archive";
import { type Attributes, elementTable } from "./xml/elements";
import { walkXml } from "./xml/walk-xml";

const CONTAINER = "META-INF/container.xml";

/** First bytes of things that are not scores, as Latin-1, and what to call them. */
const LOOKS: readonly (readonly [start: string, looks: string])[] = [
  ["%PDF", "a PDF"],
  ["\x89PNG", "a PNG picture"],
  ["\xff\xd8\xff", "a JPEG picture"],
  ["GIF8", "a GIF picture"],
  ["II*\0", "a TIFF picture"],
  ["MM\0*", "a TIFF picture"],
  ["RIFF", "a sound or picture file"],
  ["BM", "a bitmap picture"],
  ["MThd", "a MIDI file"],
  ["ID3", "a sound recording"],
  ["OggS", "a sound recording"],
  ["\x1f\x8b", "a gzip archive"],
  ["\xd0\xcf\x11\xe0", "an office document"],
];

export interface OpenedScore {
  source: TextSource;
  /** Path of the score inside an archive, null for a plain file. */
  entryName: string | null;
  warnings: ScoreWarning[];
}

function startOf(bytes: Uint8Array): string {
  return String.fromCharCode(...bytes.subarray(0, 4));
}

function refuseFormat(file: string, looks: string): never {
  throw scoreProblem(file, "not-xml", {
    found: `it looks like ${looks}, not a score`,
    expected: "MusicXML (.musicxml, .mxl, .xml) or MEI (.mei)",
    remedy: "Export the piece as MusicXML and open that file.",
  });
}

/** Refuses text that cannot be XML, saying what it looks like instead. */
function checkText(source: TextSource): void {
  const { file } = source;
  const [first = ""] = decodeChunks(source);
  const start = first.trimStart();
  if (start === "") refuseEmpty(file);
  if (start.startsWith("<")) return;
  if (start.startsWith("{") || start.startsWith("[")) refuseFormat(file, "JSON data");
  refuseFormat(file, "plain text");
}

function refuseEmpty(file: string): never {
  throw scoreProblem(file, "empty", {
    found: "the file is empty",
    expected: "a score",
    remedy: "Export the score again, or fetch a fresh copy of the file.",
  });
}

/** Paths of the scores an archive's container names, main score first. */
function rootfiles(source: TextSource, limits: ReadLimits): string[] {
  const found: { path: string; isXml: boolean }[] = [];
  const rootfile = {
    open: (state: typeof found, attributes: Attributes) => {
      const path = (attributes["full-path"] ?? "").replaceAll("\\", "/").replace(/^\.\//, "");
      const type = attributes["media-type"];
      state.push({ path, isXml: type === undefined || /xml|mei/i.test(type) });
    },
  };
  const container = elementTable<typeof found>({
    container: {
      children: elementTable({ rootfiles: { children: elementTable({ rootfile }) } }),
    },
  });
  walkXml({ source, depth: limits.depth, check: () => {} }, container, found);
  return found.filter(({ isXml }) => isXml).map(({ path }) => path);
}

function refuseRootfile(file: string, found: string): never {
  throw scoreProblem(file, "bad-rootfile", {
    found,
    expected: "the path of a score inside the archive",
    remedy: "Export the score again.",
  });
}

/** The only score in an archive that has no container, which is against the format but plain to see. */
function onlyScore(entries: readonly ArchiveEntry[], file: string): ArchiveEntry {
  const scores = entries.filter(
    ({ name }) => /\.(musicxml|xml|mei)$/i.test(name) && !/^(META-INF|__MACOSX)\//i.test(name),
  );
  const [score] = scores;
  if (score !== undefined && scores.length === 1) return score;
  throw scoreProblem(file, "no-container", {
    found: `the archive does not say which of its ${entries.length} files is the score`,
    expected: `a compressed score with ${CONTAINER}`,
    remedy: "Open the score from inside the archive, or export it again.",
  });
}

function chooseEntry(
  bytes: Uint8Array,
  entries: readonly ArchiveEntry[],
  options: { file: string; limits: ReadLimits; warnings: ScoreWarning[] },
): ArchiveEntry {
  const { file, limits, warnings } = options;
  const container = entries.find(({ name }) => name === CONTAINER);
  if (container === undefined) {
    const score = onlyScore(entries, file);
    const message = `The archive's container is missing; its only score, "${score.name}", is read.`;
    warnings.push({ code: "no-container", message, measureNumber: null, partId: null });
    return score;
  }
  const { source } = findEncoding(
    unpackEntry(bytes, container, { file, limits }),
    `${file}/${CONTAINER}`,
  );
  const [path] = rootfiles(source, limits);
  if (path === undefined || path === "") refuseRootfile(file, "the container names no score");
  if (isUnsafePath(path))
    refuseRootfile(file, `the container points outside the archive ("${path.slice(0, 60)}")`);
  const entry = entries.find(({ name }) => name === path);
  if (entry === undefined)
    refuseRootfile(file, `the container names "${path.slice(0, 60)}", which is not there`);
  return entry;
}

/**
 * Bytes of a file → the source of the score in it, ready to decode. A compressed score is unpacked
 * in memory within the limits; nothing is written or fetched.
 *
 * @throws ScoreReadError for what is no score, a bad archive, or a limit passed
 * @see MusicXML 4.0, compressed .MXL files
 */
export function openScore(bytes: Uint8Array, file: string, limits: ReadLimits): OpenedScore {
  if (bytes.length === 0) refuseEmpty(file);
  if (bytes.length > limits.bytes) {
    throw scoreProblem(file, "too-large", {
      found: `the file has ${Math.ceil(bytes.length / 1024 / 1024)} MB`,
      expected: `at most ${Math.round(limits.bytes / 1024 / 1024)} MB`,
      remedy: "Export single movements or parts and open those.",
    });
  }
  if (!startOf(bytes).startsWith("PK")) return { ...openText(bytes, file), entryName: null };
  const warnings: ScoreWarning[] = [];
  const entries = listArchive(bytes, file, limits);
  const entry = chooseEntry(bytes, entries, { file, limits, warnings });
  const content = unpackEntry(bytes, entry, { file, limits });
  const opened = openText(content, `${file}/${entry.name}`);
  return { ...opened, entryName: entry.name, warnings: [...warnings, ...opened.warnings] };
}

function openText(bytes: Uint8Array, file: string): Omit<OpenedScore, "entryName"> {
  const start = startOf(bytes);
  const looks = LOOKS.find(([magic]) => start.startsWith(magic))?.[1];
  if (looks !== undefined) refuseFormat(file, looks);
  if (start.startsWith("PK")) refuseFormat(file, "an archive within an archive");
  const opened = findEncoding(bytes, file);
  checkText(opened.source);
  return opened;
}
