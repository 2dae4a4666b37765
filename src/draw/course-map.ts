/** The whole course on one sheet, north up: holes with their numbers, each a link when wanted. */
import type { LengthUnit } from "../geo/units.ts";
import { boxAround, grow, type Box } from "../geo/box.ts";
import { pointAt } from "../geo/line.ts";
import type { Point } from "../geo/position.ts";
import type { MeasuredCourse, MeasuredHole, PlacedFeature } from "../measure/types.ts";
import { COMPOSITIONS, type Composition } from "./composition.ts";
import { inBox } from "./clip.ts";
import { roundedLine } from "./curves.ts";
import { drawFrame, drawGraduation, drawNorth, drawPaper, drawScale, inBothUnits, NORTH_REACH } from "./furniture.ts";
import { areaPath, drawBunkers, drawCover, drawWater } from "./ground.ts";
import { drawGrowth, drawHachures } from "./growth.ts";
import { around, LabelPlacer } from "./labels.ts";
import { blockSize, Lettering, textAttributes, type TextLine } from "./lettering.ts";
import { drawNames } from "./names.ts";
import { type PlateTheme } from "./palette.ts";
import type { PlateContext } from "./plate-context.ts";
import { drawContours, drawRelief, type PlateGround } from "./relief.ts";
import { sheetOf, type Sheet } from "./sheet.ts";
import { layCover, stageOf } from "./stage.ts";
import { element, escapeXml, num, polyPath, polyPaths } from "./svg.ts";
import { landmark, landmarkSymbol, LANDMARK_REACH } from "./symbols.ts";
import { textWidth } from "./text-width.ts";
import { dayOf } from "../words/day.ts";
import type { PlateWords } from "../words/words.ts";
import { drawWorks } from "./works.ts";

export interface CourseOptions {
  /** Begins every id in the drawing; unique on its page. */
  readonly idPrefix: string;
  readonly unit: LengthUnit;
  /** `desk` is 960 wide, `phone` 390: fewer names, larger numbers for the size. */
  readonly size?: "desk" | "phone";
  readonly theme?: PlateTheme;
  /** Address of a hole's page; undefined draws the hole without a link. */
  readonly href?: (hole: MeasuredHole) => string | undefined;
  /** What a hole's link is called; its number and name when left out. */
  readonly linkLabel?: (hole: MeasuredHole) => string;
  readonly ground?: PlateGround;
  readonly words: PlateWords;
  readonly labelledBy?: string;
}

export interface CourseDrawn {
  readonly svg: string;
  readonly unplaced: readonly string[];
  readonly width: number;
  readonly height: number;
}

/** Ground shown around the outermost tee, green or fairway. */
const MARGIN_METRES = 70;

const MAPS: Readonly<Record<"desk" | "phone", Composition>> = {
  desk: {
    ...COMPOSITIONS.desk,
    width: [912, 912],
    height: [0, 1600],
    block: 84,
    text: { ...COMPOSITIONS.desk.text, name: 11.5, note: 11, water: 17 },
    hair: 0.35,
    fine: 0.55,
    medium: 0.9,
    bold: 1.4,
    drawing: 0.72,
    tuftSpacing: 21,
    crownSpacing: 6.2,
    knots: 4.8,
    waterLines: COMPOSITIONS.desk.waterLines.slice(0, 7),
    mostContour: 12_000,
    mostHachures: 0,
    mostDots: 700,
    keep: { ...COMPOSITIONS.desk.keep, stipple: true, groundNames: true },
  },
  phone: {
    ...COMPOSITIONS.phone,
    width: [374, 374],
    height: [0, 900],
    block: 60,
    text: { ...COMPOSITIONS.phone.text, name: 10.5, note: 10, water: 12 },
    hair: 0.3,
    fine: 0.45,
    medium: 0.7,
    bold: 1.1,
    drawing: 0.5,
    tuftSpacing: 20,
    crownSpacing: 4.6,
    knots: 3.4,
    waterLines: COMPOSITIONS.phone.waterLines.slice(0, 4),
    mostContour: 5000,
    mostHachures: 0,
    mostDots: 300,
    keep: { ...COMPOSITIONS.phone.keep, stipple: false, lesserNames: false, groundNames: false },
  },
};

