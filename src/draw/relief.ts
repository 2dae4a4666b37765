/** Height on the sheet: shaded relief, contours, hachures on scarps; only where the course has a DEM. */
import type { Box } from "../geo/box.ts";
import type { Point } from "../geo/position.ts";
import type { Contour } from "../terrain/contours.ts";
import { gradientAt, isSteeper } from "../terrain/slope.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { clipLine } from "./clip.ts";
import type { Cover } from "./cover.ts";
import { evenly, LIGHT } from "./curves.ts";
import { textAttributes, type TextLine } from "./lettering.ts";
import type { PlateContext } from "./plate-context.ts";
import { strew, type Strewn } from "./scatter.ts";
import { element, escapeXml, num, polyPaths, smoothPath } from "./svg.ts";

export interface PlateGround {
  /** Contours around the hole, in the course's plane. */
  readonly contours?: readonly Contour[];
  /** Metres between them; each fifth level is drawn stronger and numbered. */
  readonly intervalMetres?: number;
  /** Closer contours on the green itself, every quarter metre. */
  readonly greenContours?: readonly Contour[];
  /**
   * Relief as a mostly clear picture (shade and light with alpha, so it lies over any theme):
   * an address on the site or a `data:` address, and the plane positions of its upper left,
   * upper right and lower left corner; it may be turned against the sheet.
   */
  readonly relief?: {
    readonly href: string;
    readonly upperLeft: Point;
    readonly upperRight: Point;
    readonly lowerLeft: Point;
  };
  /** Heights, for hachures on what is too steep for contours to say. */
  readonly grid?: HeightGrid;
}

export function drawRelief({ sheet }: PlateContext, ground: PlateGround | undefined): string {
  if (!ground?.relief) return "";
  const { href, upperLeft, upperRight, lowerLeft } = ground.relief;
  const [o, r, d] = [upperLeft, upperRight, lowerLeft].map(sheet.toSheet) as [Point, Point, Point];
  // Drawn as a square of 100 and laid on its corners: pictures a unit wide are blurred by some renderers.
  const side = 100;
  const matrix = [(r[0] - o[0]) / side, (r[1] - o[1]) / side, (d[0] - o[0]) / side, (d[1] - o[1]) / side]
    .map((n) => String(Math.round(n * 1e4) / 1e4))
    .concat(num(o[0]), num(o[1]));
  return element("image", {
    class: "plate-relief",
    href,
    width: side,
    height: side,
    preserveAspectRatio: "none",
    transform: `matrix(${matrix.join(" ")})`,
  });
}

/** A stretch of a contour that is drawn. */
export interface ContourRun {
  readonly heightMetres: number;
  readonly knots: readonly Point[];
}

/** Contours on the sheet where they are drawn: not in water, and not where hachures say it better. */
export function contourRuns(
  { sheet, scene, composition: c, cover }: PlateContext,
  ground: PlateGround | undefined,
): ContourRun[] {
  const kept = (p: Point): boolean =>
    cover.at(p) !== "water" && !(ground?.grid && isSteeper(ground.grid, sheet.toPlane(p), CLIFF_PERCENT));
  return (ground?.contours ?? []).flatMap(({ heightMetres, points }) =>
    clipLine(evenly(points.map(sheet.toSheet), c.knots * 3.2, false), scene.box)
      .flatMap((piece) => partsWhere(piece, kept))
      .filter((knots) => knots.length >= 4)
      .map((knots) => ({ heightMetres, knots })),
  );
}

