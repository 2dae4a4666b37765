/**
 * Hazards that no tee shot of a reference player reaches, told from where they are met:
 * after the drive, or after the drive and further full strokes along the line of play.
 */
import { pointAt } from "../geo/line.ts";
import type { Point } from "../geo/position.ts";
import { longestDriveMetres, playersOf } from "./carried.ts";
import { isBoundary } from "../course/kinds.ts";
import { measureFrom } from "./hole.ts";
import type { ReferencePlayer } from "./players.ts";
import type { HazardFigures, MeasuredHole, TeeFigures } from "./types.ts";

/** Longer than any hole takes a reference player to its green. */
const MOST_STROKES = 5;

export interface MetAfter {
  readonly player: ReferencePlayer;
  /** Strokes played before it: 1 is the drive. */
  readonly strokes: number;
  /** How far those come along the line of play. */
  readonly stationMetres: number;
  readonly standing: Point;
  /** Reach, carry and what is left, from there. */
  readonly hazard: HazardFigures;
}

export interface LaterHazard {
  /** From the tee. */
  readonly hazard: HazardFigures;
  readonly met: readonly MetAfter[];
}

/** Whether a hazard lies beyond a drive and in front of the green's back: somebody's second or later stroke. */
export const isMetLater = (hazard: HazardFigures, tee: TeeFigures, driveMetres: number): boolean =>
  hazard.inCorridor && hazard.reachMetres > driveMetres && hazard.reachMetres < tee.green.backMetres;

/**
 * The hazards of a hole that are met after the tee shot, in order of reach; each from where each reference
 * player meets it.
 */
export function laterHazards(hole: MeasuredHole, tee: TeeFigures): LaterHazard[] {
  const later = tee.hazards.filter((hazard) => {
    const feature = hole.placed.get(hazard.id)?.feature;
    return feature !== undefined && !isBoundary(feature.kind) && isMetLater(hazard, tee, longestDriveMetres(tee.tee));
  });
  if (later.length === 0) return [];
  const met = new Map(later.map((hazard) => [hazard, [] as MetAfter[]]));
  for (const player of playersOf(tee.tee)) {
    for (const one of strokesOf(hole, tee, player)) {
      for (const hazard of later) {
        const already = met.get(hazard)!;
        if (already.some((before) => before.player === player)) continue;
        const from = one.hazards.find(
          ({ id, stretch, inCorridor }) => id === hazard.id && stretch === hazard.stretch && inCorridor,
        );
        // Where it is met is the last place from which the next stroke could find it.
        if (from && from.reachMetres <= player.secondMetres) already.push({ player, ...one.after, hazard: from });
      }
    }
  }
  return later.map((hazard) => ({ hazard, met: met.get(hazard)! }));
}

/** Where a player's drive and full strokes come to along the line, short of the green, and what lies ahead there. */
function strokesOf(hole: MeasuredHole, tee: TeeFigures, { driveMetres, secondMetres }: ReferencePlayer) {
  const places = [];
  for (let strokes = 1; strokes <= MOST_STROKES; strokes++) {
    const stationMetres = driveMetres + (strokes - 1) * secondMetres;
    if (stationMetres >= tee.green.frontMetres) break;
    const standing = pointAt(tee.line, stationMetres);
    places.push({ after: { strokes, stationMetres, standing }, hazards: measureFrom(hole, standing).hazards });
  }
  return places;
}
