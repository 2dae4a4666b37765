/** Claims of the hole's way: heights, bends, lengths, how it plays, what is seen. */
import type { HoleFacts } from "../../facts.ts";
import { list, type Say } from "../../say.ts";
import type { Claim, Compass } from "../claim.ts";
import * as at from "../thresholds.ts";
import { between, UNKNOWN_HEIGHTS, type Judge, type Judgement } from "./judgement.ts";

const upOrDown = (metres: number, say: Say): string =>
  Math.abs(metres) < 0.15 ? "level" : `${say.height(metres)} ${metres > 0 ? "up" : "down"}`;

/** The rises a claim can be meant of, with what each is called. */
function rises(
  { place }: Claim,
  facts: HoleFacts,
  wholeOnly: boolean,
): { readonly what: string; readonly metres: number }[] {
  const whole = facts.tees.flatMap(({ name, riseMetres }) =>
    riseMetres === undefined ? [] : [{ what: `tee to green from the ${name} tee`, metres: riseMetres }],
  );
  const teeShot = facts.ground?.teeShot && { what: "the tee shot", metres: facts.ground.teeShot.riseMetres };
  const approach = facts.ground?.approach && { what: "the approach", metres: facts.ground.approach.riseMetres };
  const oneShot = facts.par.men <= 3;
  if (place === "approach" && !oneShot) return approach ? [approach] : [];
  if (place === "tee-shot" && !oneShot) return teeShot ? [teeShot] : [];
  if (oneShot || wholeOnly) return whole.length > 0 ? whole : teeShot ? [teeShot] : [];
  // Nobody said of which stroke: it may be any.
  return [...whole, ...(teeShot ? [teeShot] : []), ...(approach ? [approach] : [])];
}

const heightJudge =
  (fits: (rise: number) => boolean, notAtAll: (rise: number) => boolean, wholeOnly = false): Judge =>
  (claim, facts, say) => {
    const measured = rises(claim, facts, wholeOnly);
    if (measured.length === 0) return UNKNOWN_HEIGHTS;
    return between(
      claim,
      measured.every(({ metres }) => fits(metres)),
      measured.every(({ metres }) => notAtAll(metres)),
      list(
        [...measured.slice(0, 1), ...measured.slice(1).filter(({ what }) => what.startsWith("the "))].map(
          ({ what, metres }) => `${what} is ${upOrDown(metres, say)}`,
        ),
      ),
    );
  };

export const uphill = heightJudge(
  (rise) => rise > 2,
  (rise) => rise <= at.LEVEL_METRES,
);
export const downhill = heightJudge(
  (rise) => rise < -2,
  (rise) => rise >= -at.LEVEL_METRES,
);
export const level = heightJudge(
  (rise) => Math.abs(rise) <= at.LEVEL_METRES,
  (rise) => Math.abs(rise) > at.NOT_LEVEL_METRES,
  true,
);

function bendsSaid({ bends }: HoleFacts): string {
  const turns = bends.filter(({ angleDegrees }) => angleDegrees >= 1);
  return turns.length === 0
    ? "the line of play is straight"
    : `the line of play turns ${list(turns.map(({ angleDegrees, side }) => `${Math.round(angleDegrees)} degrees ${side}`))}`;
}

export const bends: Judge = (claim, facts) => {
  const that = facts.bends.filter(({ side }) => side === claim.side);
  const most = Math.max(0, ...that.map(({ angleDegrees }) => angleDegrees));
  return between(claim, most >= at.NOT_STRAIGHT_DEGREES, most < at.BEND_DEGREES, bendsSaid(facts));
};

export const straight: Judge = (claim, facts) => {
  const most = Math.max(0, ...facts.bends.map(({ angleDegrees }) => angleDegrees));
  return between(claim, most < at.BEND_DEGREES, most >= at.NOT_STRAIGHT_DEGREES, bendsSaid(facts));
};

export const twoBends: Judge = (claim, facts) => {
  const turns = facts.bends.filter(({ angleDegrees }) => angleDegrees >= at.BEND_DEGREES).length;
  return between(claim, turns >= 2, turns < 2, bendsSaid(facts));
};

const COMPASS: readonly Compass[] = [
  "north",
  "north-east",
  "east",
  "south-east",
  "south",
  "south-west",
  "west",
  "north-west",
];

