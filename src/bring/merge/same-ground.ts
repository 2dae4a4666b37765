/**
 * Two outlines of one thing. Pure. A source may call by one name what the club knows by a
 * better one: `natural=sand` drawn over a known bunker is that bunker again, and no second
 * thing beside it.
 */
import type { FeatureKind } from "../../course/kinds.ts";
import type { Tags } from "../../course/schema/vocabulary.ts";
import { areaSquareMetres } from "../../geo/area.ts";
import { sharedByAll } from "../../geo/overlap.ts";
import type { Shape } from "../place/shape.ts";

/** Kinds that one thing on the ground is called by, each with those that say less of it. */
const ALIKE: readonly (readonly FeatureKind[])[] = [
  ["bunker", "sand"],
  ["penalty-area-red", "penalty-area-yellow", "water"],
  ["green", "teeing-ground", "fairway", "rough", "grassland"],
  ["wood", "scrub", "heath"],
];

/** Of what both cover, how much they must share to be one: the intersection over the union. */
const SAME_SHARE = 0.5;

interface Called {
  readonly kind: FeatureKind;
  readonly tags: Tags;
}

/**
 * Of one kind, or of kinds that one thing is called by where only one of both words is golf's: rough about a
 * fairway is no fairway.
 */
export function alike(a: Called, b: Called): boolean {
  if (a.kind === b.kind) return true;
  const golf = [a, b].filter(({ tags }) => tags["golf"] !== undefined).length;
  return golf < 2 && ALIKE.some((kinds) => kinds.includes(a.kind) && kinds.includes(b.kind));
}

const areaOf = ({ areas }: Shape): number => areas.reduce((sum, area) => sum + areaSquareMetres(area), 0);

/** The share of their common ground that two shapes both cover, 0 to 1. */
export function commonShare(a: Shape, b: Shape): number {
  if (a.areas.length === 0 || b.areas.length === 0) return 0;
  const shared = sharedByAll(a.areas, b.areas);
  return shared === 0 ? 0 : shared / (areaOf(a) + areaOf(b) - shared);
}

export const sameGround = (a: Shape, b: Shape): boolean => commonShare(a, b) >= SAME_SHARE;
