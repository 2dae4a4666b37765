/**
 * What the live map says, as plain data: it comes in the JSON of the page's language.
 * Patterns have {names} for what is filled in. A pattern is a whole sentence, or a part that
 * stands in one place of one sentence only, so that a language may turn it as it needs.
 */
import type { FeatureKind } from "../../course/types.ts";
import type { UnitWords } from "../../tell/format.ts";
import type { Third } from "../../measure/third.ts";
import type { Failure } from "./failure.ts";
import type { LocateFault } from "./locate.ts";

/** What a map can do besides being moved: buttons that stay pressed. */
export type Tool = "relief" | "photo" | "shots" | "whereAmI" | "plain";

/** Kinds that are said; of others only their names. */
export type SaidKind = Extract<FeatureKind, "bunker" | "penalty-area-yellow" | "penalty-area-red" | "water" | "out-of-bounds" | "green" | "fairway">;

/** One kind of feature, in each place where it is said. */
export interface KindWords {
  /** Begins a line: what one stands on. */
  readonly alone: string;
  /** In brackets after a name. */
  readonly bracketed: string;
  /** For a feature without a name, in a list of what lies ahead. */
  readonly left: string;
  readonly right: string;
  readonly across: string;
}

export interface MapWords {
  /** This and `failed.data` also stand on the map's slot, for the time before these words are there. */
  readonly loading: string;
  readonly failed: Readonly<Record<Failure, string>>;
  readonly close: string;
  readonly zoomIn: string;
  readonly zoomOut: string;
  /** The whole hole, the whole course: buttons. */
  readonly reset: string;
  readonly resetCourse: string;
  readonly controls: string;
  /** {hole} its number, {name}. */
  readonly holeMap: string;
  /** {course} */
  readonly courseMap: string;
  readonly holeKeys: string;
  readonly courseKeys: string;
  readonly holeHint: string;
  readonly courseHint: string;
  readonly noHole: string;
  /** Name of the group of tools, and each one's button. */
  readonly whatItDoes: string;
  readonly tools: Readonly<Record<Tool, string>>;
  /** {times} */
  readonly reliefNote: string;
  readonly reliefOn: string;
  readonly reliefOff: string;
  readonly photoOn: string;
  readonly photoOff: string;
  /** Name of the region the figures stand in. */
  readonly reading: string;
  readonly clearTap: string;
  /** How the wheel zooms, with the key a keyboard has for it. */
  readonly wheelControl: string;
  readonly wheelCommand: string;
  readonly touch: string;
  readonly read: {
    /** Labels of figures. {tee} a tee set's name. */
    readonly tee: string;
    readonly fromMe: string;
    readonly front: string;
    readonly middle: string;
    readonly back: string;
    /** {tee}, {length} */
    readonly fromTeeSaid: string;
    readonly fromMeSaid: string;
    /** {front}, {hole}, {back}: lengths; {hole} to the golfer's third of the green. */
    readonly greenSaid: Readonly<Record<Third, string>>;
    /** {length} */
    readonly onGreenSaid: Readonly<Record<Third, string>>;
    /** {what} under the point: {@link KindWords.alone}, or a name. */
    readonly under: string;
    /** With {figures}: one or several of `reach` and `reachCarry`, chained by `then`. */
    readonly underHazard: string;
    /** {list} so far, {next}. */
    readonly then: string;
    /** {reach}, {carry} */
    readonly reach: string;
    readonly reachCarry: string;
    /** {name}, {kind} */
    readonly named: string;
    /** {hazards}: one or several of `hazardAhead`, chained by `and`. */
    readonly ahead: string;
    readonly aheadFromTee: string;
    /** {hazard} its name or kind, {figures}. */
    readonly hazardAhead: string;
    /** {list} so far, {next}. */
    readonly and: string;
    readonly kinds: Readonly<Record<SaidKind, KindWords>>;
    /** A hazard of another kind. */
    readonly hazard: KindWords;
  };
  readonly plays: {
    /** Under a figure, short. {length}, {spread} */
    readonly figure: string;
    /** One leg: {rise}, {length}, {spread}, and {drift} by the wind. */
    readonly leg: string;
    readonly legDriftLeft: string;
    readonly legDriftRight: string;
    /** {height} */
    readonly up: string;
    readonly down: string;
    readonly level: string;
    /** After legs in more wind, or up or down more steeply, than the flight model is to be trusted with. */
    readonly indication: string;
    /** {leg} */
    readonly there: string;
    readonly on: Readonly<Record<Third, string>>;
    /** {degrees} */
    readonly still: string;
    readonly wind: string;
  };
  readonly own: {
    /** On the map: {drive}, {width} without their unit. */
    readonly label: string;
    readonly labelOff: string;
    /** {drive}, {width}, {left} */
    readonly said: Readonly<Record<Third, string>>;
    readonly saidOff: Readonly<Record<Third, string>>;
    /** The golfer's longest stroke after the drive: the same. */
    readonly nextSaid: Readonly<Record<Third, string>>;
    readonly nextSaidOff: Readonly<Record<Third, string>>;
  };
  readonly chain: {
    /** {tee} */
    readonly hint: string;
    /** Labels of figures. {number} */
    readonly shot: string;
    readonly left: string;
    /** {number}, {length} */
    readonly shotSaid: string;
    /** {length} */
    readonly leftSaid: Readonly<Record<Third, string>>;
    readonly onGreenSaid: string;
    readonly most: string;
    readonly undo: string;
    readonly clear: string;
    readonly cleared: string;
  };
  readonly me: {
    readonly explain: string;
    readonly agree: string;
    readonly refuse: string;
    readonly asking: string;
    /** {length} */
    readonly accuracy: string;
    readonly coarse: string;
    /** {length}, {accuracy} */
    readonly outside: string;
    readonly faults: Readonly<Record<LocateFault, string>>;
    readonly plain: string;
    readonly allFigures: string;
    /** {number}: always more than one. */
    readonly kilometres: string;
    readonly miles: string;
  };
}

/** All that a map is worded with. */
export interface Speech {
  readonly say: MapWords;
  readonly units: UnitWords;
  /** Thirds of a green, as the page's settings and its glance name them. */
  readonly thirds: Readonly<Record<Third, string>>;
  /** Language tag for writing numbers. */
  readonly locale: string;
}

/** A pattern with its {names} filled in. */
export const fill = (pattern: string, values: Readonly<Record<string, string | number>>): string =>
  pattern.replace(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));

/**
 * Things told one after another: "a; b; c". At least one.
 *
 * @param pattern with {list} for what is told so far and {next}
 */
export const chained = (pattern: string, things: readonly string[]): string =>
  things.reduce((list, next) => fill(pattern, { list, next }));