/** Contours hair-thin, each fifth stronger and numbered where there is room. */
export function drawContours(
  context: PlateContext,
  ground: PlateGround | undefined,
  keepOff: readonly Box[],
  runs: readonly ContourRun[] = contourRuns(context, ground),
): string {
  const { sheet, composition: c, paint } = context;
  const interval = ground?.intervalMetres ?? 1;
  const plain: (readonly Point[])[] = [];
  const plainLevels: number[] = [];
  const index: (readonly Point[])[] = [];
  const figures: string[] = [];
  const numbered: Point[] = [];
  for (const { heightMetres, knots } of runs) {
    const strong = Math.round(heightMetres / interval) % 5 === 0;
    (strong ? index : plain).push(knots);
    if (!strong) plainLevels.push(Math.round(heightMetres / interval));
    if (!strong || knots.length < 8) continue;
    for (let i = 4; i < knots.length - 4; i += 3) {
      const p = knots[i]!;
      const [minX, minY, maxX, maxY] = sheet.map;
      const clear =
        p[0] > minX + 14 &&
        p[0] < maxX - 14 &&
        p[1] > minY + 12 &&
        p[1] < maxY - 12 &&
        !keepOff.some((box) => p[0] > box[0] - 12 && p[0] < box[2] + 12 && p[1] > box[1] - 10 && p[1] < box[3] + 10) &&
        !numbered.some((q) => Math.hypot(q[0] - p[0], q[1] - p[1]) < 130 * c.drawing);
      if (!clear) continue;
      const [a, b] = [knots[i - 1]!, knots[i + 1]!];
      let angle = (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
      if (angle > 90) angle -= 180;
      if (angle < -90) angle += 180;
      const text: TextLine = {
        text: num(heightMetres),
        mark: "contour-figure",
        size: c.text.note * 0.86,
        weight: "regular",
        italic: true,
      };
      figures.push(
        element(
          "text",
          {
            transform: `translate(${num(p[0])} ${num(p[1])}) rotate(${num(angle)})`,
            y: num(text.size * 0.32),
            "text-anchor": "middle",
            ...textAttributes(text, paint, 2.5),
          },
          escapeXml(text.text),
        ),
      );
      numbered.push(p);
      break;
    }
  }
  const d = (lines: readonly (readonly Point[])[]): string => lines.map((line) => smoothPath(line, false)).join("");
  // Hilly ground would be a thicket of lines: there only the stronger contours are kept.
  const length = (lines: readonly (readonly Point[])[]): number =>
    lines.reduce((sum, line) => sum + line.length * c.knots * 3.2, 0);
  const crowded = length(plain) + length(index) > c.mostContour;
  const lines = crowded ? plain.filter((_, i) => plainLevels[i]! % 2 === 0) : plain;
  const fewer = crowded && length(lines) + length(index) > c.mostContour ? [] : lines;
  return (
    (fewer.length > 0
      ? element("path", { ...paint("contour"), "stroke-width": c.hair, opacity: 0.6, d: d(fewer) })
      : "") +
    (index.length > 0
      ? element("path", { ...paint("contour"), "stroke-width": c.fine, opacity: 0.8, d: d(index) })
      : "") +
    figures.join("")
  );
}

/** The parts of a line whose points pass. */
function partsWhere(line: readonly Point[], kept: (point: Point) => boolean): Point[][] {
  const parts: Point[][] = [[]];
  for (const p of line) {
    if (kept(p)) parts[parts.length - 1]!.push(p);
    else if (parts[parts.length - 1]!.length > 0) parts.push([]);
  }
  return parts;
}

/** Quarter-metre contours on the green. */
export function drawGreenContours(
  { sheet, scene, composition: c, paint }: PlateContext,
  ground: PlateGround | undefined,
): string {
  if (!ground?.greenContours || ground.greenContours.length === 0) return "";
  const d = ground.greenContours
    .flatMap(({ points }) => clipLine(points.map(sheet.toSheet), scene.box))
    .map((piece) => evenly(piece, c.knots, false))
    .filter((knots) => knots.length > 2)
    .map((knots) => smoothPath(knots, false))
    .join("");
  return d ? element("path", { ...paint("contour"), "stroke-width": c.hair, opacity: 0.75, d }) : "";
}

/** Ground that falls more than this is hachured: steeper than one likes to walk down. */
const SCARP_PERCENT = 26;
/** Where it falls more than this contours would run together, and give way to the hachures. */
const CLIFF_PERCENT = 42;

/** Ground on which hachures are drawn. */
const mayFall = (cover: Cover): boolean =>
  cover === "open" || cover === "rough" || cover === "strand" || cover === "heath";

/** A place on a scarp, and how steeply it falls which way on the sheet. */
interface ScarpMark extends Strewn {
  readonly percent: number;
  readonly down: Point;
}

/** Places on scarps and dunes that hachures may begin at. */
export function scarpMarks(
  { sheet, composition: c, cover }: PlateContext,
  ground: PlateGround | undefined,
): ScarpMark[] {
  const grid = ground?.grid;
  if (!grid) return [];
  const gap = 4.8 * c.drawing;
  const [origin, east, north] = [sheet.toSheet([0, 0]), sheet.toSheet([1, 0]), sheet.toSheet([0, 1])];
  const slopeAt = (p: Point): { percent: number; down: Point } | undefined => {
    const gradient = gradientAt(grid, sheet.toPlane(p));
    if (!gradient) return undefined;
    const percent = Math.hypot(gradient.east, gradient.north) * 100;
    const x = -gradient.east * (east[0] - origin[0]) - gradient.north * (north[0] - origin[0]);
    const y = -gradient.east * (east[1] - origin[1]) - gradient.north * (north[1] - origin[1]);
    const size = Math.hypot(x, y) || 1;
    return { percent, down: [x / size, y / size] };
  };
  const spacing = (p: Point): number => {
    if (!mayFall(cover.at(p)) || !isSteeper(grid, sheet.toPlane(p), SCARP_PERCENT)) return 0;
    return gap * Math.max(1, 1.8 - slopeAt(p)!.percent / 90);
  };
  return strew(sheet, gap, 53, spacing, { cover, on: mayFall }).map((place) => ({
    ...place,
    ...slopeAt(place.point)!,
  }));
}

/** Hachures down the slope: longer and heavier the steeper, lighter where the light falls. */
export function drawScarps(context: PlateContext, marks: readonly ScarpMark[]): string {
  const { composition: c, paint, cover, px } = context;
  // Too small for their taper to be seen: strokes of three weights, at half the bytes of a wedge.
  const strokes: [Point[][], Point[][], Point[][]] = [[], [], []];
  // Steep sheets are thinned evenly, by lot, and what is left is drawn longer.
  const share = Math.min(1, c.mostHachures / marks.length);
  for (const { point, lot, percent, down } of marks) {
    if (lot >= share) continue;
    const shade = 0.5 - 0.5 * (down[0] * LIGHT[0] + down[1] * LIGHT[1]);
    const length =
      Math.max(4.5 * c.drawing, Math.min(9 * c.drawing, px(2.6))) * (0.7 + percent / 140) * (1 + 0.5 * (1 - share));
    const foot: Point = [point[0] + down[0] * length, point[1] + down[1] * length];
    if (cover.at(foot) === "water") continue;
    const weight = shade < 0.36 ? 0 : shade < 0.68 ? 1 : 2;
    strokes[weight].push([point, foot]);
  }
  return element(
    "g",
    { ...paint("scarp"), opacity: 0.85 },
    strokes
      .map((some, weight) =>
        some.length > 0
          ? element("path", { "stroke-width": c.medium * [0.4, 0.66, 0.95][weight]!, d: polyPaths(some, false, 5) })
          : "",
      )
      .join(""),
  );
}
