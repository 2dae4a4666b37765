/**
 * The green by itself, the approach coming from below: outline, quarter-metre contours,
 * arrows down the slope, front, middle and back, and its size.
 *
 * Its natural size is 1:500 at 96 sheet units to the inch, so that printed as it stands it
 * keeps under the scale to which the Rules of Golf hold printed greens (3/8 inch to 5
 * yards, 1:480; clarification 4.3a/1).
 */
import * as attr from "../contract/attributes.ts";
import { chords } from "../geo/area.ts";
import { inUnit, type LengthUnit } from "../geo/units.ts";
import type { Area, Point } from "../geo/position.ts";
import { along, directionOfBearing, distanceMetres, dot, rightOf } from "../geo/vector.ts";
import type { GreenLie } from "../measure/green-lie.ts";
import { greenOf } from "../measure/hole.ts";
import type { GreenFigures, MeasuredHole } from "../measure/types.ts";
import { contoursOf } from "../terrain/contours.ts";
import { boundsOf, gridOf, type HeightGrid } from "../terrain/grid.ts";
import { pointsInside } from "../terrain/region.ts";
import { heightAt } from "../terrain/sample.ts";
import { gradientAt } from "../terrain/slope.ts";
import { COMPOSITIONS, type Composition } from "./composition.ts";
import { CoverGrid } from "./cover.ts";
import { evenly } from "./curves.ts";
import { drawBunkers, drawFairways, drawGreens, drawWater } from "./ground.ts";
import { textAttributes, type TextLine } from "./lettering.ts";
import { painter, type Painter, type PlateTheme } from "./palette.ts";
import type { PlateContext } from "./plate-context.ts";
import type { GroundDrawingWords } from "../words/words.ts";
import { sceneOf } from "./scene.ts";
import { drawnTee, sheetOf, type Sheet } from "./sheet.ts";
import { element, escapeXml, num, polyPath, smoothPath } from "./svg.ts";
import { flagOnGreen } from "./symbols.ts";
import { textWidth } from "./text-width.ts";

/** 1:500: a metre is 2 mm, at 96 sheet units to 25.4 mm. */
export const GREEN_SHEET_PX_PER_METRE = (96 / 25.4) * 2;

export const GREEN_CONTOUR_INTERVAL_METRES = 0.25;

export interface GreenSheetOptions {
  readonly idPrefix: string;
  readonly unit: LengthUnit;
  /** The tee set whose approach comes from below; the course's default when left out. */
  readonly tee?: string;
  /** With it contours and arrows are drawn, and what the lie says of front and tiers. */
  readonly ground?: { readonly grid: HeightGrid; readonly lie: GreenLie | undefined };
  readonly theme?: PlateTheme;
  readonly words: GroundDrawingWords;
}

export interface GreenSheet {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  /**
   * Sheet units to a metre of ground: {@link GREEN_SHEET_PX_PER_METRE}, or fewer where the green is too wide
   * for that.
   */
  readonly pxPerMetre: number;
}

const COMPOSITION: Composition = {
  ...COMPOSITIONS.phone,
  knots: 7,
  drawing: 1.25,
  hair: 0.5,
  fine: 0.8,
  waterLines: [3, 7, 12, 18],
};

/** Ground shown about the green: left and right, and short and long. */
const AROUND_METRES = 6.5;
/** Room for the dimension lines at the right and the foot. */
const DIMENSIONS = 30;
const MARGIN = 6;
const MOST_WIDTH = 374;

/** Less slope than this has no arrow: a putt hardly notices (common practice, no source). */
const LEAST_ARROW_PERCENT = 1;
const ARROW_METRES = 4.4;

