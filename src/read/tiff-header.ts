/**
 * A TIFF's first directory, held against the file before a library believes it: the
 * library makes room for as many values as a field claims, and a damaged field claims billions.
 */
import { open, type FileHandle } from "node:fs/promises";
import { fromFile, type GeoTIFF } from "geotiff";

/** Bytes to a value by field type: TIFF 6.0, section 2, and BigTIFF's 16 to 18. */
const TYPE_BYTES = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8, 4, 0, 0, 8, 8, 8];

/** A directory has some twenty fields; none has more than this. */
const MOST_FIELDS = 500;

/** Offsets of a million blocks; an image of more is not cut for reading. */
const MOST_VALUES = 4e6;

class TiffError extends Error {
  override readonly name = "TiffError";
}

const refuse = (reason: string): never => {
  throw new TiffError(reason);
};

/**
 * Opens a TIFF whose first directory is sound.
 *
 * @throws Error saying in a few words what is wrong with it.
 */
export async function openTiff(path: string): Promise<GeoTIFF> {
  const handle = await open(path, "r");
  try {
    await checkDirectory(handle, (await handle.stat()).size);
  } finally {
    await handle.close();
  }
  return fromFile(path);
}

async function checkDirectory(handle: FileHandle, fileBytes: number): Promise<void> {
  const read = async (at: number, length: number): Promise<DataView> => {
    if (!Number.isSafeInteger(at) || at + length > fileBytes) refuse("it is cut short, or points beyond its end");
    const bytes = new Uint8Array(length);
    await handle.read(bytes, 0, length, at);
    return new DataView(bytes.buffer);
  };
  const head = await read(0, 16);
  const order = head.getUint16(0);
  if (order !== 0x4949 && order !== 0x4d4d) refuse("it does not begin as one");
  const little = order === 0x4949;
  const version = head.getUint16(2, little);
  if (version !== 42 && version !== 43) refuse("it does not begin as one");
  const big = version === 43;
  const word = (view: DataView, at: number): number =>
    big ? Number(view.getBigUint64(at, little)) : view.getUint32(at, little);
  const start = word(head, big ? 8 : 4);
  const count = big ? word(await read(start, 8), 0) : (await read(start, 2)).getUint16(0, little);
  if (count === 0 || count > MOST_FIELDS) refuse(`its directory has ${count} fields`);
  const [entryBytes, inlineBytes] = big ? [20, 8] : [12, 4];
  const entries = await read(start + (big ? 8 : 2), count * entryBytes);
  for (let at = 0; at < count * entryBytes; at += entryBytes) {
    const tag = entries.getUint16(at, little);
    const valueBytes = TYPE_BYTES[entries.getUint16(at + 2, little)];
    const values = word(entries, at + 4);
    if (!valueBytes) refuse(`field ${tag} is of no type there is`);
    if (values > MOST_VALUES) refuse(`field ${tag} claims ${values} values`);
    const bytes = values * valueBytes!;
    if (bytes > inlineBytes && word(entries, at + (big ? 12 : 8)) + bytes > fileBytes)
      refuse(`field ${tag} points beyond its end`);
  }
}