export const runs: Judge = (claim, facts) => {
  const wanted = COMPASS.indexOf(claim.side as Compass) * 45;
  const off = Math.abs(((facts.bearingDegrees - wanted + 540) % 360) - 180);
  const point = COMPASS[Math.round(facts.bearingDegrees / 45) % 8]!;
  return between(
    claim,
    off <= 22.5,
    off > at.COMPASS_DEGREES,
    `tee to green runs ${point}, ${Math.round(facts.bearingDegrees)} degrees`,
  );
};

const lengthsSaid = (facts: HoleFacts, say: Say): string =>
  list(facts.tees.map(({ name, lengthMetres }) => `${say.length(lengthMetres)} from the ${name} tee`));

export const length: Judge = (claim, facts, say) => {
  const metres = claim.metres;
  if (metres === undefined) return { verdict: "unknown", measured: "no length was given" };
  const off = facts.tees.map(
    ({ lengthMetres }) => Math.abs(lengthMetres - metres) - Math.max(at.LENGTH_METRES, at.LENGTH_SHARE * lengthMetres),
  );
  return between(
    claim,
    off.some((one) => one <= 0),
    off.every((one) => one > 0),
    `the hole is ${lengthsSaid(facts, say)}`,
  );
};

export const par: Judge = (claim, { par: { men, women } }) => {
  const is = claim.number === men || claim.number === women;
  return between(claim, is, !is, `the hole's par is ${men}${women === men ? "" : ` for men and ${women} for women`}`);
};

export const strokeIndex: Judge = (claim, { strokeIndex: { men, women } }) => {
  const is = claim.number === men || claim.number === women;
  return between(
    claim,
    is,
    !is,
    `its stroke index is ${men}${women === men ? "" : ` for men and ${women} for women`}`,
  );
};

/** Longest or shortest from any set, of all holes and of those of its par: what a tip means is not always said. */
const rankJudge =
  (better: (a: number, b: number) => boolean, word: string): Judge =>
  (claim, facts) => {
    if (facts.course.length < 2) return { verdict: "unknown", measured: "the course has no other hole" };
    const beaten = (others: HoleFacts["course"]): boolean =>
      facts.tees.some(({ id, lengthMetres }) =>
        others.every(
          ({ number, lengths }) =>
            number === facts.number || lengths[id] === undefined || !better(lengths[id], lengthMetres),
        ),
      );
    const ofAll = beaten(facts.course);
    const ofPar = beaten(facts.course.filter(({ par: { men } }) => men === facts.par.men));
    const number = claim.number;
    const so = number === undefined ? ofAll : ofPar && number === facts.par.men;
    return between(
      claim,
      so,
      !so,
      so ? `it is the ${word}` : `another is ${word === "longest" ? "longer" : "shorter"} from every tee set`,
    );
  };

export const longest = rankJudge((a, b) => a > b + 1, "longest");
export const shortest = rankJudge((a, b) => a < b - 1, "shortest");

/** Effective length less the plain one, of the stroke meant: a claim without a stroke may mean either. */
function extras({ place }: Claim, { ground, par: { men } }: HoleFacts): number[] {
  const shots =
    place === "tee-shot"
      ? [ground?.teeShot]
      : place === "approach" || men <= 3
        ? [ground?.approach]
        : [ground?.approach, ground?.teeShot];
  return shots.flatMap((shot) => (shot?.extraMetres === undefined ? [] : [shot.extraMetres]));
}

const extraSaid = (all: readonly number[], say: Say): string =>
  `by its heights, in still air, it plays ${list(
    all.map((extra) =>
      Math.abs(extra) < 0.5 ? "its figure" : `${say.length(Math.abs(extra))} ${extra > 0 ? "longer" : "shorter"}`,
    ),
    "or",
  )}`;

/**
 * Wind and turf change how a hole plays too, so heights that say nothing leave a claim open; only heights
 * that say the opposite refute it.
 */
const playsJudge =
  (sign: 1 | -1, clubs: boolean): Judge =>
  (claim, facts, say): Judgement => {
    const all = extras(claim, facts).map((extra) => sign * extra);
    if (all.length === 0) return UNKNOWN_HEIGHTS;
    const measured = extraSaid(
      all.map((extra) => sign * extra),
      say,
    );
    const wanted = clubs ? (claim.number ?? 1) * at.CLUB_METRES : 0;
    const opposite = all.every((extra) => extra <= -2);
    if (claim.denied) return { verdict: "unknown", measured };
    if (opposite) return { verdict: "contradicts", measured };
    if (clubs) {
      if (all.some((extra) => Math.abs(extra - wanted) <= 0.8 * at.CLUB_METRES))
        return { verdict: "agrees", measured };
      const farOff = all.every((extra) => extra > wanted + 1.6 * at.CLUB_METRES);
      return { verdict: farOff ? "contradicts" : "unknown", measured };
    }
    return { verdict: all.some((extra) => extra >= 2) ? "agrees" : "unknown", measured };
  };