/** The sheet of a course's map. */
export function layCourse(course: MeasuredCourse, size: "desk" | "phone" = "desk"): Sheet {
  const composition = MAPS[size];
  const held = course.holes.flatMap((hole) =>
    [...hole.placed.values()]
      .filter(({ shared }) => !shared)
      .flatMap(({ feature, shape }) =>
        feature.kind !== "tee-marker" &&
        feature.kind !== "green" &&
        feature.kind !== "fairway" &&
        feature.kind !== "line-of-play"
          ? []
          : shape.type === "areas"
            ? shape.areas.flat(2)
            : shape.type === "lines"
              ? shape.lines.flat()
              : [...shape.points],
      ),
  );
  const [minX, minY, maxX, maxY] = grow(boxAround(held), MARGIN_METRES);
  const {
    margin,
    block,
    width: [, mostWidth],
    height: [, mostHeight],
  } = composition;
  const pxPerMetre = Math.min(mostWidth / (maxX - minX), mostHeight / (maxY - minY));
  const [width, height] = [mostWidth, Math.round((maxY - minY) * pxPerMetre)];
  const map: Box = [margin, margin, margin + width, margin + height];
  return sheetOf({
    map,
    up: [0, 1],
    pxPerMetre,
    centre: [(minX + maxX) / 2, (minY + maxY) / 2],
    width: width + 2 * margin,
    height: height + margin + block,
  });
}

/** Draws a course's map. Links are real links: reached by keyboard, named, and working without script. */
export function drawCourse(course: MeasuredCourse, options: CourseOptions): CourseDrawn {
  const size = options.size ?? "desk";
  const composition = MAPS[size];
  const { words } = options;
  const sheet = layCourse(course, size);
  const context = stageOf(everything(course), sheet, composition, options.theme ?? "light", options.idPrefix);
  const { paint, cover } = context;
  layCover(context, []);

  const placer = new LabelPlacer([sheet.map[0] + 3, sheet.map[1] + 3, sheet.map[2] - 3, sheet.map[3] - 3], cover);
  for (const { tees } of course.holes) {
    const line = tees[0]?.line.points.map(sheet.toSheet);
    if (line) placer.avoid(line, 30);
  }
  const landmarks = drawCourseLandmarks(context, placer);
  const numbers = course.holes.map((hole) => ({ hole, at: placeNumber(context, hole, placer) }));
  const north = placeNorth(context, placer);
  const names = drawNames(context, new Set(), words, placer);

  const clip = context.id("map");
  const [minX, minY, maxX, maxY] = sheet.map;
  const map =
    drawCover(context) +
    drawCourseFairways(context) +
    drawRelief(context, options.ground) +
    drawWater(context) +
    drawContours(context, options.ground, placer.taken) +
    drawHachures(context) +
    drawCourseGreens(context) +
    drawBunkers(context) +
    drawWorks(context) +
    drawGrowth(context, placer.taken, () => Infinity) +
    names.svg +
    landmarks +
    (north ? drawNorth(north, sheet, northScale(composition), paint, words.north) : "") +
    numbers.map(({ hole, at }) => drawHoleLink(context, hole, at, options)).join("");
  const titleId = context.id("title");
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" class="plate plate-course" viewBox="0 0 ${num(sheet.width)} ${num(sheet.height)}" width="${num(sheet.width)}" height="${num(sheet.height)}" role="${options.href ? "group" : "img"}" aria-labelledby="${escapeXml(options.labelledBy ?? titleId)}" font-family="Besley, Georgia, 'Times New Roman', serif">` +
    (options.labelledBy
      ? ""
      : element("title", { id: titleId }, escapeXml(words.courseTitle({ course: course.course.name })))) +
    element(
      "defs",
      {},
      element(
        "clipPath",
        { id: clip },
        element("rect", { x: num(minX), y: num(minY), width: num(maxX - minX), height: num(maxY - minY) }),
      ),
    ) +
    drawPaper(sheet, paint) +
    element("g", { "clip-path": `url(#${clip})` }, map) +
    inBothUnits(options.unit, (unit) => drawGraduation(sheet, composition, unit, paint)) +
    drawFrame(sheet, { ...composition, fine: 0.8, medium: 1.2, hair: 0.5 }, paint) +
    drawCourseTitle(course, context, options.unit, words) +
    "</svg>";
  return { svg, unplaced: names.unplaced, width: sheet.width, height: sheet.height };
}

/** Shared features first, then each hole's own; ids may repeat between holes, so they are not merged. */
function* everything(course: MeasuredCourse): Generator<PlacedFeature> {
  yield* course.placed.values();
  for (const hole of course.holes) for (const one of hole.placed.values()) if (!one.shared) yield one;
}

