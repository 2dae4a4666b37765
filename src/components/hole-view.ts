/** What a hole page says first, chosen from a hole's figures. No markup here. */
import { cautionOf } from "../course/ground-cover.ts";
import type { CautionKind } from "../course/kinds.ts";
import type { PerGender } from "../course/types.ts";
import { locate } from "../geo/line.ts";
import { metresFromYards } from "../geo/units.ts";
import type { Point } from "../geo/position.ts";
import { densify } from "../geo/segment.ts";
import { offLine, type OffLine } from "../measure/aim.ts";
import { askOf, carriedOver, playersOf } from "../measure/carried.ts";
import { laterHazards, type MetAfter } from "../measure/later.ts";
import { REFERENCE_PLAYERS, type ReferencePlayer } from "../measure/players.ts";
import type { Bend, HazardFigures, MeasuredHole, Shape, TeeFigures } from "../measure/types.ts";
import { featureName } from "../site/ground/names.ts";
import type { Words } from "../site/language/words.ts";

/** A hazard counts as a question for the tee shot up to here: 280 yards, a long drive (common practice, no source). */
const TEE_SHOT_METRES = metresFromYards(280);

/** Trouble beside the line nearer than this is out of play for a tee shot: 100 yards. */
const NEAREST_REACH_METRES = metresFromYards(100);

/** How many hazards the glance has room for. */
const GLANCE_ROWS = 3;

export interface GlanceRow {
  /**
   * `carry`: it lies across and must be flown, to `metres`; `short`: it lies across and
   * cannot be, so one stays short of it; `later`: it lies across beyond any tee shot;
   * `reach`: it lies beside or past the line and can be found.
   */
  readonly ask: "carry" | "short" | "later" | "reach";
  /** Of a carry: past all of it, or to the dry land the green lies on. */
  readonly to: "past" | "green" | undefined;
  readonly metres: number;
  readonly hazard: HazardFigures;
}

/**
 * The few hazards a golfer on the tee must know of, those that lie across first: those
 * within the corridor and within a long drive, not counting what lies past the green.
 */
export function glance(tee: TeeFigures): GlanceRow[] {
  const across = tee.hazards.flatMap((hazard): GlanceRow[] => {
    const ask = askOf(hazard, tee);
    const carried = ask === "carry" ? carriedOver(hazard) : undefined;
    return ask === undefined ? [] : [{ ask, to: carried?.to, metres: carried?.metres ?? hazard.reachMetres, hazard }];
  });
  const carries = across
    .filter(({ ask }) => ask === "carry")
    // The nearest carry is not the one that decides: the furthest is.
    .sort((a, b) => b.metres - a.metres)
    .slice(0, 2);
  const shorts = across.filter(({ ask }) => ask === "short").slice(0, 1);
  const beside = tee.hazards
    .filter(
      (hazard) =>
        hazard.inCorridor &&
        askOf(hazard, tee) === undefined &&
        hazard.reachMetres >= NEAREST_REACH_METRES &&
        hazard.reachMetres <= Math.min(TEE_SHOT_METRES, tee.green.backMetres),
    )
    .map((hazard): GlanceRow => ({ ask: "reach", to: undefined, metres: hazard.reachMetres, hazard }));
  const later = across.filter(({ ask }) => ask === "later").slice(0, carries.length + shorts.length === 0 ? 1 : 0);
  return [...carries, ...shorts, ...later, ...beside].slice(0, GLANCE_ROWS);
}

/** The longest carry a tee shot must make, if there is one. */
export function mustCarryMetres(tee: TeeFigures): number | undefined {
  const carries = tee.hazards.flatMap((hazard) =>
    askOf(hazard, tee) === "carry" ? [carriedOver(hazard)!.metres] : [],
  );
  return carries.length > 0 ? Math.max(...carries) : undefined;
}

/** A hazard's name, or what it is; with which time, where it comes into play more than once. */
export function hazardName(measured: MeasuredHole, { id, stretch, stretches }: HazardFigures, words: Words): string {
  const name = featureName(measured, id, words);
  return stretches > 1 ? words.stretch({ name, time: stretch }) : name;
}

