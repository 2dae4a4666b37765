import { describe, expect, test } from "vitest";
import { Geodesic } from "geographiclib-geodesic";
import { FRAME_REACH_METRES, frameAt } from "../../src/geo/frame.ts";
import type { Position } from "../../src/geo/position.ts";
import { distanceMetres } from "../../src/geo/vector.ts";

const wgs84 = Geodesic.WGS84;

/** The far end of a geodesic, by the independent solver. */
function travel([longitude, latitude]: Position, azimuthDegrees: number, metres: number): Position {
  const end = wgs84.Direct(latitude, longitude, azimuthDegrees, metres);
  return [end.lon2!, end.lat2!];
}

describe("distances in the frame against an independent geodesic solver", () => {
  for (const latitude of [0, 10, 20, 30, 40, 50, 56.5, 60, 70]) {
    test(`lines up to 1 km at ${latitude} degrees agree within 1 mm, anywhere on a course`, () => {
      const origin: Position = [-9, latitude];
      const frame = frameAt(origin);
      let worst = 0;
      for (const corner of [0, 60, 135, 200, 290]) {
        for (const away of [0, 500, 1500]) {
          const start = travel(origin, corner, away);
          for (let azimuth = 0; azimuth < 360; azimuth += 15) {
            for (const metres of [5, 140, 330, 500, 1000]) {
              const end = travel(start, azimuth, metres);
              worst = Math.max(worst, Math.abs(distanceMetres(frame.toPlane(start), frame.toPlane(end)) - metres));
            }
          }
        }
      }
      expect(worst).toBeLessThan(0.001);
    });
  }

  test("a kilometre at the stated reach from the origin is still good to 1 mm", () => {
    const origin: Position = [-9, 56.5];
    const frame = frameAt(origin);
    for (const azimuth of [0, 45, 90, 180, 270]) {
      const start = travel(origin, azimuth, FRAME_REACH_METRES - 1000);
      const end = travel(start, azimuth, 1000);
      expect(Math.abs(distanceMetres(frame.toPlane(start), frame.toPlane(end)) - 1000)).toBeLessThan(0.001);
    }
  });
});

describe("published and computed lines of a hole's size", () => {
  interface Line {
    readonly name: string;
    readonly from: Position;
    readonly to: Position;
    readonly metres: number;
  }
  const lines: readonly Line[] = [
    // Published: C. F. F. Karney, Test set for geodesics, doi 10.5281/zenodo.32156, the hole-sized line.
    {
      name: "GeodTest, 397 m at 78 N",
      from: [0, 78.10174623178],
      to: [0.014156770744058, 78.099711031638792],
      metres: 397.364659,
    },
    // Published: C. F. F. Karney, "Algorithms for geodesics", J. Geodesy 87 (2013), table 3.
    { name: "Karney short, 5 m at 30 S", from: [0, -30.12345], to: [0.00005, -30.12344], metres: 4.944208 },
    // Computed with an independent solver, regression values.
    { name: "200 m at 30 degrees from 56 N 3 W", from: [-3, 56], to: [-2.998397185851, 56.001555604947], metres: 200 },
    { name: "350 m at 120 degrees", from: [-3, 56], to: [-2.995142120108, 55.998428167763], metres: 350 },
    { name: "520.5 m at 250 degrees", from: [-3, 56], to: [-3.007838885876, 55.998400877293], metres: 520.5 },
    { name: "a thousandth of a degree both ways", from: [-3, 56], to: [-2.999, 56.001], metres: 127.631353 },
  ];
  for (const { name, from, to, metres } of lines) {
    test(`${name} agrees within 1 mm`, () => {
      const frame = frameAt(from);
      expect(Math.abs(distanceMetres(frame.toPlane(from), frame.toPlane(to)) - metres)).toBeLessThan(0.001);
    });
  }
});