function drawCourseFairways({ scene, paint, composition: c, px, id }: PlateContext): string {
  const areas = scene.areas("fairway");
  if (areas.length === 0) return "";
  const fairway = id("fairways");
  return (
    element("defs", {}, element("path", { id: fairway, "fill-rule": "evenodd", d: areaPath(areas) })) +
    element("use", {
      ...paint("first-cut"),
      href: `#${fairway}`,
      "stroke-width": Math.max(2, px(7)),
      "stroke-linejoin": "round",
      opacity: 0.7,
    }) +
    element("use", { ...paint("fairway"), href: `#${fairway}` }) +
    element("use", { ...paint("fairway-edge"), href: `#${fairway}`, "stroke-width": c.fine })
  );
}

function drawCourseGreens({ scene, paint, composition: c, px, id }: PlateContext): string {
  const tees = scene.areas("teeing-ground");
  const greens = scene.areas("green");
  const green = id("greens");
  return (
    (tees.length > 0
      ? element("path", {
          ...paint("teeing-ground"),
          "stroke-width": c.fine,
          d: polyPaths(
            tees.map(({ rings }) => rings[0]!),
            true,
          ),
        })
      : "") +
    (greens.length > 0
      ? element("defs", {}, element("path", { id: green, d: areaPath(greens) })) +
        element("use", { ...paint("fringe"), href: `#${green}`, "stroke-width": Math.max(1.8, px(5)) }) +
        element("use", { ...paint("green"), href: `#${green}`, "stroke-width": c.fine })
      : "")
  );
}

const numberRadius = ({ composition }: PlateContext): number => (composition.width[1] > 500 ? 11.5 : 8);

/** A hole's number stands by its tees, off the line of play. */
function placeNumber(context: PlateContext, hole: MeasuredHole, placer: LabelPlacer): Point {
  const { sheet } = context;
  const tee = hole.tees[0]!;
  const r = numberRadius(context) + 1;
  const start = sheet.toSheet(tee.marker);
  const ahead = sheet.toSheet(pointAt(tee.line, Math.min(40, tee.lengthMetres / 3)));
  const length = Math.hypot(ahead[0] - start[0], ahead[1] - start[1]) || 1;
  const back: Point = [-(ahead[0] - start[0]) / length, -(ahead[1] - start[1]) / length];
  const candidates = around(
    start,
    r * 2,
    r * 2,
    [1, 4, 9, 16, 26, 40],
    0.8,
    ([ux, uy]) => 4 - 4 * (ux * back[0] + uy * back[1]),
  );
  const placed = placer.place({ width: r * 2, height: r * 2, candidates });
  if (placed) return placed.at;
  // A number is never left out: without free room it stands on the line itself.
  placer.block([start[0] - r, start[1] - r, start[0] + r, start[1] + r]);
  return start;
}

function drawHoleLink(context: PlateContext, hole: MeasuredHole, at: Point, options: CourseOptions): string {
  const { sheet, composition: c, paint } = context;
  const tee = hole.tees[0]!;
  const r = numberRadius(context);
  const line = roundedLine(tee.line.points.map(sheet.toSheet), 10, 3);
  const end = line[line.length - 1]!;
  const d = polyPath(line, false);
  const text: TextLine = { text: String(hole.hole.number), mark: "title", size: r * 1.16, weight: "heavy" };
  const start = line[0]!;
  const gap = Math.hypot(start[0] - at[0], start[1] - at[1]);
  const drawn =
    // A wide clear stroke makes the whole hole the link's target.
    element("path", {
      class: "plate-hit",
      d,
      fill: "none",
      stroke: "#000",
      "stroke-opacity": 0,
      "stroke-width": 26,
      "pointer-events": "stroke",
    }) +
    element("path", { ...paint("casing"), "stroke-width": c.medium + 1.8, opacity: 0.5, d }) +
    element("path", { ...paint("line"), "stroke-width": c.medium, "stroke-dasharray": `${num(4.5)} ${num(2.6)}`, d }) +
    (gap > r + 3
      ? element("path", {
          ...paint("leader"),
          "stroke-width": c.fine,
          d: polyPath(
            [[at[0] + ((start[0] - at[0]) / gap) * r, at[1] + ((start[1] - at[1]) / gap) * r], start],
            false,
          ),
        })
      : "") +
    element("path", { ...paint("flag"), "stroke-width": 0.5, d: `M${num(end[0])} ${num(end[1])}v-9l6 2-6 2` }) +
    element("circle", { ...paint("disc"), cx: num(at[0]), cy: num(at[1]), r, "stroke-width": c.medium * 1.3 }) +
    element(
      "text",
      { x: num(at[0]), y: num(at[1] + text.size * 0.36), "text-anchor": "middle", ...textAttributes(text, paint, 0) },
      text.text,
    );
  const href = options.href?.(hole);
  if (href === undefined) return drawn;
  const label = options.linkLabel?.(hole) ?? `${hole.hole.number} ${hole.hole.name}`;
  return element(
    "a",
    { class: "plate-link", href, "aria-label": label },
    element("title", {}, escapeXml(label)) + drawn,
  );
}

