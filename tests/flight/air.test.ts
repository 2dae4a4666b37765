import { describe, expect, it } from "vitest";
import {
  airDensity,
  airFrom,
  dynamicViscosity,
  pressurePascals,
  STANDARD_AIR,
  standardTemperatureKelvin,
} from "../../src/flight/air.ts";

// Height m, density ratio, temperature K, pressure hPa, kinematic viscosity 1e-5 m2/s.
// Published: International Standard Atmosphere (ISO 2533) table, engineeringtoolbox.com, geometric height.
const STANDARD_ATMOSPHERE = [
  [-500, 1.0489, 291.4, 1074.8, 1.405],
  [0, 1.0, 288.15, 1013.25, 1.461],
  [500, 0.9529, 284.9, 954.6, 1.52],
  [1000, 0.9075, 281.7, 898.8, 1.581],
  [1500, 0.8638, 278.4, 845.6, 1.646],
  [2000, 0.8217, 275.2, 795.0, 1.715],
  [2500, 0.7812, 271.9, 746.9, 1.787],
  [3000, 0.7423, 268.7, 701.2, 1.863],
  [4000, 0.6689, 262.2, 616.6, 2.028],
  [5000, 0.6012, 255.7, 540.5, 2.211],
] as const;

/**
 * CIPM-2007, Picard et al., Metrologia 45 (2008) 149-155: the metrologists' real-gas formula, written
 * out here as the independent method (coefficients read in metrology code).
 */
function cipm2007(celsius: number, pascals: number, humidity: number): number {
  const kelvin = celsius + 273.15;
  const molarAir = (28.96546 + 12.011 * (0.0004 - 0.0004)) * 1e-3;
  const saturation = Math.exp(1.2378847e-5 * kelvin ** 2 - 1.9121316e-2 * kelvin + 33.93711047 - 6343.1645 / kelvin);
  const enhancement = 1.00062 + 3.14e-8 * pascals + 5.6e-7 * celsius ** 2;
  const vapour = (humidity * enhancement * saturation) / pascals;
  const ratio = pascals / kelvin;
  const compressibility =
    1 -
    ratio *
      (1.58123e-6 -
        2.9331e-8 * celsius +
        1.1043e-10 * celsius ** 2 +
        (5.707e-6 - 2.051e-8 * celsius) * vapour +
        (1.9898e-4 - 2.376e-6 * celsius) * vapour ** 2) +
    ratio ** 2 * (1.83e-11 - 0.765e-8 * vapour ** 2);
  return ((pascals * molarAir) / (compressibility * 8.314472 * kelvin)) * (1 - vapour * (1 - 18.01528e-3 / molarAir));
}

// Celsius, pascals, humidity, density by CIPM-2007. Computed from the published formula elsewhere.
const MOIST = [
  [20, 101325, 0.5, 1.19931],
  [20, 101325, 0, 1.20456],
  [15, 101325, 0, 1.22552],
  [0, 101325, 0, 1.29305],
  [10, 101325, 0.75, 1.24296],
  [30, 101325, 0.8, 1.15001],
  [25, 84556, 0.3, 0.98406],
] as const;

function airAt(statement: Parameters<typeof airFrom>[0]) {
  const answer = airFrom(statement);
  if (!answer.ok) throw new Error(answer.message);
  return answer.air;
}

describe("standard atmosphere", () => {
  it.each(STANDARD_ATMOSPHERE)(
    "at %d m matches ISO 2533 to one in the last printed digit",
    (height, densityRatio, kelvin, hectopascals, viscosity) => {
      const air = airAt({ heightMetres: height });
      expect(Math.abs(air.densityKilogramsPerCubicMetre / 1.225 - densityRatio)).toBeLessThan(0.0001);
      expect(Math.abs(standardTemperatureKelvin(height) - kelvin)).toBeLessThan(0.1);
      expect(Math.abs(pressurePascals(height) / 100 - hectopascals)).toBeLessThan(0.1);
      expect(Math.abs(air.kinematicViscositySquareMetresPerSecond * 1e5 - viscosity)).toBeLessThan(0.001);
    },
  );

  it("is the standard air when nothing but sea level is stated", () => {
    // Published: ISO 2533, 1.225 kg/m3.
    expect(STANDARD_AIR.densityKilogramsPerCubicMetre).toBeCloseTo(1.225, 6);
    expect(airAt({ heightMetres: 0 })).toEqual(STANDARD_AIR);
    expect(
      airAt({ heightMetres: 0, temperatureCelsius: 15, relativeHumidity: 0, seaLevelPressurePascals: 101_325 }),
    ).toEqual(STANDARD_AIR);
  });
});

