import type { Candidate } from "./normalise/candidate.ts";

/** What could not go to a page, and why. */
export interface LeftOver {
  /** The feature as messages name it: `survey.geojson, feature 3`. */
  readonly from: string;
  readonly reason: string;
  /** What it is, where that is known. */
  readonly candidate?: Candidate;
}
