/** What a golfer's own drive needs, for every length worked out. */
import type { LengthUnit } from "../geo/units.ts";
import { GROUND_DATA_VERSION, type GroundData, type OwnDrive } from "../islands/conditions-data.ts";
import type { ShotNumbers } from "../islands/conditions-model.ts";
import { DRIVE_LENGTHS_METRES, landingAt } from "../measure/landing.ts";
import { shotsOf, type Shot } from "../measure/shots.ts";
import type { MeasuredCourse, MeasuredHole, TeeFigures } from "../measure/types.ts";
import { reachedInOne } from "./ground-figures.ts";
import { featureName } from "./ground-names.ts";
import { drawnHole, kept } from "./kept.ts";
import type { Words } from "./words.ts";

/** Every ten of the club's unit: 120 to 320 yards, or 110 to 290 metres. */
export const driveLengths = (unit: LengthUnit): readonly number[] =>
  unit === "yards" ? DRIVE_LENGTHS_METRES : Array.from({ length: 19 }, (_, i) => 110 + 10 * i);

const rounded = (value: number, decimals = 1): number => Number(value.toFixed(decimals));

/** A shot as a page carries it: to the decimetre and tenth of a degree. */
export const shotNumbers = ({ distanceMetres, riseMetres, bearingDegrees }: Shot): ShotNumbers => [
  rounded(distanceMetres, 2),
  rounded(riseMetres, 2),
  rounded(bearingDegrees, 1),
];

export function groundData(course: MeasuredCourse, hole: MeasuredHole, unit: LengthUnit, words: Words): GroundData {
  const drivesMetres = driveLengths(unit);
  return kept("ground-data", [drawnHole(hole), course.ground, drivesMetres, words.language], () => ({
    version: GROUND_DATA_VERSION,
    drivesMetres: drivesMetres.map((metres) => rounded(metres, 3)),
    tees: Object.fromEntries(
      hole.tees.map((tee) => [tee.tee.id, reachedInOne(hole) ? [] : drivesMetres.map((drive) => ownDrive(course, drawnHole(hole), tee, drive, words))]),
    ),
  }));
}

function ownDrive({ ground }: MeasuredCourse, hole: MeasuredHole, tee: TeeFigures, driveMetres: number, words: Words): OwnDrive | null {
  const landing = landingAt(hole, tee, driveMetres, ground);
  if (!landing) return null;
  const { left, right, lie, seenFromTee, seesGreen, fairway } = landing;
  const shots = ground ? shotsOf(hole, tee, ground, driveMetres).filter(({ purpose }) => purpose !== "carry").map(shotNumbers) : [];
  const [front, middle, back] = shots;
  return {
    leavesMetres: rounded(landing.leavesMetres),
    fairwayMetres: rounded(fairway.widthMetres),
    ...(left ? { left: [featureName(hole, left.id, words), rounded(left.metres)] as const } : {}),
    ...(right ? { right: [featureName(hole, right.id, words), rounded(right.metres)] as const } : {}),
    ...(lie ? { lie: [rounded(lie.awayPercent), rounded(lie.rightPercent)] as const } : {}),
    ...(seenFromTee === undefined ? {} : { seen: seenFromTee }),
    ...(seesGreen === undefined ? {} : { seesGreen }),
    ...(front && middle && back ? { green: [front, middle, back] as const } : {}),
  };
}
