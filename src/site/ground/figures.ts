/**
 * What a hole page says of the ground: the rise, how long shots play, what is seen, the
 * landing ground of the reference players, the corner lines, the lie of the green. All of
 * it comes from `measure`; here it is only gathered for a page, and left out where the
 * course has no heights to tell it from.
 */
import type { DayConditions, EffectiveLength } from "../../flight/effective.ts";
import { airFrom } from "../../flight/air.ts";
import { LONGEST_CARRY_METRES, STEPPED_OVER_METRES } from "../../measure/carried.ts";
import { cornerLines, type CornerLine, type Obstacle } from "../../measure/corner.ts";
import type { GreenLie } from "../../measure/green-lie.ts";
import { landingAt, type LandingFigures } from "../../measure/landing.ts";
import { REFERENCE_PLAYERS, teeSetFor, type PlayerId, type ReferencePlayer } from "../../measure/players.ts";
import { sightFromTee } from "../../measure/seen.ts";
import { effectiveOf, risePast, shotsOf, type Shot } from "../../measure/shots.ts";
import type { MeasuredCourse, MeasuredHole, TeeFigures } from "../../measure/types.ts";
import { bearingDegrees, directionTo } from "../../geo/vector.ts";
import type { HeightGrid } from "../../terrain/grid.ts";
import { profileAlong } from "../../terrain/profile.ts";
import { heightAt } from "../../terrain/sample.ts";
import { playerOfTee } from "./players.ts";
import { riseStory, type RiseStory } from "./rise.ts";
import { kept } from "../cache/kept.ts";
import { keptGreenLie, keptLanding, withoutNames } from "../cache/kept-figures.ts";

/** Air that effective lengths are stated in: still, at the course's height, at this temperature. */
export const STATED_TEMPERATURE_CELSIUS = 15;

/** A corner that saves less than this and has nothing to clear is no corner worth a word. */
const LEAST_SAVING_METRES = 5;

export interface PlaysRow {
  readonly shot: Shot;
  /** Undefined where no one stroke of the model reaches. */
  readonly effective: EffectiveLength | undefined;
}

export interface Corner {
  readonly line: CornerLine;
  /** What asks most of the stroke, with its height where that is known; undefined with nothing in the way. */
  readonly hardest: Obstacle | undefined;
  /** The stroke that clears it, where heights are known. */
  readonly clearing: PlaysRow | undefined;
  /** Reference players whose drive is as long as the carry, and as the effective carry where that is longer. */
  readonly reachableFor: readonly PlayerId[];
}

export interface Sight {
  /** Share of the green that is seen from the tee, 0 to 1. */
  readonly greenShare: number | undefined;
  readonly flag: boolean | undefined;
  /**
   * Of the drive's landing ground: whether it is seen from the tee, and whether the middle of the green is
   * seen from there.
   */
  readonly landing: boolean | undefined;
  readonly greenFromLanding: boolean | undefined;
}

export interface TeeGround {
  readonly tee: TeeFigures;
  readonly player: ReferencePlayer;
  /** The player's drive where a second stroke follows, else undefined. */
  readonly driveMetres: number | undefined;
  readonly rise: RiseStory | undefined;
  readonly plays: readonly PlaysRow[];
  readonly corners: readonly Corner[];
  readonly sight: Sight | undefined;
}

export interface PlayerLanding {
  readonly player: ReferencePlayer;
  readonly tee: TeeFigures;
  readonly figures: LandingFigures;
}

export interface HoleGround {
  readonly grid: HeightGrid | undefined;
  /** Mean height of the course's tees, for the air; undefined without heights. */
  readonly heightMetres: number | undefined;
  readonly tees: readonly TeeGround[];
  readonly landings: readonly PlayerLanding[];
  /** As met from the tee set shown first. */
  readonly green: GreenLie | undefined;
}

const heights = new WeakMap<MeasuredCourse, { readonly metres: number | undefined }>();

/** Mean height of a course's tee markers in its own datum, metres; undefined without a height model. */
export function courseHeight(course: MeasuredCourse): number | undefined {
  const known = heights.get(course);
  if (known) return known.metres;
  const all = course.ground
    ? course.holes.flatMap(({ tees }) => tees.flatMap(({ marker }) => heightAt(course.ground!, marker) ?? []))
    : [];
  const metres = all.length === 0 ? undefined : all.reduce((sum, height) => sum + height, 0) / all.length;
  heights.set(course, { metres });
  return metres;
}

/** Still air at a height and the stated temperature; undefined at a height nobody plays golf at. */
export function stillAir(heightMetres: number | undefined): DayConditions | undefined {
  if (heightMetres === undefined) return undefined;
  const answer = airFrom({ heightMetres, temperatureCelsius: STATED_TEMPERATURE_CELSIUS });
  return answer.ok ? { air: answer.air } : undefined;
}

/** A hole whose green is meant to be reached from the tee has no landing ground. */
export const reachedInOne = (hole: MeasuredHole): boolean => hole.hole.par.men === 3 && hole.hole.par.women === 3;

