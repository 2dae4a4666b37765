/** What is worked out from the ground at some cost, kept between builds. */
import { greenLie, type GreenLie } from "../measure/green-lie.ts";
import { landingAt } from "../measure/landing.ts";
import type { MeasuredHole, TeeFigures } from "../measure/types.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { drawnHole, kept } from "./kept.ts";

/** As greenLie. */
export const keptGreenLie = (hole: MeasuredHole, tee: TeeFigures, grid: HeightGrid): GreenLie | undefined =>
  kept("green-lie", [drawnHole(hole), tee.tee.id, grid], () => greenLie(drawnHole(hole), tee, grid));

/** As landingAt. */
export const keptLanding = (hole: MeasuredHole, tee: TeeFigures, driveMetres: number, grid: HeightGrid | undefined): ReturnType<typeof landingAt> =>
  kept("landing", [drawnHole(hole), tee.tee.id, driveMetres, grid], () => landingAt(drawnHole(hole), tee, driveMetres, grid));
