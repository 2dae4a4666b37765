/**
 * Tiers: a green that is two plateaus with a bank between.
 *
 * Two models of the heights are compared. One is a plane. The other is the same kind of
 * plane with a step across a straight bank: on one side of it the ground is higher by the
 * step, over the bank it rises evenly. Heights alone would not do: a plain tilted green has
 * a high half and a low half too. The bank's direction, place and breadth are searched for;
 * plane and step are least squares.
 *
 * A green has tiers when the step is high enough, each tier has enough of the green, and
 * the step explains most of what a plane leaves over. The thresholds are common practice,
 * no source.
 */
import type { Area, Point } from "../geo/position.ts";
import { directionOfBearing, dot } from "../geo/vector.ts";
import type { HeightGrid } from "./grid.ts";
import { fitPlane } from "./plane-fit.ts";
import { type Spot, spotsIn } from "./region.ts";
import { type Gradient, risePercentToward } from "./slope.ts";

export interface TierThresholds {
  /** Least height between the plateaus, at the bank and in their means. */
  readonly stepMetres: number;
  /** Least share of the green on each. */
  readonly share: number;
  /** Least share of the squares left by a plane that the step explains. */
  readonly explained: number;
  /** The bank is at least this many times as steep as the plateaus along its fall. */
  readonly steeper: number;
}

export const TIER_THRESHOLDS: TierThresholds = { stepMetres: 0.3, share: 0.2, explained: 0.7, steeper: 2 };

export interface Tier {
  /** Middle of it. */
  readonly centre: Point;
  readonly heightMetres: number;
  /** Share of the green, 0 to 1, the bank split at its middle. */
  readonly share: number;
}

export interface Tiers {
  readonly upper: Tier;
  readonly lower: Tier;
  /** Height between the plateaus at the bank. */
  readonly stepMetres: number;
  /** Compass direction straight up the bank. */
  readonly upDegrees: number;
  /** A point in the middle of the bank, and its breadth. */
  readonly bank: { readonly point: Point; readonly breadthMetres: number };
  /** Slope of the plateaus themselves. */
  readonly plateaus: Gradient;
}

const BEARING_STEP = 7.5;
const BREADTHS = [2, 4, 6];

/** The two tiers of a green, or undefined where its known ground has none. */
export function tiersOf(
  grid: HeightGrid,
  area: Area,
  thresholds: TierThresholds = TIER_THRESHOLDS,
): Tiers | undefined {
  // 400 spots decide as well as thousands, and some 1,500 banks are tried on them.
  const spots = thin(spotsIn(grid, area, Math.max(grid.stepMetres / 2, 0.5)), 400);
  const plane = fitPlane(spots);
  if (!plane || spots.length < 12) return undefined;
  const [x0, y0] = plane.centre;
  const planeSquares = plane.residualMetres ** 2 * spots.length;
  const sums = sumsOf(spots, plane.centre);
  let best: { squares: number; fit: StepFit; bearing: number; at: number; breadth: number } | undefined;
  for (let bearing = 0; bearing < 180; bearing += BEARING_STEP) {
    const direction = directionOfBearing(bearing);
    const reach = spots.map(({ point: [x, y] }) => dot([x - x0, y - y0], direction));
    const sorted = [...reach].sort((a, b) => a - b);
    const from = sorted[Math.floor(sorted.length * thresholds.share)]!;
    const to = sorted[Math.ceil(sorted.length * (1 - thresholds.share)) - 1]!;
    for (let at = from; at <= to; at += Math.max(0.5, (to - from) / 20)) {
      for (const breadth of BREADTHS) {
        const fit = fitStep(sums, reach, at, breadth);
        if (fit && (!best || fit.squares < best.squares)) best = { squares: fit.squares, fit, bearing, at, breadth };
      }
    }
  }
  if (!best || best.squares > (1 - thresholds.explained) * planeSquares) return undefined;
  const { fit, bearing, at, breadth } = best;
  const stepMetres = Math.abs(fit.step);
  const upDegrees = fit.step > 0 ? bearing : bearing + 180;
  const up = directionOfBearing(upDegrees);
  const ownPercent = Math.abs(risePercentToward(fit.gradient, up));
  const bankPercent = (100 * stepMetres) / breadth + risePercentToward(fit.gradient, up);
  if (stepMetres < thresholds.stepMetres || bankPercent < thresholds.steeper * ownPercent) return undefined;
  const bank: Point = [x0 + directionOfBearing(bearing)[0] * at, y0 + directionOfBearing(bearing)[1] * at];
  const isUpper = ({ point: [x, y] }: Spot): boolean => dot([x - bank[0], y - bank[1]], up) > 0;
  const upper = tier(spots.filter(isUpper), spots.length);
  const lower = tier(
    spots.filter((spot) => !isUpper(spot)),
    spots.length,
  );
  // A ridge or a roll is fitted by a step against plateaus that fall the other way; its two sides are about as high.
  if (upper.heightMetres - lower.heightMetres < Math.max(thresholds.stepMetres, stepMetres / 2)) return undefined;
  return {
    upper,
    lower,
    stepMetres,
    upDegrees,
    bank: { point: bank, breadthMetres: breadth },
    plateaus: fit.gradient,
  };
}

