/** Words the wind's script fills in: part of what islands fetch, in the page's language. */

/** Words a browser fills in; `{}` marks where. */
export interface ConditionWords {
  readonly still: string;
  /** `{wind}` a wind in words, `{temperature}`. */
  readonly now: string;
  /** `{speed}`, `{unit}`, `{from}`: a compass point. */
  readonly windNow: string;
  /** The one figure asked for most: `{distance}` and `{length}`. */
  readonly middleNow: string;
  /** The same for a `{third}` of the green. */
  readonly thirdNow: string;
  readonly compassPoints: readonly string[];
  /** `{name}`, `{least}`, `{most}`, `{unit}`: a number outside what is answered for. */
  readonly outside: string;
  /** A field that holds no number: `{name}`, `{least}`, `{most}`, `{unit}`. */
  readonly notANumber: string;
  readonly windSpeed: string;
  readonly windFrom: string;
  readonly temperature: string;
  readonly carry: string;
  readonly degreesUnit: string;
  /** What the figure cannot be: further than the model's longest stroke, nearer than its shortest. */
  readonly tooLong: string;
  readonly tooShort: string;
  /** Against this wind no stroke comes down there. */
  readonly unreachable: string;
  /** `{}` a length: the wind moves the ball so far. */
  readonly driftLeft: string;
  readonly driftRight: string;
  /** Beside a figure in more wind, or up or down more steeply, than the flight model is to be trusted with. */
  readonly indication: string;
  /** A sentence for wind beyond that. */
  readonly strongWind: string;
  /** A driver shorter or longer than those measured. */
  readonly unmeasuredDriver: string;
  /** After a drive of the golfer's own. `{drive}`. */
  readonly afterYours: string;
  /** What that drive carries on the level, where it comes down elsewhere today. `{level}`. */
  readonly onTheLevel: string;
  /** Whether it clears a carry, in words beside the figure. */
  readonly withinYours: string;
  readonly beyondYours: string;
  readonly failed: string;
}

/** How landing ground is told, with `{}` for the percent. */
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
  /** `leaves {}`, past a hazard met after the drive. */
  readonly nextLeaves: string;
}

/** What the script is handed. */
export type PanelWords = ConditionWords & { readonly landing: LandingPatterns };
