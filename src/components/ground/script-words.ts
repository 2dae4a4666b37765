/** Words the wind's script fills in, with `{}` where the number goes. */
import type { Words } from "../../site/words.ts";

export interface LandingPatterns {
  readonly uphill: string;
  readonly downhill: string;
  readonly fallsLeft: string;
  readonly fallsRight: string;
  readonly level: string;
  readonly clear: string;
  readonly offFairway: string;
  readonly seen: string;
  readonly hidden: string;
  readonly seesGreen: string;
  readonly greenHidden: string;
}

export function landingPatterns({ ground: { landing } }: Words): LandingPatterns {
  const { uphill, downhill, fallsLeft, fallsRight, level, clear, offFairway, seen, hidden, seesGreen, greenHidden } = landing;
  return {
    uphill: uphill("{}"), downhill: downhill("{}"), fallsLeft: fallsLeft("{}"), fallsRight: fallsRight("{}"),
    level, clear, offFairway, seen, hidden, seesGreen, greenHidden,
  };
}
