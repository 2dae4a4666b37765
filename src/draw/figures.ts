/**
 * Figures of one tee set in one unit: the line of play, arcs, and leaders to the hazards in
 * play. Every one is a measured length; nothing here is computed from sheet coordinates.
 */
import type { LengthUnit } from "../geo/units.ts";
import { fromUnit, inUnit } from "../geo/units.ts";
import type { Box } from "../geo/box.ts";
import type { Point } from "../geo/position.ts";
import { directionAt, locate, pointAt, type Line } from "../geo/line.ts";
import { distanceMetres, rightOf } from "../geo/vector.ts";
import type { HazardFigures, MeasuredHole, TeeFigures } from "../measure/types.ts";
import { inBox } from "./clip.ts";
import { evenly } from "./curves.ts";
import { around, type LabelPlacer, type Placement } from "./labels.ts";
import { blockSize, Lettering, type TextLine } from "./lettering.ts";
import type { PlateContext } from "./plate-context.ts";
import { element, num, polyPath } from "./svg.ts";

/** Arcs stand at every multiple of this, in the plate's unit. */
export const ARC_STEP = 50;
/** No arc beyond this: few strokes from a tee end there. */
const FURTHEST_ARC = 300;
/** What ticks on the line say is left. */
export const LEFT_TICKS = [200, 150, 100] as const;
/** A hazard that runs beside play for longer than this has no one reach and carry worth printing. */
const LONGEST_BESIDE_METRES = 110;
/** Hazards that begin farther than this from the tee are met by a later stroke. */
const FURTHEST_REACH_METRES = 275;

export interface Figures {
  readonly svg: string;
  /** What found no room, in words. */
  readonly unplaced: readonly string[];
}

/** An arc about the tee across the playing corridor: ends in the plane, from left to right of play. */
export interface Arc {
  readonly value: number;
  readonly metres: number;
  readonly left: Point;
  readonly right: Point;
  readonly middle: Point;
}

/** Station at which the line of play is a straight distance from the tee; undefined when it never is. */
function stationAtDistance(line: Line, from: Point, metres: number): number | undefined {
  for (let station = 1; station <= line.lengthMetres; station += 1) {
    if (distanceMetres(from, pointAt(line, station)) < metres) continue;
    let [low, high] = [station - 1, station];
    for (let i = 0; i < 30; i++) {
      const middle = (low + high) / 2;
      if (distanceMetres(from, pointAt(line, middle)) < metres) low = middle;
      else high = middle;
    }
    return high;
  }
  return undefined;
}

/** The arcs of a tee set: every 50 from 100 (from 50 on a hole reached in one), short of the green. */
export function arcsOf(tee: TeeFigures, unit: LengthUnit, corridorMetres: number): Arc[] {
  const { line, marker } = tee;
  const arcs: Arc[] = [];
  const first = inUnit(tee.lengthMetres, unit) < 260 ? ARC_STEP : 2 * ARC_STEP;
  for (let value = first; value <= FURTHEST_ARC; value += ARC_STEP) {
    const metres = fromUnit(value, unit);
    const station = stationAtDistance(line, marker, metres);
    if (station === undefined || station > tee.green.frontMetres - 4) break;
    const middle = pointAt(line, station);
    const ahead = directionAt(line, station);
    const bearing = Math.atan2(middle[1] - marker[1], middle[0] - marker[0]);
    const onArc = (angle: number): Point => [marker[0] + Math.cos(angle) * metres, marker[1] + Math.sin(angle) * metres];
    // Outwards in small steps until the corridor's edge; past a corner the nearest leg rules.
    const edge = (turn: 1 | -1): Point => {
      const step = (turn * 0.5) / metres;
      let angle = bearing;
      for (let i = 0; i < 400; i++) {
        if (Math.abs(locate(line, onArc(angle + step)).offset) > corridorMetres) break;
        angle += step;
      }
      return onArc(angle);
    };
    // Angles grow to the left of a line that runs away from the tee.
    const turned = ahead[0] * Math.cos(bearing) + ahead[1] * Math.sin(bearing) >= 0;
    const [left, right] = turned ? [edge(1), edge(-1)] : [edge(-1), edge(1)];
    arcs.push({ value, metres, left, right, middle });
  }
  return arcs;
}

