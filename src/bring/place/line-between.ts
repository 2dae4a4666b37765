/** Lines of play for holes that have a green and a tee, both saying the hole's number, and no line. Pure. */
import type { Position } from "geojson";
import type { Frame } from "../../geo/frame.ts";
import { between } from "../../geo/segment.ts";
import type { Point } from "../../geo/position.ts";
import { distanceMetres } from "../../geo/vector.ts";
import type { Candidate } from "../normalise/candidate.ts";
import { covers, middleOf, positionAt, shapeOf } from "./shape.ts";

/** From the tee furthest back to the green, by the middle of a fairway that the straight way misses. */
export function linesBetween(
  candidates: readonly Candidate[],
  having: ReadonlySet<number>,
  frame: Frame,
): Candidate[] {
  const of = (hole: Candidate["hole"], ...kinds: readonly string[]): Candidate[] =>
    candidates.filter((one) => one.hole === hole && kinds.includes(one.kind));
  const middle = ({ geometry }: Candidate): Point => middleOf(shapeOf(geometry, frame));
  const numbers = new Set(
    candidates.flatMap(({ kind, hole }) =>
      kind === "green" && typeof hole === "number" && !having.has(hole) ? [hole] : [],
    ),
  );
  return [...numbers]
    .sort((a, b) => a - b)
    .flatMap((hole): Candidate[] => {
      const [green, ...others] = of(hole, "green");
      if (green === undefined || others.length > 0) return [];
      const end = middle(green);
      const tees = of(hole, "teeing-ground", "tee-marker")
        .map(middle)
        .sort((a, b) => distanceMetres(b, end) - distanceMetres(a, end));
      const start = tees[0];
      if (start === undefined) return [];
      const halfway = between(start, end, 0.5);
      const fairways = of(hole, "fairway").map(({ geometry }) => shapeOf(geometry, frame));
      const missed = fairways.length > 0 && !fairways.some((shape) => covers(shape, halfway));
      const points = missed ? [start, middleOf(fairways[0]!), end] : [start, end];
      return [
        {
          from: green.from,
          key: undefined,
          id: undefined,
          hole,
          kind: "line-of-play",
          tags: { golf: "hole", proposed: true },
          geometry: { type: "LineString", coordinates: points.map((point): Position => positionAt(point, frame)) },
          guess: undefined,
          card: undefined,
        },
      ];
    });
}