describe("the independent solver itself reproduces published long lines", () => {
  // All but the last: Karney, Test set for geodesics (doi 10.5281/zenodo.32156); J. Geodesy 87 (2013), table 2.
  // Last: the Australian geodetic datum technical manual's worked example, Flinders Peak to Buninyong (GRS 80; WGS 84
  // is the same to the micrometre).
  const dms = (d: number, m: number, s: number): number => d + m / 60 + s / 3600;
  const lines: readonly [name: string, from: Position, to: Position, metres: number, toleranceMetres: number][] = [
    ["Karney direct", [0, 40], [137.84490004377, 41.79331020506], 10_000_000, 0.001],
    [
      "GeodTest line 1",
      [0, 36.530042355041],
      [5.762344694676510456, -48.164270779097768864],
      9_398_502.0434687,
      0.0001,
    ],
    [
      "GeodTest near-antipodal",
      [0, 8.226828747671],
      [178.68897958262922, -8.516119211674269],
      19_886_305.6710041,
      0.0001,
    ],
    ["GeodTest long", [0, 63.758775485865], [107.50499193289191, 25.179740339437206], 8_337_896.7811702, 0.0001],
    [
      "Flinders Peak to Buninyong",
      [dms(144, 25, 29.5244), -dms(37, 57, 3.7203)],
      [dms(143, 55, 35.3839), -dms(37, 39, 10.1561)],
      54_972.271,
      0.001,
    ],
    // Vincenty 1975, Survey Review XXIII no. 176, gives lines on other ellipsoids; line b on the International
    // ellipsoid.
  ];
  for (const [name, from, to, metres, tolerance] of lines) {
    test(name, () => {
      expect(Math.abs(wgs84.Inverse(from[1], from[0], to[1], to[0]).s12! - metres)).toBeLessThan(tolerance);
    });
  }

  test("Vincenty 1975 table II, line b, on the International ellipsoid, within 1 mm", () => {
    const international = new Geodesic.Geodesic(6_378_388, 1 / 297);
    const line = international.Inverse(dms(37, 19, 54.95367), 0, dms(26, 7, 42.83946), dms(41, 28, 35.50729));
    expect(Math.abs(line.s12! - 4_085_966.703)).toBeLessThan(0.001);
  });
});

describe("round trips and extremes", () => {
  test("plane to position and back returns within a micrometre", () => {
    for (const latitude of [-70, -33, 0, 45, 56.5, 80]) {
      const frame = frameAt([17, latitude]);
      for (const point of [
        [0, 0],
        [1500, -900],
        [-8000, 4000],
        [0.001, 0.001],
      ] as const) {
        const back = frame.toPlane(frame.toPosition(point));
        expect(distanceMetres(point, back)).toBeLessThan(1e-6);
      }
    }
  });

  test("the plane is laid out east and north", () => {
    const frame = frameAt([-3, 56]);
    const east = frame.toPlane([-2.999, 56]);
    const north = frame.toPlane([-3, 56.001]);
    // Metres per degree at 56 N on WGS 84: computed from the radii of curvature, regression values.
    expect(east[0]).toBeCloseTo(62.392771, 4);
    expect(Math.abs(east[1])).toBeLessThan(0.001);
    expect(north[1]).toBeCloseTo(111.341828, 3);
    expect(Math.abs(north[0])).toBeLessThan(1e-9);
  });

  test("a course across the antimeridian is one plane", () => {
    const frame = frameAt([179.9995, -17]);
    const [x] = frame.toPlane([-179.9995, -17]);
    expect(x).toBeGreaterThan(100);
    expect(x).toBeLessThan(110);
    expect(frame.toPosition([x, 0])[0]).toBeCloseTo(-179.9995, 9);
  });

  test("an origin that is no position is refused", () => {
    for (const origin of [
      [NaN, 56],
      [0, Infinity],
      [0, 90],
    ] as const) {
      expect(() => frameAt(origin)).toThrow(RangeError);
    }
  });
});
