/**
 * A Display P3 profile written from the space's definition, and the numbers a colour has in
 * it: primaries of SMPTE RP 431-2 (red 0.680, 0.320; green 0.265, 0.690; blue 0.150, 0.060),
 * white D65 (0.3127, 0.3290), the sRGB curve. The profile's colorants are the primaries
 * adapted to D50 by the linear Bradford matrix, as ICC.1 asks. All from memory; the test
 * holds the two ways of writing the space, profile and arithmetic, against each other.
 */

type Three = readonly [number, number, number];
type Matrix = readonly [Three, Three, Three];

const times = (m: Matrix, v: Three): Three => m.map(([a, b, c]) => a * v[0] + b * v[1] + c * v[2]) as unknown as Three;
const column = (m: Matrix, i: 0 | 1 | 2): Three => [m[0][i], m[1][i], m[2][i]];
const product = (a: Matrix, b: Matrix): Matrix => {
  const columns = [0, 1, 2].map((i) => times(a, column(b, i as 0 | 1 | 2)));
  return [0, 1, 2].map((row) => columns.map((c) => c[row]!)) as unknown as Matrix;
};

function inverse([[a, b, c], [d, e, f], [g, h, i]]: Matrix): Matrix {
  const det = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  return [
    [(e * i - f * h) / det, (c * h - b * i) / det, (b * f - c * e) / det],
    [(f * g - d * i) / det, (a * i - c * g) / det, (c * d - a * f) / det],
    [(d * h - e * g) / det, (b * g - a * h) / det, (a * e - b * d) / det],
  ];
}

const xyz = (x: number, y: number): Three => [x / y, 1, (1 - x - y) / y];
const D65 = xyz(0.3127, 0.329);
const D50: Three = [0.9642, 1, 0.8249];

/** Linear RGB of a space to XYZ. */
function toXyz(red: Three, green: Three, blue: Three): Matrix {
  const primaries = [0, 1, 2].map((row) => [red[row]!, green[row]!, blue[row]!]) as unknown as Matrix;
  const scale = times(inverse(primaries), D65);
  return primaries.map((row) => row.map((value, i) => value * scale[i]!)) as unknown as Matrix;
}

const P3 = toXyz(xyz(0.68, 0.32), xyz(0.265, 0.69), xyz(0.15, 0.06));
const SRGB = toXyz(xyz(0.64, 0.33), xyz(0.3, 0.6), xyz(0.15, 0.06));

/** IEC 61966-2-1. */
const linear = (v: number): number => (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);
const curved = (v: number): number => (v <= 0.0031308 ? v * 12.92 : 1.055 * v ** (1 / 2.4) - 0.055);

const BRADFORD: Matrix = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];

function adaptedToD50(m: Matrix): Matrix {
  const [from, to] = [times(BRADFORD, D65), times(BRADFORD, D50)];
  const scale: Matrix = [
    [to[0] / from[0], 0, 0],
    [0, to[1] / from[1], 0],
    [0, 0, to[2] / from[2]],
  ];
  return product(product(product(inverse(BRADFORD), scale), BRADFORD), m);
}

const fixed = (value: number): Buffer => {
  const bytes = Buffer.alloc(4);
  bytes.writeInt32BE(Math.round(value * 65536));
  return bytes;
};
const long = (value: number): Buffer => {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32BE(value);
  return bytes;
};
const xyzTag = (values: Three): Buffer => Buffer.concat([Buffer.from("XYZ \0\0\0\0"), ...values.map(fixed)]);

/** ICC.1 version 4 matrix profile, and sRGB 0..255 to Display P3 0..255 by arithmetic alone. */
export function displayP3Profile(): { profile: Buffer; fromSrgb: (rgb: Three) => [number, number, number] } {
  const name = Buffer.from("Display P3", "utf16le").swap16();
  const text = (utf16: Buffer): Buffer =>
    Buffer.concat([
      Buffer.from("mluc\0\0\0\0"),
      long(1),
      long(12),
      Buffer.from("enUS"),
      long(utf16.length),
      long(28),
      utf16,
    ]);
  const curve = Buffer.concat([
    Buffer.from("para\0\0\0\0"),
    Buffer.from([0, 3, 0, 0]),
    ...[2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045].map(fixed),
  ]);
  const colorants = adaptedToD50(P3);
  // The name in plain letters too, so that it can be looked for.
  const copyright = Buffer.concat([text(Buffer.from("Test", "utf16le").swap16()), Buffer.from("Display P3\0\0")]);
  const tags: [string, Buffer][] = [
    ["desc", text(name)],
    ["cprt", copyright],
    ["wtpt", xyzTag(D50)],
    ["rXYZ", xyzTag(column(colorants, 0))],
    ["gXYZ", xyzTag(column(colorants, 1))],
    ["bXYZ", xyzTag(column(colorants, 2))],
    ["rTRC", curve],
    ["gTRC", curve],
    ["bTRC", curve],
  ];
  const padded = tags.map(
    ([tag, data]) => [tag, Buffer.concat([data, Buffer.alloc((4 - (data.length % 4)) % 4)])] as const,
  );
  let offset = 128 + 4 + 12 * tags.length;
  const table: Buffer[] = [long(tags.length)];
  for (const [tag, data] of padded) {
    table.push(Buffer.from(tag), long(offset), long(data.length));
    offset += data.length;
  }
  const header = Buffer.alloc(128);
  header.writeUInt32BE(offset, 0);
  header.writeUInt32BE(0x04300000, 8);
  header.write("mntrRGB XYZ ", 12);
  header.writeUInt16BE(2026, 24);
  header.writeUInt16BE(1, 26);
  header.writeUInt16BE(1, 28);
  header.write("acsp", 36);
  D50.forEach((value, i) => fixed(value).copy(header, 68 + 4 * i));
  const profile = Buffer.concat([header, ...table, ...padded.map(([, data]) => data)]);
  const srgbToP3 = product(inverse(P3), SRGB);
  return {
    profile,
    fromSrgb: (rgb) =>
      times(srgbToP3, rgb.map((v) => linear(v / 255)) as unknown as Three).map((v) => Math.round(curved(v) * 255)) as [
        number,
        number,
        number,
      ],
  };
}
