/** Ground cover, water, and what is mown: everything under the figures, bottom up. */
import type { Point } from "../geo/position.ts";
import { nearestOnPath } from "../geo/segment.ts";
import type { Cover } from "./cover.ts";
import type { PlateContext } from "./plate-context.ts";
import { crescents, LIGHT, evenly, roundedLine, shifted, simplified } from "./curves.ts";
import { dotPath, element, polyPath, polyPaths, smoothPath } from "./svg.ts";
import { strew, type Strewn } from "./scatter.ts";
import { ribbon, waterLines, type WaterLine } from "./water.ts";
import type { SceneArea } from "./scene.ts";

const DARK_SIDE: Point = [-LIGHT[0], -LIGHT[1]];

/** Path data of areas: all rings, even-odd. */
export const areaPath = (areas: readonly SceneArea[], smooth = true): string =>
  areas.flatMap(({ rings }) => rings.map((ring) => (smooth ? smoothPath(ring, true) : polyPath(ring, true)))).join("");

const polygons = (shapes: readonly (readonly Point[])[]): string => polyPaths(shapes, true);

/** Dots of bare sand: they crowd at its edge and thin out over it, as a stipple engraver shades. */
export function sandDots({ scene, composition: c, sheet, cover }: PlateContext): Strewn[] {
  if (!c.keep.stipple || scene.covered("strand").length === 0) return [];
  const gap = 3.4 * c.drawing;
  const onSand = (kind: Cover): boolean => kind === "strand";
  const spacing = (p: Point): number =>
    cover.at(p) !== "strand" ? 0 : cover.clear(p, gap * 2.2, onSand) ? gap * 3.6 : gap * 1.1;
  return strew(sheet, gap, 71, spacing, { cover, on: onSand });
}

/** Tints of open ground, sand and rock. */
export function drawCover(context: PlateContext, dots: readonly Strewn[] = sandDots(context)): string {
  const { scene, paint, composition: c, sheet, id } = context;
  const { map } = sheet;
  let out = element("rect", {
    ...paint("ground"),
    x: map[0],
    y: map[1],
    width: map[2] - map[0],
    height: map[3] - map[1],
  });
  const tint = (mark: "rough" | "heath" | "scrub" | "wood" | "strand", areas: readonly SceneArea[]): void => {
    if (areas.length === 0) return;
    // Ground has no edge: the tint runs out in two steps.
    const shape = id(mark);
    out +=
      element("defs", {}, element("path", { id: shape, "fill-rule": "evenodd", d: areaPath(areas) })) +
      element(
        "g",
        paint(mark),
        element("use", {
          href: `#${shape}`,
          "stroke-width": 7 * c.drawing,
          "stroke-linejoin": "round",
          opacity: 0.35,
        }) + element("use", { href: `#${shape}`, opacity: 0.8 }),
      );
  };
  for (const ground of ["rough", "heath", "strand", "scrub", "wood"] as const) tint(ground, scene.covered(ground));
  const rocks = scene.covered("rock");
  if (rocks.length > 0)
    out += element("path", { ...paint("rock"), "stroke-width": c.fine, "fill-rule": "evenodd", d: areaPath(rocks) });
  const share = Math.min(1, c.mostDots / dots.length);
  out += stipple(
    dots.filter(({ lot }) => lot < share).map(({ point }) => point),
    0.9 * c.drawing,
    paint,
  );
  return out;
}

const stipple = (points: readonly Point[], size: number, paint: PlateContext["paint"]): string =>
  points.length === 0
    ? ""
    : element("path", { ...paint("stipple"), "stroke-width": size, "stroke-linecap": "round", d: dotPath(points) });

/** Streams as ribbons on the sheet, widening with the water. */
export function streamRibbons({ scene, composition, px }: PlateContext): Point[][] {
  return scene.streams.map(({ feature, line }) =>
    ribbon(line, Math.max(2.2 * composition.drawing, px(feature.widthMetres ?? 2)), composition.knots),
  );
}

