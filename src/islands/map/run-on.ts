/**
 * A sheet is cut off somewhere, and water at its edge ends in a straight line there. On a
 * map that can be moved that line would show: such water runs on beyond the sheet.
 */
import type { Position } from "geojson";
import type { Frame } from "../../geo/frame.ts";
import type { LonLat, MapFeatures } from "../../contract/map-data.ts";
import { frameAt } from "../../geo/frame.ts";

/** A straight edge as long as this along the sheet's own is where the sheet was cut, not a shore. */
const CUT_METRES = 300;

/** An edge counts as the sheet's within this of it. */
const NEAR_METRES = 10;

/** As far as anyone sees from a hole. */
const ON_METRES = 8_000;

/** The features with water that the sheet cuts carried on beyond it; all else as it was. */
export function runOn(features: MapFeatures, origin: LonLat): MapFeatures {
  const frame = frameAt(origin);
  const points = features.features.flatMap(({ geometry }) =>
    geometry.type === "Polygon" ? geometry.coordinates.flat().map((position) => plane(position, frame)) : [],
  );
  if (points.length === 0) return features;
  const sheet: Sheet = [
    Math.min(...points.map(([x]) => x)),
    Math.min(...points.map(([, y]) => y)),
    Math.max(...points.map(([x]) => x)),
    Math.max(...points.map(([, y]) => y)),
  ];
  return {
    ...features,
    features: features.features.map((feature) => {
      const { geometry, properties } = feature;
      if (geometry.type !== "Polygon" || properties.cover !== "water") return feature;
      const rings = geometry.coordinates.map((ring) => ring.map((position) => plane(position, frame)));
      if (!isCut(rings[0] ?? [], sheet)) return feature;
      return {
        ...feature,
        geometry: {
          type: "Polygon",
          coordinates: geometry.coordinates.map((ring, r) =>
            ring.map((position, i) => movedOut(position, rings[r]![i]!, sheet, frame)),
          ),
        },
      };
    }),
  };
}

type XY = readonly [x: number, y: number];
type Sheet = readonly [west: number, south: number, east: number, north: number];

const plane = ([longitude, latitude]: Position, { toPlane }: Frame): XY => toPlane([longitude!, latitude!]);

/** Which of the sheet's sides a point lies on: -1, 0 or 1 along each axis. */
const sideOf = ([x, y]: XY, [west, south, east, north]: Sheet): XY => [
  x < west + NEAR_METRES ? -1 : x > east - NEAR_METRES ? 1 : 0,
  y < south + NEAR_METRES ? -1 : y > north - NEAR_METRES ? 1 : 0,
];

const isCut = (ring: readonly XY[], sheet: Sheet): boolean =>
  ring.some((point, i) => {
    const before = ring[i - 1];
    if (before === undefined || Math.hypot(point[0] - before[0], point[1] - before[1]) < CUT_METRES) return false;
    const [a, b] = [sideOf(before, sheet), sideOf(point, sheet)];
    return (a[0] !== 0 && a[0] === b[0]) || (a[1] !== 0 && a[1] === b[1]);
  });

function movedOut(position: Position, at: XY, sheet: Sheet, frame: Frame): Position {
  const [east, north] = sideOf(at, sheet);
  if (east === 0 && north === 0) return position;
  const [longitude, latitude] = frame.toPosition([at[0] + east * ON_METRES, at[1] + north * ON_METRES]);
  return [longitude, latitude];
}
