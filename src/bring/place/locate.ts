/** Where the course is, and what lies too far from it to be looked at. Pure. */
import type { Position } from "geojson";
import { middle } from "../../course/schema/whereabouts.ts";
import { frameAt, type Frame } from "../../geo/frame.ts";
import { distanceMetres } from "../../geo/vector.ts";
import type { LeftOver } from "../left-over.ts";
import type { Candidate } from "../normalise/candidate.ts";
import type { CoursePages } from "../pages/pages.ts";
import { middleOf, shapeOf } from "./shape.ts";
import type { SortHole } from "./sort.ts";

export interface Located {
  /** The plane all is measured in, about the course's middle. */
  readonly frame: Frame;
  readonly candidates: readonly Candidate[];
  readonly leftOver: readonly LeftOver[];
}

/** Further than this from the course's middle nothing is worth measuring to a line of play. */
const AREA_METRES = 20_000;

/** @param known the holes whose lines are on their pages */
export function locate(all: readonly Candidate[], pages: CoursePages, known: readonly SortHole[]): Located {
  const drawn = known.map(({ line }) => ({ geometry: { type: "LineString" as const, coordinates: [...line] } }));
  const lines = all.filter(({ kind }) => kind === "line-of-play");
  // Golf is where the course is, not where a suburb or a coast is.
  const golf = all.filter(({ tags }) => tags["golf"] !== undefined);
  const centre = middle(drawn) ??
    middle(lines) ??
    middle(golf) ??
    middle(pages.course.features) ??
    middle(all) ?? [0, 0];
  const frame = frameAt([centre[0]!, Math.max(-88, Math.min(88, centre[1]!))]);
  const candidates: Candidate[] = [];
  const leftOver: LeftOver[] = [];
  for (const one of all) {
    const away = distanceMetres([0, 0], middleOf(shapeOf(one.geometry, frame)));
    if (away <= AREA_METRES) candidates.push(one);
    else leftOver.push({ from: one.from, reason: farReason(one, centre, away), candidate: one });
  }
  return { frame, candidates, leftOver };
}

function farReason({ geometry }: Candidate, centre: Position, away: number): string {
  let position: unknown = geometry.coordinates;
  while (Array.isArray(position) && Array.isArray(position[0])) position = position[0];
  const [x, y] = position as number[];
  const swapped = Math.hypot(y! - centre[0]!, x! - centre[1]!) < 0.2;
  const distance = Number.isFinite(away) ? `${Math.round(away / 1000)} km` : "half the world";
  return swapped
    ? `it lies ${distance} from the course, and with latitude and longitude changed about it would lie on it: export it with longitude first`
    : `it lies ${distance} from the course`;
}
