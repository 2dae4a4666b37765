/**
 * Where a place is on a tilted view, worked out apart from the map that draws it: a pinhole
 * camera with vectors, over a plane about the middle of the view. MapLibre documents the
 * vertical angle of view it starts with: 36.87 degrees.
 */
import { frameAt } from "../../src/geo/frame.ts";
import { directionOfBearing, dot, rightOf } from "../../src/geo/vector.ts";
import { metresPerPixel } from "../../src/islands/map/camera.ts";
import type { View } from "./mercator.ts";

export interface TiltedCamera {
  readonly center: readonly [longitude: number, latitude: number];
  readonly zoom: number;
  readonly bearing: number;
  readonly pitch: number;
}

type Vector = readonly [right: number, up: number, height: number];

const times = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/**
 * Pixels from the view's upper left corner.
 *
 * @param heightMetres above the ground in the middle of the view, as drawn
 */
export function tiltedPixelOf(
  position: readonly [number, number],
  heightMetres: number,
  { center, zoom, bearing, pitch }: TiltedCamera,
  { width, height }: View,
): { readonly x: number; readonly y: number } {
  const frame = frameAt(center);
  const scale = 1 / metresPerPixel(zoom, center[1]);
  const up = directionOfBearing(bearing);
  const ground = frame.toPlane(position);
  const place: Vector = [dot(ground, rightOf(up)) * scale, dot(ground, up) * scale, heightMetres * scale];
  const tilt = (pitch * Math.PI) / 180;
  const away = height / 2 / Math.tan(((36.87 / 2) * Math.PI) / 180);
  const eye: Vector = [0, -away * Math.sin(tilt), away * Math.cos(tilt)];
  const from: Vector = [place[0] - eye[0], place[1] - eye[1], place[2] - eye[2]];
  const depth = times(from, [0, Math.sin(tilt), -Math.cos(tilt)]);
  return {
    x: width / 2 + (away * from[0]) / depth,
    y: height / 2 - (away * times(from, [0, Math.cos(tilt), Math.sin(tilt)])) / depth,
  };
}
