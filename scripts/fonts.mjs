// @ts-check
// Why: the rasteriser and the typesetter read TrueType, and the font package brings WOFF only. WOFF 1 is TrueType with
// each table deflated, so this unpacks it and puts the tables back in order, with padding and checksums made anew.
// The WOFF2 files, which pictures carry inside them, go beside. Run: node scripts/fonts.mjs [folder]

import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { inflateSync } from "node:zlib";

const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));

/** The fonts of every picture; `source` is a file name without its ending in the font package. */
export const FONTS = [
  { name: "B612-Regular", source: "b612/files/b612-latin-400-normal" },
  { name: "B612-Bold", source: "b612/files/b612-latin-700-normal" },
  { name: "B612Mono-Regular", source: "b612-mono/files/b612-mono-latin-400-normal" },
  { name: "B612Mono-Bold", source: "b612-mono/files/b612-mono-latin-700-normal" },
];

/** Beyond plain letters and digits, what our pictures write; arrows and triangles are drawn as paths instead. */
export const NEEDED_SIGNS = "°′″−·×½–—’“”…";

/** @typedef {{ flavor: number, tables: Map<string, Buffer> }} Sfnt */

/**
 * @param {typeof FONTS[number]} font
 * @param {"woff" | "woff2"} ending
 */
export const fontFile = (font, ending) =>
  readFileSync(join(ROOT, "node_modules", "@fontsource", `${font.source}.${ending}`));

/**
 * The tables of a WOFF 1 file (W3C WOFF File Format 1.0, sections 3 to 5).
 * @param {Buffer} woff
 * @returns {Sfnt}
 */
export function readWoff(woff) {
  if (woff.toString("latin1", 0, 4) !== "wOFF") throw new Error("not a WOFF 1 file");
  const tables = new Map();
  const count = woff.readUInt16BE(12);
  for (let i = 0; i < count; i++) {
    const entry = 44 + 20 * i;
    const offset = woff.readUInt32BE(entry + 4);
    const packedLength = woff.readUInt32BE(entry + 8);
    const length = woff.readUInt32BE(entry + 12);
    const packed = woff.subarray(offset, offset + packedLength);
    const table = packedLength < length ? inflateSync(packed) : Buffer.from(packed);
    const tag = woff.toString("latin1", entry, entry + 4);
    if (table.length !== length)
      throw new Error(`table ${tag} unpacks to ${table.length} bytes, not ${length}`);
    tables.set(tag, table);
  }
  return { flavor: woff.readUInt32BE(4), tables };
}

/** @param {number} length */
const padded = (length) => (length + 3) & ~3;

/**
 * Sum of big-endian 32-bit words, the last padded with zeros (OpenType, "Calculating checksums").
 * @param {Buffer} bytes
 */
export function checksum(bytes) {
  const whole = Buffer.alloc(padded(bytes.length));
  bytes.copy(whole);
  let sum = 0;
  for (let i = 0; i < whole.length; i += 4) sum = (sum + whole.readUInt32BE(i)) >>> 0;
  return sum;
}

/**
 * A TrueType file from its tables (OpenType, "Organization of an OpenType font").
 * @param {Sfnt} sfnt
 */
export function writeSfnt({ flavor, tables }) {
  const tags = [...tables.keys()].sort();
  const power = Math.floor(Math.log2(tags.length));
  const header = Buffer.alloc(12 + 16 * tags.length);
  header.writeUInt32BE(flavor, 0);
  header.writeUInt16BE(tags.length, 4);
  header.writeUInt16BE(2 ** power * 16, 6);
  header.writeUInt16BE(power, 8);
  header.writeUInt16BE(tags.length * 16 - 2 ** power * 16, 10);
  /** @type {Buffer[]} */
  const bodies = [];
  let offset = header.length;
  let headOffset = 0;
  tags.forEach((tag, i) => {
    const table = Buffer.from(tables.get(tag) ?? Buffer.alloc(0));
    if (tag === "head") {
      headOffset = offset;
      // Counted as zero while the sum over the file is made.
      table.writeUInt32BE(0, 8);
    }
    const entry = 12 + 16 * i;
    header.write(tag, entry, "latin1");
    header.writeUInt32BE(checksum(table), entry + 4);
    header.writeUInt32BE(offset, entry + 8);
    header.writeUInt32BE(table.length, entry + 12);
    const body = Buffer.alloc(padded(table.length));
    table.copy(body);
    bodies.push(body);
    offset += body.length;
  });
  const file = Buffer.concat([header, ...bodies]);
  file.writeUInt32BE((0xb1b0afba - checksum(file)) >>> 0, headOffset + 8);
  return file;
}

