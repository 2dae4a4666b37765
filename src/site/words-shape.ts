/**
 * Every word the guide's own pages say, by language. What a club writes is in its content;
 * this is the rest. English is complete and sets the shape: another language is a value of
 * {@link Words} and so cannot leave anything out.
 */
import type { CautionKind, FeatureKind } from "../course/kinds.ts";
import type { Gender } from "../course/types.ts";
import type { LengthUnit } from "../geo/units.ts";
import type { HazardFigures, Side } from "../measure/types.ts";
import type { PlateWords } from "../draw/words.ts";
import type { GroundDrawingWords } from "../draw/profile-words.ts";
import type { FigureWords } from "../tell/figure-words.ts";
import type { GroundWords } from "./words-ground.ts";
import type { KeepWords } from "../islands/keep/words.ts";
import type { MapWords } from "../islands/map/words.ts";
import type { FilmWords } from "./words-film.ts";
import type { PaperWords } from "./words-paper.ts";

/** How a figure is defined, for the page about the figures. */
export interface FigureDefinition {
  /** Also the address of the definition on that page. */
  readonly id: string;
  readonly term: string;
  readonly meaning: string;
  /** Plain-text formula, where one says it shorter. */
  readonly formula: string | undefined;
}

export interface Words {
  /** Language tag of this dictionary. */
  readonly language: string;
  /** Locale for dates and numbers. */
  readonly locale: string;
  /** A heading or a kind of this dictionary as it stands within a sentence: English has it in lower case. */
  readonly inSentence: (word: string) => string;
  /** Several things in a sentence: `a, b and c`. */
  readonly list: (items: readonly string[]) => string;

  /** Units, and how a figure in a tip explains itself. */
  readonly tell: FigureWords;
  /** What stands on a drawing. */
  readonly draw: PlateWords;
  /** What is said of the ground, the wind and plain figures. */
  readonly ground: GroundWords;
  readonly drawGround: GroundDrawingWords;
  /** What stands on paper. */
  readonly paper: PaperWords;
  /** What is said about flyovers. */
  readonly film: FilmWords;
  /** The control that keeps the guide on a device. */
  readonly keep: KeepWords;
  /** What the live map says. */
  readonly liveMap: MapWords;

  readonly skip: string;
  readonly guide: string;
  readonly guideTo: (course: string) => string;
  readonly hole: string;
  readonly holeNumber: (hole: number) => string;
  readonly holeTitle: (hole: number, name: string) => string;
  readonly par: string;
  readonly parIs: (par: string) => string;
  readonly strokeIndex: string;
  readonly strokeIndexShort: string;
  readonly genders: Readonly<Record<Gender, string>>;
  readonly sides: Readonly<Record<HazardFigures["position"], string>>;
  readonly kinds: Readonly<Partial<Record<FeatureKind, string>>>;
  /** For a hazard whose feature has no name and whose kind has no word. */
  readonly unnamedHazard: string;
  /** Things to aim at that have no name, by their `man_made` tag. */
  readonly landmarks: Readonly<Record<string, string>>;
  /** A hazard that comes into play more than once: its name and which time. */
  readonly stretch: (name: string, number: number) => string;

  readonly nav: {
    readonly main: string;
    readonly languages: string;
    readonly holes: string;
    readonly previousHole: string;
    readonly nextHole: string;
    readonly chooseHole: string;
    readonly close: string;
    readonly cover: string;
    readonly card: string;
    readonly map: string;
    readonly figures: string;
    readonly courses: string;
    readonly frontNine: string;
    readonly backNine: string;
  };

  readonly settings: {
    readonly title: string;
    readonly open: (tee: string, unit: string) => string;
    readonly tee: string;
    readonly units: string;
    readonly yards: string;
    readonly metres: string;
    /** A unit as it follows "in": `Lengths in yards`. Sentences that are handed a unit take it so. */
    readonly inUnit: Readonly<Record<LengthUnit, string>>;
    readonly third: string;
    readonly thirds: Readonly<Record<"front" | "middle" | "back", string>>;
    readonly kept: string;
    /** With {tee} and {units} left for the browser to fill in; on pages with a green, {third} too. */
    readonly changed: string;
    readonly changedThird: string;
  };

