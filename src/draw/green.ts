/**
 * One green on its own sheet, seen along the line of approach: front, middle and back,
 * depth and width, the bunkers around it, and its contours where heights are known.
 *
 * In print it is drawn no larger than 1:480 at its natural size: the Rules of Golf's
 * Committee guidance on green-reading materials limits maps of putting greens to that scale
 * (3/8 inch to 5 yards; Rule 4.3a, Clarification on green-reading materials). From memory.
 */
import type { LengthUnit } from "../geo/units.ts";
import { inUnit } from "../geo/units.ts";
import { boxAround } from "../geo/box.ts";
import type { Point } from "../geo/position.ts";
import { dot, rightOf } from "../geo/vector.ts";
import type { MeasuredHole, TeeFigures } from "../measure/types.ts";
import { COMPOSITIONS, type Composition } from "./composition.ts";
import { drawNorth, NORTH_REACH } from "./furniture.ts";
import { drawBunkers, drawCover, drawFairways, drawGreens, drawWater } from "./ground.ts";
import { drawGrowth, drawHachures } from "./growth.ts";
import { LabelPlacer } from "./labels.ts";
import { blockSize, Lettering, type TextLine } from "./lettering.ts";
import type { PlateTheme } from "./palette.ts";
import type { PlateContext } from "./plate-context.ts";
import { drawGreenContours, drawRelief, type PlateGround } from "./relief.ts";
import { sheetOf, type Sheet } from "./sheet.ts";
import { layCover, stageOf } from "./stage.ts";
import { element, escapeXml, polyPath } from "./svg.ts";
import { ENGLISH, type PlateWords } from "./words.ts";
import { drawWorks } from "./works.ts";

/** CSS pixels to a metre of paper (96 to the inch) over 480: the largest scale, in pixels to a metre of ground. */
export const GREEN_MOST_PX_PER_METRE = 96 / 0.0254 / 480;

export interface GreenOptions {
  readonly idPrefix: string;
  readonly unit: LengthUnit;
  readonly theme?: PlateTheme;
  readonly ground?: PlateGround;
  readonly words?: PlateWords;
  readonly labelledBy?: string;
}

const SIZE = 340;
const MARGIN = 5;
const AROUND_METRES = 12;

const SHEET: Composition = {
  ...COMPOSITIONS.phone,
  text: { figure: 14, name: 11.5, arc: 11.5, note: 11, water: 13, halo: 3.2 },
  drawing: 1.25,
  tuftSpacing: 21,
  knots: 6,
  mostContour: 6000,
};

/** The sheet of a green: the approach comes from below. */
export function layGreen(tee: TeeFigures): Sheet {
  const { front, back, sides, approach } = tee.green;
  const right = rightOf(approach);
  const [minX, minY, maxX, maxY] = boxAround([front, back, ...sides].map((p): Point => [dot(p, right), dot(p, approach)]));
  const span = Math.max(maxX - minX, maxY - minY) + 2 * AROUND_METRES;
  const room = SIZE - 2 * MARGIN;
  return sheetOf({
    map: [MARGIN, MARGIN, SIZE - MARGIN, SIZE - MARGIN],
    up: approach,
    pxPerMetre: Math.min(GREEN_MOST_PX_PER_METRE, room / span),
    centre: [(minX + maxX) / 2, (minY + maxY) / 2],
    width: SIZE,
    height: SIZE,
  });
}

/** Draws a hole's green with its figures from one tee set; both units, one shown. */
export function drawGreen(hole: MeasuredHole, tee: TeeFigures, options: GreenOptions): { readonly svg: string; readonly width: number; readonly height: number } {
  const words = options.words ?? ENGLISH;
  const sheet = layGreen(tee);
  const context = stageOf(hole.placed.values(), sheet, SHEET, options.theme ?? "light", options.idPrefix);
  const { paint, cover } = context;
  layCover(context, []);
  const placer = new LabelPlacer(sheet.map, cover);
  const figures = (["yards", "metres"] as const).map((unit) =>
    element("g", { class: "plate-unit", "data-unit": unit, ...(unit === options.unit ? {} : { display: "none" }) }, drawGreenFigures(context, tee, unit, words, placer.branch())),
  );
  const [minX, minY, maxX, maxY] = sheet.map;
  const clip = context.id("map");
  const titleId = context.id("title");
  const line = tee.line.points.map(sheet.toSheet);
  const reach = NORTH_REACH + 2;
  const map =
    drawCover(context) +
    drawFairways(context, line) +
    drawRelief(context, options.ground) +
    drawWater(context) +
    drawHachures(context) +
    drawGreens(context, drawGreenContours(context, options.ground)) +
    drawBunkers(context) +
    drawWorks(context) +
    drawGrowth(context, placer.taken, () => Infinity) +
    figures.join("") +
    drawNorth([maxX - reach, minY + reach], sheet, 0.9, paint, words.north);
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" class="plate plate-green-sheet" viewBox="0 0 ${SIZE} ${SIZE}" width="${SIZE}" height="${SIZE}" role="img" aria-labelledby="${escapeXml(options.labelledBy ?? titleId)}" font-family="Besley, Georgia, 'Times New Roman', serif">` +
    (options.labelledBy ? "" : element("title", { id: titleId }, escapeXml(words.greenTitle(hole.hole.number)))) +
    element("defs", {}, element("clipPath", { id: clip }, element("rect", { x: minX, y: minY, width: maxX - minX, height: maxY - minY, rx: 2 }))) +
    element("g", { "clip-path": `url(#${clip})` }, map) +
    element("rect", { ...paint("frame"), x: minX, y: minY, width: maxX - minX, height: maxY - minY, "stroke-width": 0.7 }) +
    element("rect", { ...paint("frame"), x: minX - 3, y: minY - 3, width: maxX - minX + 6, height: maxY - minY + 6, "stroke-width": 1.2 }) +
    "</svg>";
  return { svg, width: SIZE, height: SIZE };
}

