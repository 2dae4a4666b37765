import { STANDARD_AIR } from "./air.ts";
import type { CoefficientSet } from "./coefficients/types.ts";
import { guessSpeed, launchAtSpeed, LONGEST_CARRY_METRES, SHORTEST_CARRY_METRES } from "./family.ts";
import { refuse, refuseOutside } from "./result.ts";
import type { FlightResult } from "./result.ts";
import { findSpeed } from "./search.ts";
import { fly } from "./trajectory.ts";
import type { Flight, Launch } from "./trajectory.ts";

/** The flight of a launch on level ground in still standard air, where its carry is its level carry. */
export function flyStandard(launch: Launch, coefficients: CoefficientSet, stepSeconds?: number): FlightResult<Flight> {
  return fly(launch, { coefficients, air: STANDARD_AIR, ...(stepSeconds === undefined ? {} : { stepSeconds }) });
}

/**
 * The one launch of the family that carries this far on level ground in still standard air, by a
 * coefficient set. From 40 to 340 yd; a carry grows with ball speed all along the family.
 */
export function launchForCarry(carryMetres: number, coefficients: CoefficientSet, stepSeconds?: number): FlightResult<{ readonly launch: Launch; readonly flight: Flight }> {
  const refusal = refuseOutside("The level carry", carryMetres, SHORTEST_CARRY_METRES, LONGEST_CARRY_METRES, "m");
  if (refusal) return refusal;
  const answer = findSpeed(guessSpeed(carryMetres), (speed) => {
    const flight = flyStandard(launchAtSpeed(speed), coefficients, stepSeconds);
    return { missMetres: flight.ok ? flight.carryMetres - carryMetres : -carryMetres, flight };
  });
  if (!answer.found) {
    return answer.side === "short"
      ? refuse("too-long", `No launch carries ${carryMetres.toFixed(1)} m. Give at most ${LONGEST_CARRY_METRES.toFixed(1)} m.`)
      : refuse("too-short", `No launch carries only ${carryMetres.toFixed(1)} m. Give at least ${SHORTEST_CARRY_METRES.toFixed(1)} m.`);
  }
  const { flight } = answer.trial;
  if (!flight.ok) return flight;
  return { ok: true, launch: launchAtSpeed(answer.speedMetresPerSecond), flight };
}