/** Draws a hole's green. Same hole and options, same bytes. */
export function drawGreenSheet(hole: MeasuredHole, options: GreenSheetOptions): GreenSheet {
  const { words } = options;
  const paint = painter(options.theme ?? "light");
  const { green } = drawnTee(hole, options.tee);
  const outline = greenOf(hole.placed, hole.hole);
  const sheet = lay(outline, green);
  const scene = sceneOf(hole.placed.values(), sheet, COMPOSITION.knots);
  const cover = new CoverGrid(scene.box, 3);
  for (const { rings } of scene.areas("bunker")) cover.fill(rings, "bunker");
  const context: PlateContext = {
    sheet,
    scene,
    composition: COMPOSITION,
    cover,
    paint,
    id: (name) => `${options.idPrefix}-${name}`,
    px: (metres) => metres * sheet.pxPerMetre,
  };
  const [minX, minY, maxX, maxY] = sheet.map;
  const window = element(
    "clipPath",
    { id: context.id("map") },
    element("rect", { x: num(minX), y: num(minY), width: num(maxX - minX), height: num(maxY - minY) }),
  );
  const approach = [along(green.front, green.approach, -60), green.middle].map(sheet.toSheet);
  const { ground } = options;
  const slopes = ground ? drawSlopes(context, outline, green, ground, words) : "";
  const map =
    element("rect", {
      ...paint("ground"),
      x: num(minX),
      y: num(minY),
      width: num(maxX - minX),
      height: num(maxY - minY),
    }) +
    drawWater(context) +
    drawFairways(context, approach) +
    drawGreens(context) +
    drawBunkers(context) +
    // What plain-figures mode takes away: slope is more than distance and direction.
    (slopes ? element("g", { [attr.beyondDistance]: "" }, slopes) : "") +
    drawMarks(context, green);
  const titles = { title: context.id("title"), description: context.id("description") };
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" class="plate plate-green-sheet" viewBox="0 0 ${num(sheet.width)} ${num(sheet.height)}" width="${num(sheet.width)}" height="${num(sheet.height)}" role="img" aria-labelledby="${escapeXml(titles.title)}" aria-describedby="${escapeXml(titles.description)}" font-family="Besley, Georgia, 'Times New Roman', serif">` +
    element("title", { id: titles.title }, escapeXml(words.greenTitle({ hole: hole.hole.number }))) +
    element("desc", { id: titles.description }, escapeXml(words.greenDescription)) +
    element("defs", {}, window) +
    element("rect", { ...paint("paper"), width: num(sheet.width), height: num(sheet.height) }) +
    element("g", { "clip-path": `url(#${context.id("map")})` }, map) +
    [0, 3.2]
      .map((gap, i) =>
        element("rect", {
          ...paint("frame"),
          x: num(minX - gap),
          y: num(minY - gap),
          width: num(maxX - minX + 2 * gap),
          height: num(maxY - minY + 2 * gap),
          "stroke-width": i === 0 ? 0.7 : 1.2,
        }),
      )
      .join("") +
    drawSizes(context, green, options.unit, words) +
    "</svg>";
  return { svg, width: sheet.width, height: sheet.height, pxPerMetre: sheet.pxPerMetre };
}

/** The green in the middle, the approach up the sheet, at 1:500 or as large as fits a phone. */
function lay(outline: Area, { approach }: GreenFigures): Sheet {
  const right = rightOf(approach);
  const across = outline[0]!.map((point) => dot(point, right));
  const up = outline[0]!.map((point) => dot(point, approach));
  const [left, rightmost, low, high] = [Math.min(...across), Math.max(...across), Math.min(...up), Math.max(...up)];
  const [wide, tall] = [rightmost - left + 2 * AROUND_METRES, high - low + 2 * AROUND_METRES];
  const pxPerMetre = Math.min(GREEN_SHEET_PX_PER_METRE, (MOST_WIDTH - MARGIN - DIMENSIONS) / wide);
  const [width, height] = [Math.round(wide * pxPerMetre), Math.round(tall * pxPerMetre)];
  return sheetOf({
    map: [MARGIN, MARGIN, MARGIN + width, MARGIN + height],
    up: approach,
    pxPerMetre,
    centre: [(left + rightmost) / 2, (low + high) / 2],
    width: width + MARGIN + DIMENSIONS,
    height: height + MARGIN + DIMENSIONS,
  });
}

const set = (paint: Painter, line: TextLine, [x, y]: Point, anchor: "start" | "middle" | "end", halo = 2.6): string =>
  element(
    "text",
    {
      x: num(x),
      y: num(y),
      ...(anchor === "start" ? {} : { "text-anchor": anchor }),
      ...textAttributes(line, paint, halo),
    },
    escapeXml(line.text),
  );

