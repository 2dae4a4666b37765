/** Laying a hole on a sheet: which way is up, how large, and what ground is shown. */
import type { Box } from "../geo/box.ts";
import type { Point } from "../geo/position.ts";
import { bearingDegrees, directionTo, dot, rightOf } from "../geo/vector.ts";
import { defaultTee } from "../measure/default-tee.ts";
import type { MeasuredHole, TeeFigures } from "../measure/types.ts";
import type { Composition } from "./composition.ts";

export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** Inside the neat line. */
  readonly map: Box;
  readonly pxPerMetre: number;
  /** Unit direction in the plane that points up the sheet. */
  readonly up: Point;
  /** Bearing that points up the sheet, degrees clockwise from grid north. */
  readonly upBearingDegrees: number;
  toSheet(point: Point): Point;
  toPlane(point: Point): Point;
}

/** The tee set a hole is drawn from first: the one wanted, or its default. */
export function drawnTee(hole: MeasuredHole, wanted?: string): TeeFigures {
  const tee = hole.tees.find(({ tee }) => tee.id === wanted) ?? defaultTee(hole);
  if (!tee) throw new RangeError(`Hole ${hole.hole.number} has no tees to draw; give it a tee marker and a card.`);
  return tee;
}

/** Direction of play over the whole hole: furthest-back tee to the middle of the green. */
export const playDirection = (hole: MeasuredHole): Point => {
  const tee = drawnTee(hole, hole.tees[0]?.tee.id);
  return directionTo(tee.marker, tee.green.middle);
};

/** Bearing that points up the sheet in a composition: relief is to be lit from 45 degrees left of it. */
export const sheetBearingDegrees = (hole: MeasuredHole, composition: Composition): number =>
  bearingDegrees(upOf(playDirection(hole), composition));

/** Play to the right of the sheet means that up is a quarter turn to the left of play. */
const upOf = (play: Point, { play: way }: Composition): Point => (way === "up" ? play : [-play[1], play[0]]);

/** Everything that must be on the sheet, with room around it. */
function extent(hole: MeasuredHole, up: Point, composition: Composition): Box {
  const right = rightOf(up);
  const {
    sideMetres,
    endMetres: [behind, beyond],
    play,
  } = composition;
  const box: [number, number, number, number] = [Infinity, Infinity, -Infinity, -Infinity];
  const hold = (point: Point, [left, low, rightward, high]: readonly [number, number, number, number]): void => {
    const [x, y] = [dot(point, right), dot(point, up)];
    box[0] = Math.min(box[0], x - left);
    box[1] = Math.min(box[1], y - low);
    box[2] = Math.max(box[2], x + rightward);
    box[3] = Math.max(box[3], y + high);
  };
  const turned = (sides: number, back: number, front: number): readonly [number, number, number, number] =>
    play === "up" ? [sides, back, sides, front] : [back, sides, front, sides];
  for (const tee of hole.tees) {
    hold(tee.marker, turned(sideMetres * 0.6, behind, 0));
    tee.line.points.slice(1, -1).forEach((point) => hold(point, turned(sideMetres, 0, 0)));
    for (const hazard of tee.hazards) {
      if (!hazard.inCorridor) continue;
      hold(hazard.reachPoint, turned(12, 8, 8));
      hold(hazard.farPoint, turned(12, 8, 8));
    }
  }
  for (const one of hole.placed.values()) {
    if (one.shared || one.shape.type !== "areas" || one.feature.kind !== "green") continue;
    one.shape.areas.flat(2).forEach((point) => hold(point, turned(sideMetres * 0.55, 0, beyond)));
  }
  return box;
}

/** The sheet of a hole in a composition. */
export function layHole(hole: MeasuredHole, composition: Composition): Sheet {
  const up = upOf(playDirection(hole), composition);
  const [minX, minY, maxX, maxY] = extent(hole, up, composition);
  const {
    width: [leastWidth, mostWidth],
    height: [leastHeight, mostHeight],
    margin,
    block,
  } = composition;
  const [wide, tall] = [maxX - minX, maxY - minY];
  const pxPerMetre = Math.min(composition.mostPxPerMetre, mostWidth / wide, mostHeight / tall);
  const clamp = (value: number, least: number, most: number): number =>
    Math.max(least, Math.min(most, Math.round(value)));
  const mapWidth = clamp(wide * pxPerMetre, leastWidth, mostWidth);
  const mapHeight = clamp(tall * pxPerMetre, leastHeight, mostHeight);
  const map: Box = [margin, margin, margin + mapWidth, margin + mapHeight];
  return sheetOf({
    map,
    up,
    pxPerMetre,
    centre: [(minX + maxX) / 2, (minY + maxY) / 2],
    width: mapWidth + 2 * margin,
    height: mapHeight + margin + block,
  });
}

/** A sheet whose map's middle is `centre`, given in metres along the sheet's right and up. */
export function sheetOf(parts: {
  readonly map: Box;
  readonly up: Point;
  readonly pxPerMetre: number;
  readonly centre: Point;
  readonly width: number;
  readonly height: number;
}): Sheet {
  const { map, up, pxPerMetre, centre, width, height } = parts;
  const right = rightOf(up);
  const [middleX, middleY] = [(map[0] + map[2]) / 2, (map[1] + map[3]) / 2];
  return {
    width,
    height,
    map,
    pxPerMetre,
    up,
    upBearingDegrees: bearingDegrees(up),
    toSheet: (point) => [
      middleX + (dot(point, right) - centre[0]) * pxPerMetre,
      middleY - (dot(point, up) - centre[1]) * pxPerMetre,
    ],
    toPlane([x, y]) {
      const [along, across] = [centre[0] + (x - middleX) / pxPerMetre, centre[1] - (y - middleY) / pxPerMetre];
      return [right[0] * along + up[0] * across, right[1] * along + up[1] * across];
    },
  };
}
