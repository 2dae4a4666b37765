/** What the live map of a hole fetches, from the measured hole. */
import { DATA_VERSION } from "../../contract/map-data.ts";
import type { HazardData, HoleData, MeasuredPlace, TeeData } from "../../contract/hole-data.ts";
import type { Point } from "../../geo/position.ts";
import type { LengthUnit } from "../../geo/units.ts";
import { bearingDegrees, directionTo } from "../../geo/vector.ts";
import { drawnLine } from "../../measure/hole.ts";
import { carriedOver, type Carried } from "../../measure/carried.ts";
import { defaultTee } from "../../measure/default-tee.ts";
import type { MeasuredHole, TeeFigures } from "../../measure/types.ts";
import { boundsOf, isDrawn, lonLat, mapFeature, positions, rounded } from "./map-features.ts";

/** @throws RangeError when the hole has no tee set: it has nothing to measure from. */
export function holeData(measured: MeasuredHole, units: LengthUnit): HoleData {
  const { course, hole, frame } = measured;
  const longest = measured.tees[0];
  if (longest === undefined) {
    throw new RangeError(
      `Hole ${hole.number} has no tee set on its card: add one under "card" and its marker under "features".`,
    );
  }
  const own = [...measured.placed.values()].filter(({ shared }) => !shared).map(({ feature }) => feature);
  return {
    version: DATA_VERSION,
    course: { id: course.id, name: course.name },
    hole: { number: hole.number, name: hole.name, par: hole.par },
    units,
    defaultTee: (defaultTee(measured) ?? longest).tee.id,
    origin: lonLat(frame.origin),
    bearingDegrees: rounded(bearingDegrees(directionTo(longest.marker, longest.green.middle)), 2),
    bounds: boundsOf(own),
    courseBounds: boundsOf(course.holes.flatMap(({ features }) => features)),
    corridorMetres: measured.corridorMetres,
    drawn: positions(drawnLine(measured.placed, hole), frame),
    features: {
      type: "FeatureCollection",
      features: [...measured.placed.values()].filter(isDrawn).map((placed) => mapFeature(placed, "hole")),
    },
    tees: measured.tees.map((tee) => teeData(tee, measured)),
  };
}

function teeData(figures: TeeFigures, { frame }: MeasuredHole): TeeData {
  const { tee, marker, line, lengthMetres, green, hazards } = figures;
  const place = (point: Point, metres: number): MeasuredPlace => ({
    position: lonLat(frame.toPosition(point)),
    metres: rounded(metres, 3),
  });
  return {
    id: tee.id,
    name: tee.name,
    colour: tee.colour,
    marker: lonLat(frame.toPosition(marker)),
    line: positions(line.points, frame),
    lengthMetres: rounded(lengthMetres, 3),
    green: {
      front: place(green.front, green.frontMetres),
      middle: place(green.middle, green.middleMetres),
      back: place(green.back, green.backMetres),
    },
    hazards: hazards.map((hazard) => ({
      id: hazard.id,
      stretch: hazard.stretch,
      stretches: hazard.stretches,
      position: hazard.position,
      inCorridor: hazard.inCorridor,
      reach: place(hazard.reachPoint, hazard.reachMetres),
      ...carryData(carriedOver(hazard), place),
    })),
  };
}

const carryData = (
  carried: Carried | undefined,
  place: (point: Point, metres: number) => MeasuredPlace,
): Pick<HazardData, "carry" | "toGreen"> =>
  carried
    ? { carry: place(carried.point, carried.metres), ...(carried.to === "green" && { toGreen: true as const }) }
    : {};
