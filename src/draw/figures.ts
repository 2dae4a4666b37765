/**
 * Figures of one tee set in one unit: arcs, bends, and leaders to the hazards in play.
 * Every one is a measured length; nothing here is computed from sheet coordinates.
 */
import { isBoundary } from "../course/kinds.ts";
import { wholeIn, type LengthUnit, type Rounding } from "../geo/units.ts";
import type { Point } from "../geo/position.ts";
import { directionAt, type Line } from "../geo/line.ts";
import { rightOf } from "../geo/vector.ts";
import { carriedOver } from "../measure/carried.ts";
import { laterHazards, type MetAfter } from "../measure/later.ts";
import type { HazardFigures, MeasuredHole, TeeFigures } from "../measure/types.ts";
import { arcsOf } from "./arcs.ts";
import { inBox } from "./clip.ts";
import { around, type LabelPlacer, type Placement } from "./labels.ts";
import { blockSize, Lettering, type TextLine } from "./lettering.ts";
import type { PlateContext } from "./plate-context.ts";
import { element, num, polyPath } from "./svg.ts";

/** A hazard that runs beside play for longer than this has no one reach and carry worth printing. */
const LONGEST_BESIDE_METRES = 110;
/** Hazards that begin farther than this from the tee are met by a later stroke. */
const FURTHEST_REACH_METRES = 275;

export interface Figures {
  readonly svg: string;
  /** What found no room, in words. */
  readonly unplaced: readonly string[];
}

/** Hazards a stroke from this tee can find, the most telling first. */
export function hazardsInPlay(tee: TeeFigures, hole: MeasuredHole): readonly HazardFigures[] {
  const telling = tee.hazards.filter((hazard) => {
    const kind = hole.placed.get(hazard.id)?.feature.kind;
    if (!kind || isBoundary(kind) || !hazard.inCorridor) return false;
    const [from, to] = hazard.stationMetres;
    if (hazard.position !== "across" && to - from > LONGEST_BESIDE_METRES) return false;
    return (
      hazard.reachMetres <= FURTHEST_REACH_METRES && hazard.reachMetres < tee.lengthMetres + 5 && hazard.farMetres > 12
    );
  });
  const weight = ({ position, offsetMetres, reachMetres, id }: HazardFigures): number =>
    (position === "across" ? -40 : Math.abs(offsetMetres)) +
    reachMetres / 40 -
    (hole.placed.get(id)?.feature.name ? 12 : 0);
  return [...telling].sort((a, b) => weight(a) - weight(b) || (a.id < b.id ? -1 : 1));
}

/** A length in a unit, to the whole one. */
export const whole = (metres: number, unit: LengthUnit, rounding: Rounding = "nearest"): string =>
  String(wholeIn(metres, unit, rounding));

/** A hazard's reach and what must be flown because of it, or its reach alone. */
export function reachAndCarry(hazard: HazardFigures, unit: LengthUnit): string {
  const carried = carriedOver(hazard);
  const reach = whole(hazard.reachMetres, unit, "down");
  return carried ? `${reach}–${whole(carried.metres, unit, "up")}` : reach;
}

/** A hazard with the figure that tells of it. */
interface Told {
  readonly hazard: HazardFigures;
  readonly figure: string;
}

/** `250 + 142–220`: the strokes before it along the line of play, then reach and carry from there. */
const afterStrokes = ({ stationMetres, hazard }: MetAfter, unit: LengthUnit): string =>
  `${whole(stationMetres, unit)} + ${reachAndCarry(hazard, unit)}`;

/** Hazards met after the tee shot, from where the player with the longest drive meets them. */
function toldLater(tee: TeeFigures, hole: MeasuredHole, unit: LengthUnit, already: readonly HazardFigures[]): Told[] {
  return laterHazards(hole, tee).flatMap(({ hazard, met }): Told[] => {
    const first = met.reduce<MetAfter | undefined>(
      (best, one) => (best && best.player.driveMetres >= one.player.driveMetres ? best : one),
      undefined,
    );
    if (!first || already.includes(hazard)) return [];
    const long = hazard.stationMetres[1] - hazard.stationMetres[0] > LONGEST_BESIDE_METRES;
    return hazard.position !== "across" && long ? [] : [{ hazard, figure: afterStrokes(first, unit) }];
  });
}

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
    const inward = (end: Point, t: number): Point => [
      end[0] + (m[0] - end[0]) * t,
      end[1] + (m[1] - end[1]) * t - height * 0.62,
    ];
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
      const placed = placer.place({
        width,
        height,
        limit: 30,
        candidates: around(sheet.toSheet(point), width, height, [6.5, 12], 0.6, ([ux]) => 2 - 2 * Math.abs(ux)),
      });
      if (placed) lettering.set([text], placed.at);
      else unplaced.push(`bend ${text.text}`);
    }
  }

  // Hazards in play: nearest edge and safe carry, dotted on the ground and joined to their figures.
  const chosen = hazardsInPlay(tee, hole);
  const told: Told[] = [
    ...chosen.map((hazard): Told => ({ hazard, figure: reachAndCarry(hazard, unit) })),
    ...toldLater(tee, hole, unit, chosen),
  ];
  told.forEach(({ hazard, figure }, rank) => {
    const feature = hole.placed.get(hazard.id)?.feature;
    const [reach, carry] = [
      sheet.toSheet(hazard.reachPoint),
      sheet.toSheet(carriedOver(hazard)?.point ?? hazard.farPoint),
    ];
    const words = feature?.name ? `${feature.name} ${figure}` : figure;
    if (rank >= c.leaders || !inBox(reach, sheet.map)) {
      if (feature?.name) unplaced.push(words);
      return;
    }
    const lines: TextLine[] = [
      ...(feature?.name
        ? [{ text: feature.name, mark: "name", size: c.text.name, weight: "regular", italic: true } as const]
        : []),
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
        candidates: around(
          anchor,
          width,
          height,
          [6, 16, 24, 34, 46, 60, 76, 94].map((d) => d * Math.sqrt(c.drawing)),
          0.5,
          ([ux, uy]) => 9 - 9 * (ux * outward[0] + uy * outward[1]),
        ),
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
    if (barred)
      marks += element("path", { ...paint("leader"), "stroke-width": c.medium, d: polyPath([reach, carry], false) });
    marks += spot(reach, 1.9 * Math.sqrt(c.drawing), context, "spot");
    if (inside) marks += spot(carry, 1.9 * Math.sqrt(c.drawing), context, "spot-full");
    lettering.set(found.lines, placed.at);
  });
  return { svg: `${marks}${lettering}`, unplaced };
}

function spot(
  [x, y]: Point,
  radius: number,
  { paint, composition }: PlateContext,
  mark: "spot" | "spot-full",
): string {
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
