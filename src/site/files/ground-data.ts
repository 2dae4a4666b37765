/** What a golfer's own drive needs, for every length worked out. */
import { metresFromYards, type LengthUnit } from "../../geo/units.ts";
import { bearingDegrees, directionTo, distanceMetres } from "../../geo/vector.ts";
import type { Point } from "../../geo/position.ts";
import {
  GROUND_DATA_VERSION,
  type AheadHazard,
  type FromTee,
  type GroundData,
  type GreenShots,
  type NextHazard,
  type OwnDrive,
  type PlanePoint,
  type ShotNumbers,
} from "../../contract/ground-data.ts";
import { measureFrom } from "../../measure/hole.ts";
import { DRIVE_LENGTHS_METRES, landingAt, riseBetween, type LandingFigures } from "../../measure/landing.ts";
import { isMetLater } from "../../measure/later.ts";
import { carriedOver, type Carried } from "../../measure/carried.ts";
import { risePast, shotsOf, type Shot } from "../../measure/shots.ts";
import type { HazardFigures, MeasuredCourse, MeasuredHole, TeeFigures } from "../../measure/types.ts";
import type { HeightGrid } from "../../terrain/grid.ts";
import { reachedInOne } from "../ground/figures.ts";
import { featureName } from "../ground/names.ts";
import { drawnHole, kept } from "../cache/kept.ts";
import type { Words } from "../language/words.ts";

/**
 * Every ten of the club's unit: 120 to 320 yards, or 110 to 290 metres; beyond them every twenty, as short
 * as a driver and a head wind make it and as long as a tail wind.
 */
export const driveLengths = (unit: LengthUnit): readonly number[] =>
  unit === "yards"
    ? [...[40, 60, 80, 100].map(metresFromYards), ...DRIVE_LENGTHS_METRES, ...[340, 360, 380].map(metresFromYards)]
    : [30, 50, 70, 90, ...Array.from({ length: 19 }, (_, i) => 110 + 10 * i), 310, 330, 350];

const rounded = (value: number, decimals = 1): number => Number(value.toFixed(decimals));

/** A shot as a page carries it: to the decimetre and tenth of a degree. */
export const shotNumbers = ({
  distanceMetres,
  riseMetres,
  bearingDegrees,
}: Pick<Shot, "distanceMetres" | "riseMetres" | "bearingDegrees">): ShotNumbers => [
  rounded(distanceMetres, 2),
  rounded(riseMetres, 2),
  rounded(bearingDegrees, 1),
];

export function groundData(course: MeasuredCourse, hole: MeasuredHole, unit: LengthUnit, words: Words): GroundData {
  const drivesMetres = driveLengths(unit);
  return kept(
    "ground-data",
    [drawnHole(hole), course.ground, drivesMetres, words.kinds, words.unnamedHazard, words.stretch],
    () => ({
      version: GROUND_DATA_VERSION,
      drivesMetres: drivesMetres.map((metres) => rounded(metres, 3)),
      tees: Object.fromEntries(
        hole.tees.map((tee) => [
          tee.tee.id,
          reachedInOne(hole) ? [] : drivesMetres.map((drive) => ownDrive(course, drawnHole(hole), tee, drive, words)),
        ]),
      ),
      from: Object.fromEntries(hole.tees.map((tee) => [tee.tee.id, fromTee(course, drawnHole(hole), tee, words)])),
      corridorMetres: hole.corridorMetres,
      ...(course.ground ? {} : { level: true as const }),
    }),
  );
}

const planePoint = ([x, y]: Point): PlanePoint => [rounded(x, 2), rounded(y, 2)];

function fromTee(course: MeasuredCourse, hole: MeasuredHole, tee: TeeFigures, words: Words): FromTee {
  // Nothing is behind the green that a stroke to it should be measured by.
  const before = tee.hazards
    .filter(({ inCorridor, reachMetres }) => inCorridor && reachMetres < tee.green.frontMetres)
    .sort((a, b) => a.reachMetres - b.reachMetres);
  const green = reachedInOne(hole) ? greenShots(course, hole, tee, tee.marker, 0) : undefined;
  return {
    ahead: before.flatMap((hazard) => aheadHazard(course, hole, tee, hazard, words)),
    ...(green ? { green } : {}),
    marker: planePoint(tee.marker),
    line: tee.line.points.map(planePoint),
  };
}

/** Height of one point over another; 0 without a height model, undefined on unknown ground. */
const rise = (ground: HeightGrid | undefined, from: Point, to: Point): number | undefined =>
  ground === undefined ? 0 : riseBetween(ground, from, to);