function drawCourseLandmarks(context: PlateContext, placer: LabelPlacer): string {
  const { scene, sheet, composition: c, paint } = context;
  const lettering = new Lettering(paint, c.text.halo);
  let out = "";
  const scale = c.drawing * 1.15;
  for (const { feature, point } of scene.points("landmark")) {
    if (!inBox(point, sheet.map)) continue;
    const symbol = landmarkSymbol(String(feature.tags["man_made"] ?? "tower"));
    const [left, up, right] = LANDMARK_REACH[symbol].map((n) => n * scale) as [number, number, number];
    placer.block([point[0] - left, point[1] - up, point[0] + right, point[1] + 2]);
    out += element(
      "g",
      { transform: `translate(${num(point[0])} ${num(point[1])}) scale(${scale.toFixed(2)})` },
      landmark(symbol, paint, 0.9),
    );
    if (!feature.name || c.width[1] < 500) continue;
    const text: TextLine = { text: feature.name, mark: "name", size: c.text.name, weight: "regular" };
    const { width, height } = blockSize([text]);
    const placed = placer.place({
      width,
      height,
      candidates: around([point[0], point[1] - up / 2], width, height, [9, 14, 22], 0.6),
    });
    if (placed) lettering.set([text], placed.at);
  }
  return `${out}${lettering}`;
}

const northScale = (composition: Composition): number => (composition.width[1] > 500 ? 0.95 : 0.7);

function placeNorth({ sheet, composition }: PlateContext, placer: LabelPlacer): Point | undefined {
  const reach = NORTH_REACH * northScale(composition) + 1;
  const [minX, minY, maxX, maxY] = sheet.map;
  const corners = (
    [
      [maxX, minY, -1, 1],
      [minX, minY, 1, 1],
      [maxX, maxY, -1, -1],
      [minX, maxY, 1, -1],
    ] as const
  ).map(([x, y, sx, sy], i) => ({ at: [x + sx * (reach + 6), y + sy * (reach + 6)] as Point, cost: i }));
  return placer.place({ width: reach * 2, height: reach * 2, candidates: corners })?.at;
}

function drawCourseTitle(
  course: MeasuredCourse,
  { sheet, composition, paint }: PlateContext,
  unit: LengthUnit,
  words: PlateWords,
): string {
  const large = composition.width[1] > 500;
  const [minX, , maxX, maxY] = sheet.map;
  const middle = (maxY + (large ? 14 : 4) + sheet.height) / 2;
  const name: TextLine = { text: course.course.name, mark: "title", size: large ? 30 : 18, weight: "heavy" };
  const note: TextLine = {
    text: course.course.surveyed ? words.surveyed({ date: dayOf(course.course.surveyed) }) : "",
    mark: "legend",
    size: large ? 12 : 10,
    weight: "regular",
  };
  const scale = { ...composition, fine: 0.8, drawing: 1, text: { ...composition.text, note: note.size } };
  const most = large ? 240 : 120;
  const width = drawScale([0, 0], most, sheet, scale, unit, paint).width;
  const fits = textWidth(name.text, name.size, "heavy") < maxX - minX - width - 20;
  return (
    element(
      "text",
      {
        x: num(minX + 2),
        y: num(middle + (note.text ? -1 : name.size * 0.3)),
        ...textAttributes(fits ? name : { ...name, size: name.size * 0.75 }, paint, 0),
      },
      escapeXml(name.text),
    ) +
    (note.text
      ? element(
          "text",
          { x: num(minX + 2), y: num(middle + note.size * 1.6), ...textAttributes(note, paint, 0) },
          escapeXml(note.text),
        )
      : "") +
    inBothUnits(
      unit,
      (each) =>
        drawScale(
          [maxX - drawScale([0, 0], most, sheet, scale, each, paint).width - 2, middle],
          most,
          sheet,
          scale,
          each,
          paint,
        ).svg,
    )
  );
}