/** Hazards a stroke from this tee can find, the most telling first. */
export function hazardsInPlay(tee: TeeFigures, hole: MeasuredHole): readonly HazardFigures[] {
  const telling = tee.hazards.filter((hazard) => {
    const kind = hole.placed.get(hazard.id)?.feature.kind;
    if (!kind || kind === "out-of-bounds" || !hazard.inCorridor) return false;
    const [from, to] = hazard.stationMetres;
    if (hazard.position !== "across" && to - from > LONGEST_BESIDE_METRES) return false;
    return hazard.reachMetres <= FURTHEST_REACH_METRES && hazard.reachMetres < tee.lengthMetres + 5 && hazard.carryMetres > 12;
  });
  const weight = ({ position, offsetMetres, reachMetres, id }: HazardFigures): number =>
    (position === "across" ? -40 : Math.abs(offsetMetres)) + reachMetres / 40 - (hole.placed.get(id)?.feature.name ? 12 : 0);
  return [...telling].sort((a, b) => weight(a) - weight(b) || (a.id < b.id ? -1 : 1));
}

const whole = (metres: number, unit: LengthUnit): string => String(Math.round(inUnit(metres, unit)));

/** Figures from one tee set in one unit. */
export function drawTeeFigures(
  context: PlateContext,
  hole: MeasuredHole,
  tee: TeeFigures,
  unit: LengthUnit,
  placer: LabelPlacer,
): Figures {
  const { sheet, composition: c, paint } = context;
  const unplaced: string[] = [];
  let marks = "";
  const lettering = new Lettering(paint, c.text.halo);

  // Arcs: true circles about the tee, so a pencil on the sheet reads a true distance.
  const arcs = arcsOf(tee, unit, hole.corridorMetres);
  const arcPaths = arcs.map(({ left, right, metres }) => {
    const [a, b] = [sheet.toSheet(left), sheet.toSheet(right)];
    const radius = num(metres * sheet.pxPerMetre);
    return `M${num(a[0])} ${num(a[1])}A${radius} ${radius} 0 0 1 ${num(b[0])} ${num(b[1])}`;
  });
  if (arcPaths.length > 0) {
    marks +=
      element("path", { ...paint("casing"), "stroke-width": c.fine + 2.2, opacity: 0.55, d: arcPaths.join("") }) +
      element("path", { ...paint("arc"), "stroke-width": c.fine, d: arcPaths.join("") });
  }
  for (const arc of arcs) placer.avoid([arc.left, arc.middle, arc.right].map(sheet.toSheet), 14);
  for (const { value, left, right, middle } of arcs) {
    const text: TextLine = { text: String(value), mark: "figure", size: c.text.arc, weight: "regular" };
    const { width, height } = blockSize([text]);
    const [l, m, r] = [left, middle, right].map(sheet.toSheet) as [Point, Point, Point];
    const beyond = (end: Point, from: Point, gap: number): Point => {
      const length = Math.hypot(end[0] - from[0], end[1] - from[1]) || 1;
      const [ux, uy] = [(end[0] - from[0]) / length, (end[1] - from[1]) / length];
      return [end[0] + ux * (gap + width / 2), end[1] + uy * (gap + height / 2) + 1.5];
    };
    const inward = (end: Point, t: number): Point => [end[0] + (m[0] - end[0]) * t, end[1] + (m[1] - end[1]) * t - height * 0.62];
    const placed = placer.place({
      width,
      height,
      candidates: [
        { at: beyond(r, m, 2), cost: 0 },
        { at: beyond(l, m, 2), cost: 1.5 },
        { at: beyond(r, m, 9), cost: 6 },
        { at: beyond(l, m, 9), cost: 7 },
        { at: inward(r, 0.25), cost: 10 },
        { at: inward(l, 0.25), cost: 11 },
        { at: inward(r, 0.55), cost: 16 },
        { at: inward(l, 0.55), cost: 17 },
      ],
    });
    if (placed) lettering.set([text], placed.at);
    else unplaced.push(`arc ${value}`);
  }

  // A bend's ring carries how far it is along the line.
  if (c.keep.bendFigures) {
    for (const { point, stationMetres } of tee.bends) {
      const text: TextLine = { text: whole(stationMetres, unit), mark: "figure", size: c.text.arc, weight: "heavy" };
      const { width, height } = blockSize([text]);
      const placed = placer.place({ width, height, limit: 30, candidates: around(sheet.toSheet(point), width, height, [6.5, 12], 0.6, ([ux]) => 2 - 2 * Math.abs(ux)) });
      if (placed) lettering.set([text], placed.at);
      else unplaced.push(`bend ${text.text}`);
    }
  }

  // Hazards in play: nearest edge and safe carry, dotted on the ground and joined to their figures.
  const chosen = hazardsInPlay(tee, hole);
  chosen.forEach((hazard, rank) => {
    const feature = hole.placed.get(hazard.id)?.feature;
    const [reach, carry] = [sheet.toSheet(hazard.reachPoint), sheet.toSheet(hazard.carryPoint)];
    const figure = `${whole(hazard.reachMetres, unit)}–${whole(hazard.carryMetres, unit)}`;
    const words = feature?.name ? `${feature.name} ${figure}` : figure;
    if (rank >= c.leaders || !inBox(reach, sheet.map)) {
      if (feature?.name) unplaced.push(words);
      return;
    }
    const lines: TextLine[] = [
      ...(feature?.name ? [{ text: feature.name, mark: "name", size: c.text.name, weight: "regular", italic: true } as const] : []),
      { text: figure, mark: "figure", size: c.text.figure, weight: "heavy" },
    ];
    const span = Math.hypot(carry[0] - reach[0], carry[1] - reach[1]);
    // Reach and carry of a small hazard are two ends of one bar; of a wide water each stands alone.
    const inside = inBox(carry, sheet.map) && span > 3;
    const barred = inside && span < 46 * c.drawing;
    const anchor: Point = barred ? [(reach[0] + carry[0]) / 2, (reach[1] + carry[1]) / 2] : reach;
    const outward = outwardOf(context, hazard, tee.line);
    const find = (lines: readonly TextLine[]): { lines: readonly TextLine[]; place: Placement } | undefined => {
      // Some air beside it, or a neighbouring arc's numeral reads as one of its figures.
      const size = blockSize(lines);
      const [width, height] = [size.width + 8, size.height + 3];
      const place = placer.place({
        width,
        height,
        leaderTo: anchor,
        limit: 70,
        candidates: around(anchor, width, height, [6, 16, 24, 34, 46, 60, 76, 94].map((d) => d * Math.sqrt(c.drawing)), 0.5, ([ux, uy]) => 9 - 9 * (ux * outward[0] + uy * outward[1])),
      });
      return place && { lines, place };
    };
    // Where a long name finds no room its figures may.
    const found = find(lines) ?? (lines.length > 1 ? find(lines.slice(-1)) : undefined);
    if (found?.lines.length !== lines.length) unplaced.push(words);
    if (!found) return;
    const placed = found.place;
    if (placed.leader) {
      marks += element("path", { ...paint("leader"), "stroke-width": c.fine, d: polyPath(placed.leader, false) });
    }
    if (barred) marks += element("path", { ...paint("leader"), "stroke-width": c.medium, d: polyPath([reach, carry], false) });
    marks += spot(reach, 1.9 * Math.sqrt(c.drawing), context, "spot");
    if (inside) marks += spot(carry, 1.9 * Math.sqrt(c.drawing), context, "spot-full");
    lettering.set(found.lines, placed.at);
  });
  return { svg: `${marks}${lettering}`, unplaced };
}

