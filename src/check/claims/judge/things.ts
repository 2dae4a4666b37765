/** Claims of bunkers, water, out of bounds and what else lies about a hole. */
import type { Zone } from "../../around.ts";
import type { ThingClass } from "../../../course/kinds.ts";
import type { HoleFacts, Thing } from "../../facts.ts";
import { list } from "../../say.ts";
import type { Claim, ClaimPlace } from "../claim.ts";
import { CARRY_METRES, HAZARD_METRES } from "../thresholds.ts";
import type { Judge, Judgement } from "./judgement.ts";

/** What a class is called in a message. */
export const CLASS_NAMES: Readonly<Record<ThingClass, string>> = {
  bunker: "bunker",
  water: "water",
  "out-of-bounds": "out of bounds",
  trees: "trees",
  gorse: "gorse or heather",
  wall: "wall or fence",
  road: "road",
};

/** These are drawn wherever they are in play; cover, walls and roads may be left out of a drawing. */
const ALWAYS_DRAWN: ReadonlySet<ThingClass> = new Set<ThingClass>(["bunker", "water", "out-of-bounds"]);

function thingsMeant({ featureId }: Claim, facts: HoleFacts, kind: ThingClass): readonly Thing[] {
  if (featureId !== undefined) {
    // A burn drawn in two pieces has its name on both.
    const named = facts.things.find(({ id }) => id === featureId);
    return facts.things.filter(({ id, name }) => id === featureId || (name !== undefined && name === named?.name));
  }
  // "Wall" and "road" are also said of the boundary.
  const also: readonly ThingClass[] = kind === "wall" || kind === "road" ? [kind, "out-of-bounds"] : [kind];
  return facts.things.filter(({ classes }) => classes.some((one) => also.includes(one)));
}

const isLateral = (side: Zone): side is "left" | "right" => side === "left" || side === "right";

/** Whether a thing could be said to lie there. */
export function perhapsThere({ where }: Thing, side: Zone, place: ClaimPlace | undefined): boolean {
  if (!isLateral(side)) return where.green.perhaps.has(side);
  if (place === "green") return where.green.perhaps.has(side);
  return where.perhaps.has(side) || where.green.perhaps.has(side);
}

/** Whether nobody could deny that it lies there. */
function surelyThere({ where }: Thing, side: Zone, place: ClaimPlace | undefined): boolean {
  if (!isLateral(side) || place === "green") return where.green.surely.has(side);
  return where.surely.has(side) || where.green.surely.has(side);
}

const ZONES: readonly Zone[] = [
  "short-left",
  "short",
  "short-right",
  "left",
  "right",
  "long-left",
  "long",
  "long-right",
];

/** Where the things of a class are, in a few words. */
function whereTheyAre(all: readonly Thing[], kind: ThingClass): string {
  if (all.length === 0) return `no ${CLASS_NAMES[kind]} is drawn on this hole`;
  const things = all.filter(
    ({ where, crossings }) => crossings > 0 || where.perhaps.size > 0 || where.green.perhaps.size > 0,
  );
  if (things.length === 0) return `no ${CLASS_NAMES[kind]} is drawn near this hole's line of play`;
  const places = things.map((thing) => {
    const zones = ZONES.filter((zone) => thing.where.green.surely.has(zone));
    const sides = (["left", "right"] as const).filter((side) => thing.where.surely.has(side));
    const parts = [
      ...(thing.crossings > 0 ? ["across the line of play"] : []),
      ...(sides.length > 0 && thing.crossings === 0 ? [`${list(sides)} of the line of play`] : []),
      ...(zones.length > 0 ? [`${list(zones.map((zone) => zone.replace("-", " ")))} of the green`] : []),
    ];
    return `${thing.name ?? thing.id} lies ${parts.length > 0 ? list(parts) : `away to the ${list([...thing.where.perhaps])}`}`;
  });
  return list(places.slice(0, 4)) + (places.length > 4 ? ` and ${places.length - 4} more` : "");
}

/** In play at all: within reach of a stray shot. */
const inPlay = ({ where, crossings }: Thing): boolean =>
  crossings > 0 || where.surely.size > 0 || where.green.surely.size > 0;

function across(claim: Claim, things: readonly Thing[], measured: string): Judgement {
  const crossings = things.reduce((sum, thing) => sum + thing.crossings, 0);
  // A burn in front of the green may end short of the line as it was drawn.
  const inFront = things.some(({ where }) => where.green.perhaps.has("short"));
  const times = claim.number ?? 1;
  const so = claim.denied ? crossings === 0 && !inFront : times > 1 ? crossings >= times : crossings > 0 || inFront;
  const crosses =
    crossings === 0 ? "" : ` (the line of play crosses it ${crossings === 1 ? "once" : `${crossings} times`})`;
  return { verdict: so ? "agrees" : "contradicts", measured: measured + crosses };
}