/** Front, middle and back on the line of approach; depth and width as dimension lines. */
function drawGreenFigures(context: PlateContext, tee: TeeFigures, unit: LengthUnit, words: PlateWords, placer: LabelPlacer): string {
  const { sheet, paint } = context;
  const { green } = tee;
  const whole = (metres: number): string => String(Math.round(inUnit(metres, unit)));
  const lettering = new Lettering(paint, SHEET.text.halo);
  const [front, middle, back] = [green.front, green.middle, green.back].map(sheet.toSheet) as [Point, Point, Point];
  const [left, right] = green.sides.map(sheet.toSheet) as [Point, Point];
  const path = (mark: "casing" | "tick" | "leader", d: string, width: number, dash?: string): string =>
    element("path", { ...paint(mark), "stroke-width": width, ...(dash ? { "stroke-dasharray": dash } : {}), d });
  let marks = path("leader", polyPath([front, back], false), 0.8, "2 3") + path("leader", polyPath([left, right], false), 0.8, "2 3");
  for (const [at, word, metres] of [[back, words.back, green.backMetres], [middle, words.middle, green.middleMetres], [front, words.front, green.frontMetres]] as const) {
    const tick = polyPath([[at[0] - 8, at[1]], [at[0] + 8, at[1]]], false);
    marks += path("casing", tick, 4) + path("tick", tick, 1.6);
    const lines: TextLine[] = [
      { text: word, mark: "note", size: SHEET.text.note, weight: "regular", italic: true },
      { text: whole(metres), mark: "figure", size: SHEET.text.figure, weight: "heavy" },
    ];
    const { width, height } = blockSize(lines);
    const below = at === front ? 1 : at === back ? -1 : 0;
    const placed = placer.place({
      width,
      height,
      candidates: [
        ...(below === 0 ? [] : [{ at: [at[0], at[1] + below * (height / 2 + 5)] as Point, cost: 0 }]),
        { at: [at[0] + 12 + width / 2, at[1]], cost: 100 },
        { at: [at[0] - 12 - width / 2, at[1]], cost: 101 },
      ],
    });
    if (placed) lettering.set(lines, placed.at);
  }
  // Dimension lines stand off the outline, below for the width and at the left for the depth.
  const [lowest, leftmost] = [Math.min(sheet.map[3] - 14, front[1] + 44), Math.max(sheet.map[0] + 22, left[0] - 22)];
  marks += dimension([leftmost, front[1]], [leftmost, back[1]], context) + dimension([left[0], lowest], [right[0], lowest], context);
  for (const [at, metres] of [[[leftmost, (front[1] + back[1]) / 2], green.depthMetres], [[(left[0] + right[0]) / 2, lowest], green.widthMetres]] as const) {
    lettering.set([{ text: whole(metres), mark: "figure", size: SHEET.text.figure, weight: "heavy" }], at);
  }
  return `${marks}${lettering}`;
}

/** A line with feet at both ends, as on a working drawing. */
function dimension(a: Point, b: Point, { paint }: PlateContext): string {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const [nx, ny] = [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
  const foot = (p: Point): string => polyPath([[p[0] - nx * 4, p[1] - ny * 4], [p[0] + nx * 4, p[1] + ny * 4]], false);
  const d = polyPath([a, b], false) + foot(a) + foot(b);
  return element("path", { ...paint("casing"), "stroke-width": 3.5, opacity: 0.6, d }) + element("path", { ...paint("tick"), "stroke-width": 0.9, d });
}

