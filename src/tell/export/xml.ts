/** Text within XML. */

const ENTITIES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Escaped for content and quoted attributes; characters XML 1.0 does not allow are left out. */
export const xml = (text: string): string =>
  // eslint-disable-next-line no-control-regex
  text
    .replace(
      /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g,
      "",
    )
    .replace(/[&<>"]/g, (c) => ENTITIES[c]!);

/** Degrees without an exponent, which these formats' schemas do not take. */
export const degreesText = (degrees: number): string =>
  Number(degrees.toFixed(8)) === 0 ? "0" : degrees.toFixed(8).replace(/\.?0+$/, "");
