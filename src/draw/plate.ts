/**
 * The plate: a hole's chart, drawn at build.
 *
 * Order on the sheet, bottom up: paper, ground, fairways, relief, water, contours, greens,
 * tees, bunkers, works, growth, bounds, figures that hold for every tee, figures of each tee set, names,
 * landmarks and flag, border and title block. Lettering is placed first, so that growth
 * keeps out from under it.
 */
import * as attr from "../contract/attributes.ts";
import { writePlane } from "../contract/values.ts";
import type { Box } from "../geo/box.ts";
import type { LengthUnit } from "../geo/units.ts";
import { locate } from "../geo/line.ts";
import type { Point } from "../geo/position.ts";
import type { MeasuredHole } from "../measure/types.ts";
import { COMPOSITIONS, thinned, type Composition, type CompositionName } from "./composition.ts";
import { drawTeeFigures, hazardsInPlay } from "./figures.ts";
import { drawFrame, drawGraduation, drawNorth, drawPaper, inBothUnits, NORTH_REACH } from "./furniture.ts";
import { drawBunkers, drawCover, drawFairways, drawGreens, drawTeeingGrounds, drawWater, sandDots, shoreLines } from "./ground.ts";
import { drawGrowth, drawHachures } from "./growth.ts";
import { drawLineOfPlay, drawTeeMarkers, group } from "./line-of-play.ts";
import { LabelPlacer } from "./labels.ts";
import { drawLandmarks, drawNames, type NamesDrawn } from "./names.ts";
import { painter, type PlateTheme } from "./palette.ts";
import { drawPhotoMarks } from "./photo-marks.ts";
import type { PlateContext } from "./plate-context.ts";
import { contourRuns, drawContours, drawGreenContours, drawRelief, drawScarps, scarpMarks, type PlateGround } from "./relief.ts";
import { layCover, stageOf, teePlates } from "./stage.ts";
import { drawnTee, layHole, type Sheet } from "./sheet.ts";
import { flag, flagOnGreen } from "./symbols.ts";
import { element, escapeXml, num } from "./svg.ts";
import { drawTitleBlock } from "./title-block.ts";
import { ENGLISH, type PlateWords } from "./words.ts";
import { drawUnitFigures } from "./unit-figures.ts";
import { drawBounds, drawWorks } from "./works.ts";

export interface PlateOptions {
  /** One of the site's, by name, or another. */
  readonly composition: CompositionName | Composition;
  /** Begins every id in the drawing; unique on its page. Letters, digits, hyphens. */
  readonly idPrefix: string;
  /** The unit shown first; both are drawn. */
  readonly unit: LengthUnit;
  /** The tee set shown first; the course's default when left out. */
  readonly tee?: string;
  /** Colours written into the drawing; a page's {@link plateCss} overrides them. */
  readonly theme?: PlateTheme;
  readonly ground?: PlateGround;
  readonly words?: PlateWords;
  /** Ids of elements on the page that name and describe the plate; without them it carries its own title and description. */
  readonly labelledBy?: string;
  readonly describedBy?: string;
}

export interface Plate {
  readonly svg: string;
  /** What is inside the svg element: for who shows parts of the sheet in elements of their own. */
  readonly body: string;
  /** Labels that found no room from the tee and in the unit shown first, in words. */
  readonly unplaced: readonly string[];
  readonly width: number;
  readonly height: number;
  /** Where the lettering shown first stands on the sheet, and the figures and drawings it keeps clear of. */
  readonly lettering: { readonly labels: readonly Box[]; readonly blocked: readonly Box[] };
}

/** Families of a plate's lettering where no style sheet reaches it. */
export const PLATE_FAMILY = "Besley, Georgia, 'Times New Roman', serif";

const UNITS: readonly LengthUnit[] = ["yards", "metres"];

/** Characters a plate may have: some 23 KB once compressed; less for the one a hole's page holds itself. */
const mostCharacters = ({ name }: Composition): number => (name === "phone" ? 76_000 : 92_000);
/** Shares of its texture that a heavy plate is redrawn with until it is light enough. */
const THINNING = [1, 0.85, 0.65, 0.4, 0.2] as const;

/**
 * Draws a hole's plate. Same hole and options, same bytes. Ground so rich that the plate
 * would be heavy to load is drawn with less texture: fewer dots, hachures and contours,
 * never fewer figures.
 *
 * @throws RangeError when the hole has no tees, or the id prefix cannot begin an id.
 */
export function drawPlate(hole: MeasuredHole, options: PlateOptions): Plate {
  const composition = typeof options.composition === "string" ? COMPOSITIONS[options.composition] : options.composition;
  const draw = layOut(hole, options, composition);
  let plate: Plate | undefined;
  for (const share of THINNING) {
    plate = draw(thinned(composition, share));
    // A relief picture handed in as a data address is not the drawing's own weight.
    if (plate.svg.length - (options.ground?.relief?.href.length ?? 0) <= mostCharacters(composition)) break;
  }
  return plate!;
}