export function thingJudge(kind: ThingClass): Judge {
  return (claim, facts) => {
    const things = thingsMeant(claim, facts, kind);
    const measured = whereTheyAre(things, kind);
    // Each crossing may have a name of its own.
    if (claim.side === "across")
      return across(
        claim,
        (claim.number ?? 1) > 1 ? facts.things.filter(({ classes }) => classes.includes(kind)) : things,
        measured,
      );
    if (claim.side === undefined) {
      const there = things.filter((thing) =>
        claim.place === "green" ? thing.where.green.surely.size > 0 : inPlay(thing),
      );
      return {
        verdict:
          there.length > 0 ? (claim.denied ? "contradicts" : "agrees") : claim.denied ? "agrees" : "contradicts",
        measured,
      };
    }
    const side = claim.side as Zone;
    if (claim.denied) {
      const there = things.some((thing) => surelyThere(thing, side, claim.place));
      return { verdict: there ? "contradicts" : "agrees", measured };
    }
    if (things.some((thing) => perhapsThere(thing, side, claim.place))) {
      const enough = kind !== "bunker" || claim.number === undefined || things.length >= claim.number;
      return enough
        ? { verdict: "agrees", measured }
        : { verdict: "contradicts", measured: `the hole has ${things.length} in all` };
    }
    // Where none of its kind is drawn, a tree or a wall may only have been left out.
    return { verdict: ALWAYS_DRAWN.has(kind) || things.some(inPlay) ? "contradicts" : "unknown", measured };
  };
}

export const bunkerCount: Judge = (claim, facts) => {
  const bunkers = facts.things.filter(({ classes, shared }) => classes.includes("bunker") && !shared);
  const fits = claim.place === "green" ? bunkers.filter(({ where }) => where.green.perhaps.size > 0) : bunkers;
  // "The only fairway bunker" is true of one that stands beside the line away from the green.
  const few = claim.place === "fairway" ? bunkers.filter(({ where }) => where.green.surely.size === 0) : fits;
  return { verdict: few.length === claim.number ? "agrees" : "contradicts", measured: `the hole has ${few.length}` };
};

export const hazardDistance: Judge = (claim, facts, say) => {
  if (claim.metres === undefined || claim.thing === undefined)
    return { verdict: "unknown", measured: "no distance was given" };
  const metres = claim.metres;
  const spans = thingsMeant(claim, facts, claim.thing).flatMap((thing) =>
    thing.spans.map((span) => ({ ...span, thing })),
  );
  const near = spans.some(
    ({ reachMetres, farMetres }) => metres >= reachMetres - HAZARD_METRES && metres <= farMetres + HAZARD_METRES,
  );
  const measured =
    spans.length === 0
      ? `no ${CLASS_NAMES[claim.thing]} is drawn on this hole`
      : list(
          spans
            .filter(({ tee }) => tee === facts.tees[0]!.id)
            .map(({ reachMetres, carryMetres, thing }) => {
              const carry = carryMetres === undefined ? "has no carry" : `${say.length(carryMetres)} to carry`;
              return `${thing.name ?? thing.id} is ${say.length(reachMetres)} to reach and ${carry} from the ${facts.tees[0]!.name} tee`;
            }),
        );
  return { verdict: near ? "agrees" : "contradicts", measured };
};

/** What may have to be carried: hazards, and ground one does not play from. */
const CARRIED: readonly ThingClass[] = ["water", "bunker", "gorse", "trees"];

export const forcedCarry: Judge = (claim, facts) => {
  const carried = facts.things.flatMap((thing) =>
    thing.classes.some((one) => CARRIED.includes(one))
      ? thing.spans
          .filter(({ across: lies, reachMetres }) => lies && reachMetres < CARRY_METRES)
          .map((span) => ({ ...span, thing }))
      : [],
  );
  const tees = new Set(carried.filter(({ thing }) => thing.classes.includes("water")).map(({ tee }) => tee));
  const everywhere = facts.tees.every(({ id }) => tees.has(id));
  const names = [...new Set(carried.map(({ thing }) => thing.name ?? thing.id))];
  const measured =
    names.length === 0
      ? "nothing lies across the line of play within a drive of the tee"
      : `${list(names)} ${names.length === 1 ? "lies" : "lie"} across the line of play`;
  return claim.denied
    ? { verdict: everywhere ? "contradicts" : "agrees", measured }
    : { verdict: names.length === 0 ? "contradicts" : "agrees", measured };
};

export const alongSea: Judge = (claim, facts) => {
  const water = facts.things.filter(({ classes }) => classes.includes("water"));
  const beside = water.filter(({ where }) => where.perhaps.size > 0);
  const measured =
    beside.length === 0 ? "no water is drawn within 150 m of the line of play" : whereTheyAre(beside, "water");
  const so = beside.length > 0;
  return { verdict: so === claim.denied ? "contradicts" : "agrees", measured };
};

export const islandGreen: Judge = (claim, facts) => {
  const water = facts.things.filter(({ classes }) => classes.includes("water"));
  const sides = (["left", "right", "short", "long"] as const).filter((side) =>
    water.some(({ where }) => where.green.perhaps.has(side)),
  );
  const measured = sides.length === 0 ? "no water is drawn about the green" : `water lies ${list(sides)} of the green`;
  // A lagoon of an inlet on one side and in front is no island.
  const island = sides.length >= 3 && sides.includes("left") && sides.includes("right");
  return { verdict: island === claim.denied ? "contradicts" : "agrees", measured };
};
