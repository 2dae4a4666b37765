/** All figures of one hole. */
import type { Course, Hole, TeeSet } from "../course/types.ts";
import { boxAround, grow, overlaps } from "../geo/box.ts";
import type { Frame } from "../geo/frame.ts";
import { lineThrough } from "../geo/line.ts";
import type { Area, Point } from "../geo/position.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { heightAt as groundHeight } from "../terrain/sample.ts";
import { hazardsOn } from "./hazards.ts";
import { bendsOf, playFrom, type Play } from "./line-of-play.ts";
import { meetingsOf, numbered } from "./meetings.ts";
import { pointsOf } from "./place.ts";
import type { GreenFigures, MeasuredHole, PlacedFeature, TeeFigures } from "./types.ts";

/** A shared feature further than this from the line of play is none of the hole's business. */
const NEIGHBOURHOOD_METRES = 130;

/** The one feature of a kind that the reader has made sure is there. */
function only(placed: ReadonlyMap<string, PlacedFeature>, kind: "line-of-play" | "green", hole: Hole): PlacedFeature {
  for (const one of placed.values()) if (one.feature.kind === kind && !one.shared) return one;
  throw new Error(`Hole ${hole.number} has no ${kind}; it must be refused before it is measured.`);
}

/** The hole's drawn line of play, tee to green. */
export function drawnLine(placed: ReadonlyMap<string, PlacedFeature>, hole: Hole): readonly Point[] {
  const { shape } = only(placed, "line-of-play", hole);
  if (shape.type !== "lines") throw new Error(`The line of play of hole ${hole.number} is not a LineString.`);
  return shape.lines[0]!;
}

/** The hole's green. */
export function greenOf(placed: ReadonlyMap<string, PlacedFeature>, hole: Hole): Area {
  const { shape } = only(placed, "green", hole);
  if (shape.type !== "areas") throw new Error(`The green of hole ${hole.number} is not a Polygon.`);
  return shape.areas[0]!;
}

/** @param own the hole's own features, laid into the frame; `shared` those of its course */
export function measureHole(
  course: Course,
  hole: Hole,
  frame: Frame,
  own: ReadonlyMap<string, PlacedFeature>,
  shared: ReadonlyMap<string, PlacedFeature>,
  ground?: HeightGrid,
): MeasuredHole {
  const drawn = drawnLine(own, hole);
  const green = greenOf(own, hole);
  const neighbourhood = grow(boxAround([...drawn, ...green.flat()]), NEIGHBOURHOOD_METRES);
  const placed = new Map(own);
  for (const [id, one] of shared) {
    // A landmark is aimed at from further off than any ball flies.
    const near = one.feature.kind === "landmark" || overlaps(boxAround(pointsOf(one.shape)), neighbourhood);
    if (near && !placed.has(id)) placed.set(id, one);
  }

  const heightAt = (point: Point, written: number | undefined): number | undefined =>
    (ground && groundHeight(ground, point)) ?? written;
  const line = only(own, "line-of-play", hole).feature.geometry;
  const lastHeight = line.type === "LineString" ? line.coordinates[line.coordinates.length - 1]![2] : undefined;
  const greenHeight = only(own, "green", hole).heightMetres ?? lastHeight;

  const fromTee = (tee: TeeSet, marker: PlacedFeature): TeeFigures => {
    const standing = pointsOf(marker.shape)[0]!;
    const play = playFrom(standing, drawn, green);
    const teeHeight = heightAt(standing, marker.heightMetres);
    const middleHeight = heightAt(play.green.middle, greenHeight);
    return {
      tee,
      marker: standing,
      line: play.line,
      lengthMetres: play.line.lengthMetres,
      cardMetres: hole.cardMetres[tee.id],
      riseMetres: teeHeight === undefined || middleHeight === undefined ? undefined : middleHeight - teeHeight,
      bends: bendsOf(play.line),
      green: greenFigures(play),
      hazards: hazardsOn(placed, play, course.corridorMetres),
    };
  };

  const markers = new Map<string, PlacedFeature>();
  for (const one of own.values()) {
    if (one.feature.kind === "tee-marker" && one.feature.tee !== undefined) markers.set(one.feature.tee, one);
  }
  const tees = course.tees.flatMap((tee) => {
    const marker = markers.get(tee.id);
    return marker ? [fromTee(tee, marker)] : [];
  });
  const meetings = meetingsOf(tees);
  return {
    course,
    hole,
    frame,
    placed,
    corridorMetres: course.corridorMetres,
    tees: tees.map((tee) => ({ ...tee, hazards: numbered(tee.hazards, tee.lengthMetres, meetings) })),
    meetings,
  };
}

/** Front, middle and back as one walks to them: along the line of play. */
function greenFigures({ line, green }: Play): GreenFigures {
  return {
    ...green,
    frontMetres: line.lengthMetres - green.depthMetres / 2,
    middleMetres: line.lengthMetres,
    backMetres: line.lengthMetres + green.depthMetres / 2,
  };
}

/** A standing point anywhere on the hole: the way still to play and the hazards on it. */
export function measureFrom(hole: MeasuredHole, standing: Point): Pick<TeeFigures, "line" | "hazards" | "green"> {
  const drawn = drawnLine(hole.placed, hole.hole);
  const play = playFrom(standing, drawn, greenOf(hole.placed, hole.hole));
  return {
    line: play.line,
    green: greenFigures(play),
    hazards: numbered(hazardsOn(hole.placed, play, hole.corridorMetres), play.line.lengthMetres, hole.meetings),
  };
}

/** The line of play from the longest tee set; the drawn line where no tee is marked. */
export const longestLine = (hole: MeasuredHole): TeeFigures["line"] =>
  hole.tees[0]?.line ?? lineThrough(drawnLine(hole.placed, hole.hole));