/** Contours, arrows, the false front and the bank between tiers. */
function drawSlopes(
  context: PlateContext,
  outline: Area,
  green: GreenFigures,
  { grid, lie }: NonNullable<GreenSheetOptions["ground"]>,
  words: GroundDrawingWords,
): string {
  const { sheet, paint } = context;
  const fine = finely(grid, outline);
  const contours = fine
    ? contoursOf(fine, { intervalMetres: GREEN_CONTOUR_INTERVAL_METRES, within: outline, leastLengthMetres: 2 })
    : [];
  const d = contours
    .map(({ points }) => evenly(points.map(sheet.toSheet), 11, false))
    .filter((knots) => knots.length > 1)
    .map((knots) => smoothPath(knots, false))
    .join("");
  let out = d ? element("path", { ...paint("contour"), "stroke-width": 0.75, opacity: 0.9, d }) : "";
  const arrows = fine ? pointsInside(outline, ARROW_METRES, 120).flatMap((point) => arrow(sheet, fine, point)) : [];
  if (arrows.length > 0) out += element("path", { ...paint("hachure"), opacity: 0.9, d: arrows.join("") });
  if (lie?.falseFront) {
    const line = across(outline, green, along(green.front, green.approach, lie.falseFront.depthMetres));
    if (line) out += dashed(context, line) + label(context, line, words.falseFront, 10);
  }
  if (lie?.tiers) {
    const { bank, upDegrees } = lie.tiers;
    const up = directionOfBearing(upDegrees);
    const side = rightOf(up);
    const [chord] = chords([outline], bank.point, side);
    if (chord) {
      const line: readonly [Point, Point] = [along(bank.point, side, chord[0]), along(bank.point, side, chord[1])];
      const beside = (metres: number): Point =>
        sheet.toSheet(along(along(line[0], side, (chord[1] - chord[0]) * 0.24), up, metres));
      const text = (words_: string): TextLine => ({
        text: words_,
        mark: "note",
        size: 10.5,
        weight: "regular",
        italic: true,
      });
      out +=
        dashed(context, line) +
        set(paint, text(words.upperTier), nudged(beside(3.2)), "middle") +
        set(paint, text(words.lowerTier), nudged(beside(-3.2)), "middle");
    }
  }
  return out;
}

const nudged = ([x, y]: Point): Point => [x, y + 3.5];

/**
 * The grid about an area at a quarter of its step, by bicubic interpolation: contours of the bare grid run
 * straight from height to height.
 */
function finely(grid: HeightGrid, outline: Area): HeightGrid | undefined {
  const step = Math.max(0.25, grid.stepMetres / 4);
  const xs = outline[0]!.map(([x]) => x);
  const ys = outline[0]!.map(([, y]) => y);
  const model = boundsOf(grid);
  const bounds = {
    west: Math.max(model.west, Math.min(...xs) - 3),
    east: Math.min(model.east, Math.max(...xs) + 3),
    south: Math.max(model.south, Math.min(...ys) - 3),
    north: Math.min(model.north, Math.max(...ys) + 3),
  };
  if (bounds.east - bounds.west < 2 * step || bounds.north - bounds.south < 2 * step) return undefined;
  return gridOf(bounds, step, (point) => heightAt(grid, point, "bicubic"));
}

/** A small arrow down the slope, longer the steeper, as a filled shape. */
function arrow(sheet: Sheet, grid: HeightGrid, point: Point): string[] {
  const gradient = gradientAt(grid, point);
  if (!gradient) return [];
  const rise = Math.hypot(gradient.east, gradient.north);
  if (rise * 100 < LEAST_ARROW_PERCENT) return [];
  const down: Point = [-gradient.east / rise, -gradient.north / rise];
  const [x, y] = sheet.toSheet(point);
  const [tx, ty] = sheet.toSheet([point[0] + down[0], point[1] + down[1]]);
  const size = Math.hypot(tx - x, ty - y) || 1;
  const [ux, uy] = [(tx - x) / size, (ty - y) / size];
  const length = Math.min(17, 6 + rise * 100 * 1.5);
  const at = (forward: number, side: number): Point => [
    x + ux * (forward - length / 2) - uy * side,
    y + uy * (forward - length / 2) + ux * side,
  ];
  return [
    polyPath(
      [
        at(0, 0.35),
        at(length - 4.4, 0.5),
        at(length - 4.8, 2),
        at(length, 0),
        at(length - 4.8, -2),
        at(length - 4.4, -0.5),
        at(0, -0.35),
      ],
      true,
    ),
  ];
}

/** The chord across the green, square to the approach, at a point. */
function across(outline: Area, { approach }: GreenFigures, at: Point): readonly [Point, Point] | undefined {
  const right = rightOf(approach);
  const found = chords([outline], at, right);
  const chord = found.find(([enter, exit]) => enter <= 0 && exit >= 0) ?? found[0];
  return chord && [along(at, right, chord[0]), along(at, right, chord[1])];
}

