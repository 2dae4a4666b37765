/**
 * Unpacking a block of a TIFF, never to more bytes than its header allows and never to
 * guesses where the packed bytes are damaged. The packings are TIFF 6.0's and GDAL's ZSTD.
 */
import { inflateSync, zstdDecompressSync } from "node:zlib";

/** A block that cannot be unpacked. */
export class UnpackError extends Error {
  override readonly name = "UnpackError";
}

/** TIFF's numbers for compression, tag 259, as far as heights come in them. */
export const PACKINGS: Readonly<Record<number, (packed: Uint8Array, mostBytes: number) => Uint8Array>> = {
  1: (packed) => packed,
  5: unpackLzw,
  8: unpackDeflate,
  32946: unpackDeflate,
  32773: unpackBits,
  50000: (packed, mostBytes) => fromLibrary(() => zstdDecompressSync(packed, { maxOutputLength: mostBytes })),
};

function unpackDeflate(packed: Uint8Array, mostBytes: number): Uint8Array {
  return fromLibrary(() => inflateSync(packed, { maxOutputLength: mostBytes }));
}

function fromLibrary(unpack: () => Uint8Array): Uint8Array {
  try {
    return unpack();
  } catch (cause) {
    const code = cause instanceof Error && "code" in cause ? String(cause.code) : "";
    throw new UnpackError(
      code === "ERR_BUFFER_TOO_LARGE" ? "it unpacks to more than its header says" : "its packed bytes are damaged",
      { cause },
    );
  }
}

/** Packings without a checksum betray damage by what is left over, beyond an end mark and a byte to make it even. */
function refuseRest(bytes: number): void {
  if (bytes > 3) throw new UnpackError("its packed bytes are damaged");
}

/** TIFF 6.0, section 9. */
function unpackBits(packed: Uint8Array, mostBytes: number): Uint8Array {
  const out = new Uint8Array(mostBytes);
  let filled = 0;
  let i = 0;
  while (i < packed.length && filled < mostBytes) {
    const head = packed[i++]!;
    if (head === 128) continue;
    const count = head < 128 ? head + 1 : 257 - head;
    const end = i + (head < 128 ? count : 1);
    if (end > packed.length || filled + count > mostBytes) throw new UnpackError("its packed bytes are damaged");
    if (head < 128) out.set(packed.subarray(i, end), filled);
    else out.fill(packed[i]!, filled, filled + count);
    filled += count;
    i = end;
  }
  refuseRest(packed.length - i);
  return out.subarray(0, filled);
}

const [CLEAR, END, FIRST] = [256, 257, 258];
const [LEAST_BITS, MOST_BITS] = [9, 12];

/**
 * TIFF 6.0, section 13: codes from the highest bit, one bit longer an entry early. Each
 * entry is a piece of what is unpacked already, so a table of places is enough.
 */
function unpackLzw(packed: Uint8Array, mostBytes: number): Uint8Array {
  const out = new Uint8Array(mostBytes);
  const starts = new Uint32Array(1 << MOST_BITS);
  const lengths = new Uint32Array(1 << MOST_BITS);
  const damaged = (): never => {
    throw new UnpackError("its packed bytes are damaged");
  };
  let filled = 0;
  let next = FIRST;
  let bits = LEAST_BITS;
  let before: { start: number; length: number } | undefined;
  let held = 0;
  let heldBits = 0;
  let at = 0;
  while (filled < mostBytes) {
    while (heldBits < bits && at < packed.length) {
      held = ((held << 8) | packed[at++]!) & 0xffffff;
      heldBits += 8;
    }
    if (heldBits < bits) break;
    const code = (held >> (heldBits - bits)) & ((1 << bits) - 1);
    heldBits -= bits;
    if (code === END) break;
    if (code === CLEAR) {
      [next, bits, before] = [FIRST, LEAST_BITS, undefined];
      continue;
    }
    const start = filled;
    if (code < CLEAR) {
      out[filled++] = code;
    } else {
      // The code after the last one known is the piece before and its own first byte again.
      const known = code < next;
      if (before === undefined || (!known && code !== next)) return damaged();
      const from = known ? starts[code]! : before.start;
      const length = known ? lengths[code]! : before.length + 1;
      if (filled + length > mostBytes) return damaged();
      for (let i = 0; i < length; i++) out[filled++] = out[from + i]!;
    }
    if (before !== undefined) {
      if (next >= 1 << MOST_BITS) return damaged();
      starts[next] = before.start;
      lengths[next] = before.length + 1;
      next++;
      if (next + 1 >= 1 << bits && bits < MOST_BITS) bits++;
    }
    before = { start, length: filled - start };
  }
  refuseRest(packed.length - at);
  return out.subarray(0, filled);
}