/** Lines in the water that follow the shore. */
export const shoreLines = ({ scene, composition: c }: PlateContext): WaterLine[] =>
  waterLines(
    scene.water.map(({ rings }) => rings),
    scene.box,
    c.waterLines,
    c.knots,
  );

/**
 * Sea, ponds and burns: one shore, flat tint, the bank's shadow, and lines that thin out from the shore.
 *
 * @param lines of this composition, or of one with more of them
 */
export function drawWater(context: PlateContext, lines: readonly WaterLine[] = shoreLines(context)): string {
  const { scene, paint, composition: c } = context;
  const burns = streamRibbons(context);
  if (scene.water.length === 0 && burns.length === 0) return "";
  const d = areaPath(scene.water) + burns.map((ring) => smoothPath(ring, true)).join("");
  const id = context.id("water");
  let out =
    // The shore's inner half is hidden by the fill, so waters that meet have no line between them.
    element("use", { ...paint("shore"), href: `#${id}`, "stroke-width": c.fine * 2.4 }) +
    element("use", { ...paint("sea"), href: `#${id}`, "fill-rule": "evenodd" });
  const shade = scene.water.flatMap(({ rings }) =>
    rings.flatMap((ring, i) =>
      i === 0 ? crescents(ring.length > 60 ? ring.filter((_, k) => k % 2 === 0) : ring, LIGHT, 5 * c.drawing) : [],
    ),
  );
  const ranks = c.waterLines.map((_, rank) => lines.filter((line) => line.rank === rank));
  const count = ranks.length;
  out += element(
    "g",
    { ...paint("waterline") },
    ranks
      .map((rank, i) =>
        rank.length === 0
          ? ""
          : element("path", {
              "stroke-width": c.medium * (0.72 - (0.46 * i) / count),
              opacity: 1 - (0.62 * i) / count,
              d: rank.map(({ points, closed }) => smoothPath(points, closed)).join(""),
            }),
      )
      .join(""),
  );
  if (shade.length > 0) out += element("path", { ...paint("sea-shade"), opacity: 0.55, d: polygons(shade) });
  return element("defs", {}, element("path", { id, d, "fill-rule": "evenodd" })) + out;
}

/** Fairways: soft first cut, mowing bands that follow the line of play, a darker edge. */
export function drawFairways(context: PlateContext, lineOfPlay: readonly Point[]): string {
  const { scene, paint, composition: c, px, id } = context;
  const areas = scene.areas("fairway");
  if (areas.length === 0) return "";
  const fairway = id("fairway");
  const clip = id("fairway-clip");
  const defs = element(
    "defs",
    {},
    element("path", { id: fairway, "fill-rule": "evenodd", d: areaPath(areas) }) +
      element("clipPath", { id: clip }, element("use", { href: `#${fairway}`, "clip-rule": "evenodd" })),
  );
  const use = (mark: Parameters<typeof paint>[0], more: Record<string, string | number> = {}): string =>
    element("use", { ...paint(mark), href: `#${fairway}`, ...more });
  const cut = px(3.2);
  const width = Math.max(5, px(5.4));
  const furthest = Math.max(
    ...areas.flatMap(({ rings }) => rings.flat()).map((p) => nearestOnPath(lineOfPlay, p).distance),
    0,
  );
  const middle = roundedLine(extended(lineOfPlay, 60), px(70), 6);
  const bands: string[] = [];
  for (let k = -Math.ceil(furthest / width); k <= furthest / width; k++) {
    if (k % 2 !== 0) continue;
    // Under a wide stroke with round joins its corners do not show.
    bands.push(polyPath(simplified(shifted(middle, k * width), 0.3), false));
  }
  return (
    defs +
    element(
      "g",
      { "stroke-linejoin": "round" },
      use("first-cut", { "stroke-width": cut * 2.9, opacity: 0.45 }) + use("first-cut", { "stroke-width": cut * 1.7 }),
    ) +
    use("fairway") +
    element(
      "g",
      { "clip-path": `url(#${clip})` },
      element("path", { ...paint("band"), "stroke-width": width, d: bands.join("") }) +
        use("fairway-edge", { "stroke-width": c.medium * 2.6, opacity: 0.5 }),
    ) +
    use("fairway-edge", { "stroke-width": c.fine })
  );
}

