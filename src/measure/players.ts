/**
 * The reference players of the World Handicap System: how far each hits from the tee and
 * after it (Course Rating System, as published by state associations: 250/220, 210/190,
 * 200/170 and 150/130 yards).
 */
import { defaultTeeSet } from "./default-tee.ts";
import { metresFromYards } from "../geo/units.ts";
import type { Course, Gender, TeeSet } from "../course/types.ts";

export type PlayerId = "scratch-men" | "scratch-women" | "bogey-men" | "bogey-women";

export interface ReferencePlayer {
  readonly id: PlayerId;
  readonly gender: Gender;
  readonly level: "scratch" | "bogey";
  /** Tee shot, carry and run together. */
  readonly driveMetres: number;
  /** A full stroke after it. */
  readonly secondMetres: number;
}

const player = (
  id: PlayerId,
  gender: Gender,
  level: ReferencePlayer["level"],
  drive: number,
  second: number,
): ReferencePlayer => ({
  id,
  gender,
  level,
  driveMetres: metresFromYards(drive),
  secondMetres: metresFromYards(second),
});

export const REFERENCE_PLAYERS: readonly ReferencePlayer[] = [
  player("scratch-men", "men", "scratch", 250, 220),
  player("bogey-men", "men", "bogey", 200, 170),
  player("scratch-women", "women", "scratch", 210, 190),
  player("bogey-women", "women", "bogey", 150, 130),
];

/**
 * The tee set a reference player would use: scratch players the longest set rated for
 * their gender, bogey players the course's default set where it is rated for them, else
 * the shortest that is (our choice; clubs differ). The course's default when nothing is
 * rated for the gender.
 */
export function teeSetFor(course: Course, { gender, level }: ReferencePlayer): TeeSet | undefined {
  const byDefault = defaultTeeSet(course);
  const rated = course.tees.filter(({ ratings }) => ratings.some((rating) => rating.gender === gender));
  if (rated.length === 0) return byDefault;
  if (level === "scratch") return rated[0];
  return rated.find((tee) => tee === byDefault) ?? rated[rated.length - 1];
}
