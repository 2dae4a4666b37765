/** How figures in a tip explain themselves, by language. */
import type { FeatureKind } from "../course/types.ts";
import type { Side } from "../measure/types.ts";
import { ENGLISH_UNITS, type UnitWords } from "./format.ts";

export interface FigureWords {
  readonly units: UnitWords;
  /** What a feature without a name is called: English has its id made readable, since ids are written in it. */
  readonly unnamed: (id: string, kind: FeatureKind) => string;
  /** A rise as it stands in the tip: `up 12 ft`. */
  readonly up: (height: string) => string;
  readonly down: (height: string) => string;
  readonly level: string;
  /** `from the Sand tee`. */
  readonly fromTee: (tee: string) => string;
  /** Heading of the list of every tee's figure. */
  readonly byTee: string;
  /** Meanings: one sentence fragment each, without the tee and without the number. */
  readonly meaning: {
    readonly length: string;
    readonly reach: (feature: string, corridor: string) => string;
    readonly carry: (feature: string, corridor: string) => string;
    readonly carryOnLine: (feature: string) => string;
    readonly leaves: (feature: string) => string;
    readonly layup: (leave: string) => string;
    readonly layupAfter: (leave: string, drive: string) => string;
    readonly fairway: (drive: string) => string;
    readonly left: (drive: string) => string;
    readonly bend: (side: Side, angle: string) => string;
    readonly span: (from: string, to: string) => string;
    readonly front: string;
    readonly middle: string;
    readonly back: string;
    readonly depth: string;
    readonly width: string;
    readonly rise: string;
    readonly aimOnLine: (feature: string) => string;
    readonly aim: (feature: string, angle: string, side: Side) => string;
  };
}

export const ENGLISH_FIGURES: FigureWords = {
  units: ENGLISH_UNITS,
  unnamed: (id) => id.replaceAll("-", " "),
  up: (height) => `${height} up`,
  down: (height) => `${height} down`,
  level: "level",
  fromTee: (tee) => `from the ${tee} tee`,
  byTee: "From each tee",
  meaning: {
    length: "Length: tee to the middle of the green along the line of play",
    reach: (feature, corridor) => `Reach: to the nearest edge of ${feature} within ${corridor} of the line of play`,
    carry: (feature, corridor) => `Carry: to be safely past ${feature}, anywhere within ${corridor} of the line of play`,
    carryOnLine: (feature) => `Carry on the line of play: to be past ${feature}`,
    leaves: (feature) => `What is left from the far side of ${feature} to the middle of the green`,
    layup: (leave) => `Lay-up: the stroke that leaves ${leave} to the middle of the green`,
    layupAfter: (leave, drive) => `Lay-up: the stroke after a drive of ${drive} that leaves ${leave} to the middle of the green`,
    fairway: (drive) => `Width of the fairway where a drive of ${drive} comes down`,
    left: (drive) => `What is left to the middle of the green along the line of play after a drive of ${drive}`,
    bend: (side, angle) => `To the turning point, where the hole bends ${angle} ${side}`,
    span: (from, to) => `Gap between ${from} and ${to}, edge to edge`,
    front: "To the front edge of the green along the line of play",
    middle: "To the middle of the green along the line of play",
    back: "To the back edge of the green along the line of play",
    depth: "Depth of the green, front to back on the line of approach",
    width: "Width of the green, square to the line of approach",
    rise: "The middle of the green against the tee",
    aimOnLine: (feature) => `${feature} stands on the line of play`,
    aim: (feature, angle, side) => `${feature} stands ${angle} ${side} of the line of play`,
  },
};