function spot([x, y]: Point, radius: number, { paint, composition }: PlateContext, mark: "spot" | "spot-full"): string {
  return element("circle", { ...paint(mark), cx: num(x), cy: num(y), r: radius, "stroke-width": composition.fine });
}

/** Unit direction on the sheet from the line of play to a hazard's side. */
function outwardOf({ sheet }: PlateContext, hazard: HazardFigures, line: Line): Point {
  const station = (hazard.stationMetres[0] + hazard.stationMetres[1]) / 2;
  const right = rightOf(directionAt(line, station));
  const sign = hazard.position === "left" || hazard.offsetMetres < 0 ? -1 : 1;
  const [a, b] = [sheet.toSheet([0, 0]), sheet.toSheet([right[0] * sign, right[1] * sign])];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  return [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
}

/** Where what is left to the green's middle is just so much: the last such place on the line. */
export function leftPoints(tee: TeeFigures, unit: LengthUnit): { value: number; at: Point; ahead: Point }[] {
  const { line, green } = tee;
  const result: { value: number; at: Point; ahead: Point }[] = [];
  for (const value of LEFT_TICKS) {
    const metres = fromUnit(value, unit);
    for (let station = line.lengthMetres; station > 40; station -= 0.5) {
      const at = pointAt(line, station);
      if (distanceMetres(at, green.middle) < metres) continue;
      // Refined by the last half metre along the line.
      let [near, far] = [station + 0.5, station];
      for (let i = 0; i < 20; i++) {
        const middle = (near + far) / 2;
        if (distanceMetres(pointAt(line, middle), green.middle) < metres) near = middle;
        else far = middle;
      }
      result.push({ value, at: pointAt(line, far), ahead: directionAt(line, far) });
      break;
    }
  }
  return result;
}

/** Figures that hold for every tee set: ticks of what is left, the green's depth, and each tee's own length. */
export function drawUnitFigures(
  context: PlateContext,
  hole: MeasuredHole,
  tee: TeeFigures,
  unit: LengthUnit,
  placer: LabelPlacer,
): Figures {
  const { sheet, composition: c, paint } = context;
  const unplaced: string[] = [];
  let marks = "";
  const lettering = new Lettering(paint, c.text.halo);
  for (const { value, at, ahead } of leftPoints(tee, unit)) {
    const right = rightOf(ahead);
    const [p, q] = [sheet.toSheet(at), sheet.toSheet([at[0] + right[0], at[1] + right[1]])];
    const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
    const [ux, uy] = [(q[0] - p[0]) / length, (q[1] - p[1]) / length];
    const half = 6 * Math.sqrt(c.drawing);
    const text: TextLine = { text: String(value), mark: "pill-figure", size: c.text.arc, weight: "heavy" };
    const size = blockSize([text]);
    const [width, height] = [size.width + 6 * Math.sqrt(c.drawing), size.height + 2.5];
    const beside = (gap: number, side: 1 | -1): Point => [p[0] + ux * side * (gap + width / 2), p[1] + uy * side * (gap + (Math.abs(uy) > 0.7 ? height / 2 : width / 2))];
    const placed = placer.place({
      width,
      height,
      candidates: [
        { at: beside(half + 1, 1), cost: 0 },
        { at: beside(half + 1, -1), cost: 2 },
        { at: beside(half + 9, 1), cost: 9 },
        { at: beside(half + 9, -1), cost: 10 },
        { at: beside(half + 20, 1), cost: 18 },
        { at: beside(half + 20, -1), cost: 19 },
      ],
      leaderTo: p,
    });
    const end: Point = [p[0] + ux * half, p[1] + uy * half];
    const start: Point = [p[0] - ux * half, p[1] - uy * half];
    const tick = polyPath([start, end], false);
    marks += element("path", { ...paint("casing"), "stroke-width": c.medium + 2.4, opacity: 0.6, d: tick }) + element("path", { ...paint("tick"), "stroke-width": c.medium * 1.3, d: tick });
    if (!placed) {
      unplaced.push(`${value} left`);
      continue;
    }
    if (placed.leader) marks += element("path", { ...paint("leader"), "stroke-width": c.fine, d: polyPath(placed.leader, false) });
    marks += pill(placed.box, context);
    lettering.set([text], placed.at);
  }
  if (c.keep.greenDepth) {
    marks += drawDepth(context, tee, unit, placer, lettering);
  }
  if (c.keep.teeNames) {
    for (const each of hole.tees) {
      const at = sheet.toSheet(each.marker);
      const text: TextLine = { text: `${each.tee.name} ${whole(each.lengthMetres, unit)}`, mark: "name", size: c.text.note, weight: "regular" };
      const { width, height } = blockSize([text]);
      const candidates = [18, 30, 44, 60].flatMap((gap) =>
        ([1, -1] as const).flatMap((side) =>
          [0, -9, 9, -18, 18].map((dy) => ({ at: [at[0] + side * (gap + width / 2), at[1] + dy] as Point, cost: gap * 0.3 + Math.abs(dy) * 0.12 + (side === 1 ? 0 : 1) })),
        ),
      );
      const placed = placer.place({ width, height, candidates, leaderTo: at, limit: 60 });
      if (!placed) {
        unplaced.push(text.text);
        continue;
      }
      if (placed.leader) {
        const [from, to] = placed.leader;
        const size = Math.hypot(to[0] - from[0], to[1] - from[1]);
        const stop: Point = [to[0] + ((from[0] - to[0]) / size) * 7, to[1] + ((from[1] - to[1]) / size) * 7];
        marks += element("path", { ...paint("leader"), "stroke-width": c.hair, d: polyPath([from, stop], false) });
      }
      lettering.set([text], placed.at);
    }
  }
  return { svg: `${marks}${lettering}`, unplaced };
}

function pill([minX, minY, maxX, maxY]: Box, { paint, composition: c }: PlateContext): string {
  return element("rect", {
    ...paint("pill"), x: num(minX), y: num(minY), width: num(maxX - minX), height: num(maxY - minY), rx: num((maxY - minY) / 2), "stroke-width": c.fine,
  });
}

/** A dimension line beside the green, front edge to back edge. */
function drawDepth(
  { sheet, composition: c, paint, cover }: PlateContext,
  tee: TeeFigures,
  unit: LengthUnit,
  placer: LabelPlacer,
  lettering: Lettering,
): string {
  const { front, back, sides, middle, depthMetres } = tee.green;
  const text: TextLine = { text: whole(depthMetres, unit), mark: "figure", size: c.text.figure, weight: "heavy" };
  const { width, height } = blockSize([text]);
  const options = ([1, 0] as const).map((side) => {
    const [edge, centre] = [sheet.toSheet(sides[side]), sheet.toSheet(middle)];
    const length = Math.hypot(edge[0] - centre[0], edge[1] - centre[1]) || 1;
    const [ux, uy] = [(edge[0] - centre[0]) / length, (edge[1] - centre[1]) / length];
    const out = length + 9 * c.drawing;
    const shift = (p: Point): Point => {
      const [x, y] = sheet.toSheet(p);
      return [x + ux * out, y + uy * out];
    };
    const [a, b] = [shift(front), shift(back)];
    return { a, b, ux, uy, at: [(a[0] + b[0]) / 2 + ux * (4 + width / 2), (a[1] + b[1]) / 2 + uy * (4 + height / 2)] as Point };
  });
  // The bar itself must lie on clear ground: sand or water under it would be misread as measured.
  const clear = options.filter(({ a, b }) => evenly([a, b], 4, false).every((p) => !["bunker", "water", "green", "built"].includes(cover.at(p))));
  const placed = placer.place({ width, height, candidates: clear.map(({ at }) => ({ at, cost: at === options[0]!.at ? 0 : 3 })), limit: 120 });
  if (!placed) return "";
  const bar = clear.find(({ at }) => at === placed.at)!;
  placer.block([Math.min(bar.a[0], bar.b[0]) - 3, Math.min(bar.a[1], bar.b[1]), Math.max(bar.a[0], bar.b[0]) + 3, Math.max(bar.a[1], bar.b[1])]);
  const { a, b, ux, uy } = bar;
  const serif = (p: Point): string => polyPath([[p[0] - ux * 3, p[1] - uy * 3], [p[0] + ux * 3, p[1] + uy * 3]], false);
  lettering.set([text], placed.at);
  return element("path", { ...paint("tick"), "stroke-width": c.fine, d: polyPath([a, b], false) + serif(a) + serif(b) });
}
