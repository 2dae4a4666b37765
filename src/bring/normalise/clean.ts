/** Geometry as content wants it: rounded, closed, wound the RFC 7946 way, without doubled positions. */
import type { Position } from "geojson";
import type { CheckedGeometry } from "../../course/schema/geometry.ts";
import type { PlainGeometry } from "../sources/brought.ts";

/** Seven decimals of a degree are a centimetre; a surveyor's heights are good to one too. */
const [DEGREE_DECIMALS, HEIGHT_DECIMALS] = [7, 2];

const round = (n: number, decimals: number): number => Number(n.toFixed(decimals)) + 0;

const rounded = ([x, y, z]: Position): Position => {
  const place = [round(x!, DEGREE_DECIMALS), round(y!, DEGREE_DECIMALS)];
  return z === undefined || !Number.isFinite(z) ? place : [...place, round(z, HEIGHT_DECIMALS)];
};

const same = (a: Position, b: Position): boolean => a[0] === b[0] && a[1] === b[1];

function path(positions: readonly Position[]): Position[] {
  const kept: Position[] = [];
  for (const position of positions.map(rounded)) {
    if (kept.length === 0 || !same(kept[kept.length - 1]!, position)) kept.push(position);
  }
  return kept;
}

const doubleArea = (ring: readonly Position[]): number =>
  ring.reduce((sum, [x, y], i) => {
    const [x0, y0] = ring[0]!;
    const [x2, y2] = ring[(i + 1) % ring.length]!;
    return sum + (x! - x0!) * (y2! - y0!) - (x2! - x0!) * (y! - y0!);
  }, 0);

function ring(positions: readonly Position[], exterior: boolean): Position[] {
  const closed = path(positions);
  const first = closed[0];
  if (first === undefined) return closed;
  if (closed.length > 1 && same(first, closed[closed.length - 1]!)) closed.pop();
  if (doubleArea(closed) > 0 !== exterior) closed.reverse();
  // A ring reversed would start at its other end; kept at its own start it compares with the last time it was brought.
  const start = closed.findIndex((position) => same(position, first));
  const turned = [...closed.slice(start), ...closed.slice(0, start)];
  return [...turned, turned[0]!];
}

const area = (rings: readonly (readonly Position[])[]): Position[][] =>
  rings.map((positions, i) => ring(positions, i === 0));

/** Heights that are all zero are a format's way of saying nothing. */
function withoutIdleHeights(geometry: CheckedGeometry): CheckedGeometry {
  let idle = true;
  const look = (value: unknown): void => {
    if (!Array.isArray(value)) return;
    if (typeof value[0] === "number") idle &&= value[2] === undefined || value[2] === 0;
    else value.forEach(look);
  };
  look(geometry.coordinates);
  if (!idle) return geometry;
  const flat = (value: unknown): unknown =>
    Array.isArray(value) ? (typeof value[0] === "number" ? value.slice(0, 2) : value.map(flat)) : value;
  // Only third numbers go, so the shape stays that of the type.
  return { type: geometry.type, coordinates: flat(geometry.coordinates) } as CheckedGeometry;
}

/** Cleaned; whether it is sound is for the content's own checks to say. */
export function cleaned(geometry: PlainGeometry): CheckedGeometry {
  switch (geometry.type) {
    case "Point":
      return withoutIdleHeights({ type: "Point", coordinates: rounded(geometry.coordinates) });
    case "MultiPoint":
      return withoutIdleHeights(
        geometry.coordinates.length === 1
          ? { type: "Point", coordinates: rounded(geometry.coordinates[0]!) }
          : { type: "MultiPoint", coordinates: geometry.coordinates.map(rounded) },
      );
    case "LineString":
      return withoutIdleHeights({ type: "LineString", coordinates: path(geometry.coordinates) });
    case "MultiLineString":
      return withoutIdleHeights(
        geometry.coordinates.length === 1
          ? { type: "LineString", coordinates: path(geometry.coordinates[0]!) }
          : { type: "MultiLineString", coordinates: geometry.coordinates.map(path) },
      );
    case "Polygon":
      return withoutIdleHeights({ type: "Polygon", coordinates: area(geometry.coordinates) });
    case "MultiPolygon":
      return withoutIdleHeights(
        geometry.coordinates.length === 1
          ? { type: "Polygon", coordinates: area(geometry.coordinates[0]!) }
          : { type: "MultiPolygon", coordinates: geometry.coordinates.map(area) },
      );
  }
}
