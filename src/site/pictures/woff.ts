/**
 * Unpacks a font from WOFF, the form that font packages ship, into the sfnt form that
 * renderers read (W3C WOFF File Format 1.0, sections 3 to 5: a header, a directory, and
 * tables that are each compressed by zlib or stored).
 */
import { inflateSync } from "node:zlib";

const HEADER_BYTES = 44;
const ENTRY_BYTES = 20;
const SFNT_HEADER_BYTES = 12;
const SFNT_ENTRY_BYTES = 16;
const padded = (length: number): number => (length + 3) & ~3;

/**
 * @returns the same font as an OpenType or TrueType file, tables in the directory's order
 * @throws RangeError when the bytes are not WOFF, or a table is not as long as it says
 */
export function sfntFromWoff(woff: Buffer): Buffer {
  if (woff.length < HEADER_BYTES || woff.toString("latin1", 0, 4) !== "wOFF")
    throw new RangeError("This font is not WOFF 1.0: its first four bytes must be wOFF.");
  const count = woff.readUInt16BE(12);
  const tables = Array.from({ length: count }, (_, i) => {
    const at = HEADER_BYTES + i * ENTRY_BYTES;
    const [offset, compressed, length] = [
      woff.readUInt32BE(at + 4),
      woff.readUInt32BE(at + 8),
      woff.readUInt32BE(at + 12),
    ];
    const stored = woff.subarray(offset, offset + compressed);
    const bytes = compressed < length ? inflateSync(stored) : stored;
    if (bytes.length !== length)
      throw new RangeError(`A table of this font has ${bytes.length} bytes where its directory says ${length}.`);
    return { tag: woff.readUInt32BE(at), checksum: woff.readUInt32BE(at + 16), bytes };
  });

  const first = SFNT_HEADER_BYTES + count * SFNT_ENTRY_BYTES;
  const sfnt = Buffer.alloc(tables.reduce((sum, { bytes }) => sum + padded(bytes.length), first));
  // The binary search fields of the OpenType table directory.
  const selector = Math.floor(Math.log2(count));
  sfnt.writeUInt32BE(woff.readUInt32BE(4), 0);
  sfnt.writeUInt16BE(count, 4);
  sfnt.writeUInt16BE(2 ** selector * SFNT_ENTRY_BYTES, 6);
  sfnt.writeUInt16BE(selector, 8);
  sfnt.writeUInt16BE(count * SFNT_ENTRY_BYTES - 2 ** selector * SFNT_ENTRY_BYTES, 10);
  let offset = first;
  tables.forEach(({ tag, checksum, bytes }, i) => {
    const at = SFNT_HEADER_BYTES + i * SFNT_ENTRY_BYTES;
    sfnt.writeUInt32BE(tag, at);
    sfnt.writeUInt32BE(checksum, at + 4);
    sfnt.writeUInt32BE(offset, at + 8);
    sfnt.writeUInt32BE(bytes.length, at + 12);
    bytes.copy(sfnt, offset);
    offset += padded(bytes.length);
  });
  return sfnt;
}
