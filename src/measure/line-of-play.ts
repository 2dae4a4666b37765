/** The line of play from a standing point, and its turning points. */
import { locate, lineThrough, type Line } from "../geo/line.ts";
import type { Area, Point } from "../geo/position.ts";
import { directionTo, distanceMetres, turnDegrees } from "../geo/vector.ts";
import { greenFrom, type GreenAlong } from "./green.ts";
import type { Bend } from "./types.ts";

/** A turning point closer than this to where one stands is behind one for all purposes. */
const AHEAD_METRES = 10;

export interface Play {
  /** From the standing point through the turning points still ahead to the middle of the green. */
  readonly line: Line;
  readonly green: GreenAlong;
}

/**
 * The way still to play from a point: through the turning points of the drawn line that
 * lie ahead, then to the middle of the green along the last leg. A hole's length is this
 * line's length from its tee marker, as courses are measured for rating (legs between
 * turning points, horizontal, to the centre of the green).
 *
 * @param drawn the hole's `golf=hole` line, tee to green
 */
export function playFrom(standing: Point, drawn: readonly Point[], green: Area): Play {
  const whole = lineThrough(drawn);
  const here = locate(whole, standing).station;
  const ahead = drawn.filter(
    (point, i) =>
      i > 0 &&
      i < drawn.length - 1 &&
      whole.stations[i]! > here + AHEAD_METRES &&
      distanceMetres(standing, point) > AHEAD_METRES,
  );
  const along = greenFrom(green, ahead[ahead.length - 1] ?? standing);
  return { line: lineThrough([standing, ...ahead, along.middle]), green: along };
}

/** The turning points of a line, in order of play. */
export function bendsOf(line: Line): Bend[] {
  return line.points.slice(1, -1).map((point, i) => {
    const turn = turnDegrees(directionTo(line.points[i]!, point), directionTo(point, line.points[i + 2]!));
    return {
      stationMetres: line.stations[i + 1]!,
      angleDegrees: Math.abs(turn),
      side: turn < 0 ? "left" : "right",
      point,
    };
  });
}

/**
 * The station from which a straight shot to the line's end has a given length, found from
 * the green backwards; undefined when the whole line is shorter.
 */
export function stationLeaving(line: Line, leaveMetres: number): number | undefined {
  const end = line.points[line.points.length - 1]!;
  for (let i = line.points.length - 2; i >= 0; i--) {
    const start = line.points[i]!;
    if (distanceMetres(start, end) < leaveMetres) continue;
    // On this leg the distance to the end passes through the wanted one: halve the leg.
    let [far, near] = [0, 1];
    for (let k = 0; k < 40; k++) {
      const share = (far + near) / 2;
      const point: Point = [
        start[0] + (line.points[i + 1]![0] - start[0]) * share,
        start[1] + (line.points[i + 1]![1] - start[1]) * share,
      ];
      if (distanceMetres(point, end) > leaveMetres) far = share;
      else near = share;
    }
    return line.stations[i]! + far * (line.stations[i + 1]! - line.stations[i]!);
  }
  return undefined;
}