/** Nothing over unknown ground. */
function aheadHazard(
  { ground }: MeasuredCourse,
  hole: MeasuredHole,
  tee: TeeFigures,
  hazard: HazardFigures,
  words: Words,
): AheadHazard[] {
  const { marker } = tee;
  const { id, stretch, stretches, position, reachPoint } = hazard;
  const carried = carriedOver(hazard);
  const riseMetres = rise(ground, marker, reachPoint);
  if (riseMetres === undefined) return [];
  const name = featureName(hole, id, words);
  const past = carried && pastShot(marker, carried, ground);
  return [
    {
      name: stretches > 1 ? words.stretch({ name, time: stretch }) : name,
      reach: shotNumbers({
        distanceMetres: distanceMetres(marker, reachPoint),
        riseMetres,
        bearingDegrees: bearingDegrees(directionTo(marker, reachPoint)),
      }),
      across: position === "across",
      ...(past ? { past: shotNumbers(past) } : {}),
    },
  ];
}

/** The shot that is past a hazard, or on the dry land behind it; undefined over unknown ground. */
function pastShot(
  marker: Point,
  { point, metres }: Carried,
  ground: HeightGrid | undefined,
): Parameters<typeof shotNumbers>[0] | undefined {
  const bearing = bearingDegrees(directionTo(marker, point));
  const riseMetres = ground === undefined ? 0 : risePast(ground, marker, bearing, metres);
  return riseMetres === undefined ? undefined : { distanceMetres: metres, riseMetres, bearingDegrees: bearing };
}

/** From a standing point after a drive of that length; undefined where one of them is over unknown ground. */
function greenShots(
  { ground }: MeasuredCourse,
  hole: MeasuredHole,
  tee: TeeFigures,
  from: Point,
  driveMetres: number,
): GreenShots | undefined {
  const [front, middle, back] =
    ground === undefined
      ? [tee.green.front, tee.green.middle, tee.green.back].map((to) =>
          shotNumbers({
            distanceMetres: distanceMetres(from, to),
            riseMetres: 0,
            bearingDegrees: bearingDegrees(directionTo(from, to)),
          }),
        )
      : shotsOf(hole, tee, ground, driveMetres)
          .filter(({ purpose }) => purpose !== "carry")
          .map(shotNumbers);
  return front && middle && back ? [front, middle, back] : undefined;
}

function ownDrive(
  course: MeasuredCourse,
  hole: MeasuredHole,
  tee: TeeFigures,
  driveMetres: number,
  words: Words,
): OwnDrive | null {
  const landing = landingAt(hole, tee, driveMetres, course.ground);
  if (!landing) return null;
  const { left, right, lie, seenFromTee, seesGreen, fairway, riseMetres } = landing;
  const green = greenShots(course, hole, tee, landing.point, driveMetres);
  return {
    leavesMetres: rounded(landing.leavesMetres),
    fairwayMetres: rounded(fairway.widthMetres),
    ...(riseMetres === undefined ? {} : { rise: rounded(riseMetres) }),
    ...(left ? { left: [featureName(hole, left.id, words), rounded(left.metres)] as const } : {}),
    ...(right ? { right: [featureName(hole, right.id, words), rounded(right.metres)] as const } : {}),
    ...(lie ? { lie: [rounded(lie.awayPercent), rounded(lie.rightPercent)] as const } : {}),
    ...(seenFromTee === undefined ? {} : { seen: seenFromTee }),
    ...(seesGreen === undefined ? {} : { seesGreen }),
    ...(green ? { green } : {}),
    ...nextHazards(hole, tee, landing, words),
  };
}

/** As many as a card has room for. */
const MOST_NEXT = 4;

/** What is met after a drive: beyond it, and in front of the back of the green. */
function nextHazards(
  hole: MeasuredHole,
  tee: TeeFigures,
  { point, driveMetres }: LandingFigures,
  words: Words,
): Pick<OwnDrive, "next"> {
  const ids = tee.hazards
    .filter((hazard) => isMetLater(hazard, tee, driveMetres))
    .map(({ id, stretch }) => `${id}#${stretch}`);
  if (ids.length === 0) return {};
  const next = measureFrom(hole, point)
    .hazards.filter(
      ({ id, stretch, inCorridor, noCarry }) =>
        inCorridor && noCarry !== "boundary" && ids.includes(`${id}#${stretch}`),
    )
    .slice(0, MOST_NEXT)
    .map((hazard): NextHazard => {
      const { id, stretch, stretches, reachMetres, carryMetres, leavesMetres } = hazard;
      const name = featureName(hole, id, words);
      const carried = carriedOver(hazard);
      return [
        stretches > 1 ? words.stretch({ name, time: stretch }) : name,
        rounded(reachMetres),
        carried ? rounded(carried.metres) : null,
        carryMetres !== undefined && leavesMetres > 0 ? rounded(leavesMetres) : null,
      ];
    });
  return next.length > 0 ? { next } : {};
}
