/**
 * The blocks of a TIFF, tiles or strips: held against the file and the header before any
 * of them is unpacked. What a library would fill up with zeros (a file cut short, a block
 * that was never written) must not become level ground.
 */
import { BaseDecoder, addDecoder, type GeoTIFFImage } from "geotiff";
import { PACKINGS, UnpackError } from "./tiff-unpack.ts";

/** A block beyond this is unpacked in no useful time and memory: 256 MB, a strip of 8,000 by 8,000 floats. */
export const MOST_BLOCK_BYTES = 256e6;

/** Names for packings that are refused, TIFF's numbers. */
const REFUSED: Readonly<Record<number, string>> = {
  6: "JPEG",
  7: "JPEG",
  34712: "JPEG 2000",
  34887: "LERC",
  34925: "LZMA",
  50001: "WebP",
  50002: "JPEG XL",
};

export interface BlockLayout {
  readonly blockWidth: number;
  readonly blockRows: number;
  readonly across: number;
  readonly down: number;
  readonly tiled: boolean;
  /** Bytes of a line of one block, unpacked. */
  readonly lineBytes: number;
}

/** How an image is cut; undefined when its header says none that can be. */
function layoutOf(image: GeoTIFFImage): BlockLayout | undefined {
  const [columns, rows] = [image.getWidth(), image.getHeight()];
  const [blockWidth, blockRows] = [image.getTileWidth(), image.getTileHeight()];
  const bits = Array.from(image.fileDirectory.getValue("BitsPerSample") ?? [], Number);
  const whole = [columns, rows, blockWidth, blockRows, ...bits].every((value) => Number.isInteger(value) && value > 0);
  if (!whole || bits.length !== image.getSamplesPerPixel()) return undefined;
  const perPixel = image.planarConfiguration === 2 ? bits[0]! : bits.reduce((sum, one) => sum + one, 0);
  return {
    blockWidth,
    blockRows,
    across: Math.ceil(columns / blockWidth),
    down: Math.ceil(rows / blockRows),
    tiled: image.isTiled,
    lineBytes: Math.ceil((blockWidth * perPixel) / 8),
  };
}

/** @throws UnpackError saying what about the blocks cannot be. */
export async function checkedLayout(image: GeoTIFFImage): Promise<BlockLayout> {
  const packing = Number(image.fileDirectory.getValue("Compression") ?? 1);
  if (!Object.hasOwn(PACKINGS, packing))
    throw new UnpackError(
      `they are packed by ${REFUSED[packing] ?? `method ${packing}`}, which is not read for heights`,
    );
  const predictor = Number((await image.fileDirectory.loadValue("Predictor")) ?? 1);
  if (![1, 2, 3].includes(predictor))
    throw new UnpackError(`their predictor is ${predictor}, and TIFF has 1, 2 and 3`);
  const layout = layoutOf(image);
  if (layout === undefined) throw new UnpackError("its header contradicts itself about their size");
  const bytes = layout.lineBytes * layout.blockRows;
  if (bytes > MOST_BLOCK_BYTES)
    throw new UnpackError(
      `one block of them is ${Math.ceil(bytes / 1e6)} MB: expected at most ${MOST_BLOCK_BYTES / 1e6} MB, as in a tiled file`,
    );
  return layout;
}

export interface Block {
  readonly x: number;
  readonly y: number;
}

/**
 * Holds the blocks under a window against the file.
 *
 * @param fileBytes how large the file is.
 * @returns the blocks that were never written (GDAL's sparse files): nothing is known there.
 * @throws UnpackError when one lies beyond the end of the file, or is not as long as it must be.
 */
export async function unwrittenBlocks(
  image: GeoTIFFImage,
  layout: BlockLayout,
  fileBytes: number,
  [left, top, right, bottom]: readonly [number, number, number, number],
): Promise<Block[]> {
  const { blockWidth, blockRows, across, tiled, lineBytes } = layout;
  const directory = image.fileDirectory;
  const bare = Number(directory.getValue("Compression") ?? 1) === 1;
  const unwritten: Block[] = [];
  for (let y = Math.floor(top / blockRows); y * blockRows < bottom; y++) {
    for (let x = Math.floor(left / blockWidth); x * blockWidth < right; x++) {
      // The first band's blocks come first, whichever way the bands are kept.
      const index = y * across + x;
      const offset = Number(await directory.loadValueIndexed(tiled ? "TileOffsets" : "StripOffsets", index));
      const length = Number(await directory.loadValueIndexed(tiled ? "TileByteCounts" : "StripByteCounts", index));
      if (length === 0) {
        unwritten.push({ x, y });
        continue;
      }
      if (
        !Number.isSafeInteger(offset) ||
        !Number.isSafeInteger(length) ||
        offset < 8 ||
        length < 0 ||
        offset + length > fileBytes
      ) {
        throw new UnpackError(`a part of them lies beyond the end of the file, ${fileBytes} bytes`);
      }
      const lines = tiled ? blockRows : Math.min(blockRows, image.getHeight() - y * blockRows);
      if (bare && (length < lineBytes * lines || length > lineBytes * blockRows)) {
        throw new UnpackError(`a part of them is ${length} bytes and must be ${lineBytes * lines}`);
      }
    }
  }
  return unwritten;
}

interface Parameters {
  readonly packing: number;
  readonly mostBytes: number;
  readonly wholeBytes: number;
}

/** Our unpacking in place of the library's, whose decoders know no bounds. */
class BoundedDecoder extends BaseDecoder {
  override decodeBlock(buffer: ArrayBufferLike): ArrayBuffer {
    const { packing, mostBytes, wholeBytes } = this.parameters as unknown as Parameters;
    const bytes = PACKINGS[packing]!(new Uint8Array(buffer), mostBytes);
    if (bytes.length < wholeBytes)
      throw new UnpackError(`a part of them unpacks to ${bytes.length} bytes and must be ${wholeBytes}`);
    return new Uint8Array(bytes).buffer;
  }
}

for (const packing of Object.keys(PACKINGS).map(Number)) {
  addDecoder(
    // A file that says nothing is not packed.
    packing === 1 ? [undefined, 1] : packing,
    async () => BoundedDecoder,
    async (directory) => {
      const tiled = !directory.hasTag("StripOffsets");
      const columns = Number(await directory.loadValue("ImageWidth"));
      const rows = Number(await directory.loadValue("ImageLength"));
      const width = tiled ? Number(await directory.loadValue("TileWidth")) : columns;
      const height = tiled
        ? Number(await directory.loadValue("TileLength"))
        : Math.min(rows, Number((await directory.loadValue("RowsPerStrip")) ?? rows));
      const bitsPerSample = Array.from((await directory.loadValue("BitsPerSample")) as ArrayLike<number>, Number);
      const planarConfiguration = Number((await directory.loadValue("PlanarConfiguration")) ?? 1);
      const perPixel =
        planarConfiguration === 2 ? bitsPerSample[0]! : bitsPerSample.reduce((sum, one) => sum + one, 0);
      const lineBytes = Math.ceil((width * perPixel) / 8);
      // The last strip ends with the image, and which strip this is the library does not tell.
      const leastLines = tiled ? height : rows % height === 0 ? height : rows % height;
      return {
        tileWidth: width,
        tileHeight: height,
        planarConfiguration,
        bitsPerSample,
        predictor: Number((await directory.loadValue("Predictor")) ?? 1),
        packing,
        mostBytes: Math.min(MOST_BLOCK_BYTES, lineBytes * height),
        wholeBytes: lineBytes * leastLines,
      };
    },
    false,
  );
}
