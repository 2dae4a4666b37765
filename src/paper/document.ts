/** A whole document for the printer: markup and stylesheet in one, fonts by address. */
import { escape } from "./html.ts";
import type { Size } from "./sizes.ts";

export interface PaperDocument {
  readonly title: string;
  readonly language: string;
  readonly css: string;
  readonly leaves: readonly string[];
  /** A leaf without bleed. */
  readonly page: Size;
  readonly bleedMm: number;
  /** Class of the body: what is printed, and `ink` for black and white. */
  readonly kind: string;
}

/** The document; its pages are the leaf and its bleed on every side. */
export function paperDocument({ title, language, css, leaves, page, bleedMm, kind }: PaperDocument): string {
  const inches = (mm: number): string => `${mm / 25.4}in`;
  const [width, height] = [page.widthMm + 2 * bleedMm, page.heightMm + 2 * bleedMm];
  return (
    `<!doctype html><html lang="${escape(language)}"><head><meta charset="utf-8"><title>${escape(title)}</title>` +
    `<style>${css}\n@page{size:${inches(width)} ${inches(height)};margin:0}:root{--bleed:${bleedMm}mm;--trim-width:${page.widthMm}mm;--trim-height:${page.heightMm}mm}</style>` +
    `</head><body class="${escape(kind)}"><main>${leaves.join("")}</main></body></html>`
  );
}
