import { readFileSync } from "node:fs";
import { brotliDecompressSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { GLYPH_BOXES } from "@/app/ui/glyph-boxes";
import { loadGlossary } from "@/lib/glossary/load";
import { SMUFL_CODEPOINTS } from "@/lib/glossary/smufl";

/** The tags a WOFF2 table directory abbreviates, in the order of its table. @see W3C WOFF 2.0, 4.1 */
const KNOWN_TAGS =
  "cmap head hhea hmtx maxp name OS/2 post cvt_ fpgm glyf loca prep CFF_ VORG EBDT EBLC gasp hdmx kern LTSH PCLT VDMX vhea vmtx BASE GDEF GPOS GSUB EBSC JSTF MATH CBDT CBLC COLR CPAL SVG_ sbix acnt avar bdat bloc bsln cvar fdsc feat fmtx fvar gvar hsty just lcar mort morx opbd prop trak Zapf Silf Glat Gloc Feat Sill".split(
    " ",
  );

/** Code points a WOFF2 font can draw, read from its character map (formats 4 and 12). */
function codePointsOf(file: string): Set<number> {
  const bytes = readFileSync(file);
  const tables = bytes.readUInt16BE(12);
  const compressed = bytes.readUInt32BE(20);
  let at = 48;
  const base128 = () => {
    let value = 0;
    for (let byte = 0x80; byte & 0x80; ) {
      byte = bytes.readUInt8(at++);
      value = value * 128 + (byte & 0x7f);
    }
    return value;
  };
  let offset = 0;
  let map = { offset: -1, length: 0 };
  for (let i = 0; i < tables; i++) {
    const flags = bytes.readUInt8(at++);
    const index = flags & 0x3f;
    const tag = index === 63 ? bytes.toString("latin1", at, at + 4) : KNOWN_TAGS[index];
    if (index === 63) at += 4;
    const original = base128();
    const transformed = tag === "glyf" || tag === "loca" ? flags >> 6 === 0 : flags >> 6 !== 0;
    const length = transformed ? base128() : original;
    if (tag === "cmap") map = { offset, length };
    offset += length;
  }
  const data = brotliDecompressSync(bytes.subarray(at, at + compressed));
  return readCmap(data.subarray(map.offset, map.offset + map.length));
}

function readCmap(cmap: Buffer): Set<number> {
  const found = new Set<number>();
  for (let i = 0; i < cmap.readUInt16BE(2); i++) {
    const table = cmap.subarray(cmap.readUInt32BE(4 + i * 8 + 4));
    const format = table.readUInt16BE(0);
    if (format === 12) {
      for (let group = 0; group < table.readUInt32BE(12); group++) {
        const at = 16 + group * 12;
        for (let c = table.readUInt32BE(at); c <= table.readUInt32BE(at + 4); c++) found.add(c);
      }
    } else if (format === 4) {
      const double = table.readUInt16BE(6);
      for (let segment = 0; segment < double; segment += 2) {
        const end = table.readUInt16BE(14 + segment);
        const start = table.readUInt16BE(16 + double + segment);
        for (let c = start; c <= end && c < 0xffff; c++) found.add(c);
      }
    }
  }
  return found;
}

const drawn = codePointsOf("app/ui/fonts/signs.woff2");

// Checked against the W3C's SMuFL table of names, as kept in lib/glossary/smufl.ts.
describe("the font of signs", () => {
  it("draws every name of the table", () => {
    const missing = Object.entries(SMUFL_CODEPOINTS).filter(([, code]) => !drawn.has(code));
    expect(missing.map(([name]) => name)).toEqual([]);
  });

  it("does not draw what was cut away", () => {
    // accSagittal5CommaUp, SMuFL 1.4: an accidental no entry uses.
    expect(drawn.has(0xe302)).toBe(false);
  });

  it("has the extent of every sign the glossary shows", () => {
    const glyphs = loadGlossary().entries.flatMap(({ sign }) => sign?.glyph ?? []);
    expect(glyphs.filter((name) => GLYPH_BOXES[name] === undefined)).toEqual([]);
  });
});
