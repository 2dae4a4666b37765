/** A hole as a small sign: its fairway, green, water and bunkers, play going up. */
import { closedRing, openRing } from "../geo/ring.ts";
import type { FeatureKind } from "../course/types.ts";
import { boxAround } from "../geo/box.ts";
import type { Point } from "../geo/position.ts";
import { dot, rightOf } from "../geo/vector.ts";
import type { MeasuredHole } from "../measure/types.ts";
import { clipRing } from "./clip.ts";
import { simplified } from "./curves.ts";
import { painter, type Mark, type PlateTheme } from "./palette.ts";
import { sceneOf } from "./scene.ts";
import { playDirection, sheetOf } from "./sheet.ts";
import { element, escapeXml, num, polyPaths } from "./svg.ts";

export interface ThumbnailOptions {
  /** Sheet units; the hole is fitted inside. */
  readonly width?: number;
  readonly height?: number;
  readonly theme?: PlateTheme;
  /** Says what it shows; without it the thumbnail is decoration, hidden from assistive technology. */
  readonly label?: string;
}

/** Bytes a thumbnail may have. */
const MOST_CHARACTERS = 2000;

/** A thumbnail of a hole; under 2 KB, no ids, so that any number share a page. */
export function drawHoleThumbnail(hole: MeasuredHole, options: ThumbnailOptions = {}): string {
  // Outlines are simplified until they are light enough: a few tenths of a unit nobody sees.
  let svg = "";
  for (const tolerance of [0.25, 0.4, 0.7, 1.2]) {
    svg = thumbnail(hole, options, tolerance);
    if (svg.length < MOST_CHARACTERS) break;
  }
  return svg;
}

function thumbnail(
  hole: MeasuredHole,
  { width = 56, height = 96, theme = "light", label }: ThumbnailOptions,
  tolerance: number,
): string {
  const paint = painter(theme);
  const up = playDirection(hole);
  const right = rightOf(up);
  const held: Point[] = hole.tees.flatMap(({ line }) => [...line.points]);
  for (const { feature, shape, shared } of hole.placed.values()) {
    if (shared || shape.type !== "areas" || !["fairway", "green", "bunker"].includes(feature.kind)) continue;
    held.push(...shape.areas.flat(2));
  }
  const [minX, minY, maxX, maxY] = boxAround(held.map((p): Point => [dot(p, right), dot(p, up)]));
  const pxPerMetre = Math.min((width - 6) / (maxX - minX), (height - 6) / (maxY - minY), 0.42);
  const sheet = sheetOf({
    map: [0, 0, width, height],
    up,
    pxPerMetre,
    centre: [(minX + maxX) / 2, (minY + maxY) / 2],
    width,
    height,
  });
  const scene = sceneOf(hole.placed.values(), sheet, 2.4);
  const box = [0, 0, width, height] as const;
  const layer = (mark: Mark, rings: readonly (readonly Point[])[], more: Record<string, number> = {}): string => {
    const shapes = rings
      .map((ring) => clipRing(ring, box))
      .filter((ring) => ring.length > 2)
      .map((ring) => openRing(simplified(closedRing(ring), tolerance)))
      .filter((ring) => ring.length > 2);
    return shapes.length === 0
      ? ""
      : element("path", { ...paint(mark), ...more, "fill-rule": "evenodd", d: polyPaths(shapes, true) });
  };
  const rings = (...kinds: FeatureKind[]): (readonly Point[])[] =>
    scene.areas(...kinds).flatMap((area) => [...area.rings]);
  const burns = scene.streams.map(({ line }) => simplified(line, tolerance));
  const [tee] = hole.tees;
  const from = tee ? sheet.toSheet(tee.marker) : undefined;
  const name =
    label === undefined ? ' aria-hidden="true" focusable="false"' : ` role="img" aria-label="${escapeXml(label)}"`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" class="plate-thumbnail" viewBox="0 0 ${num(width)} ${num(height)}" width="${num(width)}" height="${num(height)}"${name}>` +
    layer(
      "sea",
      scene.water.flatMap(({ rings }) => [...rings]),
    ) +
    layer("fairway", rings("fairway")) +
    layer("fairway-edge", rings("fairway"), { "stroke-width": 0.5 }) +
    (burns.length > 0
      ? element("path", { ...paint("waterline"), "stroke-width": 1.2, d: polyPaths(burns, false) })
      : "") +
    layer("green", rings("green"), { "stroke-width": 0.7 }) +
    layer("bunker", rings("bunker")) +
    layer("bunker-edge", rings("bunker"), { "stroke-width": 0.4 }) +
    (from ? element("circle", { ...paint("frame-ink"), cx: num(from[0]), cy: num(from[1]), r: 1.3 }) : "") +
    "</svg>"
  );
}
