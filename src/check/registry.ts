/**
 * Every rule, in the order of its look-up table. A new rule is a file in rules/ and a line
 * here.
 */
import type { Rule } from "./rule.ts";
import { cardAgainstGround } from "./rules/card-against-ground.ts";
import { crossesBoundary } from "./rules/crosses-boundary.ts";
import { deadLink } from "./rules/dead-link.ts";
import { draft } from "./rules/draft.ts";
import { farHazard } from "./rules/far-hazard.ts";
import { hazardUnmentioned } from "./rules/hazard-unmentioned.ts";
import { aimUnsaid } from "./rules/aim-unsaid.ts";
import { islandDrawnOver } from "./rules/island-drawn-over.ts";
import { impossibleOverlap } from "./rules/impossible-overlap.ts";
import { lineOfPlayEnds } from "./rules/line-of-play-ends.ts";
import { parAgainstLength } from "./rules/par-against-length.ts";
import { noticePast } from "./rules/notice-past.ts";
import { photoAlt } from "./rules/photo-alt.ts";
import { photoPlaceData, photoTurned, photoUnused } from "./rules/photo-file.ts";
import { photoLarge, photoSmall } from "./rules/photo-size.ts";
import { ratingPar } from "./rules/rating-par.ts";
import { ratingRange } from "./rules/rating-range.ts";
import { sourceLicence } from "./rules/source-licence.ts";
import { streamInPlay } from "./rules/stream-in-play.ts";
import { strokeIndexSpread } from "./rules/stroke-index-spread.ts";
import { surveyAge } from "./rules/survey-age.ts";
import { teeOrder } from "./rules/tee-order.ts";
import { tipAgainstGround } from "./rules/tip-against-ground.ts";
import { tipLanguage } from "./rules/tip-language.ts";
import { tipLength } from "./rules/tip-length.ts";
import { tipReading } from "./rules/tip-reading.ts";
import { translationFigures } from "./rules/translation-figures.ts";
import { walkToNextTee } from "./rules/walk-to-next-tee.ts";

export const RULES: readonly Rule[] = [
  cardAgainstGround,
  parAgainstLength,
  strokeIndexSpread,
  ratingRange,
  ratingPar,
  walkToNextTee,
  teeOrder,
  lineOfPlayEnds,
  farHazard,
  impossibleOverlap,
  islandDrawnOver,
  aimUnsaid,
  crossesBoundary,
  streamInPlay,
  surveyAge,
  draft,
  sourceLicence,
  tipLength,
  tipReading,
  tipLanguage,
  translationFigures,
  hazardUnmentioned,
  deadLink,
  photoSmall,
  photoLarge,
  photoTurned,
  photoPlaceData,
  photoUnused,
  photoAlt,
  noticePast,
  ...tipAgainstGround,
];