/** A line lengthened at both ends. */
function extended(line: readonly Point[], by: number): Point[] {
  const beyond = (from: Point, to: Point): Point => {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
    return [to[0] + ((to[0] - from[0]) / length) * by, to[1] + ((to[1] - from[1]) / length) * by];
  };
  return [beyond(line[1]!, line[0]!), ...line, beyond(line[line.length - 2]!, line[line.length - 1]!)];
}

/** Greens: the smoothest and lightest ground, inside a ring of fringe. */
export function drawGreens({ scene, paint, composition: c, px, id }: PlateContext, contours = ""): string {
  const areas = scene.areas("green");
  if (areas.length === 0) return "";
  const green = id("green");
  return (
    element("defs", {}, element("path", { id: green, "fill-rule": "evenodd", d: areaPath(areas) })) +
    element("use", {
      ...paint("first-cut"),
      href: `#${green}`,
      "stroke-width": px(7),
      "stroke-linejoin": "round",
      opacity: 0.6,
    }) +
    element("use", { ...paint("fringe"), href: `#${green}`, "stroke-width": px(4), "stroke-linejoin": "round" }) +
    element("use", { ...paint("green"), href: `#${green}`, "stroke-width": c.fine }) +
    contours
  );
}

/** Teeing grounds: small mown plates with a lit surface and a shaded lower edge. */
export function drawTeeingGrounds(
  { scene, paint, composition: c }: PlateContext,
  plates: readonly (readonly Point[])[],
): string {
  const rings = [...scene.areas("teeing-ground").flatMap(({ rings }) => rings), ...plates];
  if (rings.length === 0) return "";
  const shade = rings.flatMap((ring) => crescents(evenly(ring, 3, true), DARK_SIDE, -2 * c.drawing));
  return (
    (shade.length > 0 ? element("path", { ...paint("tee-shade"), opacity: 0.7, d: polygons(shade) }) : "") +
    element("path", {
      ...paint("teeing-ground"),
      "stroke-width": c.fine,
      "stroke-linejoin": "round",
      d: polygons(rings),
    })
  );
}

/** Bunkers: stippled sand, the near lip in shade and the far lip lit. */
export function drawBunkers({ scene, paint, composition: c, sheet, cover, px }: PlateContext): string {
  const areas = scene.areas("bunker");
  if (areas.length === 0) return "";
  const d = areaPath(areas);
  const outer = areas.map(({ rings }) => rings[0]!);
  const lip = Math.max(1.6 * c.drawing, px(1.1));
  const shade = outer.flatMap((ring) => crescents(ring, LIGHT, Math.min(lip * 1.5, spanOf(ring) * 0.3)));
  const lit = outer.flatMap((ring) => crescents(ring, DARK_SIDE, Math.min(lip, spanOf(ring) * 0.22)));
  const gap = 2.5 * c.drawing;
  const dots = c.keep.stipple
    ? strew(sheet, gap, 37, (p) => (cover.at(p) === "bunker" ? gap : 0), { cover, on: (kind) => kind === "bunker" })
    : [];
  return (
    element("path", { ...paint("bunker"), "fill-rule": "evenodd", d }) +
    stipple(
      dots.map(({ point }) => point),
      0.62 * c.drawing,
      paint,
    ) +
    (lit.length > 0 ? element("path", { ...paint("sand-lit"), d: polygons(lit) }) : "") +
    (shade.length > 0 ? element("path", { ...paint("sand-shade"), d: polygons(shade) }) : "") +
    element("path", { ...paint("bunker-edge"), "stroke-width": c.fine, d })
  );
}

/** The smaller side of the box around a ring. */
function spanOf(ring: readonly Point[]): number {
  const [xs, ys] = [ring.map((p) => p[0]), ring.map((p) => p[1])];
  return Math.min(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}