const dashed = ({ sheet, paint }: PlateContext, line: readonly [Point, Point]): string => {
  const d = polyPath(line.map(sheet.toSheet), false);
  return (
    element("path", { ...paint("casing"), "stroke-width": 2.6, opacity: 0.7, d }) +
    element("path", { ...paint("leader"), "stroke-width": 1, "stroke-dasharray": "4 2.5", d })
  );
};

function label({ sheet, paint }: PlateContext, [a, b]: readonly [Point, Point], text: string, below: number): string {
  const [p, q] = [sheet.toSheet(a), sheet.toSheet(b)];
  return set(
    paint,
    { text, mark: "note", size: 10.5, weight: "regular", italic: true },
    [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2 + below],
    "middle",
  );
}

/** Front, middle and back on the line of approach; the flag stands in the middle. */
function drawMarks({ sheet, paint }: PlateContext, { front, middle, back, approach }: GreenFigures): string {
  const [f, m, b] = [front, middle, back].map(sheet.toSheet) as [Point, Point, Point];
  const foot = sheet.toSheet(along(front, approach, -20));
  return (
    element("path", {
      ...paint("line"),
      "stroke-width": 1,
      "stroke-dasharray": "6 4",
      d: polyPath([foot, f], false),
    }) +
    element("path", {
      ...paint("leader"),
      "stroke-width": 0.6,
      "stroke-dasharray": "1.2 3",
      d: polyPath([f, b], false),
    }) +
    [f, b]
      .map(([x, y]) => element("path", { ...paint("tick"), "stroke-width": 1.3, d: `M${num(x - 6)} ${num(y)}h12` }))
      .join("") +
    flagOnGreen(paint, 1.25, { front: f, middle: m, back: b })
  );
}

/** Depth up the right side, with front, middle and back; width along the foot. */
function drawSizes(
  { sheet, paint }: PlateContext,
  green: GreenFigures,
  unit: LengthUnit,
  words: GroundDrawingWords,
): string {
  const [, , maxX, maxY] = sheet.map;
  const [f, m, b] = [green.front, green.middle, green.back].map(sheet.toSheet) as [Point, Point, Point];
  const [l, r] = green.sides.map(sheet.toSheet) as [Point, Point];
  const x = maxX + 9.5;
  const y = maxY + 9.5;
  const ticks =
    [f, m, b].map((p) => `M${num(x - 3)} ${num(p[1])}h6`).join("") +
    [l, r].map((p) => `M${num(p[0])} ${num(y - 3)}v6`).join("");
  let out = element("path", {
    ...paint("tick"),
    "stroke-width": 0.8,
    d: `M${num(x)} ${num(f[1])}V${num(b[1])}M${num(l[0])} ${num(y)}H${num(r[0])}${ticks}`,
  });
  const upright = (
    text: string,
    at: number,
    line: Omit<TextLine, "text">,
    anchor: "start" | "middle" | "end",
  ): string =>
    element(
      "text",
      {
        transform: `translate(${num(x + 14)} ${num(at)}) rotate(-90)`,
        ...(anchor === "start" ? {} : { "text-anchor": anchor }),
        ...textAttributes({ ...line, text }, paint, 0),
      },
      escapeXml(text),
    );
  const small = { mark: "legend", size: 10.5, weight: "regular" } as const;
  // A shallow green's depth fills the line by itself.
  const room = f[1] - b[1] - textWidth(words.front, small.size) - textWidth(words.back, small.size);
  if (room > 50) out += upright(words.front, f[1], small, "start") + upright(words.back, b[1], small, "end");
  for (const shown of ["yards", "metres"] as const) {
    const whole = (metres: number): string => String(Math.round(inUnit(metres, shown)));
    const symbol = shown === "yards" ? "yd" : "m";
    const figure = { mark: "title", size: 12.5, weight: "heavy" } as const;
    out += element(
      "g",
      { class: "plate-unit", [attr.unit]: shown, ...(shown === unit ? {} : { display: "none" }) },
      upright(`${whole(green.depthMetres)} ${symbol}`, m[1], figure, "middle") +
        set(
          paint,
          { ...figure, text: `${whole(distanceMetres(green.sides[0], green.sides[1]))} ${symbol}` },
          [(l[0] + r[0]) / 2, y + 15],
          "middle",
          0,
        ),
    );
  }
  return out;
}
