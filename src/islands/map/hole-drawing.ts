/** What a hole's map shows of play and measurement, as GeoJSON for its sources. */
import type { Feature, FeatureCollection } from "geojson";
import type { LengthUnit, Rounding } from "../../geo/units.ts";
import type { HoleData, MeasuredPlace, TeeData } from "../../contract/hole-data.ts";
import type { LonLat } from "../../contract/map-data.ts";
import type { HazardAhead } from "./ahead.ts";
import type { HolePlane } from "./hole-plane.ts";
import type { Reading } from "./measure-tap.ts";
import type { OwnLanding } from "./own-landing.ts";
import type { ShotChain } from "./shots.ts";
import type { Whereabouts } from "./whereabouts.ts";
import type { MapWords, Speech } from "./words.ts";
import { formatLength } from "../../tell/format.ts";
import { area, collection, line, point } from "./geojson.ts";
import { ringAbout } from "./whereabouts.ts";

/** A figure on the map: a number, without its unit. */
export type Figures = (metres: number, rounding?: Rounding) => string;

export const figuresIn =
  (unit: LengthUnit, { units }: Speech): Figures =>
  (metres, rounding) =>
    formatLength(metres, unit, units, rounding).value;

export interface Play {
  readonly tee: TeeData;
  /** Where the hole is cut, when the golfer has said in which third. */
  readonly cut: LonLat | undefined;
  readonly ahead: readonly HazardAhead[];
  readonly own: OwnLanding | undefined;
}

/** Line of play, tees, green; and while nothing else is measured, what the tee shot meets. */
export function playDrawing(
  data: HoleData,
  { tee, cut, ahead, own }: Play,
  figure: Figures,
  say: MapWords,
): FeatureCollection {
  const { front, middle, back } = tee.green;
  return collection([
    line(tee.line, {}),
    ...data.tees.map(({ id, colour, marker }) => point(marker, { colour, chosen: id === tee.id })),
    ...[front, middle, back].map(({ position }) => point(position, { green: true })),
    ...(cut === undefined ? [] : [point(cut, { cut: true })]),
    ...hazardMarks(ahead, figure),
    ...(own === undefined ? [] : ownDrawing(own, figure, say)),
  ]);
}

/** A ring where a hazard is reached and a disc where it is carried, each with its figure. */
const hazardMarks = (hazards: readonly HazardAhead[], figure: Figures): Feature[] =>
  hazards.flatMap(({ reach, carry }, i) => {
    const mark = ({ position, metres }: MeasuredPlace, kind: "reach" | "carry"): Feature =>
      point(position, { mark: kind, figure: figure(metres, kind === "carry" ? "up" : "down"), rank: i });
    return [mark(reach, "reach"), ...(carry === undefined ? [] : [mark(carry, "carry")])];
  });

function ownDrawing(
  { driveMetres, arc, fairwayArc, fairwayMetres, next }: OwnLanding,
  figure: Figures,
  say: MapWords,
): Feature[] {
  const { label, labelOff } = say.own;
  const drive = figure(driveMetres);
  return [
    line(arc, { own: "corridor" }),
    ...(fairwayArc === undefined ? [] : [line(fairwayArc, { own: "fairway" })]),
    point(arc[arc.length - 1]!, {
      ownLabel: fairwayMetres > 0 ? label({ drive, width: figure(fairwayMetres) }) : labelOff({ drive }),
    }),
    ...(next === undefined ? [] : ownDrawing(next, figure, say)),
  ];
}

/** Both legs with their lengths beside them, and the hazards ahead of the point. */
export function readingDrawing({ legs, startMetres, toHoleMetres, ahead }: Reading, figure: Figures): Feature[] {
  const halfway = ([x1, y1]: LonLat, [x2, y2]: LonLat): LonLat => [(x1 + x2) / 2, (y1 + y2) / 2];
  const [start, at, hole] = legs;
  return [
    line(legs, {}),
    point(at, { tapped: true }),
    point(halfway(start, at), { leg: figure(startMetres) }),
    point(halfway(at, hole), { leg: figure(toHoleMetres) }),
    ...hazardMarks(ahead, figure),
  ];
}

/** The golfer's shots, and a fainter line for what is left. */
export const chainDrawing = ({ legs, left }: ShotChain, figure: Figures): Feature[] => [
  ...(legs.length === 0 ? [] : [line([legs[0]!.from, ...legs.map(({ to }) => to)], {})]),
  ...legs.flatMap(({ to, halfway, metres }) => [point(to, { tapped: true }), point(halfway, { leg: figure(metres) })]),
  ...(left === undefined
    ? []
    : [
        line([left.from, left.to], { left: true }),
        ...(legs.length === 0 ? [] : [point(left.halfway, { leg: figure(left.metres) })]),
      ]),
];

/** A golfer further off, or known no better, is not on this map. */
const DRAWN_METRES = 20_000;

/** Where the golfer is, within how much, and the way from there to the green. */
export function meDrawing(
  where: Whereabouts,
  reading: Reading | undefined,
  { frame, toLonLat }: HolePlane,
  figure: Figures,
): Feature[] {
  const { position, accuracyMetres, beyondMetres, state } = where;
  if (Math.max(accuracyMetres, beyondMetres) > DRAWN_METRES) return [];
  return [
    area(ringAbout(frame.toPlane(position), accuracyMetres, toLonLat), { accuracy: true }),
    point(position, { me: true }),
    ...(state === "on-course" && reading !== undefined
      ? [line([position, reading.legs[2]], {}), ...hazardMarks(reading.ahead, figure)]
      : []),
  ];
}
