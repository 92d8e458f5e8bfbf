import { scoreProblem } from "./limits";
import type { ScoreWarning } from "./model";

/** How far into a file its XML declaration can be. */
const DECLARATION_BYTES = 256;
const DECLARED = /^\s*<\?xml[^>]*?\sencoding\s*=\s*["']([A-Za-z0-9._:-]{1,40})["']/;
/** Bytes decoded at a time. One string of a whole score costs ten times as much to make. */
const CHUNK = 1 << 16;

const SINGLE_BYTE = new Set(["iso-8859-1", "latin1", "iso8859-1", "windows-1252", "cp1252"]);
/** What windows-1252 puts where ISO-8859-1 has control characters, from 0x80 on; gaps stay controls. */
const WINDOWS_1252 = "€\x81‚ƒ„…†‡ˆ‰Š‹Œ\x8dŽ\x8f\x90‘’“”•–—˜™š›œ\x9džŸ";

/** The bytes of an XML file and how to read them; may be decoded more than once. */
export interface TextSource {
  bytes: Uint8Array;
  encoding: string;
  /** For messages. */
  file: string;
}

/** Encoding told by the first bytes: a byte order mark, or the zero bytes of "<" in UTF-16. */
function encodingOfStart(bytes: Uint8Array): string | null {
  const [a, b, c, d] = bytes;
  if (a === 0xef && b === 0xbb && c === 0xbf) return "utf-8";
  if (a === 0xff && b === 0xfe) return c === 0 && d === 0 ? "utf-32" : "utf-16le";
  if (a === 0xfe && b === 0xff) return "utf-16be";
  if (a === 0x3c && b === 0 && c !== 0) return "utf-16le";
  if (a === 0 && b === 0x3c) return "utf-16be";
  return a === 0 && b === 0 && c === 0xfe && d === 0xff ? "utf-32" : null;
}

function declaredEncoding(bytes: Uint8Array): string | null {
  let start = "";
  for (const byte of bytes.subarray(0, DECLARATION_BYTES)) start += String.fromCharCode(byte);
  return DECLARED.exec(start)?.[1]?.toLowerCase() ?? null;
}

/**
 * Tells how the bytes of an XML file are to be read: by the byte order mark, else
 * the encoding declared, else UTF-8. ISO-8859-1 is read as windows-1252, which
 * has letters where the other has none.
 *
 * @throws ScoreReadError `bad-encoding` when the encoding is not known here
 */
export function findEncoding(
  bytes: Uint8Array,
  file: string,
): { source: TextSource; warnings: ScoreWarning[] } {
  const warnings: ScoreWarning[] = [];
  const marked = encodingOfStart(bytes);
  let encoding = marked ?? declaredEncoding(bytes) ?? "utf-8";
  if (marked === null && /^(utf-16|ucs-2|iso-10646)/.test(encoding)) {
    const message = `The file calls itself ${encoding} but holds single bytes; it is read as UTF-8.`;
    warnings.push({ code: "wrong-encoding", message, measureNumber: null, partId: null });
    encoding = "utf-8";
  }
  if (!SINGLE_BYTE.has(encoding)) makeDecoder(encoding, file);
  return { source: { bytes, encoding, file }, warnings };
}

function makeDecoder(label: string, file: string): TextDecoder {
  try {
    return new TextDecoder(label, { fatal: true });
  } catch {
    throw scoreProblem(file, "bad-encoding", {
      found: `the file is written in "${label}", which cannot be read here`,
      expected: "UTF-8, UTF-16 or ISO-8859-1",
      remedy: "Export the score again as UTF-8.",
    });
  }
}

/**
 * The text of a file piece by piece, without its byte order mark.
 *
 * @throws ScoreReadError `bad-encoding` at bytes that are no text in this encoding
 */
export function* decodeChunks(source: TextSource): Generator<string> {
  const { bytes, encoding, file } = source;
  if (SINGLE_BYTE.has(encoding)) {
    for (let at = 0; at < bytes.length; at += CHUNK)
      yield singleBytes(bytes.subarray(at, at + CHUNK));
    return;
  }
  const decoder = makeDecoder(encoding, file);
  for (let at = 0; at < bytes.length; at += CHUNK) {
    yield decodePiece(decoder, source, at);
  }
}

function decodePiece(decoder: TextDecoder, source: TextSource, at: number): string {
  const end = at + CHUNK;
  try {
    return decoder.decode(source.bytes.subarray(at, end), { stream: end < source.bytes.length });
  } catch (cause) {
    const problem = scoreProblem(source.file, "bad-encoding", {
      found: `some bytes are no ${source.encoding} text`,
      expected: `${source.encoding}, as the file says or as XML without a declaration must be`,
      remedy: "Export the score again as UTF-8.",
    });
    problem.problem.place.line = lineOfDamage(source);
    problem.cause = cause;
    throw problem;
  }
}

function singleBytes(bytes: Uint8Array): string {
  let text = "";
  for (const byte of bytes) {
    const isExtra = byte >= 0x80 && byte < 0xa0;
    text += isExtra ? WINDOWS_1252[byte - 0x80] : String.fromCharCode(byte);
  }
  return text;
}

/** Line of the first byte sequence that is no character in this encoding, from 1. */
function lineOfDamage({ bytes, encoding }: TextSource): number {
  const text = new TextDecoder(encoding).decode(bytes);
  const before = text.slice(0, Math.max(text.indexOf("\uFFFD"), 0));
  return before.split("\n").length;
}
