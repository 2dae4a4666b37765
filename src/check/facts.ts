/**
 * What was measured of a hole, in the terms a tip speaks of it: a plain value, so that a
 * claim can be held against it without knowing how anything is measured.
 */
import { calledBy } from "../course/ground-cover.ts";
import type { FeatureKind, ThingClass } from "../course/kinds.ts";
import type { PerGender } from "../course/types.ts";
import { chords } from "../geo/area.ts";
import { directionAt, pointAt } from "../geo/line.ts";
import { bearingDegrees, directionTo, distanceMetres, rightOf } from "../geo/vector.ts";
import { defaultTee } from "../measure/default-tee.ts";
import { fairwayAt } from "../measure/fairway.ts";
import { hazardFigures } from "../measure/hazards.ts";
import { longestLine } from "../measure/hole.ts";
import { areasOfKind } from "../measure/place.ts";
import type { Bend, MeasuredCourse, MeasuredHole, PlacedFeature, TeeFigures } from "../measure/types.ts";
import { whereaboutsFinder, type Whereabouts } from "./around.ts";
import { groundFacts, type GroundFacts, type GroundProvider } from "./ground.ts";

export interface Thing {
  readonly id: string;
  readonly name: string | undefined;
  readonly kind: FeatureKind;
  readonly classes: readonly ThingClass[];
  readonly shared: boolean;
  readonly where: Whereabouts;
  /** How often the line of play from the longest set runs through it. */
  readonly crossings: number;
  /** Reach and carry from every tee set, for each stretch in the corridor. */
  readonly spans: readonly {
    readonly tee: string;
    readonly reachMetres: number;
    readonly farMetres: number;
    readonly carryMetres: number | undefined;
    readonly across: boolean;
  }[];
}

export interface HoleFacts {
  readonly number: number;
  readonly par: PerGender;
  readonly strokeIndex: PerGender;
  /** Longest first. */
  readonly tees: readonly {
    readonly id: string;
    readonly name: string;
    readonly lengthMetres: number;
    readonly riseMetres: number | undefined;
  }[];
  /** Length from the set a tip is written for. */
  readonly lengthMetres: number;
  /** Every turning point from any set, the longest set's first. */
  readonly bends: readonly Bend[];
  readonly bearingDegrees: number;
  readonly green: { readonly depthMetres: number; readonly widthMetres: number; readonly areaSquareMetres: number };
  /** Widths where drives come down; undefined on a par 3 or without a drawn fairway. */
  readonly fairway:
    | { readonly narrowestMetres: number; readonly widestMetres: number; readonly splits: boolean }
    | undefined;
  readonly things: readonly Thing[];
  /** Lengths of all holes of the course, for "the longest". */
  readonly course: readonly {
    readonly number: number;
    readonly par: PerGender;
    readonly lengths: Readonly<Record<string, number>>;
  }[];
  readonly ground: GroundFacts | undefined;
}

/** Drives from a bogey woman's to a long hitter's. */
const FAIRWAY_FROM_METRES = 140;
const FAIRWAY_TO_METRES = 265;

function fairwayFacts(hole: MeasuredHole, tee: TeeFigures): HoleFacts["fairway"] {
  if (hole.hole.par.men <= 3) return undefined;
  const fairways = areasOfKind(hole.placed.values(), "fairway");
  const widths: number[] = [];
  let splits = false;
  for (
    let station = FAIRWAY_FROM_METRES;
    station <= Math.min(FAIRWAY_TO_METRES, tee.lengthMetres - 40);
    station += 10
  ) {
    const { widthMetres } = fairwayAt(tee.line, station, fairways);
    if (widthMetres > 0) widths.push(widthMetres);
    const stretches = chords(fairways, pointAt(tee.line, station), rightOf(directionAt(tee.line, station)));
    splits ||= stretches.filter(([enter, exit]) => exit > -80 && enter < 80 && exit - enter > 5).length > 1;
  }
  return widths.length === 0
    ? undefined
    : { narrowestMetres: Math.min(...widths), widestMetres: Math.max(...widths), splits };
}

function thingsOf(hole: MeasuredHole, back: TeeFigures): Thing[] {
  const where = whereaboutsFinder(longestLine(hole), back.green);
  const things: Thing[] = [];
  for (const placed of hole.placed.values()) {
    const classes = calledBy(placed);
    if (classes.length === 0) continue;
    const spans = hole.tees.flatMap((tee) => spansOf(placed, tee, hole.corridorMetres));
    things.push({
      id: placed.feature.id,
      name: placed.feature.name,
      kind: placed.feature.kind,
      classes,
      shared: placed.shared,
      where: where(placed),
      crossings: spans.filter(({ tee, across }) => tee === back.tee.id && across).length,
      spans,
    });
  }
  return things;
}

function spansOf(placed: PlacedFeature, tee: TeeFigures, corridorMetres: number): Thing["spans"] {
  const listed = tee.hazards.filter(({ id }) => id === placed.feature.id);
  const figures = listed.length > 0 ? listed : hazardFigures(placed, tee, corridorMetres);
  return figures.map(({ reachMetres, farMetres, carryMetres, position, inCorridor }) => ({
    tee: tee.tee.id,
    reachMetres,
    farMetres,
    carryMetres,
    across: inCorridor && position === "across",
  }));
}

/** A course's ground from its own height model. */
export const groundFrom =
  ({ ground }: MeasuredCourse): GroundProvider =>
  (hole) => {
    const tee = defaultTee(hole);
    return ground && tee ? groundFacts(hole, tee, ground) : undefined;
  };

/** Undefined for a hole without a tee marker, which the reader refuses. */
export function holeFacts(
  measured: MeasuredCourse,
  hole: MeasuredHole,
  ground: GroundProvider,
): HoleFacts | undefined {
  const back = hole.tees[0];
  const tee = defaultTee(hole);
  if (!back || !tee) return undefined;
  return {
    number: hole.hole.number,
    par: hole.hole.par,
    strokeIndex: hole.hole.strokeIndex,
    tees: hole.tees.map((one) => ({
      id: one.tee.id,
      name: one.tee.name,
      lengthMetres: one.lengthMetres,
      riseMetres: one.riseMetres,
    })),
    lengthMetres: tee.lengthMetres,
    bends: distinctBends(hole.tees),
    bearingDegrees: bearingDegrees(directionTo(back.marker, back.green.middle)),
    green: back.green,
    fairway: fairwayFacts(hole, tee),
    things: thingsOf(hole, back),
    course: measured.holes.map((one) => ({
      number: one.hole.number,
      par: one.hole.par,
      lengths: Object.fromEntries(one.tees.map(({ tee: { id }, lengthMetres }) => [id, lengthMetres])),
    })),
    ground: ground(hole),
  };
}

/** The turning points of all sets: each once, as the longest set that meets it sees it. */
function distinctBends(tees: readonly TeeFigures[]): Bend[] {
  const bends: Bend[] = [];
  for (const bend of tees.flatMap((one) => one.bends)) {
    if (!bends.some(({ point }) => distanceMetres(point, bend.point) < 1)) bends.push(bend);
  }
  return bends;
}
