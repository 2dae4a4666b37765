/**
 * Where a word stops being true. Common practice, no source, unless it says otherwise.
 * They are wide on purpose: a tip is called wrong only where nobody would defend it.
 */
import { metresFromYards as yards } from "../../geo/units.ts";

/** Rises within this are level to a player; more than the second is not. */
export const LEVEL_METRES = 0.5;
export const NOT_LEVEL_METRES = 4;
/** A turn of less is no bend; a straight hole has none of more. */
export const BEND_DEGREES = 6;
export const NOT_STRAIGHT_DEGREES = 15;
/** A green this deep or less is very shallow, as is one half as deep as wide. */
export const VERY_SHALLOW_METRES = yards(12);
export const NOT_SHALLOW_METRES = yards(26);
export const NOT_VERY_SHALLOW_METRES = yards(18);
/** A green less deep than this is not deep. */
export const NOT_DEEP_METRES = yards(24);
export const NOT_WIDE_METRES = yards(20);
export const NOT_NARROW_METRES = yards(30);
export const NOT_SMALL_SQUARE_METRES = 650;
export const NOT_LARGE_SQUARE_METRES = 380;
/** Slopes in percent: less is no slope anybody sees, more is not level. */
export const NO_SLOPE_PERCENT = 0.3;
export const LEVEL_GREEN_PERCENT = 3;
export const SIDE_SLOPE_PERCENT = 0.5;
export const NOT_NARROW_FAIRWAY_METRES = yards(40);
export const NOT_WIDE_FAIRWAY_METRES = yards(28);
/** One club. */
export const CLUB_METRES = yards(10);
/** A typed length is off by more than the greater of these. */
export const LENGTH_SHARE = 0.03;
export const LENGTH_METRES = yards(5);
/** A typed distance to a hazard may be to any part of it, give or take. */
export const HAZARD_METRES = yards(12);
/**
 * From the default tees. Two full strokes of a scratch man are 470 yd (published, Course Rating System,
 * state associations).
 */
export const OUT_OF_REACH_IN_TWO_METRES = yards(545);
export const IN_REACH_IN_TWO_METRES = yards(480);
export const NOT_THREE_SHOTS_METRES = yards(440);
export const NOT_DRIVABLE_METRES = yards(375);
/** A forced carry further from the tee than this is none for the tee shot. */
export const CARRY_METRES = 260;
/** Off by more degrees than this is another way. */
export const COMPASS_DEGREES = 60;
export const RAISED_METRES = 0.3;
export const TEE_RAISED_METRES = 0.7;
/** Shares seen: above the first nothing is blind, below the second all is. */
export const SEEN_SHARE = 0.8;
export const UNSEEN_SHARE = 0.2;
