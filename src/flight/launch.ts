import { radians } from "../geo/units.ts";
import { STANDARD_AIR } from "./air.ts";
import type { CoefficientSet } from "./coefficients/types.ts";
import { descentOf, launchOf, LONGEST_CARRY_METRES, SHORTEST_CARRY_METRES } from "./family.ts";
import type { FlightResult } from "./result.ts";
import { fly } from "./trajectory.ts";
import type { Flight, Launch } from "./trajectory.ts";

/** The flight of a launch on level ground in still standard air, where its carry is its level carry. */
export function flyStandard(launch: Launch, coefficients: CoefficientSet, stepSeconds?: number): FlightResult<Flight> {
  return fly(launch, { coefficients, air: STANDARD_AIR, ...(stepSeconds === undefined ? {} : { stepSeconds }) });
}

/** How a coefficient set's flights of a stroke are brought to what is known of it. */
export interface Fitting {
  /** What the stroke is known to carry, over what the set gives its launch: lengths are multiplied by it. */
  readonly stretch: number;
  /**
   * A rise is flown to as so much of itself. A rise costs its height over the tangent of the descent, and both
   * sets come
   * down flatter than the tour's means: so a rise costs what it does at the descent the stroke is known to have.
   */
  readonly riseShare: number;
}

/**
 * The launch is nature's, not one bent until the set agrees: a set that flies it short is stretched, so that only
 * the share
 * by which a day changes the carry rests on the set. NaN where the set cannot fly it.
 */
export function fittingOf(
  carryMetres: number,
  driverMetres: number,
  coefficients: CoefficientSet,
  stepSeconds?: number,
): Fitting {
  const level = flyStandard(launchOf(carryMetres, driverMetres), coefficients, stepSeconds);
  if (!level.ok) return { stretch: NaN, riseShare: NaN };
  const stretch = carryMetres / level.carryMetres;
  return {
    stretch,
    riseShare:
      Math.tan(radians(level.landingAngleDegrees)) / stretch / Math.tan(radians(descentOf(carryMetres, driverMetres))),
  };
}

/** A golfer's strokes are worked out beforehand at so many lengths, shortest to longest. */
const KNOTS = 121;
const BETWEEN_KNOTS = (LONGEST_CARRY_METRES - SHORTEST_CARRY_METRES) / (KNOTS - 1);
/** Golfers kept: the usual one, and those who have given their driver, the last of them. */
const GOLFERS_KEPT = 8;

const tables = new Map<CoefficientSet, Map<number, (Fitting | undefined)[]>>();

/**
 * The same within a part in a thousand, four near a bend of the family, most often without a flight: for
 * flights that are only on the way to an answer.
 */
export function roughFittingOf(carryMetres: number, driverMetres: number, coefficients: CoefficientSet): Fitting {
  const golfers = tables.get(coefficients) ?? new Map<number, (Fitting | undefined)[]>();
  tables.set(coefficients, golfers);
  let table = golfers.get(driverMetres);
  if (table === undefined) {
    const oldest = golfers.size >= GOLFERS_KEPT ? golfers.keys().next() : undefined;
    if (oldest && !oldest.done) golfers.delete(oldest.value);
    table = [];
    golfers.set(driverMetres, table);
  }
  const at = Math.min(KNOTS - 2, Math.max(0, Math.floor((carryMetres - SHORTEST_CARRY_METRES) / BETWEEN_KNOTS)));
  const share = (carryMetres - SHORTEST_CARRY_METRES) / BETWEEN_KNOTS - at;
  const knot = (n: number): Fitting =>
    (table[n] ??= fittingOf(SHORTEST_CARRY_METRES + n * BETWEEN_KNOTS, driverMetres, coefficients));
  const [low, high] = [knot(at), knot(at + 1)];
  return {
    stretch: low.stretch * (1 - share) + high.stretch * share,
    riseShare: low.riseShare * (1 - share) + high.riseShare * share,
  };
}
