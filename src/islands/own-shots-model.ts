/**
 * Which of a golfer's full shots does what on a hole: carries what must be carried, stays
 * short of the first trouble the longest can end in, comes down by the middle of the green. Pure.
 * Everything is compared as level carry: what a place plays today against what a shot carries.
 */
import type { DayConditions } from "../flight/effective.ts";
import { SHORTEST_CARRY_METRES } from "../flight/family.ts";
import type { KnownRung } from "../measure/ladder.ts";
import type { AheadHazard, FromTee, GreenShots, OwnDrive, ShotNumbers } from "../contract/ground-data.ts";
import { shotBetween, todayOf } from "./conditions-model.ts";
import { THIRD_SHARE, type Third } from "../measure/third.ts";

/** A must-carry hazard the golfer's longest shot can find. */
export interface CarryAnswer {
  readonly kind: "carry";
  readonly name: string;
  readonly distanceMetres: number;
  /** The shortest of the golfer's shots that carries it even with the worse of the two balls; undefined: none does. */
  readonly by: KnownRung | undefined;
  /** Whether it is the golfer's longest too. */
  readonly longest: boolean;
  /** How much further than needed it carries. */
  readonly spareMetres: number;
}

/**
 * The first trouble the golfer's longest shot may end in, and the longest shot that stays short of it, run
 * and all, and ends in no other.
 */
export interface ShortAnswer {
  readonly kind: "short";
  /** Undefined: the longest shot ends in none. */
  readonly hazard: { readonly name: string; readonly distanceMetres: number } | undefined;
  readonly by: KnownRung;
  /** From where it comes down to the hazard's edge; run not taken off. */
  readonly gapMetres: number;
}

/** A shot to the third of the green the hole is cut in. */
export interface GreenAnswer {
  readonly kind: "green";
  /** What it is played after; undefined from the tee. */
  readonly driveMetres: number | undefined;
  readonly distanceMetres: number;
  /** The shot that comes down nearest. */
  readonly by: KnownRung;
  /** Past the place aimed at, negative short of it. */
  readonly pastMetres: number;
}

/** The green is out of reach: the longest shot, and what it leaves. */
export interface BeyondAnswer {
  readonly kind: "beyond";
  readonly driveMetres: number | undefined;
  readonly distanceMetres: number;
  readonly by: KnownRung;
  /** On along the hole, the carry stretched or shortened as the day does it on the way to the green. */
  readonly leavesMetres: number;
}

/** The green is nearer than the golfer's shortest full shot. */
export interface PartAnswer {
  readonly kind: "part";
  readonly driveMetres: number | undefined;
  readonly distanceMetres: number;
  readonly by: KnownRung;
}

export type ToGreenAnswer = GreenAnswer | BeyondAnswer | PartAnswer;
export type ShotAnswer = CarryAnswer | ShortAnswer | ToGreenAnswer;

/** More carries than this on one hole are one too many to read. */
const MOST_CARRIES = 3;

/** Further from the green than this, a shot does not reach it: about half a green's depth. */
const BY_THE_GREEN_METRES = 15;

export interface OwnHole {
  readonly from: FromTee;
  /** The golfer's own drive on a hole that is not reached in one; undefined where none is known. */
  readonly drive: { readonly metres: number; readonly own: OwnDrive } | undefined;
  /** Level carry of the golfer's driver; undefined where it is not known. */
  readonly driverMetres?: number | undefined;
  readonly third: Third;
}

/** @param rungs longest carry first; none gives no answers */
export function ownShots(
  { from, drive, driverMetres, third }: OwnHole,
  rungs: readonly KnownRung[],
  day: DayConditions,
): readonly ShotAnswer[] {
  const longest = rungs[0];
  if (longest === undefined) return [];
  const asked = from.ahead.map((hazard) => askedBy(hazard, day, driverMetres));
  // On a hole reached in one the green is the target, not a place short of it.
  const short = from.green === undefined && asked.length > 0 ? shortAnswer(asked, rungs) : undefined;
  const toGreen = from.green
    ? toGreenAnswer(from.green, undefined, undefined, third, rungs, day, driverMetres)
    : drive?.own.green &&
      toGreenAnswer(
        drive.own.green,
        drive.metres,
        drive.own.leavesMetres,
        third,
        rungs.filter(({ id }) => id !== "driver"),
        day,
        driverMetres,
      );
  return [
    ...asked.flatMap((one) => carryAnswer(one, rungs) ?? []).slice(0, MOST_CARRIES),
    ...(short ? [short] : []),
    ...(toGreen ? [toGreen] : []),
  ];
}

/** What a hazard asks of a stroke today, as level carry. */
interface Asked {
  readonly hazard: AheadHazard;
  /** The carry that comes down on its edge; 0 nearer than a full stroke, infinite beyond all of them. */
  readonly edgeMetres: number;
  /**
   * The same with the nearer of the two balls, less the run of a ball coming down there: what stays short of
   * it for sure.
   */
  readonly shortMetres: number;
  /** What clears it with the worse of the two balls; infinite where nothing does. */
  readonly clearMetres: number;
  /** The same half way between the two. */
  readonly pastMetres: number;
}

