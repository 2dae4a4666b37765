/** Claims of the green and of the tee. */
import type { HoleFacts } from "../../facts.ts";
import type { Say } from "../../say.ts";
import type { Claim } from "../claim.ts";
import * as at from "../thresholds.ts";
import { between, UNKNOWN_HEIGHTS, type Judge } from "./judgement.ts";

const sizeSaid = ({ green }: HoleFacts, say: Say): string =>
  `the green is ${say.length(green.depthMetres)} deep and ${say.length(green.widthMetres)} wide`;

export const shallow: Judge = (claim, facts, say) => {
  const { depthMetres, widthMetres } = facts.green;
  const limit = claim.strong ? at.NOT_VERY_SHALLOW_METRES : at.NOT_SHALLOW_METRES;
  const notSo = depthMetres > limit && depthMetres > 0.7 * widthMetres;
  return between(
    claim,
    depthMetres <= at.VERY_SHALLOW_METRES || depthMetres < 0.45 * widthMetres,
    notSo,
    sizeSaid(facts, say),
  );
};

export const deep: Judge = (claim, facts, say) => {
  const { depthMetres } = facts.green;
  return between(
    claim,
    depthMetres > at.NOT_SHALLOW_METRES * 1.3,
    depthMetres < at.NOT_DEEP_METRES,
    sizeSaid(facts, say),
  );
};

export const wide: Judge = (claim, facts, say) => {
  const { depthMetres, widthMetres } = facts.green;
  return between(
    claim,
    widthMetres > at.NOT_NARROW_METRES,
    widthMetres < at.NOT_WIDE_METRES && widthMetres < 1.2 * depthMetres,
    sizeSaid(facts, say),
  );
};

export const narrow: Judge = (claim, facts, say) => {
  const { depthMetres, widthMetres } = facts.green;
  return between(
    claim,
    widthMetres < at.NOT_WIDE_METRES * 0.75,
    widthMetres > at.NOT_NARROW_METRES && widthMetres > 0.8 * depthMetres,
    sizeSaid(facts, say),
  );
};

const areaSaid = ({ green }: HoleFacts): string => `the green has ${Math.round(green.areaSquareMetres)} square metres`;

export const large: Judge = (claim, facts) =>
  between(
    claim,
    facts.green.areaSquareMetres > at.NOT_SMALL_SQUARE_METRES,
    facts.green.areaSquareMetres < at.NOT_LARGE_SQUARE_METRES,
    areaSaid(facts),
  );

export const small: Judge = (claim, facts) =>
  between(
    claim,
    facts.green.areaSquareMetres < at.NOT_LARGE_SQUARE_METRES,
    facts.green.areaSquareMetres > at.NOT_SMALL_SQUARE_METRES,
    areaSaid(facts),
  );

function slopeSaid({ awayPercent, rightPercent }: NonNullable<NonNullable<HoleFacts["ground"]>["green"]>): string {
  const parts = [
    ...(Math.abs(awayPercent) >= at.NO_SLOPE_PERCENT
      ? [`${Math.abs(awayPercent).toFixed(1)}% to the ${awayPercent > 0 ? "front" : "back"}`]
      : []),
    ...(Math.abs(rightPercent) >= at.NO_SLOPE_PERCENT
      ? [`${Math.abs(rightPercent).toFixed(1)}% to the ${rightPercent > 0 ? "left" : "right"}`]
      : []),
  ];
  return parts.length === 0 ? "the green is level" : `the green falls ${parts.join(" and ")}`;
}

export const flat: Judge = (claim, { ground }) => {
  if (!ground?.green) return UNKNOWN_HEIGHTS;
  const percent = Math.hypot(ground.green.awayPercent, ground.green.rightPercent);
  return between(
    claim,
    percent < 1,
    percent > at.LEVEL_GREEN_PERCENT || ground.green.tiers > 1,
    slopeSaid(ground.green),
  );
};

/** How much the green falls the way that is said, in percent. */
function fallSaid(
  { side }: Claim,
  { awayPercent, rightPercent }: { awayPercent: number; rightPercent: number },
): number {
  switch (side) {
    case "back-to-front":
      return awayPercent;
    case "front-to-back":
      return -awayPercent;
    case "left-to-right":
      return -rightPercent;
    default:
      return rightPercent;
  }
}

export const slope: Judge = (claim, { ground }) => {
  if (!ground?.green) return UNKNOWN_HEIGHTS;
  const falls = fallSaid(claim, ground.green);
  // A hair of slope that way is no proof either way where the green as a whole is nearly level.
  return between(claim, falls > 1, falls < at.NO_SLOPE_PERCENT, slopeSaid(ground.green));
};

export const tiers: Judge = (claim, { ground }) => {
  if (!ground?.green || (claim.number ?? 2) > 2)
    return claim.number === 3
      ? { verdict: "unknown", measured: "only two tiers can be told from the heights" }
      : UNKNOWN_HEIGHTS;
  const two = ground.green.tiers === 2;
  return between(claim, two, !two, two ? "the green has two tiers" : "the heights show no step across the green");
};

export const falseFront: Judge = (claim, { ground }) => {
  if (!ground?.green) return UNKNOWN_HEIGHTS;
  const so = ground.green.falseFront;
  return between(claim, so, !so, so ? "the front falls off steeply" : "the heights show no steep fall at the front");
};

const aboveSaid = (what: string, metres: number, say: Say): string =>
  `${what} ${Math.abs(metres) < 0.1 ? "is level with the ground around it" : `stands ${say.height(metres)} ${metres > 0 ? "above" : "below"} the ground around it`}`;

export const raised: Judge = (claim, { ground }, say) => {
  if (ground?.greenAboveMetres === undefined) return UNKNOWN_HEIGHTS;
  const above = ground.greenAboveMetres;
  // A green above the player is called raised too, whatever lies beside it.
  const climbs = (ground.approach?.riseMetres ?? 0) > at.LEVEL_METRES;
  return between(claim, above > 1, above < at.RAISED_METRES && !climbs, aboveSaid("the green", above, say));
};

export const sunken: Judge = (claim, { ground }, say) => {
  if (ground?.greenAboveMetres === undefined) return UNKNOWN_HEIGHTS;
  const above = ground.greenAboveMetres;
  return between(claim, above < -1, above > at.RAISED_METRES, aboveSaid("the green", above, say));
};

export const teeRaised: Judge = (claim, { ground }, say) => {
  if (ground?.teeAboveMetres === undefined) return UNKNOWN_HEIGHTS;
  const above = ground.teeAboveMetres;
  return between(
    claim,
    above > 3,
    above < at.TEE_RAISED_METRES,
    `the tee stands ${say.height(above)} ${above >= 0 ? "above" : "below"} the ground before it`,
  );
};
