/** How long the legs of a reading play, by the build's own flight code. Fetched with it, when first needed. */
import type { Conditions } from "../conditions-store.ts";
import type { Point } from "../../geo/position.ts";
import { bearingDegrees, directionTo, distanceMetres } from "../../geo/vector.ts";
import { golferOf } from "../driven.ts";
import { dayOf, isWind, STATED_TEMPERATURE_CELSIUS, todayOf } from "../conditions-model.ts";

/** A place with its height. */
export interface Stop {
  readonly point: Point;
  readonly heightMetres: number;
}

export interface LegPlay {
  readonly riseMetres: number;
  /** Undefined where no stroke comes down there. */
  readonly plays:
    | {
        readonly lengthMetres: number;
        readonly plusMinusMetres: number;
        readonly driftMetres: number;
        readonly indication: boolean;
      }
    | undefined;
}

export interface Plays {
  /** One for each leg between the stops. */
  readonly legs: readonly LegPlay[];
  /** Whether a wind of the golfer's is in them. */
  readonly wind: boolean;
  readonly temperatureCelsius: number;
}

/** Undefined when the conditions make no sense to the flight code. */
export function playsOf(stops: readonly Stop[], conditions: Conditions): Plays | undefined {
  const first = stops[0];
  if (first === undefined) return undefined;
  const answer = dayOf(conditions, first.heightMetres);
  if (!answer.ok) return undefined;
  return {
    legs: stops.slice(1).map((to, i): LegPlay => {
      const from = stops[i]!;
      const riseMetres = to.heightMetres - from.heightMetres;
      const today = todayOf(
        [distanceMetres(from.point, to.point), riseMetres, bearingDegrees(directionTo(from.point, to.point))],
        answer.day,
        golferOf(conditions.carryMetres),
      );
      return { riseMetres, plays: today.ok ? today : undefined };
    }),
    wind: isWind(conditions.wind),
    temperatureCelsius: conditions.temperatureCelsius ?? STATED_TEMPERATURE_CELSIUS,
  };
}
