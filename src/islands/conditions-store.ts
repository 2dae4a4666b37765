/** Wind, temperature and own carry as this device keeps them. */
import type { Wind } from "../flight/wind.ts";

export interface Conditions {
  readonly wind: Wind | undefined;
  readonly temperatureCelsius: number | undefined;
  /** Level carry of the golfer's driver. */
  readonly carryMetres: number | undefined;
}

export const NO_CONDITIONS: Conditions = { wind: undefined, temperatureCelsius: undefined, carryMetres: undefined };

/** Yesterday's wind is worse than none. */
export const WEATHER_KEPT_MILLISECONDS = 12 * 3600 * 1000;

export const CONDITIONS_KEY = "marram.conditions";
export const PLAIN_KEY = "marram.plain";
/** Lengths given by hand: see lengths-store.ts, which is not fetched before they are wanted. */
export const LENGTHS_KEY = "marram.lengths";

/** Sent on `document` after the golfer has changed wind, temperature or a length. */
export const CONDITIONS_EVENT = "marram:conditions";

/** @param now milliseconds since 1970 */
export const writeConditions = (
  { wind, temperatureCelsius, carryMetres }: Conditions,
  now: number,
): string | undefined =>
  wind === undefined && temperatureCelsius === undefined && carryMetres === undefined
    ? undefined
    : JSON.stringify({ wind, temperatureCelsius, carryMetres, at: now });

const finite = (value: unknown): value is number => typeof value === "number" && Number.isFinite(value);

/** What was kept; nothing where the text is not ours, and no weather when it is old. */
export function readConditions(text: string | null, now: number): Conditions {
  let value: unknown;
  try {
    value = JSON.parse(text ?? "");
  } catch {
    return NO_CONDITIONS;
  }
  if (typeof value !== "object" || value === null) return NO_CONDITIONS;
  const kept = value as Record<string, unknown>;
  const fresh = finite(kept["at"]) && now - kept["at"] >= 0 && now - kept["at"] < WEATHER_KEPT_MILLISECONDS;
  return {
    wind: fresh ? windOf(kept["wind"]) : undefined,
    temperatureCelsius: fresh && finite(kept["temperatureCelsius"]) ? kept["temperatureCelsius"] : undefined,
    carryMetres: finite(kept["carryMetres"]) ? kept["carryMetres"] : undefined,
  };
}

function windOf(value: unknown): Wind | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const { speedMetresPerSecond, fromDegrees } = value as Record<string, unknown>;
  return finite(speedMetresPerSecond) && speedMetresPerSecond >= 0 && finite(fromDegrees)
    ? { speedMetresPerSecond, fromDegrees }
    : undefined;
}

export const isSet = ({ wind, temperatureCelsius, carryMetres }: Conditions): boolean =>
  wind !== undefined || temperatureCelsius !== undefined || carryMetres !== undefined;
