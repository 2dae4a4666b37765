/**
 * The figures a tip can ask for: what each needs, and how it is found for a tee set.
 * A figure is never typed: everything here is read off the measured hole.
 */
import { fromUnit, inUnit, type LengthUnit, type Rounding } from "../geo/units.ts";
import { offLine } from "../measure/aim.ts";
import { fairwayAt } from "../measure/fairway.ts";
import { stationLeaving } from "../measure/line-of-play.ts";
import { areasOfKind } from "../measure/place.ts";
import { spanMetres } from "../measure/span.ts";
import type { HazardFigures, MeasuredHole, PlacedFeature, TeeFigures } from "../measure/types.ts";
import { hazardFigures } from "../measure/hazards.ts";
import { locate, pointAt } from "../geo/line.ts";
import { distanceMetres } from "../geo/vector.ts";
import type { FigureWords } from "../words/words.ts";
import { formatLength } from "./format.ts";

/** One use of a figure in a tip, as written. */
export interface FigureCall {
  readonly name: string;
  readonly target: string | undefined;
  readonly options: Readonly<Record<string, string>>;
}

/** What a figure measures, in a language's words: one sentence fragment. */
export type Meaning = (words: FigureWords) => string;

/** A figure for one tee set, or why there is none, told to who writes the tip. */
export type FigureValue =
  | { readonly type: "length"; readonly metres: number; readonly meaning: Meaning; readonly rounding: Rounding }
  | { readonly type: "rise"; readonly metres: number; readonly meaning: Meaning }
  | { readonly type: "name"; readonly text: string; readonly meaning: Meaning }
  | { readonly type: "none"; readonly why: string };

/** What a figure is asked with, its target found and its options read. */
export interface FigureQuestion {
  readonly hole: MeasuredHole;
  readonly units: LengthUnit;
  readonly target: PlacedFeature | undefined;
  readonly other: PlacedFeature | undefined;
  readonly options: Readonly<Record<string, string>>;
}

export interface FigureDefinition {
  readonly target: "feature" | "none";
  /** Options beside `tee`: a number is in the club's units. */
  readonly options: Readonly<Record<string, "length" | "count" | "feature" | readonly string[]>>;
  /** Options without which the figure has no meaning. */
  readonly required: readonly string[];
  readonly from: (tee: TeeFigures, question: FigureQuestion) => FigureValue;
}

const none = (why: string): FigureValue => ({ type: "none", why });
const length = (metres: number, meaning: Meaning, rounding: Rounding = "nearest"): FigureValue => ({
  type: "length",
  metres,
  meaning,
  rounding,
});

/** An id as it is read. */
const readable = (id: string): string => id.replaceAll("-", " ");

/** A feature's name, or what one without is called. */
const featureName = ({ feature }: PlacedFeature, words: FigureWords): string =>
  feature.name ?? words.unnamed({ kind: feature.kind.replaceAll("-", "_"), id: readable(feature.id) });

/** A length in a meaning. */
const told = ({ units }: FigureQuestion, metres: number, words: FigureWords): string =>
  formatLength(metres, units, words.units).text;

/** A length and a feature in what is said to who writes the tip. */
const say = ({ units }: FigureQuestion, metres: number): string =>
  `${Math.round(inUnit(metres, units))}\u00a0${units === "yards" ? "yd" : "m"}`;
const nameOf = ({ feature }: PlacedFeature): string => feature.name ?? readable(feature.id);

/** An option that is a length; the reader of options has made sure it is a number. */
function metresOf({ options, units }: FigureQuestion, name: string): number | undefined {
  const written = options[name];
  return written === undefined ? undefined : fromUnit(Number(written), units);
}

const nth = ({ options }: FigureQuestion): number => Number(options["n"] ?? "1");

/** The hazard figures of the target: from the hole's list, or worked out for any other feature with an outline. */
function hazardOf(tee: TeeFigures, question: FigureQuestion): HazardFigures | FigureValue {
  const target = question.target!;
  const listed = tee.hazards.filter(({ id }) => id === target.feature.id);
  const all = listed.length > 0 ? listed : hazardFigures(target, tee, question.hole.corridorMetres);
  if (all.length === 0)
    return none(`${nameOf(target)} has no outline to reach or carry; use :aim or :leaves for a point`);
  const wanted = nth(question);
  return (
    all.find(({ stretch }) => stretch === wanted) ??
    none(
      `${nameOf(target)} meets the shot corridor ${["", "once", "twice"][all.length] ?? `${all.length} times`}, so there is no n=${wanted}`,
    )
  );
}