/** Everything but the texture, found and drawn once; then the plate with as much texture as one likes. */
function layOut(hole: MeasuredHole, options: PlateOptions, composition: Composition): (texture: Composition) => Plate {
  const words = options.words ?? ENGLISH;
  const theme = options.theme ?? "light";
  const paint = painter(theme);
  const sheet = layHole(hole, composition);
  const context = stageOf(hole.placed.values(), sheet, composition, theme, options.idPrefix);
  const { cover } = context;
  const first = drawnTee(hole, options.tee);
  const longest = hole.tees[0]!;
  const lineOnSheet = longest.line.points.map(sheet.toSheet);
  const plates = teePlates(context, hole);
  layCover(context, plates);

  // Lettering, most important first.
  const placer = new LabelPlacer([sheet.map[0] + 3, sheet.map[1] + 3, sheet.map[2] - 3, sheet.map[3] - 3], cover);
  const pin = pinOf(hole);
  const flagAt = sheet.toSheet(pin ?? first.green.middle);
  const flagScale = composition.drawing * 1.05;
  placer.block([flagAt[0] - 3 * flagScale, flagAt[1] - 23 * flagScale, flagAt[0] + 13 * flagScale, flagAt[1] + 2 * flagScale]);
  for (const tee of hole.tees) {
    const [x, y] = sheet.toSheet(tee.marker);
    const r = 5.5 * composition.drawing;
    placer.block([x - r, y - r, x + r, y + r]);
  }
  for (const bend of longest.bends) {
    const [x, y] = sheet.toSheet(bend.point);
    placer.block([x - 6, y - 6, x + 6, y + 6]);
  }
  // Only where the photos themselves are near.
  const photos = composition.keep.everyTee ? drawPhotoMarks(context, hole) : undefined;
  for (const box of photos?.boxes ?? []) placer.block(box);
  for (let i = 0; i < hole.tees.length; i++) placer.avoid(hole.tees[i]!.line.points.map(sheet.toSheet), i === 0 ? 60 : 6);
  const landmarks = drawLandmarks(context, hole, first, placer);
  const north = placeNorth(context, placer, flagAt);

  const units = composition.keep.everyTee ? UNITS : [options.unit];
  const branches = units.map((unit) => {
    const placerOfUnit = placer.branch();
    return { unit, placer: placerOfUnit, figures: drawUnitFigures(context, hole, first, unit, placerOfUnit) };
  });
  const tees = composition.keep.everyTee ? hole.tees : [first];
  const led = new Set(tees.flatMap((tee) => hazardsInPlay(tee, hole).slice(0, composition.leaders).map(({ id }) => id)));
  // Names must suit every unit's figures, so they are placed against all of them.
  const namesPlacer = placer.branch();
  for (const branch of branches) for (const box of branch.placer.taken) namesPlacer.block(box);
  const names: NamesDrawn = drawNames(context, led, words, namesPlacer);

  const unplaced: string[] = [...landmarks.unplaced, ...names.unplaced];
  let lettering: Plate["lettering"] = { labels: [], blocked: [] };
  const groups: string[] = [];
  for (const { unit, placer: unitPlacer, figures } of branches) {
    const shownUnit = unit === options.unit;
    for (const tee of tees) {
      const shown = shownUnit && tee === first;
      const own = unitPlacer.branch();
      for (const box of names.boxes) own.block(box);
      const drawn = drawTeeFigures(context, hole, tee, unit, own);
      groups.push(group("plate-tee", { [attr.tee]: tee.tee.id, [attr.unit]: unit }, shown, drawn.svg));
      if (shown) {
        unplaced.push(...figures.unplaced, ...drawn.unplaced);
        lettering = { labels: [...own.placed, ...names.labels], blocked: own.taken.filter((box) => !own.placed.includes(box) && !names.boxes.includes(box)) };
      }
    }
    // Over the arcs: a boxed figure breaks the arc behind it.
    groups.push(group("plate-unit", { [attr.unit]: unit }, shownUnit, figures.svg));
  }

  const lines = tees
    .map((tee) => group("plate-tee", { [attr.tee]: tee.tee.id }, tee === first, drawLineOfPlay(context, tee)))
    .join("");
  const clip = context.id("map");
  const [minX, minY, maxX, maxY] = sheet.map;
  const window = element("clipPath", { id: clip }, element("rect", { x: num(minX), y: num(minY), width: num(maxX - minX), height: num(maxY - minY) }));
  const titleId = context.id("title");
  const descriptionId = context.id("description");
  const head =
    (options.labelledBy ? "" : element("title", { id: titleId }, escapeXml(words.plateTitle(hole.hole.number, hole.hole.name)))) +
    (options.describedBy ? "" : element("desc", { id: descriptionId }, escapeXml(words.plateDescription))) +
    element("defs", {}, window) +
    drawPaper(sheet, paint);
  const mown =
    drawTeeingGrounds(context, plates) +
    drawGreens(context, drawGreenContours(context, options.ground)) +
    drawBunkers(context) +
    drawWorks(context);
  const figures =
    drawBounds(context, lineOnSheet, context.px(95)) +
    lines +
    groups.join("") +
    drawTeeMarkers(context, hole, first) +
    (photos?.svg ?? "") +
    names.svg +
    landmarks.svg +
    (pin
      ? element("g", { transform: `translate(${num(flagAt[0])} ${num(flagAt[1])})` }, flag(paint, flagScale))
      : flagOnGreen(paint, flagScale, { front: sheet.toSheet(first.green.front), middle: flagAt, back: sheet.toSheet(first.green.back) })) +
    (north ? drawNorth(north, sheet, Math.sqrt(composition.drawing), paint, words.north) : "");
  const fairways = drawFairways(context, lineOnSheet) + drawRelief(context, options.ground);
  const hachures = drawHachures(context);
  const furniture =
    (composition.keep.everyTee ? inBothUnits(options.unit, (unit) => drawGraduation(sheet, composition, unit, paint)) : drawGraduation(sheet, composition, options.unit, paint)) +
    drawFrame(sheet, composition, paint) +
    drawTitleBlock(hole, first, sheet, composition, options.unit, paint, words);
  const dots = sandDots(context);
  const shores = shoreLines(context);
  const contours = contourRuns(context, options.ground);
  const scarps = scarpMarks(context, options.ground);
  const offPlay = (p: Point): number => Math.abs(locate(longest.line, sheet.toPlane(p)).offset) * sheet.pxPerMetre;
  return (texture) => {
    const textured = { ...context, composition: texture };
    const map =
      drawCover(textured, dots) +
      fairways +
      // Over the fairways, since burns cross them; over the relief, since water is level.
      drawWater(textured, shores) +
      drawContours(textured, options.ground, placer.taken, contours) +
      drawScarps(textured, scarps) +
      hachures +
      mown +
      drawGrowth(textured, [...lettering.labels, ...lettering.blocked], offPlay) +
      figures;
    const body = head + element("g", { "clip-path": `url(#${clip})` }, map) + furniture;
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" class="plate plate-${composition.name}" viewBox="0 0 ${num(sheet.width)} ${num(sheet.height)}" width="${num(sheet.width)}" height="${num(sheet.height)}" ${attr.plane}="${planeText(sheet)}" role="img" aria-labelledby="${escapeXml(options.labelledBy ?? titleId)}" aria-describedby="${escapeXml(options.describedBy ?? descriptionId)}" font-family="${PLATE_FAMILY}">${body}</svg>`;
    return { svg, body, unplaced, width: sheet.width, height: sheet.height, lettering };
  };
}

