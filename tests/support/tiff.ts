/** TIFFs as no program writes them: each field as a test wants it. TIFF 6.0, section 2; GeoTIFF 1.1 for the place. */

export interface TiffToWrite {
  readonly columns: number;
  readonly rows: number;
  /** Strips as they lie in the file. */
  readonly strips: readonly Uint8Array[];
  readonly rowsPerStrip: number;
  readonly compression?: number;
  /** Fields over or beside the usual ones: tag, type (3 short, 4 long, 12 double, 2 text), values. */
  readonly fields?: readonly (readonly [tag: number, type: 2 | 3 | 4 | 12, values: readonly number[] | string])[];
}

const SIZE = { 2: 1, 3: 2, 4: 4, 12: 8 } as const;

/** One band of 32-bit floats, a metre apart, UTM zone 29, its upper left corner 500,000 E 6,261,000 N. */
export function tiffBytes({ columns, rows, strips, rowsPerStrip, compression = 1, fields = [] }: TiffToWrite): Buffer {
  const all = new Map<number, readonly [2 | 3 | 4 | 12, readonly number[] | string]>([
    [256, [4, [columns]]],
    [257, [4, [rows]]],
    [258, [3, [32]]],
    [259, [3, [compression]]],
    [262, [3, [1]]],
    [273, [4, strips.map(() => 0)]],
    [277, [3, [1]]],
    [278, [4, [rowsPerStrip]]],
    [279, [4, strips.map((strip) => strip.length)]],
    [339, [3, [3]]],
    [33550, [12, [1, 1, 0]]],
    [33922, [12, [0, 0, 0, 500_000, 6_261_000, 0]]],
    [34735, [3, [1, 1, 0, 3, 1024, 0, 1, 1, 1025, 0, 1, 1, 3072, 0, 1, 32629]]],
  ]);
  for (const [tag, type, values] of fields) all.set(tag, [type, values]);
  const entries = [...all].sort(([a], [b]) => a - b);
  const directory = 8;
  let end = directory + 2 + 12 * entries.length + 4;
  const extras: { at: number; bytes: Buffer }[] = [];
  const placed = entries.map(([tag, [type, values]]) => {
    const numbers = typeof values === "string" ? [...Buffer.from(`${values}\0`)] : values;
    const bytes = Buffer.alloc(Math.max(4, numbers.length * SIZE[type]));
    for (const [i, value] of numbers.entries()) {
      if (type === 2) bytes.writeUInt8(value, i);
      else if (type === 3) bytes.writeUInt16LE(value, i * 2);
      else if (type === 4) bytes.writeUInt32LE(value, i * 4);
      else bytes.writeDoubleLE(value, i * 8);
    }
    const at = bytes.length > 4 ? end : undefined;
    if (at !== undefined) {
      extras.push({ at, bytes });
      end += bytes.length;
    }
    return { tag, type, count: numbers.length, at, bytes };
  });
  const data = end;
  // Offsets are known only when everything before the strips has its place.
  if (!fields.some(([tag]) => tag === 273)) {
    let offset = data;
    const found = placed.find(({ tag }) => tag === 273)!;
    for (const [i, strip] of strips.entries()) {
      found.bytes.writeUInt32LE(offset, i * 4);
      offset += strip.length;
    }
  }
  const head = Buffer.alloc(data);
  head.write("II*\0", 0, "latin1");
  head.writeUInt32LE(directory, 4);
  head.writeUInt16LE(entries.length, directory);
  for (const [i, { tag, type, count, at, bytes }] of placed.entries()) {
    const entry = directory + 2 + 12 * i;
    head.writeUInt16LE(tag, entry);
    head.writeUInt16LE(type, entry + 2);
    head.writeUInt32LE(count, entry + 4);
    if (at === undefined) bytes.copy(head, entry + 8, 0, 4);
    else head.writeUInt32LE(at, entry + 8);
  }
  for (const { at, bytes } of extras) bytes.copy(head, at);
  return Buffer.concat([head, ...strips]);
}