function askedBy(hazard: AheadHazard, day: DayConditions, driverMetres: number | undefined): Asked {
  const reach = todayOf(hazard.reach, day, driverMetres);
  const past = hazard.past && todayOf(hazard.past, day, driverMetres);
  const nothing = (reason: string): number => (reason === "too-short" ? 0 : Infinity);
  return {
    hazard,
    edgeMetres: reach.ok ? reach.lengthMetres : nothing(reach.reason),
    shortMetres: reach.ok ? reach.lengthMetres - reach.plusMinusMetres - reach.runMetres : nothing(reach.reason),
    clearMetres:
      past === undefined ? Infinity : past.ok ? past.lengthMetres + past.plusMinusMetres : nothing(past.reason),
    pastMetres: past === undefined ? Infinity : past.ok ? past.lengthMetres : nothing(past.reason),
  };
}

/** Whether a full shot may end in it: neither sure to be short nor sure to be over. */
const mayEndIn = ({ shortMetres, clearMetres }: Asked, { carryMetres }: KnownRung): boolean =>
  carryMetres > shortMetres && carryMetres < clearMetres;

/** Undefined where it need not be carried, or every full shot carries it, or none comes near it. */
function carryAnswer(asked: Asked, rungs: readonly KnownRung[]): CarryAnswer | undefined {
  const { hazard, shortMetres, clearMetres, pastMetres } = asked;
  if (!hazard.across || hazard.past === undefined || rungs[0]!.carryMetres <= shortMetres) return undefined;
  const by = rungs.findLast(({ carryMetres }) => carryMetres >= clearMetres);
  if (by !== undefined && clearMetres <= SHORTEST_CARRY_METRES) return undefined;
  return {
    kind: "carry",
    name: hazard.name,
    distanceMetres: hazard.past[0],
    by,
    longest: by === rungs[0],
    spareMetres: by ? by.carryMetres - pastMetres : 0,
  };
}

/** Undefined where no shot stays clear of the trouble the longest finds. */
function shortAnswer(all: readonly Asked[], rungs: readonly KnownRung[]): ShortAnswer | undefined {
  const longest = rungs[0]!;
  const found = all.filter((asked) => mayEndIn(asked, longest));
  if (found.length === 0) return { kind: "short", hazard: undefined, by: longest, gapMetres: 0 };
  // What runs beside the whole hole is found by every shot: no length stays clear of it.
  const avoidable = all.filter((asked) => rungs.some((rung) => !mayEndIn(asked, rung)));
  for (const asked of avoidable.filter((one) => found.includes(one))) {
    const by = rungs.find(
      (rung) => rung.carryMetres <= asked.shortMetres && !avoidable.some((other) => mayEndIn(other, rung)),
    );
    if (by)
      return {
        kind: "short",
        hazard: { name: asked.hazard.name, distanceMetres: asked.hazard.reach[0] },
        by,
        gapMetres: asked.edgeMetres - by.carryMetres,
      };
  }
  return undefined;
}

/** The place in the third where the hole is cut: as the glance's figure has it. */
export function inThird([front, middle, back]: GreenShots, third: Third): ShotNumbers {
  return third === "middle" ? middle : shotBetween(front, back, THIRD_SHARE[third]);
}

/** @param alongMetres to the middle of the green along the line of play; undefined: straight */
function toGreenAnswer(
  green: GreenShots,
  driveMetres: number | undefined,
  alongMetres: number | undefined,
  third: Third,
  rungs: readonly KnownRung[],
  day: DayConditions,
  driverMetres: number | undefined,
): ToGreenAnswer | undefined {
  const [longest, shortest] = [rungs[0], rungs[rungs.length - 1]];
  if (longest === undefined || shortest === undefined) return undefined;
  const target = inThird(green, third);
  const [distanceMetres] = target;
  const answer = todayOf(target, day, driverMetres);
  const plays = answer.ok ? answer.lengthMetres : answer.reason === "too-short" ? 0 : Infinity;
  if (shortest.carryMetres > plays + BY_THE_GREEN_METRES)
    return { kind: "part", driveMetres, distanceMetres, by: shortest };
  if (longest.carryMetres < plays - BY_THE_GREEN_METRES) {
    const stretch = Number.isFinite(plays) ? distanceMetres / plays : 1;
    // Round a corner what is left is a distance along the hole, not along the straight line to the green.
    const along = alongMetres === undefined ? distanceMetres : alongMetres + distanceMetres - green[1][0];
    return {
      kind: "beyond",
      driveMetres,
      distanceMetres: along,
      by: longest,
      leavesMetres: Math.max(0, along - longest.carryMetres * stretch),
    };
  }
  const by = rungs.reduce((best, rung) =>
    Math.abs(rung.carryMetres - plays) < Math.abs(best.carryMetres - plays) ? rung : best,
  );
  return { kind: "green", driveMetres, distanceMetres, by, pastMetres: by.carryMetres - plays };
}
