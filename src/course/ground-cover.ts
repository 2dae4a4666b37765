/** Facts that hang on a feature's own tags and not on its kind alone. */
import { kindOfGround } from "./feature-kind.ts";
import {
  isPenaltyArea,
  kindFacts,
  type CautionKind,
  type FeatureKind,
  type GroundCover,
  type ThingClass,
} from "./kinds.ts";
import type { Feature } from "./types.ts";

type Tagged = Pick<Feature, "kind" | "tags">;

/** What lies in a penalty area as far as its tags name it; any other feature is what it is. */
export const groundKind = ({ kind, tags }: Tagged): FeatureKind => (isPenaltyArea(kind) && kindOfGround(tags)) || kind;

/** A penalty area whose tags leave open what it holds: water, unless other water is surveyed in it. */
export const leavesGroundOpen = ({ kind, tags }: Tagged): boolean =>
  isPenaltyArea(kind) && kindOfGround(tags) === undefined;

/** What lies where a feature is. A penalty area is the ground its other tags name, water where they name none. */
export const coverOf = (feature: Tagged): GroundCover => kindFacts(groundKind(feature)).cover;

/** A feature with what was found to lie in it. */
export interface Covered {
  readonly feature: Tagged;
  readonly cover: GroundCover;
}

/** What to warn of. A penalty area without water is no water to be warned of. */
export function cautionOf({ feature, cover }: Covered): CautionKind | undefined {
  const { caution } = kindFacts(feature.kind);
  return caution === "none" || (caution === "water" && cover !== "water") ? undefined : caution;
}

/** What a tip may call it: a penalty area goes by its ground, where words have a name for that. */
export function calledBy({ feature }: Covered): readonly ThingClass[] {
  const { called } = kindFacts(groundKind(feature));
  return called.length > 0 ? called : kindFacts(feature.kind).called;
}
