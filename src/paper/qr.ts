/** QR codes (ISO/IEC 18004) as SVG. */
import { encode } from "uqr";
import { element, escapeXml } from "../draw/svg.ts";

/** Quiet zone the standard asks for, in modules. */
export const QUIET_MODULES = 4;

export interface QrOptions {
  /** What it is called for those who cannot see it. */
  readonly label: string;
  readonly sizeMm: number;
}

/**
 * A code as black modules on white with its quiet zone, error correction M: a sign out of
 * doors gets scratched and splashed.
 */
export function drawQr(text: string, { label, sizeMm }: QrOptions): string {
  const { data, size } = encode(text, { ecc: "M", border: QUIET_MODULES });
  // Runs of dark modules in a row are one stroke: fewer edges where printers leave hairlines.
  const runs = data.flatMap((row, y) => {
    const found: string[] = [];
    for (let x = 0; x < size; x++) {
      if (!row[x]) continue;
      const start = x;
      while (x + 1 < size && row[x + 1]) x++;
      found.push(`M${start} ${y}h${x + 1 - start}v1h-${x + 1 - start}z`);
    }
    return found;
  });
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      class: "qr",
      viewBox: `0 0 ${size} ${size}`,
      width: `${sizeMm}mm`,
      height: `${sizeMm}mm`,
      role: "img",
      "aria-label": label,
      "shape-rendering": "crispEdges",
    },
    element("rect", { width: size, height: size, fill: "#ffffff" }) +
      element("path", { fill: "#000000", d: runs.join("") }) +
      `<title>${escapeXml(label)}</title>`,
  );
}