const isNone = (value: HazardFigures | FigureValue): value is FigureValue => "type" in value;

const corridor = (question: FigureQuestion, words: FigureWords): string =>
  told(question, question.hole.corridorMetres, words);

/** The figure as it must be written to ask for another of the same stretch. */
const written = (name: string, { target, options }: FigureQuestion, more = ""): string => {
  const inside = [options["n"] === undefined ? "" : `n=${options["n"]}`, more].filter((part) => part !== "").join(" ");
  return `:${name}[${target!.feature.id}]${inside === "" ? "" : `{${inside}}`}`;
};

/** Why nothing is carried here, and what can be written instead. */
function noCarry(hazard: HazardFigures, tee: TeeFigures, name: string, question: FigureQuestion): string {
  const reach = `${written("reach", question)} tells how far it is to its edge`;
  switch (hazard.noCarry) {
    case "boundary":
      return `${name} is out of bounds, and nobody plays from beyond it, so there is no carry; ${reach}`;
    case "around-green":
      return (
        `${name} lies in front of the green and goes on beside or behind it, so no carry is past all of it; ` +
        `${written("carry", question, "on=line")} tells the carry to dry land on the line of play, ${reach}`
      );
    default: {
      const short = `lay up short of it: ${reach}`;
      const onLine =
        hazard.carryOnLineMetres === undefined
          ? ""
          : `; ${written("carry", question, "on=line")} tells the carry on the line of play`;
      return `${name} runs on past the green from the ${tee.tee.name} tee, so it has no far side to carry to; ${short}${onLine}`;
    }
  }
}

function noCarryOnLine(hazard: HazardFigures, name: string, question: FigureQuestion): string {
  if (hazard.position !== "across") return `the line of play does not cross ${name}; leave out on=line`;
  return (
    `the line of play does not come out of ${name} again, so there is nothing to carry to; ` +
    `${written("reach", question)} tells how far it is to its edge`
  );
}

/** What is left along the line of play; nothing is left beyond the middle of the green. */
const leaves = (metres: number, meaning: Meaning, question: FigureQuestion): FigureValue =>
  metres > 0
    ? length(metres, meaning)
    : none(
        `${nameOf(question.target!)} ends past the middle of the green, so it leaves nothing; use :reach or :carry`,
      );

const greenLength = (
  key: "frontMetres" | "middleMetres" | "backMetres" | "depthMetres" | "widthMetres",
  word: "front" | "middle" | "back" | "depth" | "width",
): FigureDefinition => ({
  target: "none",
  options: {},
  required: [],
  from: (tee) => length(tee.green[key], (words) => words.meaning[word]),
});

