import { Inflate } from "fflate";
import { type ReadLimits, scoreProblem } from "./limits";

/** Packed bytes given to the inflater at a time; it can grow them about a thousandfold. */
const STEP = 4096;
/** Small files may be packed at any ratio. */
const RATIO_FROM = 1 << 20;

const END_OF_DIRECTORY = 0x06054b50;
const DIRECTORY_ENTRY = 0x02014b50;
const LOCAL_HEADER = 0x04034b50;

export interface ArchiveEntry {
  /** Path with forward slashes. */
  name: string;
  packedSize: number;
  size: number;
  crc: number;
  method: number;
  encrypted: boolean;
  localHeader: number;
}

function damaged(file: string, found: string): never {
  throw scoreProblem(file, "bad-archive", {
    found,
    expected: "a sound compressed score",
    remedy: "Fetch the file again or export it uncompressed.",
  });
}

function tooLarge(file: string, found: string, expected: string): never {
  throw scoreProblem(file, "too-large", {
    found,
    expected,
    remedy: "Export single movements or parts and open those.",
  });
}

function megabytes(bytes: number): string {
  return `${Math.round(bytes / 1024 / 1024)} MB`;
}

/** Names that lead out of the archive or mean different things on different machines. */
export function isUnsafePath(name: string): boolean {
  return (
    name.startsWith("/") ||
    /^[A-Za-z]:/.test(name) ||
    name.includes("\0") ||
    name.split("/").includes("..")
  );
}

function findDirectory(view: DataView, file: string): { offset: number; count: number } {
  const lowest = Math.max(0, view.byteLength - 22 - 0xffff);
  for (let at = view.byteLength - 22; at >= lowest; at--) {
    if (view.getUint32(at, true) !== END_OF_DIRECTORY) continue;
    return { offset: view.getUint32(at + 16, true), count: view.getUint16(at + 10, true) };
  }
  return damaged(file, "the archive has no directory; it is cut off or damaged");
}

/**
 * Lists an archive from its central directory, before anything is unpacked.
 *
 * @throws ScoreReadError `bad-archive` for damage, encryption or paths leading out;
 *   `too-large` for too many files or too much inside
 */
export function listArchive(bytes: Uint8Array, file: string, limits: ReadLimits): ArchiveEntry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { offset, count } = findDirectory(view, file);
  if (count > limits.entries) {
    tooLarge(file, `the archive holds ${count} files`, `at most ${limits.entries}`);
  }
  const entries: ArchiveEntry[] = [];
  const names = new TextDecoder();
  let at = offset;
  let total = 0;
  for (let i = 0; i < count; i++) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== DIRECTORY_ENTRY) {
      damaged(file, "the archive's directory is damaged");
    }
    const nameLength = view.getUint16(at + 28, true);
    const name = names.decode(bytes.subarray(at + 46, at + 46 + nameLength));
    const size = view.getUint32(at + 24, true);
    total += size;
    entries.push({
      name: name.replaceAll("\\", "/").replace(/^\.\//, ""),
      packedSize: view.getUint32(at + 20, true),
      size,
      crc: view.getUint32(at + 16, true),
      method: view.getUint16(at + 10, true),
      encrypted: (view.getUint16(at + 8, true) & 1) === 1,
      localHeader: view.getUint32(at + 42, true),
    });
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  if (total > limits.archiveBytes) {
    tooLarge(
      file,
      `the archive unpacks to ${megabytes(total)}`,
      `at most ${megabytes(limits.archiveBytes)}`,
    );
  }
  checkNames(entries, file);
  return entries;
}

function checkNames(entries: readonly ArchiveEntry[], file: string): void {
  const seen = new Set<string>();
  for (const { name } of entries) {
    if (isUnsafePath(name))
      damaged(file, `the archive names a file outside itself ("${name.slice(0, 60)}")`);
    if (seen.has(name)) damaged(file, `the archive holds two files named "${name.slice(0, 60)}"`);
    seen.add(name);
  }
}

/** Where the packed bytes of an entry lie, checked against its local header. */
function packedBytes(bytes: Uint8Array, entry: ArchiveEntry, file: string): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const at = entry.localHeader;
  if (at + 30 > bytes.length || view.getUint32(at, true) !== LOCAL_HEADER) {
    damaged(file, `"${entry.name}" is not where the archive says`);
  }
  const start = at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  if (start + entry.packedSize > bytes.length) damaged(file, `"${entry.name}" is cut off`);
  return bytes.subarray(start, start + entry.packedSize);
}

/**
 * Unpacks one entry, never past the limits whatever the archive claims.
 *
 * @throws ScoreReadError `too-large`, or `bad-archive` when size or checksum are untrue
 */
export function unpackEntry(
  bytes: Uint8Array,
  entry: ArchiveEntry,
  options: { file: string; limits: ReadLimits },
): Uint8Array {
  const { file, limits } = options;
  if (entry.encrypted) damaged(file, `"${entry.name}" is locked with a password`);
  const packed = packedBytes(bytes, entry, file);
  const cap = Math.min(limits.bytes, Math.max(RATIO_FROM, packed.length * limits.ratio));
  if (entry.size > cap) refuseSize(entry, file, cap);
  const content = inflate(packed, entry, { file, cap });
  if (content.length !== entry.size)
    damaged(file, `"${entry.name}" is not as long as the archive says`);
  if (crc32(content) !== entry.crc) damaged(file, `"${entry.name}" is damaged (checksum)`);
  return content;
}

function refuseSize(entry: ArchiveEntry, file: string, cap: number): never {
  return tooLarge(
    file,
    `"${entry.name}" unpacks to more than ${megabytes(cap)}`,
    "a score of reasonable size",
  );
}

function inflate(
  packed: Uint8Array,
  entry: ArchiveEntry,
  { file, cap }: { file: string; cap: number },
): Uint8Array {
  if (entry.method === 0) return packed;
  if (entry.method !== 8) damaged(file, `"${entry.name}" is packed in a way that is not deflate`);
  const content = new Uint8Array(entry.size);
  let length = 0;
  const inflater = new Inflate((chunk) => {
    if (length + chunk.length > cap) refuseSize(entry, file, cap);
    if (length + chunk.length > content.length) {
      damaged(file, `"${entry.name}" is longer than the archive says`);
    }
    content.set(chunk, length);
    length += chunk.length;
  });
  try {
    for (let at = 0; at < packed.length; at += STEP) {
      inflater.push(packed.subarray(at, at + STEP), at + STEP >= packed.length);
    }
  } catch (error) {
    if (error instanceof Error && error.name === "ScoreReadError") throw error;
    damaged(file, `"${entry.name}" cannot be unpacked`);
  }
  return content.subarray(0, length);
}

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});

/** CRC-32 as in ISO/IEC 21320-1 (zip). */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (let i = 0; i < bytes.length; i++) {
    crc = (CRC_TABLE[(crc ^ (bytes[i] ?? 0)) & 0xff] ?? 0) ^ (crc >>> 8);
  }
  return (crc ^ 0xffffffff) >>> 0;
}