describe("moist air", () => {
  it.each(MOIST)(
    "at %d degrees, %d Pa, humidity %d is within 0.07 %% of CIPM-2007",
    (celsius, pascals, humidity, published) => {
      expect(cipm2007(celsius, pascals, humidity)).toBeCloseTo(published, 5);
      expect(Math.abs(airDensity(pascals, celsius + 273.15, humidity) / published - 1)).toBeLessThan(0.0007);
    },
  );

  it("stays within 0.07 % of CIPM-2007 over golfing weather", () => {
    let worst = 0;
    for (let celsius = -5; celsius <= 40; celsius += 5) {
      for (const pascals of [80_000, 95_000, 101_325, 105_000]) {
        for (const humidity of [0, 0.5, 1]) {
          worst = Math.max(
            worst,
            Math.abs(airDensity(pascals, celsius + 273.15, humidity) / cipm2007(celsius, pascals, humidity) - 1),
          );
        }
      }
    }
    expect(worst).toBeLessThan(0.0007);
  });

  it("is lighter when warmer, damper, higher or under lower pressure", () => {
    const density = (statement: Parameters<typeof airFrom>[0]) => airAt(statement).densityKilogramsPerCubicMetre;
    const plain = density({ heightMetres: 20, temperatureCelsius: 15, relativeHumidity: 0.5 });
    expect(density({ heightMetres: 20, temperatureCelsius: 25, relativeHumidity: 0.5 })).toBeLessThan(plain);
    expect(density({ heightMetres: 20, temperatureCelsius: 15, relativeHumidity: 0.9 })).toBeLessThan(plain);
    expect(density({ heightMetres: 400, temperatureCelsius: 15, relativeHumidity: 0.5 })).toBeLessThan(plain);
    expect(
      density({ heightMetres: 20, temperatureCelsius: 15, relativeHumidity: 0.5, seaLevelPressurePascals: 98_000 }),
    ).toBeLessThan(plain);
  });
});

it("has the viscosity of the standard at 15 degrees", () => {
  // From memory: 1.7894e-5 Pa s, ISO 2533.
  expect(dynamicViscosity(288.15)).toBeCloseTo(1.7894e-5, 9);
});

describe("refusals", () => {
  it.each([
    [{ heightMetres: NaN }, "not-a-number"],
    [{ heightMetres: 9000 }, "out-of-range"],
    [{ heightMetres: 0, temperatureCelsius: 80 }, "out-of-range"],
    [{ heightMetres: 0, temperatureCelsius: Infinity }, "not-a-number"],
    [{ heightMetres: 0, relativeHumidity: 75 }, "out-of-range"],
    [{ heightMetres: 0, seaLevelPressurePascals: 1013.25 }, "out-of-range"],
  ] as const)("%o", (statement, reason) => {
    expect(airFrom(statement)).toMatchObject({ ok: false, reason });
  });

  it("say what is wrong, then what to give", () => {
    expect(airFrom({ heightMetres: 0, relativeHumidity: 75 })).toMatchInlineSnapshot(`
      {
        "message": "The relative humidity is 75 (a share, not per cent). Give a number from 0 to 1 (a share, not per cent).",
        "ok": false,
        "reason": "out-of-range",
      }
    `);
    expect(airFrom({ heightMetres: 0, seaLevelPressurePascals: 1013.25 })).toMatchInlineSnapshot(`
      {
        "message": "The sea-level pressure is 1013.25 Pa. Give a number from 87000 to 108500 Pa.",
        "ok": false,
        "reason": "out-of-range",
      }
    `);
  });
});
