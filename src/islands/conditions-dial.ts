/**
 * The dial a wind is set on: a compass turned so that the hole runs up. The mark stands
 * where the wind comes from, the farther out the stronger. Places are shares of the dial's
 * radius, x to the right and y down.
 */
import type { Wind } from "../flight/wind.ts";

/** Wind at the dial's rim, m/s; stronger ones can be typed. */
export const RIM_METRES_PER_SECOND = 20;

const turned = (degrees: number): number => ((degrees % 360) + 360) % 360;

/** The wind of a place on the dial; within a twentieth of the middle it is calm. */
export function windAt(x: number, y: number, holeBearingDegrees: number): Wind {
  const out = Math.hypot(x, y);
  return {
    speedMetresPerSecond: out < 0.05 ? 0 : Math.min(1, out) * RIM_METRES_PER_SECOND,
    fromDegrees: turned(holeBearingDegrees + (Math.atan2(x, -y) * 180) / Math.PI),
  };
}

/** Where a wind's mark stands; winds stronger than the rim stand on it. */
export function placeOf(
  { speedMetresPerSecond, fromDegrees }: Wind,
  holeBearingDegrees: number,
): readonly [x: number, y: number] {
  const out = Math.min(1, speedMetresPerSecond / RIM_METRES_PER_SECOND);
  const angle = ((fromDegrees - holeBearingDegrees) * Math.PI) / 180;
  return [Math.sin(angle) * out, -Math.cos(angle) * out];
}

/** Degrees a key turns the mark by, clockwise; undefined for other keys. */
export function keyTurn(key: string): number | undefined {
  switch (key) {
    case "ArrowRight":
    case "ArrowUp":
      return 5;
    case "ArrowLeft":
    case "ArrowDown":
      return -5;
    case "PageUp":
      return 45;
    case "PageDown":
      return -45;
    default:
      return undefined;
  }
}

export const turnedBy = (wind: Wind, degrees: number): Wind => ({
  ...wind,
  fromDegrees: turned(wind.fromDegrees + degrees),
});