function thin(spots: readonly Spot[], atMost: number): Spot[] {
  const every = Math.max(1, Math.ceil(spots.length / atMost));
  return spots.filter((_, i) => i % every === 0);
}

function tier(spots: readonly Spot[], of: number): Tier {
  const mean = (value: (spot: Spot) => number): number =>
    spots.reduce((sum, spot) => sum + value(spot), 0) / spots.length;
  return {
    centre: [mean(({ point }) => point[0]), mean(({ point }) => point[1])],
    heightMetres: mean(({ heightMetres }) => heightMetres),
    share: spots.length / of,
  };
}

interface StepFit {
  readonly gradient: Gradient;
  readonly step: number;
  readonly squares: number;
}

/** What every fit to the same spots shares: their places and heights about a middle, and sums of them. */
interface Sums {
  readonly east: readonly number[];
  readonly north: readonly number[];
  readonly height: readonly number[];
  /** Upper triangle of the normal equations on 1, x, y and their right side; nothing yet of the ramp. */
  readonly normal: readonly (readonly number[])[];
  readonly heightSquares: number;
}

function sumsOf(spots: readonly Spot[], [x0, y0]: Point): Sums {
  const h0 = spots[0]?.heightMetres ?? 0;
  const east = spots.map(({ point }) => point[0] - x0);
  const north = spots.map(({ point }) => point[1] - y0);
  const height = spots.map(({ heightMetres }) => heightMetres - h0);
  const sum = (value: (i: number) => number): number => {
    let total = 0;
    for (let i = 0; i < spots.length; i++) total += value(i);
    return total;
  };
  const columns = [() => 1, (i: number) => east[i]!, (i: number) => north[i]!, () => 0, (i: number) => height[i]!];
  return {
    east,
    north,
    height,
    normal: columns
      .slice(0, 4)
      .map((row, j) => columns.map((column, k) => (k < j ? 0 : sum((i) => row(i) * column(i))))),
    heightSquares: sum((i) => height[i]! ** 2),
  };
}

/** Least squares of height on 1, x, y and the bank's ramp from -1/2 to 1/2. */
function fitStep(
  { east, north, height, normal: shared, heightSquares }: Sums,
  reach: readonly number[],
  at: number,
  breadth: number,
): StepFit | undefined {
  let [r, rx, ry, rr, rh] = [0, 0, 0, 0, 0];
  for (let i = 0; i < reach.length; i++) {
    const ramp = Math.min(0.5, Math.max(-0.5, (reach[i]! - at) / breadth));
    r += ramp;
    rx += east[i]! * ramp;
    ry += north[i]! * ramp;
    rr += ramp * ramp;
    rh += ramp * height[i]!;
  }
  const normal = shared.map((row) => [...row]);
  normal[0]![3] = r;
  normal[1]![3] = rx;
  normal[2]![3] = ry;
  normal[3]![3] = rr;
  normal[3]![4] = rh;
  const target = normal.map((row) => row[4]!);
  for (let j = 1; j < 4; j++) for (let k = 0; k < j; k++) normal[j]![k] = normal[k]![j]!;
  const solution = solve4(normal);
  if (!solution) return undefined;
  const explained = solution.reduce((sum, value, j) => sum + value * target[j]!, 0);
  const [, eastward, northward, step] = solution;
  return { gradient: { east: eastward!, north: northward! }, step: step!, squares: heightSquares - explained };
}

/** Gauss elimination with pivoting on 4 rows of 4 coefficients and a right side; undefined when singular. */
function solve4(rows: number[][]): number[] | undefined {
  const m = rows.map((row) => [...row]);
  for (let j = 0; j < 4; j++) {
    let pivot = j;
    for (let i = j + 1; i < 4; i++) if (Math.abs(m[i]![j]!) > Math.abs(m[pivot]![j]!)) pivot = i;
    [m[j], m[pivot]] = [m[pivot]!, m[j]!];
    if (Math.abs(m[j]![j]!) < 1e-9) return undefined;
    for (let i = j + 1; i < 4; i++) {
      const factor = m[i]![j]! / m[j]![j]!;
      for (let k = j; k < 5; k++) m[i]![k]! -= factor * m[j]![k]!;
    }
  }
  const solution = [0, 0, 0, 0];
  for (let j = 3; j >= 0; j--) {
    let value = m[j]![4]!;
    for (let k = j + 1; k < 4; k++) value -= m[j]![k]! * solution[k]!;
    solution[j] = value / m[j]![j]!;
  }
  return solution;
}
