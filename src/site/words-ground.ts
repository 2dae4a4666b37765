/** What a hole page says of the ground, the wind and plain figures. Lengths and heights come in ready for reading. */
import type { ConditionWords } from "../islands/conditions-words.ts";
import type { LengthsWords } from "../islands/lengths-words.ts";
import type { PlayerId } from "../measure/players.ts";
import type { Side } from "../measure/types.ts";
import type { GreenSide } from "../terrain/green-ground.ts";

export interface GroundWords {
  readonly section: {
    readonly title: string;
    readonly exaggeration: (times: string) => string;
    readonly unseenKey: string;
    readonly inWords: string;
    /** `at 150 yd 3 ft down`; the height against the tee. */
    readonly at: (distance: string, height: string) => string;
    readonly up: (height: string) => string;
    readonly down: (height: string) => string;
    readonly level: string;
  };

  readonly rise: {
    /** Whole sentences, without the full stop. */
    readonly up: (height: string) => string;
    readonly down: (height: string) => string;
    readonly level: string;
    readonly evenly: string;
    readonly mostFirst: (length: string) => string;
    readonly mostLast: (length: string) => string;
    readonly mostBetween: (from: string, to: string) => string;
    readonly onTheWay: (up: string, down: string) => string;
  };

  readonly sight: {
    readonly greenHidden: string;
    readonly flagOnly: string;
    readonly greenPart: string;
    readonly landingHidden: (drive: string) => string;
    readonly greenHiddenAfter: (drive: string) => string;
  };

  readonly plays: {
    readonly title: string;
    readonly caption: (tee: string) => string;
    /** The same with the unit, which follows "in". */
    readonly captionIn: (tee: string, unit: string) => string;
    /** What the green's rows are played from, after a drive or from the tee. */
    readonly afterDrive: (drive: string, player: string) => string;
    readonly fromTee: string;
    readonly what: string;
    readonly distance: string;
    readonly plays: string;
    readonly run: string;
    readonly today: string;
    readonly front: string;
    readonly middle: string;
    readonly back: string;
    readonly carry: (name: string) => string;
    readonly overCorner: string;
    readonly moreThanOne: string;
    /** Under the table. */
    readonly note: (temperature: string) => string;
    readonly runNote: string;
  };

  readonly green: {
    readonly tilt: string;
    /** The percent with one decimal, written as the language has it. */
    readonly tiltIs: (percent: string) => string;
    readonly risesBack: string;
    readonly fallsBack: string;
    readonly highLeft: string;
    readonly highRight: string;
    /** How the green lies as a whole, a sentence from none, one or two of the four above. */
    readonly lies: (ways: readonly string[]) => string;
    readonly below: Readonly<Record<GreenSide, string>>;
    readonly tiers: (step: string, upper: string) => string;
    /** Where the upper tier lies, as the player coming in sees it. */
    readonly tierSides: Readonly<Record<GreenSide, string>>;
    readonly falseFront: (depth: string, percent: string) => string;
    readonly key: (interval: string) => string;
    readonly scale: string;
    readonly asMet: (tee: string) => string;
  };

  readonly landing: {
    readonly title: string;
    readonly intro: string;
    readonly list: string;
    readonly from: (tee: string, drive: string) => string;
    readonly fairway: string;
    readonly offFairway: string;
    readonly leaves: string;
    readonly sides: Readonly<Record<Side, string>>;
    readonly clear: string;
    readonly lie: string;
    readonly uphill: (percent: string) => string;
    readonly downhill: (percent: string) => string;
    readonly fallsLeft: (percent: string) => string;
    readonly fallsRight: (percent: string) => string;
    readonly level: string;
    readonly view: string;
    readonly seen: string;
    readonly hidden: string;
    readonly seesGreen: string;
    readonly greenHidden: string;
    /** Hazards met after the drive; what is left past one. */
    readonly next: string;
    readonly nextLeaves: (length: string) => string;
    readonly yours: string;
    readonly yoursNote: string;
    readonly drawingNote: string;
  };

  readonly corner: {
    readonly title: string;
    /** Of a tee set without a corner on a hole where others have one. */
    readonly none: string;
    readonly straight: (carry: string, what: string, side: Side) => string;
    readonly nothing: (side: Side, length: string) => string;
    readonly topLevel: (what: string) => string;
    readonly top: (what: string, height: string, above: boolean) => string;
    readonly plays: (length: string) => string;
    readonly saves: (length: string) => string;
    readonly reachable: (players: string) => string;
    readonly reachableNone: string;
    readonly caution: string;
  };

  readonly players: Readonly<Record<PlayerId, string>>;

  readonly conditions: {
    readonly open: string;
    readonly compass: string;
    readonly compassHint: string;
    readonly from: string;
    readonly speed: string;
    readonly temperature: string;
    readonly carry: string;
    readonly carryHint: string;
    readonly lengths: LengthsWords;
    /** Opens the ladder of full shots. */
    readonly openLengths: string;
    /** Title of the golfer's lengths where the guide has no heights. */
    readonly titleLevel: string;
    readonly holeUp: string;
    readonly clear: string;
    /** What stands in the day's column. */
    readonly todayNote: string;
    readonly kept: string;
    readonly units: { readonly yards: string; readonly metres: string; readonly degrees: string; readonly celsius: string };
    readonly script: ConditionWords;
  };

  /** On the page about the figures: the step of the height model. */
  readonly heightModel: (step: string) => string;

  readonly plain: {
    readonly on: string;
    readonly off: string;
    readonly state: string;
    readonly meaning: string;
    /** Beside a tip, and beside captions made from it: why its figures stay. */
    readonly tipNote: string;
    readonly captionsNote: string;
  };
}