  readonly holePage: {
    readonly plate: string;
    readonly plateCaption: string;
    readonly atAGlance: string;
    readonly fromTee: (tee: string) => string;
    readonly length: string;
    readonly card: string;
    readonly carry: string;
    readonly carryOver: (name: string) => string;
    readonly reach: string;
    readonly leaves: string;
    readonly inPlay: string;
    /** Beside a carry that goes to the dry land the green lies on. */
    readonly toDryLand: string;
    /** Heading of the hazards met after the tee shot, what stands there, and the words before its figures. */
    readonly laterHazards: string;
    readonly laterNote: string;
    readonly laterAfter: string;
    /** Nothing lies across in front of the green at all. */
    readonly noCarry: string;
    /** Nothing lies across the tee shot, but something does further on. */
    readonly noCarryOffTee: string;
    /** Before the name of what lies across beyond any tee shot, with its reach. */
    readonly laterAcross: string;
    /** Before the name of what cannot be carried, with its reach. */
    readonly layUpShort: string;
    /** A carry to the dry land the green lies on. */
    readonly carryToGreen: string;
    readonly aim: string;
    readonly aimOnLine: string;
    readonly aimLeft: string;
    readonly aimRight: string;
    /** The line of play's first turning point. */
    readonly green: string;
    readonly front: string;
    readonly middle: string;
    readonly back: string;
    readonly depth: string;
    readonly width: string;
    readonly rise: string;
    readonly up: (height: string) => string;
    readonly down: (height: string) => string;
    readonly level: string;
    readonly howFar: string;
    readonly hazards: string;
    readonly hazard: string;
    readonly hazardsAllTees: string;
    readonly hazardsNote: string;
    readonly reachToCarry: string;
    /** A hazard outside the shot corridor. */
    readonly wide: string;
    readonly allTees: string;
    readonly tee: string;
    readonly howToPlay: string;
    readonly notTranslated: string;
    readonly pictures: string;
    readonly photoCredit: (credit: string) => string;
    readonly openMap: string;
    readonly bend: (side: Side, angleDegrees: number) => string;
    readonly cautionLine: string;
    readonly cautionLink: string;
    readonly turnLeft: string;
    readonly definitions: string;
  };

  readonly notices: {
    readonly title: string;
    readonly until: (date: string) => string;
    readonly between: (from: string, until: string) => string;
    /** For one day. */
    readonly on: (date: string) => string;
  };

  readonly photos: {
    /** Leads from a photo's caption to the eye on the plate. */
    readonly marked: (letter: string) => string;
  };

  readonly cover: {
    readonly holes: string;
    readonly theMap: string;
    readonly about: string;
    readonly totals: string;
    readonly localRules: string;
    readonly contact: string;
    readonly email: string;
    readonly telephone: string;
    readonly website: string;
    readonly address: string;
    readonly start: string;
    readonly continueAt: (hole: number) => string;
    readonly holesCount: (count: number) => string;
    readonly lengths: string;
    readonly out: string;
    readonly in: string;
    readonly total: string;
  };

  readonly card: {
    readonly title: string;
    readonly intro: (unit: string) => string;
    readonly hole: string;
    readonly name: string;
    readonly par: string;
    readonly strokeIndex: string;
    readonly out: string;
    readonly in: string;
    readonly total: string;
    readonly ratings: string;
    readonly ratingsNote: string;
    readonly courseRating: string;
    readonly bogeyRating: string;
    readonly slopeRating: string;
    readonly notOnCard: string;
    readonly measuredNote: string;
    readonly score: string;
  };

  readonly map: {
    readonly title: string;
    readonly intro: string;
    readonly holes: string;
    readonly alternative: (course: string, holes: number) => string;
  };

  readonly figures: {
    readonly title: string;
    readonly intro: string;
    readonly definitions: string;
    readonly uncertainty: string;
    readonly uncertaintyText: readonly string[];
    readonly survey: string;
    readonly surveyed: (date: string) => string;
    readonly notSurveyed: string;
    readonly corridor: (width: string) => string;
    readonly sources: string;
    readonly noSources: string;
    readonly list: readonly FigureDefinition[];
    readonly formula: string;
    readonly privacy: string;
    readonly privacyText: string;
    readonly rules: string;
    readonly rulesText: string;
  };

  readonly cautions: {
    readonly title: string;
    readonly lead: string;
    /** The usual ones, on every guide. */
    readonly general: readonly { readonly title: string; readonly text: string }[];
    readonly club: string;
    /** For holes that hold such ground. */
    readonly nearby: Readonly<Record<CautionKind, string>>;
  };

  readonly club: {
    readonly courses: string;
    readonly openGuide: string;
  };

  readonly notFound: {
    readonly title: string;
    readonly text: string;
    readonly back: string;
  };

  readonly footer: {
    readonly surveyed: (date: string) => string;
    readonly cautions: string;
    readonly figures: string;
    readonly measured: string;
  };

  readonly sheet: {
    readonly north: string;
    readonly surveyOf: string;
  };
}