/** The shots of a tee a page tells of: those that ask something of a golfer. */
export function pageShots(hole: MeasuredHole, tee: TeeFigures, grid: HeightGrid, driveMetres: number): Shot[] {
  const furthest = Math.min(LONGEST_CARRY_METRES, tee.green.backMetres);
  return shotsOf(hole, tee, grid, driveMetres).filter(
    ({ purpose, distanceMetres: far }) => purpose !== "carry" || (far >= STEPPED_OVER_METRES && far <= furthest),
  );
}

/** What a page says of a hole's ground. */
export function holeGround(course: MeasuredCourse, hole: MeasuredHole, firstTee: TeeFigures): HoleGround {
  const grid = course.ground;
  const heightMetres = courseHeight(course);
  const day = stillAir(heightMetres);
  return {
    grid,
    heightMetres,
    tees: hole.tees.map((tee) => teeGround(hole, tee, grid, day)),
    landings: landingsOf(hole, grid),
    green: grid && keptGreenLie(hole, firstTee, grid),
  };
}

function teeGround(
  hole: MeasuredHole,
  tee: TeeFigures,
  grid: HeightGrid | undefined,
  day: DayConditions | undefined,
): TeeGround {
  const player = playerOfTee(hole.course, tee.tee);
  const driveMetres = reachedInOne(hole) || player.driveMetres >= tee.lengthMetres ? undefined : player.driveMetres;
  return {
    tee,
    player,
    driveMetres,
    rise: grid && riseStory(profileAlong(grid, tee.line, 4)),
    plays:
      grid && day
        ? pageShots(hole, tee, grid, player.driveMetres).map((shot) => ({ shot, effective: answered(shot, day) }))
        : [],
    corners: cornerLines(hole, tee, grid)
      .filter(
        ({ obstacles, outOfBounds, savesMetres }) =>
          obstacles.length > 0 || outOfBounds.length > 0 || savesMetres >= LEAST_SAVING_METRES,
      )
      .map((line) => cornerOf(tee, line, grid, day)),
    sight:
      grid &&
      kept("sight", [withoutNames(hole), tee.tee.id, grid, driveMetres], () =>
        sightOf(withoutNames(hole), tee, grid, driveMetres),
      ),
  };
}

function answered(shot: Shot, day: DayConditions): EffectiveLength | undefined {
  const answer = effectiveOf(shot, day);
  return answer.ok ? answer : undefined;
}

/**
 * The shot that clears an obstacle of a corner line: to its far edge, at the height of its top or of the
 * ground past it.
 */
function overObstacle(
  { toMetres, topMetres, id }: Obstacle,
  tee: TeeFigures,
  bearing: number,
  grid: HeightGrid,
): Shot | undefined {
  const past = risePast(grid, tee.marker, bearing, toMetres);
  if (topMetres === undefined || past === undefined) return undefined;
  return {
    purpose: "carry",
    feature: id,
    driveMetres: 0,
    distanceMetres: toMetres,
    riseMetres: Math.max(topMetres, past),
    bearingDegrees: bearing,
  };
}

function cornerOf(
  tee: TeeFigures,
  line: CornerLine,
  grid: HeightGrid | undefined,
  day: DayConditions | undefined,
): Corner {
  const bearing = bearingDegrees(directionTo(tee.marker, line.target));
  let hardest = line.obstacles.reduce<Obstacle | undefined>(
    (best, one) => (best && best.toMetres >= one.toMetres ? best : one),
    undefined,
  );
  let clearing: PlaysRow | undefined;
  // Over a boundary the line is a risk, not a shot to work out.
  for (const obstacle of line.outOfBounds.length > 0 ? [] : line.obstacles) {
    const shot = grid && overObstacle(obstacle, tee, bearing, grid);
    const effective = shot && day && answered(shot, day);
    if (!effective || (clearing?.effective && clearing.effective.lengthMetres >= effective.lengthMetres)) continue;
    [hardest, clearing] = [obstacle, { shot, effective }];
  }
  const needed = Math.max(line.carryMetres, clearing?.effective?.lengthMetres ?? 0);
  const driveOf = (id: PlayerId): number => REFERENCE_PLAYERS.find((player) => player.id === id)!.driveMetres;
  return { line, hardest, clearing, reachableFor: line.reachableFor.filter((id) => driveOf(id) >= needed) };
}

function sightOf(hole: MeasuredHole, tee: TeeFigures, grid: HeightGrid, driveMetres: number | undefined): Sight {
  const { greenShare, flag } = sightFromTee(hole, tee, grid);
  const landing = driveMetres === undefined ? undefined : landingAt(hole, tee, driveMetres, grid);
  return {
    greenShare,
    flag,
    landing: landing?.seenFromTee,
    greenFromLanding: landing?.seesGreen,
  };
}

function landingsOf(hole: MeasuredHole, grid: HeightGrid | undefined): PlayerLanding[] {
  if (reachedInOne(hole)) return [];
  return REFERENCE_PLAYERS.flatMap((player) => {
    const set = teeSetFor(hole.course, player);
    const tee = hole.tees.find((one) => one.tee.id === set?.id);
    const figures = tee && keptLanding(hole, tee, player.driveMetres, grid);
    return tee && figures ? [{ player, tee, figures }] : [];
  });
}
