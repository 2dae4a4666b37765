import { METRES_PER_YARD } from "../geo/units.ts";
import type { Launch } from "./trajectory.ts";

// The means of a men's professional tour, read second hand (ball speed, launch angle, spin and descent of twelve clubs
// by
// what they carry), smoothed: least squares in x, which runs from -1 at the sand wedge to 1 at the driver. The sand
// wedge's row
// is common practice, no source; it has no descent. tests/flight/tour-means.ts has the rows; tests fit them anew.
const SPEED = [58.88, 17.81, -0.92] as const;
const ANGLE = [12.5, -11.45, 10.16, 2.59, -2.94] as const;
const SPIN = [5603, -4731, 3292, 1185, -2672] as const;
const DESCENT = [48.83, -4.86, -2.9, -3.18] as const;

/** What the driver of the means carries, metres. */
export const MEANS_DRIVER_METRES = 275 * METRES_PER_YARD;

/** What the shortest full stroke, a sand wedge's, carries as a share of the driver's (common practice, no source). */
export const SHORTEST_FULL_SHARE = 0.4;

/** Shortest level carry answered for, metres. */
export const SHORTEST_CARRY_METRES = 40 * METRES_PER_YARD;

/** Longest level carry answered for, metres. */
export const LONGEST_CARRY_METRES = 340 * METRES_PER_YARD;

/** Level carry of the driver of the golfer a guide's own figures speak of, metres: between bogey and scratch men's. */
export const USUAL_DRIVER_METRES = 210 * METRES_PER_YARD;

/** Drivers between these rest on measured means, a women's tour's and a men's; the rule carries on beyond them. */
export const MEASURED_DRIVERS_METRES = { least: 120 * METRES_PER_YARD, most: 320 * METRES_PER_YARD } as const;

/**
 * Ball speed with a driver goes as its carry to this power: between the means of a women's tour (218 yd, 140
 * mph, from memory) and a men's.
 */
const SPEED_POWER = 0.75;

/**
 * Degrees a stroke of the same share starts higher for a golfer without ball speed at all: 3.2 for the women's
 * tour, whose
 * ball speed is 0.84 of the men's (their means, from memory). Its spin is the same, within a tenth.
 */
const DEGREES_PER_LACKING_SHARE = 20;

/**
 * Degrees a stroke of the same share comes down flatter for a golfer without ball speed at all, in x: 3.2 at
 * x = 0, 1 with the driver for the women's tour, from memory.
 */
const FLATTER_DEGREES = [19.9, -9.2, -4.6] as const;

/**
 * Ball speed of a part stroke with the sand wedge goes as its carry to this power: between a ball without
 * air, 1/2, and one much held by it.
 */
const PART_STROKE_POWER = 2 / 3;

const polynomial = (factors: readonly number[], x: number): number =>
  factors.reduceRight((sum, factor) => sum * x + factor, 0);

/**
 * The launch of the stroke that carries so far on level ground in still standard air, struck by a golfer whose driver
 * carries `driverMetres`. His clubs carry in the proportions of the tour's means, and so a stroke is known by its
 * share of
 * the driver's carry: a shorter hitter's ball of the same share leaves slower and higher, with the same spin. What
 * carries further than his driver is the driver of a longer hitter; what carries less than a full sand wedge is
 * a part stroke with it. Hitters longer than the tour's keep its launch angles at more ball speed.
 */
export function launchOf(carryMetres: number, driverMetres: number): Launch {
  const { x, speedShare, part } = placeIn(carryMetres, driverMetres);
  return {
    speedMetresPerSecond: speedShare * part * polynomial(SPEED, x),
    angleDegrees: polynomial(ANGLE, x) + DEGREES_PER_LACKING_SHARE * Math.max(0, 1 - speedShare),
    spinRpm: part * polynomial(SPIN, x),
  };
}

/**
 * How steeply the same stroke comes down on level ground, degrees: by the same means and the same rule. A part
 * stroke comes
 * down flatter, by the square root of its share of the ball speed.
 */
export function descentOf(carryMetres: number, driverMetres: number): number {
  const { x, speedShare, part } = placeIn(carryMetres, driverMetres);
  return Math.sqrt(part) * (polynomial(DESCENT, x) - polynomial(FLATTER_DEGREES, x) * Math.max(0, 1 - speedShare));
}

/**
 * Where a stroke stands in the family: its x, its driver's ball speed beside the tour's, its part of a full
 * stroke's.
 */
function placeIn(
  carryMetres: number,
  driverMetres: number,
): { readonly x: number; readonly speedShare: number; readonly part: number } {
  const driver = Math.max(driverMetres, carryMetres);
  const share = carryMetres / driver;
  return {
    x: (Math.max(SHORTEST_FULL_SHARE, share) - (1 + SHORTEST_FULL_SHARE) / 2) / ((1 - SHORTEST_FULL_SHARE) / 2),
    speedShare: (driver / MEANS_DRIVER_METRES) ** SPEED_POWER,
    part: Math.min(1, share / SHORTEST_FULL_SHARE) ** PART_STROKE_POWER,
  };
}

/**
 * Drivers of golfers a stroke may as well be struck by: what is told of it must hold between them. A golfer who
 * has given
 * his driver may launch the ball as one does who hits 15 % shorter or longer; of nobody in particular, anyone from a
 * bogey woman's length (about 160 yd) to the tour's may be asking.
 */
export const otherDrivers = (driverMetres: number | undefined): readonly [shorter: number, longer: number] =>
  driverMetres === undefined
    ? [160 * METRES_PER_YARD, MEANS_DRIVER_METRES]
    : [driverMetres / 1.15, driverMetres * 1.15];
