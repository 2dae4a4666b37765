/**
 * What a hole's `ground.json` holds: the landing ground and approach of every drive length worked
 * out, and what a stroke from each tee meets. Fetched only when a golfer gives a length.
 */
import {
  byName,
  file,
  listOf,
  maybe,
  number,
  object,
  oneOf,
  orNull,
  text,
  truth,
  tuple,
  type Read,
} from "./reading.ts";

/** Raised when a reader of the older shape could misread the newer one. */
export const GROUND_DATA_VERSION = 2;

/** Distance, rise and bearing of a shot, as a page carries them. */
export type ShotNumbers = readonly [distanceMetres: number, riseMetres: number, bearingDegrees: number];

export interface OwnDrive {
  /** To the middle of the green along the line of play. */
  readonly leavesMetres: number;
  /** 0 off the fairway. */
  readonly fairwayMetres: number;
  /** Where it comes down above (+) or below (-) the tee; absent without heights. */
  readonly rise?: number;
  /** First trouble each side: its name and how far; absent when clear. */
  readonly left?: readonly [name: string, metres: number];
  readonly right?: readonly [name: string, metres: number];
  /** Rise in percent along the line and to the right; absent without heights. */
  readonly lie?: readonly [away: number, right: number];
  readonly seen?: boolean;
  readonly seesGreen?: boolean;
  /** To the front, middle and back of the green; absent over unknown ground. */
  readonly green?: GreenShots;
  /** Hazards met after it, in order of reach. */
  readonly next?: readonly NextHazard[];
}

/** A hazard from where a drive comes down: reach, carry and what is left past it, null where there is none. */
export type NextHazard = readonly [name: string, reach: number, carry: number | null, leaves: number | null];

/** To the front, middle and back of the green. */
export type GreenShots = readonly [front: ShotNumbers, middle: ShotNumbers, back: ShotNumbers];

/** A hazard within the shot corridor and short of the green. */
export interface AheadHazard {
  readonly name: string;
  /** To its nearest edge. */
  readonly reach: ShotNumbers;
  /**
   * Safely past it, to the height of the highest ground just past it; absent of what no stroke to the green
   * gets past.
   */
  readonly past?: ShotNumbers;
  /** Whether the line of play runs through it, so that it must be carried. */
  readonly across: boolean;
}

/** A point of the measuring plane, metres. */
export type PlanePoint = readonly [x: number, y: number];

/** What a stroke from a tee set meets. */
export interface FromTee {
  /** In order of reach; what lies over unknown ground is left out. */
  readonly ahead: readonly AheadHazard[];
  /** On a hole reached in one. */
  readonly green?: GreenShots;
  readonly marker: PlanePoint;
  /** Line of play. */
  readonly line: readonly PlanePoint[];
}

export interface GroundData {
  readonly version: typeof GROUND_DATA_VERSION;
  readonly drivesMetres: readonly number[];
  /** By tee set, one for each drive length; null where the drive is as long as the hole. */
  readonly tees: Readonly<Record<string, readonly (OwnDrive | null)[]>>;
  readonly from: Readonly<Record<string, FromTee>>;
  readonly corridorMetres: number;
  /** The guide has no heights: every rise is given as 0. */
  readonly level?: true;
}

const shot: Read<ShotNumbers> = tuple(number, number, number);
const greenShots: Read<GreenShots> = tuple(shot, shot, shot);
const trouble: Read<readonly [name: string, metres: number]> = tuple(text, number);
const planePoint: Read<PlanePoint> = tuple(number, number);

const nextHazard: Read<NextHazard> = tuple(text, number, orNull(number), orNull(number));

const ownDrive = object<OwnDrive>({
  leavesMetres: number,
  fairwayMetres: number,
  rise: maybe(number),
  left: maybe(trouble),
  right: maybe(trouble),
  lie: maybe(planePoint),
  seen: maybe(truth),
  seesGreen: maybe(truth),
  green: maybe(greenShots),
  next: maybe(listOf(nextHazard)),
});

const fromTee = object<FromTee>({
  ahead: listOf(object<AheadHazard>({ name: text, reach: shot, past: maybe(shot), across: truth })),
  green: maybe(greenShots),
  marker: planePoint,
  line: listOf(planePoint),
});

/** @throws UnreadableData when it is of another version, or damaged */
export const readGroundData = file<GroundData>(
  "ground.json",
  GROUND_DATA_VERSION,
  object<GroundData>({
    version: oneOf(GROUND_DATA_VERSION),
    drivesMetres: listOf(number),
    tees: byName(listOf(orNull(ownDrive))),
    from: byName(fromTee),
    corridorMetres: number,
    level: maybe(oneOf(true)),
  }),
);
