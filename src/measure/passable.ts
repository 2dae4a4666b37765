/** Whether a hazard has a far side worth a figure. */
import { isBoundary, type FeatureKind } from "../course/kinds.ts";
import type { HazardFigures, TeeFigures } from "./types.ts";

/** What ends further beyond the back of the green than this (about 25 yards; common practice, no source) is never played past. */
const BEYOND_GREEN_METRES = 22.5;

/** A boundary cannot be played past, nor can what runs on beyond the green; what lies across can be carried. */
export const canBePassed = (hazard: HazardFigures, tee: Pick<TeeFigures, "green">, kind: FeatureKind | undefined): boolean =>
  hazard.position === "across" ||
  (!(kind !== undefined && isBoundary(kind)) && hazard.stationMetres[1] < tee.green.backMetres + BEYOND_GREEN_METRES);
