/** The fairway at one station of the line of play. */
import { chords } from "../geo/area.ts";
import { directionAt, pointAt, type Line } from "../geo/line.ts";
import type { Area } from "../geo/position.ts";
import { along, rightOf } from "../geo/vector.ts";
import type { FairwayFigures } from "./types.ts";

/**
 * Width of the fairway square to the line of play at a station, and how much of it lies
 * to each side. The stretch that holds the line counts; a second fairway beyond rough
 * does not.
 */
export function fairwayAt(line: Line, stationMetres: number, fairways: readonly Area[]): FairwayFigures {
  const centre = pointAt(line, stationMetres);
  const right = rightOf(directionAt(line, stationMetres));
  const chord = chords(fairways, centre, right).find(([enter, exit]) => enter <= 0 && exit >= 0);
  if (!chord) {
    return { stationMetres, widthMetres: 0, leftMetres: undefined, rightMetres: undefined, edges: undefined };
  }
  const [enter, exit] = chord;
  return {
    stationMetres,
    widthMetres: exit - enter,
    leftMetres: -enter,
    rightMetres: exit,
    edges: [along(centre, right, enter), along(centre, right, exit)],
  };
}
