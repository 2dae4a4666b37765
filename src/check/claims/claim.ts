/** What a tip can say of its hole that the ground can answer. */
import type { ThingClass } from "../../course/kinds.ts";
import type { Zone } from "../around.ts";

/** Every kind of claim with what it says, for look-up tables. */
export const CLAIM_KINDS = {
  uphill: "the hole, its tee shot or its approach goes uphill",
  downhill: "the hole, its tee shot or its approach goes downhill",
  level: "the hole is level",
  bends: "the hole bends left or right",
  straight: "the hole is straight",
  "two-bends": "the hole bends twice",
  runs: "the hole runs toward a point of the compass",
  "along-sea": "the hole runs along the sea",
  length: "a typed length of the hole",
  par: "the hole's par",
  "stroke-index": "the hole's stroke index",
  longest: "it is the longest hole, or the longest of its par",
  shortest: "it is the shortest hole, or the shortest of its par",
  "plays-longer": "it plays longer than its figure",
  "plays-shorter": "it plays shorter than its figure",
  "clubs-more": "it takes so many clubs more",
  "clubs-less": "it takes so many clubs less",
  "reachable-in-two": "the green can be reached in two",
  "three-shots": "it takes three strokes to reach",
  drivable: "the green can be reached from the tee",
  "forced-carry": "the tee shot must carry trouble",
  "blind-tee-shot": "the tee shot is blind",
  "blind-approach": "the approach is blind",
  "fairway-narrow": "the fairway is narrow",
  "fairway-wide": "the fairway is wide",
  "fairway-split": "the fairway is split",
  "side-slope": "the fairway falls to one side",
  "tee-raised": "the tee is elevated",
  "green-raised": "the green is raised",
  "green-sunken": "the green lies in a hollow",
  "green-shallow": "the green is shallow",
  "green-deep": "the green is deep",
  "green-wide": "the green is wide",
  "green-narrow": "the green is narrow",
  "green-large": "the green is large",
  "green-small": "the green is small",
  "green-flat": "the green is level",
  "green-slope": "which way the green slopes",
  tiers: "the green has two tiers",
  "false-front": "the green has a false front",
  bunker: "a bunker on a side, or no bunkers",
  water: "water on a side or across, or no water",
  "out-of-bounds": "out of bounds on a side, or none",
  trees: "trees on a side",
  gorse: "gorse or heather on a side",
  wall: "a wall, fence or hedge on a side",
  road: "a road on a side",
  "bunker-count": "how many bunkers the hole has",
  "hazard-distance": "a typed distance to a hazard",
  "island-green": "the green is ringed by water",
} as const;

export type ClaimKind = keyof typeof CLAIM_KINDS;

export type Across = "across";
export type SlopeWay = "back-to-front" | "front-to-back" | "left-to-right" | "right-to-left";
export type Compass = "north" | "north-east" | "east" | "south-east" | "south" | "south-west" | "west" | "north-west";
export type ClaimSide = Zone | Across | SlopeWay | Compass;

/** What of the hole is spoken of, where the words say. */
export type ClaimPlace = "green" | "fairway" | "tee-shot" | "approach";

export interface Claim {
  readonly kind: ClaimKind;
  /** "There is no ...", "it is not ...". */
  readonly denied: boolean;
  readonly side: ClaimSide | undefined;
  readonly place: ClaimPlace | undefined;
  readonly number: number | undefined;
  /** A typed length, whatever unit it was written in. */
  readonly metres: number | undefined;
  /** "Very", "extremely". */
  readonly strong: boolean;
  /** A feature called by its name: its id. */
  readonly featureId: string | undefined;
  /** The class of thing a distance is to. */
  readonly thing: ThingClass | undefined;
  /** Where the words stand in the tip's source. */
  readonly offset: number;
  readonly end: number;
}

export type Verdict = "agrees" | "contradicts" | "unknown";
