/** What is nearest to a tap. */
import type { Point } from "../../geo/position.ts";
import type { CourseData, CourseHoleData } from "../../contract/course-data.ts";
import type { LonLat } from "../../contract/map-data.ts";
import { frameAt } from "../../geo/frame.ts";
import { along, directionTo, distanceMetres, dot } from "../../geo/vector.ts";

/** Metres from a point to a polyline; a single point counts as one. */
export function distanceToLine(line: readonly Point[], point: Point): number {
  let nearest = line.length === 1 ? distanceMetres(line[0]!, point) : Infinity;
  for (let i = 1; i < line.length; i++) {
    const [start, end] = [line[i - 1]!, line[i]!];
    const direction = directionTo(start, end);
    const t = dot([point[0] - start[0], point[1] - start[1]], direction);
    const foot = along(start, direction, Math.min(distanceMetres(start, end), Math.max(0, t)));
    nearest = Math.min(nearest, distanceMetres(foot, point));
  }
  return nearest;
}

/** The hole whose line of play passes nearest, if it does within a distance. */
export function nearestHole(data: CourseData, position: LonLat, withinMetres: number): CourseHoleData | undefined {
  const frame = frameAt(data.origin);
  const point = frame.toPlane(position);
  return data.holes
    .map((hole) => ({
      hole,
      metres: distanceToLine(
        hole.line.map((place) => frame.toPlane(place)),
        point,
      ),
    }))
    .filter(({ metres }) => metres <= withinMetres)
    .sort((a, b) => a.metres - b.metres)[0]?.hole;
}
