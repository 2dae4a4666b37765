/** Crop and fold marks about a rectangle, in points, the origin at the sheet's lower left. */

export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Stroke {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** Length of a mark: 5 mm, the printer's usual (common practice, no source). */
export const MARK_POINTS = 14;

/** Two strokes at each corner, beyond the bleed, pointing at the cut. */
export function cropMarks({ x, y, width, height }: Rect, bleedPoints: number, length = MARK_POINTS): Stroke[] {
  const [left, right, low, high] = [x, x + width, y, y + height];
  const beyond = bleedPoints + length;
  return [left, right]
    .flatMap((at): Stroke[] => [
      { from: [at, low - bleedPoints], to: [at, low - beyond] },
      { from: [at, high + bleedPoints], to: [at, high + beyond] },
    ])
    .concat(
      [low, high].flatMap((at): Stroke[] => [
        { from: [left - bleedPoints, at], to: [left - beyond, at] },
        { from: [right + bleedPoints, at], to: [right + beyond, at] },
      ]),
    );
}

/** Where an upright fold meets the sheet's edges; drawn dashed. */
export function foldMarks({ y, height }: Rect, atX: number, bleedPoints: number, length = MARK_POINTS): Stroke[] {
  return [
    { from: [atX, y - bleedPoints], to: [atX, y - bleedPoints - length] },
    { from: [atX, y + height + bleedPoints], to: [atX, y + height + bleedPoints + length] },
  ];
}

/** A rectangle of a size in the middle of a sheet. */
export const centred = (width: number, height: number, sheetWidth: number, sheetHeight: number): Rect => ({
  x: (sheetWidth - width) / 2,
  y: (sheetHeight - height) / 2,
  width,
  height,
});