export const playsLonger = playsJudge(1, false);
export const playsShorter = playsJudge(-1, false);
export const clubsMore = playsJudge(1, true);
export const clubsLess = playsJudge(-1, true);

const reachJudge =
  (within: number, beyond: number): Judge =>
  (claim, facts, say) =>
    between(
      claim,
      facts.lengthMetres <= within,
      facts.lengthMetres > beyond,
      `the hole is ${lengthsSaid(facts, say)}`,
    );

export const reachableInTwo = reachJudge(at.IN_REACH_IN_TWO_METRES, at.OUT_OF_REACH_IN_TWO_METRES);
export const drivable = reachJudge(at.NOT_DRIVABLE_METRES / 1.4, at.NOT_DRIVABLE_METRES);

export const threeShots: Judge = (claim, facts, say) =>
  between(
    claim,
    facts.lengthMetres > at.OUT_OF_REACH_IN_TWO_METRES,
    facts.par.men < 5 && facts.lengthMetres < at.NOT_THREE_SHOTS_METRES,
    `a par ${facts.par.men} of ${lengthsSaid(facts, say)}`,
  );

const seenSaid = (what: string, share: number, from: string): string =>
  `${Math.round(share * 100)}% of ${what} is seen from ${from}`;

export const blindTeeShot: Judge = (claim, facts) => {
  const green = facts.par.men <= 3 || claim.place === "green";
  const share = green ? facts.ground?.seen.greenFromTee : facts.ground?.seen.landing;
  if (share === undefined) return UNKNOWN_HEIGHTS;
  return between(
    claim,
    share <= at.UNSEEN_SHARE,
    share >= at.SEEN_SHARE,
    seenSaid(green ? "the green" : "the landing ground", share, "the tee"),
  );
};

export const blindApproach: Judge = (claim, facts) => {
  if (facts.par.men <= 3) return blindTeeShot(claim, facts, { length: String, height: String });
  const { greenFromLanding: green, flagFromLanding: flag } = facts.ground?.seen ?? {};
  if (green === undefined || flag === undefined) return UNKNOWN_HEIGHTS;
  const measured = green
    ? "the green is seen from the landing ground"
    : flag
      ? "only the flag is seen from the landing ground"
      : "not even the flag is seen from the landing ground";
  return between(claim, !green && !flag, green, measured);
};

const fairwayJudge =
  (so: (narrowest: number, widest: number) => boolean, notSo: (narrowest: number, widest: number) => boolean): Judge =>
  (claim, { fairway }, say) => {
    if (!fairway) return { verdict: "unknown", measured: "no fairway is drawn where drives come down" };
    const { narrowestMetres, widestMetres } = fairway;
    return between(
      claim,
      so(narrowestMetres, widestMetres),
      notSo(narrowestMetres, widestMetres),
      `the fairway is ${say.length(narrowestMetres)} to ${say.length(widestMetres)} wide where drives come down`,
    );
  };

export const fairwayNarrow = fairwayJudge(
  (_, widest) => widest < at.NOT_WIDE_FAIRWAY_METRES,
  (narrowest) => narrowest > at.NOT_NARROW_FAIRWAY_METRES,
);
export const fairwayWide = fairwayJudge(
  (narrowest) => narrowest > at.NOT_NARROW_FAIRWAY_METRES,
  (_, widest) => widest < at.NOT_WIDE_FAIRWAY_METRES,
);

export const fairwaySplit: Judge = (claim, { fairway }) => {
  if (!fairway) return { verdict: "unknown", measured: "no fairway is drawn where drives come down" };
  return between(
    claim,
    fairway.splits,
    !fairway.splits,
    fairway.splits ? "the fairway is in two parts" : "the fairway is in one part where drives come down",
  );
};

export const sideSlope: Judge = (claim, { ground }) => {
  const right = ground?.fairwayRightPercent;
  if (right === undefined) return UNKNOWN_HEIGHTS;
  const falls = claim.side === "left-to-right" ? -right : right;
  const measured =
    Math.abs(right) < at.SIDE_SLOPE_PERCENT
      ? "the landing ground is level from side to side"
      : `the landing ground falls ${Math.abs(right).toFixed(1)}% to the ${right > 0 ? "left" : "right"}`;
  return between(claim, falls > 1.5, falls < at.SIDE_SLOPE_PERCENT, measured);
};
