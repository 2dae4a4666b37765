/** Which reference player a tee set's figures are for, and who plays from where. */
import type { Course, TeeSet } from "../../course/types.ts";
import { REFERENCE_PLAYERS, teeSetFor, type ReferencePlayer } from "../../measure/players.ts";

/** Where several play from a tee set, the earlier speaks for more golfers. */
const ORDER = ["bogey-men", "bogey-women", "scratch-men", "scratch-women"] as const;

const playerOf = (id: (typeof ORDER)[number]): ReferencePlayer =>
  REFERENCE_PLAYERS.find((player) => player.id === id)!;

/**
 * The reference player of a tee set: one who would use it; where none would, the bogey
 * player of the gender it is rated for, men before women (our choice).
 */
export function playerOfTee(course: Course, tee: TeeSet): ReferencePlayer {
  const users = ORDER.filter((id) => teeSetFor(course, playerOf(id))?.id === tee.id);
  if (users[0]) return playerOf(users[0]);
  const onlyWomen = tee.ratings.length > 0 && tee.ratings.every(({ gender }) => gender === "women");
  return playerOf(onlyWomen ? "bogey-women" : "bogey-men");
}
