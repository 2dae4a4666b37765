import type { Wind } from "./wind.ts";

/** Beyond this wind, m/s at 10 m, a figure is only an indication. */
export const INDICATION_WIND_METRES_PER_SECOND = 8;

/** Beyond this share of the distance, up or down, too. */
export const INDICATION_RISE_SHARE = 0.12;

/** What a shot is played in and to. */
export interface Asked {
  readonly wind: Wind | undefined;
  readonly riseMetres: number;
  readonly distanceMetres: number;
}

export const isTrustedWind = (wind: Wind | undefined): boolean =>
  wind === undefined || wind.speedMetresPerSecond <= INDICATION_WIND_METRES_PER_SECOND;

/** Whether a figure for the shot is only an indication. */
export const isIndication = ({ wind, riseMetres, distanceMetres }: Asked): boolean =>
  !isTrustedWind(wind) || Math.abs(riseMetres) > INDICATION_RISE_SHARE * distanceMetres;
