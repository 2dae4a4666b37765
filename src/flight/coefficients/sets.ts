import { BEARMAN_HARVEY_1976 } from "./bearmanHarvey.ts";
import { SMITS_SMITH_1994 } from "./smitsSmith.ts";
import type { CoefficientSet, CoefficientSetId } from "./types.ts";

/** The two published sets every figure is worked out with; the spread between them is its uncertainty. */
export const COEFFICIENT_SETS: { readonly [Id in CoefficientSetId]: CoefficientSet<Id> } = {
  smitsSmith1994: SMITS_SMITH_1994,
  bearmanHarvey1976: BEARMAN_HARVEY_1976,
};
