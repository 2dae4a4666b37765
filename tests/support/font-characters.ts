/** Which characters a font file has a glyph for, and how wide they are: read from the file itself. */
import { readFileSync } from "node:fs";
import { brotliDecompressSync } from "node:zlib";
import { sfntFromWoff } from "../../src/site/pictures/woff.ts";

type Tables = (tag: string) => Buffer;

/**
 * Tags of the WOFF 2 directory by number, as far as they are read here (published: W3C WOFF File Format 2.0,
 * section 4.1).
 */
const KNOWN = ["cmap", "head", "hhea", "hmtx", "maxp", "name", "OS/2", "post", "cvt ", "fpgm", "glyf", "loca"];

function woff2Tables(file: Buffer): Tables {
  let at = 48;
  const base128 = (): number => {
    let value = 0;
    for (;;) {
      const byte = file[at++]!;
      value = value * 128 + (byte & 127);
      if (byte < 128) return value;
    }
  };
  const entries = Array.from({ length: file.readUInt16BE(12) }, () => {
    const flags = file[at++]!;
    const tag = (flags & 63) === 63 ? file.toString("latin1", at, (at += 4)) : (KNOWN[flags & 63] ?? `${flags & 63}`);
    const length = base128();
    const version = flags >> 6;
    const transformed = tag === "glyf" || tag === "loca" ? version !== 3 : version !== 0;
    return { tag, length: transformed ? base128() : length };
  });
  const data = brotliDecompressSync(file.subarray(at, at + file.readUInt32BE(20)));
  let offset = 0;
  const found = new Map(entries.map(({ tag, length }) => [tag, data.subarray(offset, (offset += length))]));
  return (tag) => found.get(tag)!;
}

function sfntTables(sfnt: Buffer): Tables {
  const found = new Map(
    Array.from({ length: sfnt.readUInt16BE(4) }, (_, i) => {
      const entry = 12 + 16 * i;
      const start = sfnt.readUInt32BE(entry + 8);
      return [sfnt.toString("latin1", entry, entry + 4), sfnt.subarray(start, start + sfnt.readUInt32BE(entry + 12))];
    }),
  );
  return (tag) => found.get(tag)!;
}

/** Glyph by character, from a format 4 subtable (published: OpenType specification, cmap). */
function glyphsOf(cmap: Buffer): Map<number, number> {
  const glyphs = new Map<number, number>();
  for (let i = 0; i < cmap.readUInt16BE(2); i++) {
    const sub = cmap.subarray(cmap.readUInt32BE(8 + 8 * i));
    if (sub.readUInt16BE(0) !== 4) continue;
    const segments = sub.readUInt16BE(6) / 2;
    for (let s = 0; s < segments; s++) {
      const [end, start, delta] = [14, 16 + 2 * segments, 16 + 4 * segments].map((from) =>
        sub.readUInt16BE(from + 2 * s),
      ) as [number, number, number];
      const rangeAt = 16 + 6 * segments + 2 * s;
      const range = sub.readUInt16BE(rangeAt);
      for (let code = start; code <= end && code < 0xffff; code++) {
        const raw = range === 0 ? code : sub.readUInt16BE(rangeAt + range + 2 * (code - start));
        const glyph = range !== 0 && raw === 0 ? 0 : (raw + delta) & 0xffff;
        if (glyph !== 0) glyphs.set(code, glyph);
      }
    }
  }
  return glyphs;
}

const tablesOf = (path: string): Tables => {
  const file = readFileSync(path);
  return file.toString("latin1", 0, 4) === "wOF2" ? woff2Tables(file) : sfntTables(sfntFromWoff(file));
};

/** Code points a WOFF or WOFF 2 file can print. */
export const charactersOf = (path: string): ReadonlySet<number> => new Set(glyphsOf(tablesOf(path)("cmap")).keys());

/** Advance width of a character in ems, from a WOFF file; undefined where it has none. */
export function advancesOf(path: string): (character: string) => number | undefined {
  const tables = tablesOf(path);
  const glyphs = glyphsOf(tables("cmap"));
  const [unitsPerEm, metrics] = [tables("head").readUInt16BE(18), tables("hhea").readUInt16BE(34)];
  return (character) => {
    const glyph = glyphs.get(character.codePointAt(0)!);
    return glyph === undefined
      ? undefined
      : tables("hmtx").readUInt16BE(4 * Math.min(glyph, metrics - 1)) / unitsPerEm;
  };
}
