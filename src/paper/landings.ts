/** Landing ground in the pocket book: the reference players of the tee sets chosen. */
import { landingAt, type LandingFigures } from "../measure/landing.ts";
import { REFERENCE_PLAYERS, teeSetFor, type ReferencePlayer } from "../measure/players.ts";
import type { MeasuredHole, TeeFigures } from "../measure/types.ts";
import { reachedInOne } from "../site/ground/figures.ts";
import { playerOfTee } from "../site/ground/players.ts";
import type { HeightGrid } from "../terrain/grid.ts";

export interface BookLanding {
  readonly player: ReferencePlayer;
  readonly tee: TeeFigures;
  readonly figures: LandingFigures;
}

/** A page has room for no more; players who stand in for a tee set nobody would use give way first. */
const MOST = 4;

/**
 * Where the drives of the players who would use the chosen tees end; a tee set nobody would
 * use speaks for the player it is rated for. None on a hole reached in one.
 */
export function bookLandings(
  hole: MeasuredHole,
  tees: readonly TeeFigures[],
  grid: HeightGrid | undefined,
): BookLanding[] {
  if (reachedInOne(hole)) return [];
  const asked = tees.flatMap((tee) => {
    const users = REFERENCE_PLAYERS.filter((player) => teeSetFor(hole.course, player)?.id === tee.tee.id);
    return users.length > 0
      ? users.map((player) => ({ player, tee, standsIn: false }))
      : [{ player: playerOfTee(hole.course, tee.tee), tee, standsIn: true }];
  });
  const kept = asked.length > MOST ? asked.filter(({ standsIn }) => !standsIn) : asked;
  return kept.slice(0, MOST).flatMap(({ player, tee }) => {
    const figures = landingAt(hole, tee, player.driveMetres, grid);
    return figures ? [{ player, tee, figures }] : [];
  });
}
