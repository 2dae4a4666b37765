/** What a hole's `ground.json` holds: the landing ground and approach of every drive length worked out. Fetched only when a golfer gives a carry. */
import type { ShotNumbers } from "./conditions-model.ts";

export const GROUND_DATA_VERSION = 1;

export interface OwnDrive {
  /** To the middle of the green along the line of play. */
  readonly leavesMetres: number;
  /** 0 off the fairway. */
  readonly fairwayMetres: number;
  /** First trouble each side: its name and how far; absent when clear. */
  readonly left?: readonly [name: string, metres: number];
  readonly right?: readonly [name: string, metres: number];
  /** Rise in percent along the line and to the right; absent without heights. */
  readonly lie?: readonly [away: number, right: number];
  readonly seen?: boolean;
  readonly seesGreen?: boolean;
  /** To the front, middle and back of the green; absent without heights. */
  readonly green?: readonly [front: ShotNumbers, middle: ShotNumbers, back: ShotNumbers];
}

export interface GroundData {
  readonly version: typeof GROUND_DATA_VERSION;
  readonly drivesMetres: readonly number[];
  /** By tee set, one for each drive length; null where the drive is as long as the hole. */
  readonly tees: Readonly<Record<string, readonly (OwnDrive | null)[]>>;
}
