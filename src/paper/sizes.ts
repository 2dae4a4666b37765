/** Sizes of paper. Millimetres unless the name says points (72 to the inch) or px (96 to the inch). */

export interface Size {
  readonly widthMm: number;
  readonly heightMm: number;
}

export const MM_PER_INCH = 25.4;
export const POINTS_PER_MM = 72 / MM_PER_INCH;

export const points = (mm: number): number => mm * POINTS_PER_MM;

/**
 * The book's page: 4 1/4 by 7 inches, the largest that may show a green (Rules of Golf,
 * clarification 4.3a/1).
 */
export const BOOK_PAGE: Size = { widthMm: 4.25 * MM_PER_INCH, heightMm: 7 * MM_PER_INCH };

/** The open scorecard: twice the book's width, so that both folded fit one pocket. */
export const CARD_SHEET: Size = { widthMm: 2 * BOOK_PAGE.widthMm, heightMm: 140 };

/** What is printed past the cut, so that no white edge shows: 1/8 inch, a whole number of points. */
export const BLEED_MM = MM_PER_INCH / 8;

/** Room around the bleed for crop marks. */
export const SLUG_MM = 7;

/** Sheets of paper, upright (ISO 216; Letter and Tabloid are ANSI A and B). */
export const SHEETS = {
  a2: { widthMm: 420, heightMm: 594 },
  a3: { widthMm: 297, heightMm: 420 },
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 8.5 * MM_PER_INCH, heightMm: 11 * MM_PER_INCH },
  tabloid: { widthMm: 11 * MM_PER_INCH, heightMm: 17 * MM_PER_INCH },
} as const satisfies Readonly<Record<string, Size>>;

export type SheetName = keyof typeof SHEETS;

export const isSheet = (name: string): name is SheetName => Object.hasOwn(SHEETS, name);

/** A sheet on its side. */
export const turned = ({ widthMm, heightMm }: Size): Size => ({ widthMm: heightMm, heightMm: widthMm });
