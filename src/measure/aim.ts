/** Where something to aim at stands against the line of play, as one sees it from a tee. */
import { directionTo, distanceMetres, turnDegrees } from "../geo/vector.ts";
import { centreOf } from "./place.ts";
import type { PlacedFeature, Side, TeeFigures } from "./types.ts";

export interface OffLine {
  /** Whole degrees to the right of the first leg, left negative. */
  readonly degrees: number;
  /** On the line when the whole degrees are none. */
  readonly where: Side | "on";
}

/** Undefined for what one stands on. */
export function offLine({ line }: Pick<TeeFigures, "line">, { shape }: PlacedFeature): OffLine | undefined {
  const [standing, next] = [line.points[0]!, line.points[1]!];
  const centre = centreOf(shape);
  if (distanceMetres(standing, centre) < 1) return undefined;
  const degrees = Math.round(turnDegrees(directionTo(standing, next), directionTo(standing, centre))) + 0;
  return { degrees, where: degrees === 0 ? "on" : degrees < 0 ? "left" : "right" };
}
