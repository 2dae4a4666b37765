/** Why a flight question could not be answered. */
export type FlightRefusalReason =
  /** An input is NaN or infinite. */
  | "not-a-number"
  /** An input is a number, but outside what the model will answer for. */
  | "out-of-range"
  /** The shot asked for is shorter than the shortest launch of the family. */
  | "too-short"
  /** The shot asked for is longer than the longest launch of the family, in these conditions. */
  | "too-long"
  /** The ball never comes down through the height asked for. */
  | "unreachable";

/** A refusal: what is wrong, then what to give instead. */
export interface FlightRefusal {
  readonly ok: false;
  readonly reason: FlightRefusalReason;
  readonly message: string;
}

/** An answer, or a refusal; no flight function returns NaN or throws for bad input. */
export type FlightResult<T> = (T & { readonly ok: true }) | FlightRefusal;

/** Builds a refusal. */
export function refuse(reason: FlightRefusalReason, message: string): FlightRefusal {
  return { ok: false, reason, message };
}

/**
 * Holds one number to its range.
 *
 * @param name what the number is, as the message should call it
 * @param unit unit printed behind the limits
 * @returns the refusal, or null when the number is finite and within [minimum, maximum]
 */
export function refuseOutside(
  name: string,
  value: number,
  minimum: number,
  maximum: number,
  unit: string,
): FlightRefusal | null {
  if (typeof value !== "number" || !Number.isFinite(value)) {
    return refuse(
      "not-a-number",
      `${name} is not a finite number (${String(value)}). Give a number from ${minimum} to ${maximum} ${unit}.`,
    );
  }
  if (value < minimum || value > maximum) {
    return refuse("out-of-range", `${name} is ${value} ${unit}. Give a number from ${minimum} to ${maximum} ${unit}.`);
  }
  return null;
}

/** The first refusal among several checks, or null when all passed. */
export function firstRefusal(...checks: readonly (FlightRefusal | null)[]): FlightRefusal | null {
  return checks.find((check) => check !== null) ?? null;
}
