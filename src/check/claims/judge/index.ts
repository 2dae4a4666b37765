/** The judge of each kind of claim. */
import type { HoleFacts } from "../../facts.ts";
import type { Say } from "../../say.ts";
import type { Claim, ClaimKind } from "../claim.ts";
import * as green from "./green.ts";
import * as hole from "./hole.ts";
import type { Judge, Judgement } from "./judgement.ts";
import * as things from "./things.ts";

const JUDGES: Readonly<Record<ClaimKind, Judge>> = {
  uphill: hole.uphill,
  downhill: hole.downhill,
  level: hole.level,
  bends: hole.bends,
  straight: hole.straight,
  "two-bends": hole.twoBends,
  runs: hole.runs,
  "along-sea": things.alongSea,
  length: hole.length,
  par: hole.par,
  "stroke-index": hole.strokeIndex,
  longest: hole.longest,
  shortest: hole.shortest,
  "plays-longer": hole.playsLonger,
  "plays-shorter": hole.playsShorter,
  "clubs-more": hole.clubsMore,
  "clubs-less": hole.clubsLess,
  "reachable-in-two": hole.reachableInTwo,
  "three-shots": hole.threeShots,
  drivable: hole.drivable,
  "forced-carry": things.forcedCarry,
  "blind-tee-shot": hole.blindTeeShot,
  "blind-approach": hole.blindApproach,
  "fairway-narrow": hole.fairwayNarrow,
  "fairway-wide": hole.fairwayWide,
  "fairway-split": hole.fairwaySplit,
  "side-slope": hole.sideSlope,
  "tee-raised": green.teeRaised,
  "green-raised": green.raised,
  "green-sunken": green.sunken,
  "green-shallow": green.shallow,
  "green-deep": green.deep,
  "green-wide": green.wide,
  "green-narrow": green.narrow,
  "green-large": green.large,
  "green-small": green.small,
  "green-flat": green.flat,
  "green-slope": green.slope,
  tiers: green.tiers,
  "false-front": green.falseFront,
  bunker: things.thingJudge("bunker"),
  water: things.thingJudge("water"),
  "out-of-bounds": things.thingJudge("out-of-bounds"),
  trees: things.thingJudge("trees"),
  gorse: things.thingJudge("gorse"),
  wall: things.thingJudge("wall"),
  road: things.thingJudge("road"),
  "bunker-count": things.bunkerCount,
  "hazard-distance": things.hazardDistance,
  "island-green": things.islandGreen,
};

/** Holds a claim against what was measured. */
export const judge = (claim: Claim, facts: HoleFacts, say: Say): Judgement => JUDGES[claim.kind](claim, facts, say);