/** Every figure by its name in a tip. */
export const FIGURES: Readonly<Record<string, FigureDefinition>> = {
  length: {
    target: "none",
    options: {},
    required: [],
    from: (tee) => length(tee.lengthMetres, (words) => words.meaning.length),
  },
  reach: {
    target: "feature",
    options: { n: "count" },
    required: [],
    from: (tee, question) => {
      const hazard = hazardOf(tee, question);
      if (isNone(hazard)) return hazard;
      return length(
        hazard.reachMetres,
        (words) =>
          words.meaning.reach({ feature: featureName(question.target!, words), corridor: corridor(question, words) }),
        "down",
      );
    },
  },
  carry: {
    target: "feature",
    options: { n: "count", on: ["line"] },
    required: [],
    from: (tee, question) => {
      const hazard = hazardOf(tee, question);
      if (isNone(hazard)) return hazard;
      const target = question.target!;
      if (question.options["on"] !== undefined) {
        return hazard.carryOnLineMetres === undefined
          ? none(noCarryOnLine(hazard, nameOf(target), question))
          : length(
              hazard.carryOnLineMetres,
              (words) => words.meaning.carryOnLine({ feature: featureName(target, words) }),
              "up",
            );
      }
      const meaning: Meaning = (words) =>
        words.meaning.carry({ feature: featureName(target, words), corridor: corridor(question, words) });
      return hazard.carryMetres === undefined
        ? none(noCarry(hazard, tee, nameOf(target), question))
        : length(hazard.carryMetres, meaning, "up");
    },
  },
  leaves: {
    target: "feature",
    options: { n: "count" },
    required: [],
    from: (tee, question) => {
      const target = question.target!;
      const meaning: Meaning = (words) => words.meaning.leaves({ feature: featureName(target, words) });
      if (target.shape.type === "points")
        return leaves(tee.lengthMetres - locate(tee.line, target.shape.points[0]!).station, meaning, question);
      const hazard = hazardOf(tee, question);
      return isNone(hazard) ? hazard : leaves(hazard.leavesMetres, meaning, question);
    },
  },
  layup: {
    target: "none",
    options: { leave: "length", drive: "length" },
    required: ["leave"],
    from: (tee, question) => {
      const leave = metresOf(question, "leave")!;
      const drive = metresOf(question, "drive") ?? 0;
      const station = stationLeaving(tee.line, leave);
      if (station === undefined) return none(`the whole hole is shorter than ${say(question, leave)}`);
      if (station <= drive)
        return none(`a drive of ${say(question, drive)} is already inside ${say(question, leave)}`);
      const stroke = distanceMetres(pointAt(tee.line, drive), pointAt(tee.line, station));
      return length(stroke, (words) => {
        const left = told(question, leave, words);
        return drive === 0
          ? words.meaning.layup({ leave: left })
          : words.meaning.layupAfter({ leave: left, drive: told(question, drive, words) });
      });
    },
  },
  fairway: {
    target: "none",
    options: { drive: "length" },
    required: ["drive"],
    from: (tee, question) => {
      const drive = metresOf(question, "drive")!;
      const { widthMetres } = fairwayAt(tee.line, drive, areasOfKind(question.hole.placed.values(), "fairway"));
      return widthMetres > 0
        ? length(widthMetres, (words) => words.meaning.fairway({ drive: told(question, drive, words) }))
        : none(`the line of play is not on a fairway ${say(question, drive)} from the ${tee.tee.name} tee`);
    },
  },
  left: {
    target: "none",
    options: { drive: "length" },
    required: ["drive"],
    from: (tee, question) => {
      const drive = metresOf(question, "drive")!;
      return drive < tee.lengthMetres
        ? length(tee.lengthMetres - drive, (words) => words.meaning.left({ drive: told(question, drive, words) }))
        : none(`a drive of ${say(question, drive)} is longer than the hole`);
    },
  },
  bend: {
    target: "none",
    options: { n: "count" },
    required: [],
    from: (tee, question) => {
      const bend = tee.bends[nth(question) - 1];
      if (!bend) return none(`the line of play has ${tee.bends.length} turning points from the ${tee.tee.name} tee`);
      return length(bend.stationMetres, (words) =>
        words.meaning.bend({ side: bend.side, angle: `${Math.round(bend.angleDegrees)}°` }),
      );
    },
  },
  span: {
    target: "feature",
    options: { to: "feature" },
    required: ["to"],
    from: (_tee, { target, other }) =>
      length(spanMetres(target!, other!), (words) =>
        words.meaning.span({ from: featureName(target!, words), to: featureName(other!, words) }),
      ),
  },
  front: greenLength("frontMetres", "front"),
  middle: greenLength("middleMetres", "middle"),
  back: greenLength("backMetres", "back"),
  depth: greenLength("depthMetres", "depth"),
  width: greenLength("widthMetres", "width"),
  rise: {
    target: "none",
    options: {},
    required: [],
    from: (tee) =>
      tee.riseMetres === undefined
        ? none(
            "no heights are known; give the tee markers and the green a third coordinate, or the course a height model",
          )
        : { type: "rise", metres: tee.riseMetres, meaning: (words) => words.meaning.rise },
  },
  aim: {
    target: "feature",
    options: {},
    required: [],
    from: (tee, { target }) => {
      if (target!.feature.name === undefined)
        return none(`the feature "${target!.feature.id}" has no name to print; give it one`);
      const name = target!.feature.name;
      const off = offLine(tee, target!);
      const meaning: Meaning = ({ meaning: say }) =>
        off === undefined || off.where === "on"
          ? say.aimOnLine({ feature: name })
          : say.aim({ feature: name, angle: `${Math.abs(off.degrees)}°`, side: off.where });
      return { type: "name", text: name, meaning };
    },
  },
};
