/** What is said of the golfer's own lengths: plain data, with `{name}` where something is filled in. */
import type { RungId } from "../measure/ladder.ts";
import type { Third } from "../measure/third.ts";

export interface LengthsWords {
  /** As it stands in a table; also within a sentence. */
  readonly shots: Readonly<Record<RungId, string>>;

  /** The ladder. */
  readonly caption: string;
  readonly shot: string;
  /** The column of lengths, `{unit}`. */
  readonly carry: string;
  /** The column of the day's lengths down the hole. */
  readonly today: string;
  /** A field's name: `{shot}`, `{unit}`. */
  readonly field: string;
  /** Beside a length given by hand. */
  readonly own: string;
  /** `{length}`: what stands again when it is taken back; with no driver given, the plain one. */
  readonly takeBack: string;
  readonly takeBackPlain: string;
  readonly takeBackAll: string;
  /** Said when lengths are taken back: `{shot}`. */
  readonly takenBack: string;
  readonly allTakenBack: string;
  readonly needsDriver: string;
  readonly rule: string;
  readonly kept: string;
  /** `{longer}`, `{shorter}`. */
  readonly outOfOrder: string;

  /** What the lengths do on a hole. */
  readonly title: string;
  /** `{tee}` */
  readonly from: string;
  /** `{name}` a hazard, `{length}` how far. */
  readonly toCarry: string;
  readonly toStayShort: string;
  /** `{shot}` from the tee, and that it ends in no trouble. */
  readonly longest: string;
  readonly endsClear: string;
  /** By the third of the green the hole is cut in: `{length}`. */
  readonly toGreen: Readonly<Record<Third, string>>;
  /** `{drive}`, `{length}`. */
  readonly afterDrive: Readonly<Record<Third, string>>;
  /** `{shot}` */
  readonly orLonger: string;
  readonly noneCarries: string;
  /** `{length}` */
  readonly spare: string;
  readonly short: string;
  readonly past: string;
  /** Nearer than the shortest full shot: `{shot}`. */
  readonly lessThan: string;
  /** Out of reach: what a full shot leaves. */
  readonly leaves: string;
  /** Short of a hazard. */
  readonly lands: string;
  readonly note: string;
  /** The same where the guide has no heights. */
  readonly noteLevel: string;
  /** Over its length, beside the drive's arc on a plate: two short words. */
  readonly arc: string;
}
