/** Kinds and causes in a report's words. Pure. */
import type { FeatureKind } from "../../course/types.ts";
import type { LeftOver } from "../left-over.ts";

/** One, and several. */
const NOUNS: Readonly<Partial<Record<FeatureKind, readonly [string, string]>>> = {
  "line-of-play": ["line of play", "lines of play"],
  "tee-marker": ["tee marker", "tee markers"],
  "teeing-ground": ["tee ground", "tee grounds"],
  "penalty-area-yellow": ["penalty area (yellow)", "penalty areas (yellow)"],
  "penalty-area-red": ["penalty area (red)", "penalty areas (red)"],
  "out-of-bounds": ["boundary", "boundaries"],
  "driving-range": ["driving range", "driving ranges"],
  water: ["water", "waters"],
  sand: ["sand", "stretches of sand"],
  scrub: ["gorse or scrub", "stretches of gorse or scrub"],
  heath: ["heath", "stretches of heath"],
  rough: ["rough", "stretches of rough"],
  grassland: ["grassland", "stretches of grassland"],
  rock: ["rock", "stretches of rock"],
  coastline: ["coastline", "coastlines"],
  course: ["outline of the course", "outlines of courses"],
  hedge: ["hedge", "hedges"],
  bunker: ["bunker", "bunkers"],
  other: ["other feature", "other features"],
};

export const nounOf = (kind: FeatureKind, n = 1): string => {
  const [one, several] = NOUNS[kind] ?? [kind, `${kind}s`];
  return n === 1 ? one : several;
};

export const counted = (n: number, kind: FeatureKind): string => `${n} ${nounOf(kind, n)}`;

/** What a reason comes to, for counting; the whole of it is behind `--all`. */
const CAUSES: readonly (readonly [RegExp, string])[] = [
  [/beside no line of play/, "beside no line of play"],
  [/with latitude and longitude changed about/, "with latitude and longitude changed about"],
  [/^it lies .*from/, "too far from any line of play"],
  [/ends on it|no line's end/, "at the end of no line of play"],
  [/at no line of play/, "at the start of no line of play"],
  [/on no line of play/, "under no line of play"],
  [/there is no line of play/, "no line of play to place by"],
  [/tags are none/, "nothing that the guide draws"],
  [/nothing says what it is/, "nothing says what it is"],
  [/has another/, "a second where a hole has one"],
  [/which hole it is/, "no hole's number"],
  [/lines say hole/, "several for one hole: see --lines"],
  [/tee set/, "no tee set of the course"],
  [/but lies .* from that hole/, "far from the hole it names"],
  [/line of play without/, "of another course"],
  [/waypoint that stands/, "a point that stands for an outline"],
];

export const causeOf = ({ reason }: LeftOver): string =>
  CAUSES.find(([pattern]) => pattern.test(reason))?.[1] ?? "a shape or tag that cannot be used";