export interface Aim extends OffLine {
  readonly name: string;
}

/** Every `:aim[id]` in a tip, in order. */
const aimIds = (markdown: string): string[] => [...markdown.matchAll(/:aim\[([a-z0-9-]+)\]/g)].map(([, id]) => id!);

/** Further off the line than this is not what a tip means by an aim from the tee. */
const AIM_DEGREES = 60;

/**
 * What a tip says first to aim at from a tee; nothing where it says none: an aim made up
 * from the ground could say the opposite of the tip's own words.
 */
export function aimFrom(measured: MeasuredHole, tee: TeeFigures, words: Pick<Words, "landmarks">): Aim | undefined {
  const landmarks: Readonly<Record<string, string | undefined>> = words.landmarks;
  for (const id of aimIds(measured.hole.tip.markdown)) {
    const placed = measured.placed.get(id);
    const off = placed && offLine(tee, placed);
    const name = placed?.feature.name ?? landmarks[`${placed?.feature.tags["man_made"]}`];
    if (off && name !== undefined && Math.abs(off.degrees) <= AIM_DEGREES) return { name, ...off };
  }
  return undefined;
}

export interface TroubleRow {
  /** Figures from the first tee set that has the hazard, shown tee first: for its name and side. */
  readonly hazard: HazardFigures;
  readonly reach: Readonly<Record<string, number>>;
  readonly carry: Readonly<Record<string, number>>;
  readonly leaves: Readonly<Record<string, number>>;
}

/** Ends of the hole beyond which a hazard is nobody's business: behind the tee, and well past the green. */
const PAST_GREEN_METRES = 45;

const isAhead = ({ stationMetres: [from, to] }: HazardFigures, tee: TeeFigures): boolean =>
  to > 0 && from < tee.lengthMetres + PAST_GREEN_METRES;

/**
 * Every hazard of a hole with every tee set's figures, in order of reach from the shown
 * tee. Carry and what it leaves are given only where there is a far side to reach.
 */
export function troubleRows(measured: MeasuredHole, shown: TeeFigures): TroubleRow[] {
  const key = ({ id, stretch }: HazardFigures): string => `${id}#${stretch}`;
  const order = [shown, ...measured.tees.filter((tee) => tee !== shown)];
  const rows = new Map<string, HazardFigures>();
  for (const tee of order) {
    for (const hazard of tee.hazards)
      if (isAhead(hazard, tee) && !rows.has(key(hazard))) rows.set(key(hazard), hazard);
  }
  return [...rows].map(([name, hazard]) => {
    const figure = (read: (one: HazardFigures, tee: TeeFigures) => number | undefined): Record<string, number> =>
      byTee(measured, (tee) => {
        const own = tee.hazards.find((one) => key(one) === name);
        return own && isAhead(own, tee) ? read(own, tee) : undefined;
      });
    return {
      hazard,
      reach: figure(({ reachMetres }) => reachMetres),
      carry: figure((own) => carriedOver(own)?.metres),
      leaves: figure(leftPast),
    };
  });
}

/** What is left past a hazard, where it can be passed and the green lies beyond. */
const leftPast = ({ carryMetres, leavesMetres }: HazardFigures): number | undefined =>
  carryMetres !== undefined && leavesMetres > 0 ? leavesMetres : undefined;

/** Turns of fewer degrees are not worth a word. */
const BEND_DEGREES = 5;

/**
 * The turning point that a hole's head tells: the first that turns the line of play by more than a hand's
 * drawing does.
 */
export const firstBend = (tee: TeeFigures): Bend | undefined =>
  tee.bends.find(({ angleDegrees }) => angleDegrees >= BEND_DEGREES);

/**
 * One figure for every tee set that has it, as the tee control reads it; to the centimetre that figures are
 * held to.
 */
