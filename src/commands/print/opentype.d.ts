/** The little of opentype.js that we use; it ships no types. */
declare module "opentype.js" {
  interface Glyph {
    /** 0 where the font lacks the character. */
    readonly index: number;
    /** Outline at a size, the origin on the baseline, y down. */
    getPath(x: number, y: number, size: number): { toPathData(decimals: number): string };
  }
  interface Font {
    charToGlyph(character: string): Glyph;
  }
  /** Its own module is not found by Node, which takes the other: all of it is on the default. */
  const opentype: {
    /** Reads TrueType, OpenType and WOFF. */
    parse(bytes: ArrayBuffer): Font;
  };
  export default opentype;
}
