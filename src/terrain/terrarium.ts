/**
 * Heights as colours, so that a picture can carry ground: the terrarium encoding
 * (tilezen/joerd, docs/formats.md). `height = R * 256 + G + B / 256 - 32768` metres.
 */

export type Rgb = readonly [red: number, green: number, blue: number];

/** Colour to height in metres. */
export const decodeTerrarium = ([red, green, blue]: Rgb): number => red * 256 + green + blue / 256 - 32768;
