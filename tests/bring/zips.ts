/** Zip archives made byte by byte, sound ones and others (APPNOTE 6.3, 4.3.7, 4.3.12, 4.3.16). */
import { crc32, deflateRawSync } from "node:zlib";

export interface ZipPart {
  readonly name: string;
  readonly content: Uint8Array;
  /** What the directory says instead of the truth. */
  readonly declared?: {
    readonly size?: number;
    readonly crc?: number;
    readonly flags?: number;
    readonly method?: number;
    readonly packed?: number;
  };
}

export function zipOf(parts: readonly ZipPart[]): Buffer {
  const locals: Buffer[] = [];
  const central: Buffer[] = [];
  let offset = 0;
  for (const { name, content, declared = {} } of parts) {
    const packed = deflateRawSync(content);
    const title = Buffer.from(name);
    const header = (signature: number, length: number): Buffer => {
      const bytes = Buffer.alloc(length);
      bytes.writeUInt32LE(signature, 0);
      return bytes;
    };
    const local = header(0x04034b50, 30);
    local.writeUInt16LE(8, 8);
    local.writeUInt16LE(title.length, 26);
    const entry = header(0x02014b50, 46);
    entry.writeUInt16LE(declared.flags ?? 0x800, 8);
    entry.writeUInt16LE(declared.method ?? 8, 10);
    entry.writeUInt32LE(declared.crc ?? crc32(content), 16);
    entry.writeUInt32LE(declared.packed ?? packed.length, 20);
    entry.writeUInt32LE(declared.size ?? content.length, 24);
    entry.writeUInt16LE(title.length, 28);
    entry.writeUInt32LE(offset, 42);
    locals.push(local, title, packed);
    central.push(entry, title);
    offset += local.length + title.length + packed.length;
  }
  const directory = Buffer.concat(central);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(parts.length, 8);
  end.writeUInt16LE(parts.length, 10);
  end.writeUInt32LE(directory.length, 12);
  end.writeUInt32LE(offset, 16);
  return Buffer.concat([...locals, directory, end]);
}
