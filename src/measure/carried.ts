/** What a stroke must fly because of a hazard, and what is asked of the tee shot by it. */
import type { TeeSet } from "../course/types.ts";
import type { Point } from "../geo/position.ts";
import { metresFromYards } from "../geo/units.ts";
import { REFERENCE_PLAYERS, type ReferencePlayer } from "./players.ts";
import type { HazardFigures, TeeFigures } from "./types.ts";

/** Nobody is asked to carry more than this from a tee: 260 yards (common practice, no source). */
export const LONGEST_CARRY_METRES = metresFromYards(260);

/** Nearer than this a hazard is stepped over, not carried. */
export const STEPPED_OVER_METRES = metresFromYards(40);

/** What must be flown over a hazard: past all of it, or to the dry land the green lies on. */
export interface Carried {
  readonly metres: number;
  readonly point: Point;
  readonly to: "past" | "green";
}

/** Undefined where there is nothing to carry to: a boundary, what runs on past the green. */
export function carriedOver({ carryMetres, farPoint, dryLand }: HazardFigures): Carried | undefined {
  if (carryMetres !== undefined) return { metres: carryMetres, point: farPoint, to: "past" };
  const land = dryLand.find(({ green }) => green);
  return land && { metres: land.frontMetres, point: land.front, to: "green" };
}

/** The reference players a tee set is rated for; all of them where it is rated for nobody. */
export function playersOf({ ratings }: TeeSet): readonly ReferencePlayer[] {
  const rated = REFERENCE_PLAYERS.filter((player) => ratings.some(({ gender }) => gender === player.gender));
  return rated.length > 0 ? rated : REFERENCE_PLAYERS;
}

/** The longest drive of a tee set's reference players. */
export const longestDriveMetres = (tee: TeeSet): number =>
  Math.max(...playersOf(tee).map(({ driveMetres }) => driveMetres));

/**
 * What a hazard across the line of play asks of the tee shot: `carry` it, stay `short` of
 * it, or nothing yet because it is met `later`. Undefined for what does not lie across in
 * front of the green, and for what is stepped over.
 */
export function askOf(hazard: HazardFigures, { tee, green }: TeeFigures): "carry" | "short" | "later" | undefined {
  if (!hazard.inCorridor || hazard.position !== "across" || hazard.noCarry === "boundary") return undefined;
  if (hazard.farMetres < STEPPED_OVER_METRES || hazard.reachMetres >= green.middleMetres) return undefined;
  const carried = carriedOver(hazard);
  if (carried && carried.metres <= LONGEST_CARRY_METRES) return "carry";
  return hazard.reachMetres > longestDriveMetres(tee) ? "later" : "short";
}
