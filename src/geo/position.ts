/**
 * A GeoJSON position (RFC 7946, 3.1.1): longitude and latitude in degrees on WGS 84,
 * and optionally a height in metres.
 */
export type Position = readonly [longitude: number, latitude: number, height?: number];

/** A point in a {@link Frame}'s plane: metres east and metres north of its origin. */
export type Point = readonly [x: number, y: number];

/** A closed ring in the plane; first and last point are identical. */
export type Ring = readonly Point[];

/** A polygon in the plane: the exterior ring, then its holes. */
export type Area = readonly Ring[];
