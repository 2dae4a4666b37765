/**
 * The three compositions of a plate. Each is laid out for itself: how much ground it shows,
 * how big its lettering is, which marks it keeps and how densely it is worked.
 * Lengths are sheet units (CSS pixels at natural size) unless their name says metres.
 */

export type CompositionName = "phone" | "desk" | "card";

/** Compositions for paper, laid out in their own file. */
export type PaperCompositionName = "book" | "sign";

export interface Composition {
  readonly name: CompositionName | PaperCompositionName;
  /** Width and height of the map inside the neat line: least and most. */
  readonly width: readonly [number, number];
  readonly height: readonly [number, number];
  /** Ground shown at least to each side of the line of play, behind the tee and beyond the green. */
  readonly sideMetres: number;
  readonly endMetres: readonly [tee: number, green: number];
  readonly mostPxPerMetre: number;
  /** Play runs up the sheet, or across it from left to right. */
  readonly play: "up" | "across";
  /** From the paper's edge to the neat line. */
  readonly margin: number;
  /** Height of the title block under the map. */
  readonly block: number;
  readonly text: {
    readonly figure: number;
    readonly name: number;
    readonly arc: number;
    readonly note: number;
    readonly water: number;
    readonly halo: number;
  };
  /** Line weights. */
  readonly hair: number;
  readonly fine: number;
  readonly medium: number;
  readonly bold: number;
  /** Scale of small drawings: tufts, crowns, flags, landmarks. */
  readonly drawing: number;
  /** Least distance between tufts of open ground, and the share of crowns kept. */
  readonly tuftSpacing: number;
  readonly crownSpacing: number;
  /** Knots of natural outlines. */
  readonly knots: number;
  /** Ink spent at most on contours (length of line) and on hachures (how many) before they are thinned. */
  readonly mostContour: number;
  readonly mostHachures: number;
  readonly mostDots: number;
  /** Distances of the water lines from the shore. */
  readonly waterLines: readonly number[];
  /** Hazards that get a leader, at most. */
  readonly leaders: number;
  readonly keep: {
    readonly teeNames: boolean;
    readonly bendFigures: boolean;
    readonly greenDepth: boolean;
    readonly groundNames: boolean;
    /** Names of burns and of the bounds, and of waters too small to hold them. */
    readonly lesserNames: boolean;
    readonly stipple: boolean;
    readonly everyTee: boolean;
    readonly legend: boolean;
  };
}

const gaps = (first: number, growth: number, count: number): number[] => {
  const result: number[] = [];
  for (let i = 0, at = 0, gap = first; i < count; i++, gap += growth) result.push((at += gap));
  return result;
};

export const COMPOSITIONS: Readonly<Record<CompositionName, Composition>> = {
  phone: {
    name: "phone",
    width: [374, 374],
    height: [420, 980],
    sideMetres: 58,
    endMetres: [24, 30],
    mostPxPerMetre: 3.2,
    play: "up",
    margin: 8,
    block: 84,
    text: { figure: 13, name: 11.5, arc: 11.5, note: 10.5, water: 13, halo: 3 },
    hair: 0.45,
    fine: 0.7,
    medium: 1.1,
    bold: 1.9,
    drawing: 1,
    tuftSpacing: 17,
    crownSpacing: 7.6,
    knots: 12,
    mostContour: 9000,
    mostHachures: 520,
    mostDots: 800,
    waterLines: gaps(2.6, 0.75, 6),
    leaders: 6,
    keep: {
      teeNames: false,
      bendFigures: true,
      greenDepth: true,
      groundNames: false,
      lesserNames: true,
      stipple: true,
      everyTee: true,
      legend: true,
    },
  },
  desk: {
    name: "desk",
    width: [540, 700],
    height: [560, 1180],
    sideMetres: 80,
    endMetres: [30, 38],
    mostPxPerMetre: 4.2,
    play: "up",
    margin: 24,
    block: 108,
    text: { figure: 14, name: 13, arc: 12, note: 11.5, water: 17, halo: 3.4 },
    hair: 0.5,
    fine: 0.8,
    medium: 1.2,
    bold: 2.2,
    drawing: 1.15,
    tuftSpacing: 18,
    crownSpacing: 8.6,
    knots: 5.5,
    mostContour: 11000,
    mostHachures: 560,
    mostDots: 900,
    waterLines: gaps(3, 0.9, 8),
    leaders: 12,
    keep: {
      teeNames: true,
      bendFigures: true,
      greenDepth: true,
      groundNames: true,
      lesserNames: true,
      stipple: true,
      everyTee: true,
      legend: true,
    },
  },
  card: {
    name: "card",
    width: [1160, 1160],
    height: [486, 486],
    sideMetres: 42,
    endMetres: [22, 26],
    mostPxPerMetre: 5.5,
    play: "across",
    margin: 20,
    block: 124,
    text: { figure: 21, name: 20, arc: 17, note: 17, water: 24, halo: 5 },
    hair: 0.7,
    fine: 1.2,
    medium: 1.8,
    bold: 3.4,
    drawing: 1.75,
    tuftSpacing: 32,
    crownSpacing: 13,
    knots: 7,
    mostContour: 11000,
    mostHachures: 420,
    mostDots: 500,
    waterLines: gaps(4.4, 1.3, 6),
    leaders: 4,
    keep: {
      teeNames: false,
      bendFigures: false,
      greenDepth: false,
      groundNames: false,
      lesserNames: true,
      stipple: true,
      everyTee: false,
      legend: false,
    },
  },
};

/** A composition with a share of its texture: same layout, same figures, less ink. */
export const thinned = (composition: Composition, share: number): Composition =>
  share >= 1
    ? composition
    : {
        ...composition,
        mostContour: composition.mostContour * share,
        mostHachures: composition.mostHachures * share,
        mostDots: composition.mostDots * share,
        tuftSpacing: composition.tuftSpacing / Math.sqrt(share),
        crownSpacing: composition.crownSpacing / Math.sqrt(Math.sqrt(share)),
        waterLines: composition.waterLines.slice(
          0,
          Math.max(3, Math.ceil(composition.waterLines.length * Math.sqrt(share))),
        ),
      };
