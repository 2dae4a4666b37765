/** Words the wind's script fills in, with `{}` where the number goes. */
import type { LandingPatterns } from "../../islands/conditions-words.ts";
import type { Words } from "../../site/words.ts";

export function landingPatterns({ ground: { landing } }: Words): LandingPatterns {
  const { uphill, downhill, fallsLeft, fallsRight, level, clear, offFairway, seen, hidden, seesGreen, greenHidden } = landing;
  return {
    uphill: uphill("{}"), downhill: downhill("{}"), fallsLeft: fallsLeft("{}"), fallsRight: fallsRight("{}"),
    level, clear, offFairway, seen, hidden, seesGreen, greenHidden,
  };
}
