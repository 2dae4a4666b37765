/**
 * Where a position is on a flat Web Mercator view, worked out apart from the map that
 * draws it: the projection's defining formula (EPSG:3857), a 512 pixel world at zoom 0.
 */

export interface View {
  readonly width: number;
  readonly height: number;
}

export interface Camera {
  readonly center: readonly [longitude: number, latitude: number];
  readonly zoom: number;
  /** Degrees clockwise from north of what is up. */
  readonly bearing: number;
}

const WORLD = 512;

function world([longitude, latitude]: readonly [number, number], zoom: number): readonly [number, number] {
  const size = WORLD * 2 ** zoom;
  return [
    (size * (longitude + 180)) / 360,
    (size * (1 - Math.asinh(Math.tan((latitude * Math.PI) / 180)) / Math.PI)) / 2,
  ];
}

/** Pixels from the view's upper left corner. */
export function pixelOf(
  position: readonly [number, number],
  { center, zoom, bearing }: Camera,
  { width, height }: View,
): { readonly x: number; readonly y: number } {
  const [x, y] = world(position, zoom);
  const [centreX, centreY] = world(center, zoom);
  const turn = (-bearing * Math.PI) / 180;
  const [dx, dy] = [x - centreX, y - centreY];
  return {
    x: width / 2 + dx * Math.cos(turn) - dy * Math.sin(turn),
    y: height / 2 + dx * Math.sin(turn) + dy * Math.cos(turn),
  };
}