export function byTee(
  measured: MeasuredHole,
  figure: (tee: TeeFigures) => number | undefined,
): Record<string, number> {
  const metres: Record<string, number> = {};
  for (const tee of measured.tees) {
    const value = figure(tee);
    if (value !== undefined) metres[tee.tee.id] = Math.round(value * 100) / 100;
  }
  return metres;
}

/** "4", or "4 / 5" with men's first where they differ. */
export const perGender = ({ men, women }: PerGender): string => (men === women ? `${men}` : `${men} / ${women}`);

/** Beyond this a road or a cliff is scenery. */
const NEARBY_METRES = 60;

/** Cautions for the ground a hole runs by, in the order of their kinds. */
export function nearbyCautions(measured: MeasuredHole): CautionKind[] {
  const line = measured.tees[0]?.line;
  if (!line) return [];
  const found = new Set<CautionKind>();
  for (const placed of measured.placed.values()) {
    const kind = cautionOf(placed);
    if (!kind || found.has(kind)) continue;
    if (spacedPoints(placed.shape).some((point) => near(locate(line, point), line.lengthMetres))) found.add(kind);
  }
  const order: readonly CautionKind[] = ["cliff", "water", "road", "boundary"];
  return order.filter((kind) => found.has(kind));
}

/** Points no further apart than a long road's or a shore's vertices would let it slip past. */
function spacedPoints(shape: Shape): readonly Point[] {
  if (shape.type === "points") return shape.points;
  return (shape.type === "lines" ? shape.lines : shape.areas.flat()).flatMap((path) =>
    densify(path, NEARBY_METRES / 2),
  );
}

const near = ({ station, offset }: { station: number; offset: number }, length: number): boolean =>
  station > -NEARBY_METRES && station < length + NEARBY_METRES && Math.abs(offset) <= NEARBY_METRES;

/** A reference player's figures of a hazard met after the tee shot, for every tee set. */
export interface LaterCell {
  readonly player: ReferencePlayer;
  readonly after: Readonly<Record<string, number>>;
  readonly reach: Readonly<Record<string, number>>;
  readonly carry: Readonly<Record<string, number>>;
}

export interface LaterRow {
  readonly hazard: HazardFigures;
  /** Past it, whoever plays. */
  readonly leaves: Readonly<Record<string, number>>;
  /** One for each player that any of the hole's tee sets is rated for, in the order of {@link REFERENCE_PLAYERS}. */
  readonly cells: readonly LaterCell[];
}

/** Every hazard that some tee set's reference players meet after the tee shot, in order of reach. */
export function laterRows(measured: MeasuredHole): LaterRow[] {
  const seen = measured.tees.map((tee) => ({ tee, later: laterHazards(measured, tee) }));
  const rows = new Map<string, HazardFigures>();
  const key = ({ id, stretch }: HazardFigures): string => `${id}#${stretch}`;
  for (const { later } of seen)
    for (const { hazard } of later) if (!rows.has(key(hazard))) rows.set(key(hazard), hazard);
  const players = REFERENCE_PLAYERS.filter((player) =>
    measured.tees.some(({ tee }) => playersOf(tee).includes(player)),
  );
  return [...rows].map(([name, hazard]) => ({
    hazard,
    leaves: byTee(measured, (tee) => {
      const own = seen.find((one) => one.tee === tee)!.later.find((one) => key(one.hazard) === name)?.hazard;
      return own && leftPast(own);
    }),
    cells: players.map((player): LaterCell => {
      const figure = (read: (met: MetAfter) => number | undefined): Record<string, number> =>
        byTee(measured, (tee) => {
          const met = seen
            .find((one) => one.tee === tee)!
            .later.find((one) => key(one.hazard) === name)
            ?.met.find((one) => one.player === player);
          return met && read(met);
        });
      return {
        player,
        after: figure(({ stationMetres }) => stationMetres),
        reach: figure(({ hazard: from }) => from.reachMetres),
        carry: figure(({ hazard: from }) => carriedOver(from)?.metres),
      };
    }),
  }));
}
