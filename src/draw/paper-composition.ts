/**
 * Compositions for paper. Sheet units are CSS pixels, 96 to the inch, so a millimetre is
 * 3.78 of them: lettering sizes here are what is printed when the plate is not scaled.
 */
import { COMPOSITIONS, type Composition } from "./composition.ts";

export const PX_PER_MM = 96 / 25.4;

/** The plate on a left-hand page of the pocket book: 96 by some 150 mm, read at arm's length. */
export const BOOK_COMPOSITION: Composition = {
  ...COMPOSITIONS.desk,
  name: "book",
  width: [338, 338],
  height: [540, 540],
  sideMetres: 42,
  endMetres: [20, 26],
  mostPxPerMetre: 3,
  margin: 12,
  block: 12,
  text: { figure: 11.5, name: 9.6, arc: 9.4, note: 8.6, water: 12, halo: 2.6 },
  hair: 0.4,
  fine: 0.6,
  medium: 0.95,
  bold: 1.6,
  drawing: 0.8,
  tuftSpacing: 15,
  crownSpacing: 6.4,
  knots: 4,
  waterLines: [2.2, 5, 8.4, 12.4, 17],
  leaders: 7,
  keep: {
    teeNames: false,
    bendFigures: true,
    greenDepth: false,
    groundNames: true,
    lesserNames: true,
    stipple: true,
    everyTee: false,
    legend: false,
  },
};

/** The plate on a tee sign, for eyes two metres off: few figures, large. */
export const SIGN_COMPOSITION: Composition = {
  ...COMPOSITIONS.desk,
  name: "sign",
  width: [560, 560],
  height: [1080, 1080],
  sideMetres: 46,
  endMetres: [24, 30],
  mostPxPerMetre: 4.6,
  margin: 16,
  block: 16,
  text: { figure: 34, name: 26, arc: 27, note: 19, water: 27, halo: 6.5 },
  hair: 0.7,
  fine: 1.3,
  medium: 2.3,
  bold: 3.6,
  drawing: 1.8,
  tuftSpacing: 24,
  crownSpacing: 10,
  knots: 6,
  leaders: 4,
  keep: {
    teeNames: false,
    bendFigures: false,
    greenDepth: false,
    groundNames: false,
    lesserNames: false,
    stipple: true,
    everyTee: false,
    legend: false,
  },
};
