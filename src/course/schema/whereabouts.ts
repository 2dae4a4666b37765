/**
 * Positions that cannot belong to the course: far away from all the others, and those that
 * come home once latitude and longitude change places.
 */
import type { Position } from "geojson";
import { errorAt, type Finding, type Path } from "./finding.ts";
import { forEachPosition, showPosition, vertexName, type CheckedGeometry } from "./geometry.ts";
import { count } from "./wording.ts";

/**
 * No course is wider than this from its middle, and within it the measuring frame is good
 * to a millimetre in a kilometre (FRAME_REACH_METRES leaves room for a middle taken
 * differently).
 */
export const COURSE_REACH_METRES = 6_000;

/** Metres in a degree of latitude, near enough to tell a neighbour from another country. */
const METRES_PER_DEGREE = 111_200;

export interface Located {
  readonly id: string;
  readonly path: Path;
  readonly geometry: CheckedGeometry;
}

const middleOf = (values: number[]): number => values.sort((a, b) => a - b)[values.length >> 1]!;

const wrapped = (degrees: number): number => ((((degrees + 180) % 360) + 360) % 360) - 180;

/**
 * The middle of a course: medians of each feature's first position, which a few strays
 * cannot move. Undefined without features.
 */
export function middle(features: Iterable<Pick<Located, "geometry">>): Position | undefined {
  const longitudes: number[] = [];
  const latitudes: number[] = [];
  for (const { geometry } of features) {
    let first: Position | undefined;
    forEachPosition(geometry, (position) => (first ??= position));
    if (first === undefined) continue;
    longitudes.push(first[0]!);
    latitudes.push(first[1]!);
  }
  if (longitudes.length === 0) return undefined;
  // Beside the first one, so that a course on the 180th meridian keeps together.
  const base = longitudes[0]!;
  return [wrapped(base + middleOf(longitudes.map((l) => wrapped(l - base)))), middleOf(latitudes)];
}

/** Rough distance: it only tells here from elsewhere. */
function metresApart([x1, y1]: Position, [x2, y2]: Position): number {
  const east = wrapped(x2! - x1!) * Math.cos((y1! * Math.PI) / 180);
  return Math.hypot(east, y2! - y1!) * METRES_PER_DEGREE;
}

/** What is wrong with where a feature lies, one finding for a feature all of whose strays err alike. */
export function checkWhereabouts(feature: Located, centre: Position): Finding[] {
  const strays: { position: Position; indices: readonly number[]; swapped: boolean }[] = [];
  forEachPosition(feature.geometry, (position, indices) => {
    if (metresApart(centre, position) <= COURSE_REACH_METRES) return;
    const swapped =
      Math.abs(position[0]!) <= 90 && metresApart(centre, [position[1]!, position[0]!]) <= COURSE_REACH_METRES;
    strays.push({ position, indices: [...indices], swapped });
  });
  const findings: Finding[] = [];
  for (const swapped of [true, false]) {
    const [first, ...more] = strays.filter((stray) => stray.swapped === swapped);
    if (first === undefined) continue;
    const where = vertexName(feature.geometry.type, first.indices);
    const too = (words: string): string =>
      more.length === 0
        ? ""
        : ` ${count(more.length, "other position")} of it ${more.length === 1 ? "is" : "are"} ${words}.`;
    const path = [...feature.path, "geometry", "coordinates", ...first.indices];
    if (swapped) {
      const right = showPosition([first.position[1], first.position[0], ...first.position.slice(2)]);
      findings.push(
        errorAt(
          path,
          "position-swapped",
          `${feature.id}: ${where} has latitude and longitude swapped: found ${showPosition(first.position)}, expected longitude first. Write ${right}.${too("swapped too")}`,
        ),
      );
    } else {
      const far = metresApart(centre, first.position) / 1000;
      const distance = far < 100 ? far.toFixed(1) : far.toFixed(0);
      findings.push(
        errorAt(
          path,
          "position-far",
          `${feature.id}: ${where} is ${showPosition(first.position)}, ${distance} km from the middle of the course at ${showPosition(centre.map((n) => Number(n.toFixed(4))))}: expected within ${COURSE_REACH_METRES / 1000} km. Correct its longitude or latitude.${too("as far away")}`,
        ),
      );
    }
  }
  return findings;
}
