import { STANDARD_GRAVITY } from "./ball.ts";
import { firstRefusal, refuseOutside } from "./result.ts";
import type { FlightResult } from "./result.ts";

/** What the flight needs to know of the air; taken as the same all along the flight. */
export interface Air {
  /** kg/m3 */
  readonly densityKilogramsPerCubicMetre: number;
  /** m2/s */
  readonly kinematicViscositySquareMetresPerSecond: number;
}

/** The air as a golfer or a club would state it. All but the height may be left out. */
export interface AirStatement {
  /** Height of the course above sea level, metres. */
  readonly heightMetres: number;
  /** Air temperature at the course; left out: that of the standard atmosphere at this height. */
  readonly temperatureCelsius?: number;
  /** Relative humidity, 0 to 1; left out: 0, as the standard atmosphere is dry. */
  readonly relativeHumidity?: number;
  /** Pressure reduced to sea level, as forecasts give it; left out: 101,325 Pa. */
  readonly seaLevelPressurePascals?: number;
}

// ISO 2533:1975, standard atmosphere below 11 km; the constants from memory, they reproduce its table.
const SEA_LEVEL_KELVIN = 288.15;
const SEA_LEVEL_PASCALS = 101_325;
const LAPSE_KELVIN_PER_METRE = 0.0065;
const GAS_CONSTANT_DRY_AIR = 287.05287;
const GAS_CONSTANT_VAPOUR = 461.495;
const EARTH_RADIUS_METRES = 6_356_766;
const ZERO_CELSIUS_IN_KELVIN = 273.15;

// Golf is played between these.
const MINIMUM_HEIGHT_METRES = -500;
const MAXIMUM_HEIGHT_METRES = 5000;

function geopotentialMetres(heightMetres: number): number {
  return (EARTH_RADIUS_METRES * heightMetres) / (EARTH_RADIUS_METRES + heightMetres);
}

/** Temperature of the standard atmosphere (ISO 2533) at a height above sea level, kelvin. */
export function standardTemperatureKelvin(heightMetres: number): number {
  return SEA_LEVEL_KELVIN - LAPSE_KELVIN_PER_METRE * geopotentialMetres(heightMetres);
}

/**
 * Pressure at a height above sea level, pascals, by the standard atmosphere (ISO 2533), scaled to
 * the day's sea-level pressure.
 */
export function pressurePascals(heightMetres: number, seaLevelPressurePascals = SEA_LEVEL_PASCALS): number {
  const ratio = standardTemperatureKelvin(heightMetres) / SEA_LEVEL_KELVIN;
  return seaLevelPressurePascals * ratio ** (STANDARD_GRAVITY / (GAS_CONSTANT_DRY_AIR * LAPSE_KELVIN_PER_METRE));
}

/**
 * Density of moist air, kg/m3: partial pressures of two ideal gases, with saturation by a Magnus
 * form. Within 0.07 % of CIPM-2007 over golfing weather, and equal to ISO 2533 when dry, which
 * CIPM-2007 (a real gas of slightly other composition) is not: so the standard day changes nothing.
 *
 * @param relativeHumidity 0 to 1
 */
export function airDensity(
  stationPressurePascals: number,
  temperatureKelvin: number,
  relativeHumidity: number,
): number {
  const celsius = temperatureKelvin - ZERO_CELSIUS_IN_KELVIN;
  const vapourPascals = relativeHumidity * 611.2 * Math.exp((17.62 * celsius) / (243.12 + celsius));
  return (
    (stationPressurePascals - vapourPascals) / (GAS_CONSTANT_DRY_AIR * temperatureKelvin) +
    vapourPascals / (GAS_CONSTANT_VAPOUR * temperatureKelvin)
  );
}

/** Dynamic viscosity of air, Pa s, by Sutherland's form with the constants of ISO 2533. */
export function dynamicViscosity(temperatureKelvin: number): number {
  return (1.458e-6 * temperatureKelvin ** 1.5) / (temperatureKelvin + 110.4);
}

/**
 * The air of a statement, or a refusal when a number in it makes no sense (a height outside
 * -500 to 5,000 m, a temperature outside -30 to 50 degrees Celsius, humidity outside 0 to 1, a
 * sea-level pressure outside 87,000 to 108,500 Pa, which brackets all weather on record).
 */
export function airFrom(statement: AirStatement): FlightResult<{ readonly air: Air }> {
  const {
    heightMetres,
    temperatureCelsius,
    relativeHumidity = 0,
    seaLevelPressurePascals = SEA_LEVEL_PASCALS,
  } = statement;
  const refusal = firstRefusal(
    refuseOutside("The height of the course", heightMetres, MINIMUM_HEIGHT_METRES, MAXIMUM_HEIGHT_METRES, "m"),
    temperatureCelsius === undefined
      ? null
      : refuseOutside("The temperature", temperatureCelsius, -30, 50, "degrees Celsius"),
    refuseOutside("The relative humidity", relativeHumidity, 0, 1, "(a share, not per cent)"),
    refuseOutside("The sea-level pressure", seaLevelPressurePascals, 87_000, 108_500, "Pa"),
  );
  if (refusal) return refusal;
  const kelvin =
    temperatureCelsius === undefined
      ? standardTemperatureKelvin(heightMetres)
      : temperatureCelsius + ZERO_CELSIUS_IN_KELVIN;
  const density = airDensity(pressurePascals(heightMetres, seaLevelPressurePascals), kelvin, relativeHumidity);
  return {
    ok: true,
    air: {
      densityKilogramsPerCubicMetre: density,
      kinematicViscositySquareMetresPerSecond: dynamicViscosity(kelvin) / density,
    },
  };
}

/** Still standard air at sea level: 15 degrees Celsius, 101,325 Pa, dry (ISO 2533). Level carries are stated in it. */
export const STANDARD_AIR: Air = (() => {
  const density = airDensity(SEA_LEVEL_PASCALS, SEA_LEVEL_KELVIN, 0);
  return {
    densityKilogramsPerCubicMetre: density,
    kinematicViscositySquareMetresPerSecond: dynamicViscosity(SEA_LEVEL_KELVIN) / density,
  };
})();
