/** How a green lies: its tilt along the approach, tiers, false front and low side. */
import type { HeightGrid } from "../terrain/grid.ts";
import { belowTheHole, falseFrontOf, type BelowTheHole, type FalseFront } from "../terrain/green-ground.ts";
import { alongApproach, tiltOf, type ApproachSlope, type Tilt } from "../terrain/plane-fit.ts";
import { tiersOf, type Tiers } from "../terrain/tiers.ts";
import { greenOf } from "./hole.ts";
import type { MeasuredHole, TeeFigures } from "./types.ts";

export interface GreenLie {
  readonly tilt: Tilt;
  /** The tilt as met on the approach: away is rising to the back, right is rising to the right. */
  readonly met: ApproachSlope;
  readonly tiers: Tiers | undefined;
  readonly falseFront: FalseFront | undefined;
  /** From which side of a hole cut in the middle a putt runs uphill; undefined when level. */
  readonly below: BelowTheHole | undefined;
}

/** Undefined where too little of the green's ground is known. */
export function greenLie(hole: MeasuredHole, tee: TeeFigures, grid: HeightGrid): GreenLie | undefined {
  const green = greenOf(hole.placed, hole.hole);
  const tilt = tiltOf(grid, green);
  if (!tilt) return undefined;
  const { approach, middle } = tee.green;
  return {
    tilt,
    met: alongApproach(tilt.gradient, approach),
    tiers: tiersOf(grid, green),
    falseFront: falseFrontOf(grid, green, approach),
    below: belowTheHole(grid, middle, approach),
  };
}