/** The sheet's place on the measuring plane, six numbers of an affine transform: so a browser can draw on it what it measures. */
function planeText({ toSheet }: Sheet): string {
  const [[e, f], [a, b], [c, d]] = [toSheet([0, 0]), toSheet([1, 0]), toSheet([0, 1])] as const;
  return writePlane([a - e, b - f, c - e, d - f, e, f], num);
}

/** Today's hole, where the content gives it. */
function pinOf(hole: MeasuredHole): Point | undefined {
  for (const { feature, shape, shared } of hole.placed.values()) {
    if (feature.kind === "pin" && !shared && shape.type === "points") return shape.points[0];
  }
  return undefined;
}

/** The corner, or the edge, where a north arrow covers least. */
function placeNorth({ sheet, composition }: PlateContext, placer: LabelPlacer, flagAt: Point): Point | undefined {
  const reach = NORTH_REACH * Math.sqrt(composition.drawing) + 3;
  const [minX, minY, maxX, maxY] = sheet.map;
  const places: Point[] = [];
  for (const x of [maxX - reach, minX + reach]) {
    for (let y = minY + reach; y <= maxY - reach; y += reach) places.push([x, y]);
  }
  const side = flagAt[0] > (minX + maxX) / 2 ? minX : maxX;
  return placer.place({
    width: reach * 2 - 8,
    height: reach * 2 - 8,
    candidates: places.map((at) => ({ at, cost: ((at[1] - minY) / (maxY - minY)) * 30 + Math.abs(at[0] - side) * 0.02 })),
  })?.at;
}
