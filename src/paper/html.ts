/** Markup that the sheets of paper share. */
import { escapeXml } from "../draw/svg.ts";
import { PX_PER_MM } from "../draw/paper-composition.ts";
import type { LengthUnit, Rounding } from "../geo/units.ts";
import type { Metres } from "../contract/values.ts";
import { wholeLength } from "../tell/voice.ts";
import type { TeeSet } from "../course/types.ts";
import type { Words } from "../site/language/words.ts";

export const escape = escapeXml;

/** ` lang="en"` where a text is in another language than what is around it. */
export const langAttribute = (language: string | undefined): string =>
  language === undefined ? "" : ` lang="${escape(language)}"`;

/** A number as the guide's pages print it; a dash where there is none. */
export const figure = (metres: Metres | undefined, unit: LengthUnit, words: Words, rounding?: Rounding): string =>
  metres === undefined ? "–" : wholeLength(metres, unit, words.tell.units, rounding).value;

export const symbolOf = (unit: LengthUnit, words: Words): string => words.tell.units[unit].symbol;

/**
 * A tee set's mark: its colour in a ring, and the first letter in it for sheets in one ink.
 * Presentation attributes only: pages of the guide may hold no styles of their own.
 */
export function swatch({ colour, name }: Pick<TeeSet, "colour" | "name">, sizeMm: number, ink: boolean): string {
  const letter = ink
    ? `<text x="8" y="11.4" font-size="10" font-weight="700" text-anchor="middle" fill="#000000">${escape(name.slice(0, 1))}</text>`
    : "";
  return `<svg class="swatch" viewBox="0 0 16 16" width="${sizeMm}mm" height="${sizeMm}mm" aria-hidden="true"><circle cx="8" cy="8" r="7" fill="${ink ? "#ffffff" : escape(colour)}" stroke="currentColor" stroke-width="1.4"/>${letter}</svg>`;
}

/** A drawing at a size on paper: its own shape kept, never stretched. */
export const sized = (svg: string, widthMm: number, heightMm: number): string => {
  const mm = (value: number): string => `${Math.round(value * 1000) / 1000}mm`;
  return svg.replace(
    /^<svg ([^>]*?)width="[^"]*" height="[^"]*"/,
    `<svg $1width="${mm(widthMm)}" height="${mm(heightMm)}"`,
  );
};

/** A plate for one ink: its tee markers come in the club's colours otherwise. */
export const inOneInk = (svg: string): string => svg.replace(/(class="plate-marker" fill=")[^"]*/g, "$1#ffffff");

/** Sheet units as millimetres at natural size. */
export const mmOf = (px: number): number => px / PX_PER_MM;

/** `4,100` for a scale's denominator, rounded to two digits that mean something. */
export function denominator(metresPerPaperMetre: number, locale: string): string {
  const step = metresPerPaperMetre >= 1000 ? 100 : 10;
  // The guide's fonts have no narrow space, by which some languages part thousands.
  return new Intl.NumberFormat(locale)
    .format(Math.round(metresPerPaperMetre / step) * step)
    .replaceAll("\u202f", "\u00a0");
}

/** Marram grass over two waves: the guide's own mark. */
export const CREST =
  `<svg viewBox="0 0 64 64" class="crest" aria-hidden="true" fill="none" stroke="currentColor" stroke-linecap="round">` +
  `<circle cx="32" cy="32" r="30.5" stroke-width="1.6"/><circle cx="32" cy="32" r="28" stroke-width="0.7"/>` +
  `<path fill="currentColor" stroke="none" d="M29 44Q27.175 22 20 9.5Q29.125 22.9 32 44ZM30.5 44Q30.175 20 35 8Q32.125 20.9 33.5 44ZM32 44Q36.175 22 47 14Q38.125 22.9 35 44ZM28.1 44Q23.23 27 11.5 20Q25.05 27.84 30.9 44ZM33.1 44Q41.23 30 54 27Q43.05 30.84 35.9 44ZM29.8 44Q26.34 30 15 31.5Q27.9 30.72 32.2 44ZM32.8 44Q38.34 36 51 36.5Q39.9 36.72 35.2 44ZM31.7 44Q35.395 24 41 9.5Q36.825 24.66 33.9 44ZM30.2 44Q26.395 20 27.5 10.5Q27.825 20.66 32.4 44Z"/>` +
  `<path stroke-width="1.9" d="M9.500 46.500c3.700-3 7.500-3 11.200 0s7.600 3 11.300 0 7.600-3 11.300 0 7.500 3 11.200 0"/>` +
  `<path stroke-width="1.400" d="M17 52.500c3.300-2.400 6.600-2.400 10 0s6.700 2.400 10 0 6.700-2.400 10 0"/></svg>`;

const RULE_MM = 5.6;

/** Room to write in: ruled, as far down as the box goes. */
export function notesBox(name: string, kind = ""): string {
  const lines = Array.from({ length: 32 }, (_, i) => `M0 ${Math.round((i + 1) * RULE_MM * 10) / 10}H96`).join("");
  return `<div class="notes${kind}" role="group" aria-label="${escape(name)}"><span>${escape(name)}</span><svg class="rules" viewBox="0 0 96 180" width="96mm" height="180mm" aria-hidden="true"><path d="${lines}" fill="none" stroke="currentColor" stroke-width="0.18"/></svg></div>`;
}
