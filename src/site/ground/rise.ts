/** The rise of a hole, told: how much, and where most of it comes. */
import { climbOf, type ProfilePoint } from "../../terrain/profile.ts";

/** Where most of a rise or fall comes: over the whole way, or one stretch of it. */
export type RiseWhere =
  | { readonly where: "evenly" }
  | { readonly where: "first" | "last"; readonly lengthMetres: number }
  | { readonly where: "between"; readonly fromMetres: number; readonly toMetres: number };

export interface RiseStory {
  /** End above (+) or below (-) the start. */
  readonly riseMetres: number;
  /** Undefined where the two ends are about level, or the ground goes up and down by far more than the rise. */
  readonly most: RiseWhere | undefined;
  /** Metres gone up and down on the way, ripples passed over. */
  readonly upMetres: number;
  readonly downMetres: number;
}

/** Less than this between tee and green is level: two thirds of a man's height (common practice, no source). */
export const LEVEL_RISE_METRES = 1;

/** "Most" is this share of the rise... */
const MOST = 0.6;
/** ...come on no more than this share of the way: longer, and it comes evenly. */
const SHORT = 0.45;
/** Where ups and downs add up to more than this many times the rise, no stretch of it is "most". */
const ROLLING = 2;
/** A stretch that begins or ends this near an end of the line is "the first" or "the last". */
const NEAR_END = 0.06;
/** Ups and downs smaller than this are ripples. */
const RIPPLE_METRES = 1;

/**
 * @param profile heights along the line of play from the tee to the middle of the green
 * @returns undefined where the height at either end is unknown
 */
export function riseStory(profile: readonly ProfilePoint[]): RiseStory | undefined {
  const known = profile.flatMap(({ stationMetres, heightMetres }) =>
    heightMetres === undefined ? [] : [{ station: stationMetres, height: heightMetres }],
  );
  const [first, last] = [profile[0], profile[profile.length - 1]];
  if (first?.heightMetres === undefined || last?.heightMetres === undefined) return undefined;
  const riseMetres = last.heightMetres - first.heightMetres;
  const climb = climbOf(profile, RIPPLE_METRES);
  const story = { riseMetres, upMetres: climb.upMetres, downMetres: climb.downMetres };
  if (Math.abs(riseMetres) < LEVEL_RISE_METRES || climb.upMetres + climb.downMetres > ROLLING * Math.abs(riseMetres))
    return { ...story, most: undefined };
  const length = last.stationMetres - first.stationMetres;
  const sign = Math.sign(riseMetres);
  let best: { from: number; to: number } | undefined;
  for (let i = 0; i < known.length; i++) {
    for (let j = i + 1; j < known.length; j++) {
      const [from, to] = [known[i]!, known[j]!];
      if (best && to.station - from.station >= best.to - best.from) break;
      if (sign * (to.height - from.height) < MOST * Math.abs(riseMetres)) continue;
      best = { from: from.station - first.stationMetres, to: to.station - first.stationMetres };
      break;
    }
  }
  if (!best || best.to - best.from > SHORT * length) return { ...story, most: { where: "evenly" } };
  if (length - best.to <= NEAR_END * length)
    return { ...story, most: { where: "last", lengthMetres: length - best.from } };
  if (best.from <= NEAR_END * length) return { ...story, most: { where: "first", lengthMetres: best.to } };
  return { ...story, most: { where: "between", fromMetres: best.from, toMetres: best.to } };
}
