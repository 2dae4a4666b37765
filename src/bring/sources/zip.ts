/**
 * A zip archive in memory: what its directory declares is held to the limits first, and
 * unpacking stops at what was declared. Nothing of it is written anywhere.
 *
 * Layout after the .ZIP File Format Specification (APPNOTE 6.3), sections 4.3.7, 4.3.12
 * and 4.3.16.
 */
import { crc32, inflateRawSync } from "node:zlib";
import { checkCount, LIMITS, megabytes } from "./limits.ts";
import { BringError } from "./refusal.ts";

export interface ZipEntry {
  readonly name: string;
  /** @throws BringError when its bytes are not what the directory says. */
  read(): Uint8Array;
}

const [LOCAL, CENTRAL, END] = [0x04034b50, 0x02014b50, 0x06054b50];
const [STORED, DEFLATED] = [0, 8];

export const isZip = (bytes: Uint8Array): boolean =>
  bytes[0] === 0x50 && bytes[1] === 0x4b && (bytes[2] === 3 || bytes[2] === 5);

/** Offset of the end record, which a comment of up to 65,535 bytes may follow. */
function findEnd(view: DataView): number {
  for (let at = view.byteLength - 22; at >= Math.max(0, view.byteLength - 22 - 65_535); at--) {
    if (view.getUint32(at, true) === END) return at;
  }
  return -1;
}

/**
 * The files of an archive, folders and macOS's `__MACOSX` copies left out.
 *
 * @throws BringError for one that is broken, encrypted, of a rare method, or unpacks to more than is read
 */
export function readZip(file: string, bytes: Uint8Array): ZipEntry[] {
  const broken = (what: string): BringError =>
    new BringError(file, `is no sound zip archive: ${what}. Pack it again.`);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = findEnd(view);
  if (end === -1) throw broken("its directory is missing");
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  checkCount(file, count, LIMITS.archiveEntries, "files");
  const entries: ZipEntry[] = [];
  let unpacked = 0;
  for (let i = 0; i < count; i++) {
    if (at + 46 > end || view.getUint32(at, true) !== CENTRAL)
      throw broken("its directory does not list what it says");
    const [flags, method] = [view.getUint16(at + 8, true), view.getUint16(at + 10, true)];
    const crc = view.getUint32(at + 16, true);
    const [packed, size] = [view.getUint32(at + 20, true), view.getUint32(at + 24, true)];
    const [nameLength, extraLength, commentLength] = [
      view.getUint16(at + 28, true),
      view.getUint16(at + 30, true),
      view.getUint16(at + 32, true),
    ];
    const local = view.getUint32(at + 42, true);
    const name = Buffer.from(bytes.subarray(at + 46, at + 46 + nameLength)).toString(
      (flags & 0x800) !== 0 ? "utf8" : "latin1",
    );
    at += 46 + nameLength + extraLength + commentLength;
    if (name.endsWith("/") || name.startsWith("__MACOSX/")) continue;
    if ([packed, size, local].includes(0xffffffff))
      throw new BringError(file, "is a zip64 archive, made for files larger than are read. Pack only the map files.");
    if ((flags & 1) !== 0)
      throw new BringError(file, `holds ${JSON.stringify(name)} encrypted. Pack it again without a password.`);
    if (method !== STORED && method !== DEFLATED)
      throw new BringError(
        file,
        `packs ${JSON.stringify(name)} by method ${method}, which is not read. Pack it again as an ordinary zip.`,
      );
    unpacked += size;
    if (unpacked > LIMITS.unpackedBytes)
      throw new BringError(
        file,
        `unpacks to more than ${megabytes(LIMITS.unpackedBytes)}, the most that is read. Pack only the map files of the course.`,
      );
    entries.push({
      name,
      read() {
        if (local + 30 > bytes.length || view.getUint32(local, true) !== LOCAL)
          throw broken(`${JSON.stringify(name)} is not where its directory says`);
        const from = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
        if (from + packed > bytes.length) throw broken(`${JSON.stringify(name)} is cut off`);
        const body = bytes.subarray(from, from + packed);
        let content: Uint8Array;
        try {
          // Stops where the directory said it would end, whatever the stream goes on to hold.
          content = method === STORED ? body : inflateRawSync(body, { maxOutputLength: Math.max(1, size) });
        } catch (cause) {
          const longer = cause instanceof RangeError;
          throw longer
            ? broken(`${JSON.stringify(name)} unpacks to more than the ${size} bytes it declares`)
            : broken(`${JSON.stringify(name)} cannot be unpacked`);
        }
        if (content.length !== size)
          throw broken(`${JSON.stringify(name)} unpacks to ${content.length} bytes, not the ${size} it declares`);
        if (crc32(content) !== crc) throw broken(`the check sum of ${JSON.stringify(name)} is wrong`);
        return content;
      },
    });
  }
  return entries;
}
