/** Error of a distance in the frame, and of the spherical formula, against the exact geodesic. */
import { distance as sphericalDistance } from "@turf/turf";
import geographiclib from "geographiclib-geodesic";
import { frameAt } from "../../src/geo/frame.ts";
import type { Position } from "../../src/geo/position.ts";
import { distanceMetres } from "../../src/geo/vector.ts";
import type { BenchLine } from "./line.ts";

const wgs84 = geographiclib.Geodesic.WGS84;

function travel([longitude, latitude]: Position, azimuth: number, metres: number): Position {
  const end = wgs84.Direct(latitude, longitude, azimuth, metres);
  return [end.lon2!, end.lat2!];
}

/** Worst errors over lines of one length in all directions, started 1.5 km from the frame's origin. */
export async function frameBench(): Promise<BenchLine[]> {
  const lines: BenchLine[] = [];
  for (const latitude of [0, 35, 56.5, 70]) {
    for (const metres of [457.2, 1000]) {
      let [ours, sphere] = [0, 0];
      const origin: Position = [-9, latitude];
      const frame = frameAt(origin);
      for (let azimuth = 0; azimuth < 360; azimuth += 5) {
        const from = travel(origin, (azimuth * 7) % 360, 1500);
        const to = travel(from, azimuth, metres);
        ours = Math.max(ours, Math.abs(distanceMetres(frame.toPlane(from), frame.toPlane(to)) - metres));
        const turf = sphericalDistance([from[0], from[1]], [to[0], to[1]], { units: "meters" });
        sphere = Math.max(sphere, Math.abs(turf - metres));
      }
      lines.push({
        name: `frame error, ${metres} m at ${latitude} degrees`,
        value: ours * 1000,
        unit: "mm",
        note: `spherical formula on the same lines: ${(sphere * 1000).toFixed(0)} mm (${((100 * sphere) / metres).toFixed(2)} %)`,
      });
    }
  }
  return lines;
}