/**
 * Glyph number by character, from the format 4 subtables of `cmap`.
 * @param {Sfnt} sfnt
 * @returns {Map<string, number>}
 */
export function glyphsByCharacter({ tables }) {
  const cmap = tableOf(tables, "cmap");
  const glyphs = new Map();
  for (let i = 0; i < cmap.readUInt16BE(2); i++) {
    const start = cmap.readUInt32BE(8 + 8 * i);
    if (cmap.readUInt16BE(start) === 4) readFormat4(cmap.subarray(start), glyphs);
  }
  return glyphs;
}

/**
 * @param {Buffer} subtable
 * @param {Map<string, number>} glyphs filled
 */
function readFormat4(subtable, glyphs) {
  const doubled = subtable.readUInt16BE(6);
  for (let i = 0; i < doubled; i += 2) {
    const last = subtable.readUInt16BE(14 + i);
    const first = subtable.readUInt16BE(16 + doubled + i);
    const delta = subtable.readUInt16BE(16 + 2 * doubled + i);
    const rangeAt = 16 + 3 * doubled + i;
    const range = subtable.readUInt16BE(rangeAt);
    for (let code = first; code <= last && code !== 0xffff; code++) {
      const listed = range === 0 ? code : subtable.readUInt16BE(rangeAt + range + 2 * (code - first));
      const glyph = listed === 0 ? 0 : (listed + delta) & 0xffff;
      if (glyph !== 0) glyphs.set(String.fromCodePoint(code), glyph);
    }
  }
}

/**
 * Advance width of each character, thousandths of the type size.
 * @param {Sfnt} sfnt
 * @returns {Map<string, number>}
 */
export function advanceWidths(sfnt) {
  const unitsPerEm = tableOf(sfnt.tables, "head").readUInt16BE(18);
  const longMetrics = tableOf(sfnt.tables, "hhea").readUInt16BE(34);
  const hmtx = tableOf(sfnt.tables, "hmtx");
  const widths = new Map();
  for (const [character, glyph] of glyphsByCharacter(sfnt)) {
    const units = hmtx.readUInt16BE(4 * Math.min(glyph, longMetrics - 1));
    widths.set(character, Math.round((units * 1000) / unitsPerEm));
  }
  return widths;
}

/** @param {Map<string, Buffer>} tables @param {string} tag */
function tableOf(tables, tag) {
  const table = tables.get(tag);
  if (table === undefined) throw new Error(`the font has no table ${tag}`);
  return table;
}

/**
 * Writes every font as TrueType and as WOFF2. Throws when a sign that our pictures write is missing.
 * @param {string} into folder, made when it is not there
 */
export function makeFonts(into) {
  mkdirSync(into, { recursive: true });
  for (const font of FONTS) {
    const sfnt = readWoff(fontFile(font, "woff"));
    const glyphs = glyphsByCharacter(sfnt);
    const missing = [...NEEDED_SIGNS].filter((sign) => !glyphs.has(sign));
    if (missing.length > 0) throw new Error(`${font.name} lacks ${missing.join(" ")}`);
    writeFileSync(join(into, `${font.name}.ttf`), writeSfnt(sfnt));
    writeFileSync(join(into, `${font.name}.woff2`), fontFile(font, "woff2"));
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    makeFonts(process.argv[2] ?? join(ROOT, "dist", "fonts"));
  } catch (error) {
    console.error(`fonts: ${error instanceof Error ? error.message : error}`);
    process.exitCode = 1;
  }
}
