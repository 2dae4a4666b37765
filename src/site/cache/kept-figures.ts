/**
 * What is worked out from the ground at some cost, kept between builds and the same in
 * every language: no name is in it.
 */
import { greenLie, type GreenLie } from "../../measure/green-lie.ts";
import { landingAt } from "../../measure/landing.ts";
import type { MeasuredHole, TeeFigures } from "../../measure/types.ts";
import type { HeightGrid } from "../../terrain/grid.ts";
import { drawnHole, kept } from "./kept.ts";
import { originalHole } from "../language/language-view.ts";

/** A hole as figures may see it: the same one in every language. */
export const withoutNames = (hole: MeasuredHole): MeasuredHole => drawnHole(originalHole(hole));

/** As greenLie. */
export const keptGreenLie = (hole: MeasuredHole, tee: TeeFigures, grid: HeightGrid): GreenLie | undefined =>
  kept("green-lie", [withoutNames(hole), tee.tee.id, grid], () => greenLie(withoutNames(hole), tee, grid));

/** As landingAt. */
export const keptLanding = (
  hole: MeasuredHole,
  tee: TeeFigures,
  driveMetres: number,
  grid: HeightGrid | undefined,
): ReturnType<typeof landingAt> =>
  kept("landing", [withoutNames(hole), tee.tee.id, driveMetres, grid], () =>
    landingAt(withoutNames(hole), tee, driveMetres, grid),
  );
