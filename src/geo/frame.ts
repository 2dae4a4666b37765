/**
 * The measuring frame: one plane per course in which every figure is computed.
 *
 * It is a transverse Mercator projection of the WGS 84 ellipsoid about the course's own
 * meridian, scale 1 there, computed with the Krüger series in the third flattening to
 * fourth order (L. Krüger 1912; coefficients as in C. F. F. Karney, "Transverse Mercator
 * with an accuracy of a few nanometers", J. Geodesy 85, 2011).
 *
 * Why not scale degrees by the radii at the origin: that misses a diagonal kilometre by
 * some 41 mm. Here the point scale x km from the meridian is 1 + x²/2R²: 12 µm in a
 * kilometre at 1 km, 1 mm in a kilometre at {@link FRAME_REACH_METRES}. So the plane that
 * draws the map is also the plane that prints the distance, and they cannot disagree.
 */
import type { Point, Position } from "./position.ts";
import { degrees, radians } from "./units.ts";

/** WGS 84 (NGA.STND.0036): semi-major axis in metres and flattening. */
export const WGS84_A = 6_378_137;
export const WGS84_F = 1 / 298.257223563;

/** Within this distance of its origin a frame is good to 1 mm in a kilometre. */
export const FRAME_REACH_METRES = 9_000;

const E2 = WGS84_F * (2 - WGS84_F);
const E = Math.sqrt(E2);
const N = WGS84_F / (2 - WGS84_F);
const [N2, N3, N4] = [N ** 2, N ** 3, N ** 4];
/** Radius of the circle with the ellipsoid's meridian length. */
const RECTIFYING_RADIUS = (WGS84_A / (1 + N)) * (1 + N2 / 4 + N4 / 64);
const ALPHA = [
  N / 2 - (2 * N2) / 3 + (5 * N3) / 16 + (41 * N4) / 180,
  (13 * N2) / 48 - (3 * N3) / 5 + (557 * N4) / 1440,
  (61 * N3) / 240 - (103 * N4) / 140,
  (49561 * N4) / 161280,
] as const;
const BETA = [
  N / 2 - (2 * N2) / 3 + (37 * N3) / 96 - N4 / 360,
  N2 / 48 + N3 / 15 - (437 * N4) / 1440,
  (17 * N3) / 480 - (37 * N4) / 840,
  (4397 * N4) / 161280,
] as const;

export interface Frame {
  readonly origin: Position;
  /** Metres east and north of the origin. */
  toPlane(position: Position): Point;
  /** The position of a point of the plane, degrees; no height. */
  toPosition(point: Point): Position;
}

/** tan of the conformal latitude from the sine of the geographic latitude. */
const conformalTangent = (sinLatitude: number): number =>
  Math.sinh(Math.atanh(sinLatitude) - E * Math.atanh(E * sinLatitude));

/** tan of the geographic latitude from that of the conformal latitude, by Newton's method (Karney 2011, eq. 19-21). */
function geographicTangent(conformal: number): number {
  let tau = conformal / (1 - E2);
  for (let i = 0; i < 6; i++) {
    const root = Math.hypot(1, tau);
    const sigma = Math.sinh(E * Math.atanh((E * tau) / root));
    const estimate = tau * Math.hypot(1, sigma) - sigma * root;
    const step = ((conformal - estimate) / Math.hypot(1, estimate)) * ((1 + (1 - E2) * tau * tau) / ((1 - E2) * root));
    tau += step;
    if (Math.abs(step) < 1e-15 * Math.max(1, Math.abs(tau))) break;
  }
  return tau;
}

/** Northing of the equator-based projection, radians on the rectifying sphere, and easting likewise. */
function project(latitude: number, longitudeFromMeridian: number): [xi: number, eta: number] {
  const t = conformalTangent(Math.sin(latitude));
  const cosLambda = Math.cos(longitudeFromMeridian);
  const xi0 = Math.atan2(t, cosLambda);
  const eta0 = Math.asinh(Math.sin(longitudeFromMeridian) / Math.hypot(t, cosLambda));
  let xi = xi0;
  let eta = eta0;
  ALPHA.forEach((alpha, i) => {
    const j = 2 * (i + 1);
    xi += alpha * Math.sin(j * xi0) * Math.cosh(j * eta0);
    eta += alpha * Math.cos(j * xi0) * Math.sinh(j * eta0);
  });
  return [xi, eta];
}

/**
 * The frame about an origin. Good to 1 mm in a kilometre within
 * {@link FRAME_REACH_METRES} of it, at any latitude short of the poles.
 *
 * @throws RangeError when the origin is not a finite position within ±89° of latitude.
 */
export function frameAt(origin: Position): Frame {
  const [longitude0, latitude0] = origin;
  if (!Number.isFinite(longitude0) || !Number.isFinite(latitude0) || Math.abs(latitude0) > 89) {
    throw new RangeError(
      `A frame needs a finite origin within 89 degrees of the equator, not [${longitude0}, ${latitude0}].`,
    );
  }
  const [xi00] = project(radians(latitude0), 0);
  return {
    origin,
    toPlane([longitude, latitude]) {
      const [xi, eta] = project(radians(latitude), radians(wrapDegrees(longitude - longitude0)));
      return [RECTIFYING_RADIUS * eta, RECTIFYING_RADIUS * (xi - xi00)];
    },
    toPosition([x, y]) {
      const xi = y / RECTIFYING_RADIUS + xi00;
      const eta = x / RECTIFYING_RADIUS;
      let xi0 = xi;
      let eta0 = eta;
      BETA.forEach((beta, i) => {
        const j = 2 * (i + 1);
        xi0 -= beta * Math.sin(j * xi) * Math.cosh(j * eta);
        eta0 -= beta * Math.cos(j * xi) * Math.sinh(j * eta);
      });
      const sinhEta = Math.sinh(eta0);
      const cosXi = Math.cos(xi0);
      const conformal = Math.sin(xi0) / Math.hypot(sinhEta, cosXi);
      return [
        wrapDegrees(longitude0 + degrees(Math.atan2(sinhEta, cosXi))),
        degrees(Math.atan(geographicTangent(conformal))),
      ];
    },
  };
}

/** An angle brought into [-180, 180). */
export function wrapDegrees(angle: number): number {
  return angle >= -180 && angle < 180 ? angle : ((((angle + 180) % 360) + 360) % 360) - 180;
}
