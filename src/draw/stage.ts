/** Setting the stage of a drawing: its context, and what lies on top where. */
import { contains } from "../geo/area.ts";
import { closedRing } from "../geo/ring.ts";
import type { Point } from "../geo/position.ts";
import { directionTo, rightOf } from "../geo/vector.ts";
import type { MeasuredHole, PlacedFeature } from "../measure/types.ts";
import type { Composition } from "./composition.ts";
import { CoverGrid } from "./cover.ts";
import { streamRibbons } from "./ground.ts";
import { painter, type PlateTheme } from "./palette.ts";
import type { PlateContext } from "./plate-context.ts";
import { sceneOf } from "./scene.ts";
import type { Sheet } from "./sheet.ts";

/** Ids begin with this on a page; letters, digits and hyphens, so that they need no escaping in `url(#...)`. */
const ID_PREFIX = /^[A-Za-z][A-Za-z0-9-]*$/;

/**
 * The context of a drawing.
 *
 * @throws RangeError when the id prefix is not a letter followed by letters, digits and hyphens.
 */
export function stageOf(
  placed: Iterable<PlacedFeature>,
  sheet: Sheet,
  composition: Composition,
  theme: PlateTheme,
  idPrefix: string,
): PlateContext {
  if (!ID_PREFIX.test(idPrefix)) {
    throw new RangeError(`The id prefix "${idPrefix}" will not do; write a letter, then letters, digits and hyphens.`);
  }
  const scene = sceneOf(placed, sheet, composition.knots);
  return {
    sheet,
    scene,
    composition,
    cover: new CoverGrid(scene.box, 3),
    paint: painter(theme),
    id: (name) => `${idPrefix}-${name}`,
    px: (metres) => metres * sheet.pxPerMetre,
  };
}

/** Plates for tee markers that stand on no drawn teeing ground: 9 by 7 m, turned to the line. */
export function teePlates({ sheet, scene }: PlateContext, hole: MeasuredHole): Point[][] {
  const grounds = scene.areas("teeing-ground");
  return hole.tees.flatMap(({ marker, line }) => {
    const at = sheet.toSheet(marker);
    if (grounds.some(({ rings }) => contains(rings, at))) return [];
    const ahead = directionTo(line.points[0]!, line.points[1]!);
    const right = rightOf(ahead);
    return [
      (
        [
          [4, 3.5],
          [4, -3.5],
          [-5, -3.5],
          [-5, 3.5],
        ] as const
      ).map(([u, v]) =>
        sheet.toSheet([marker[0] + ahead[0] * u + right[0] * v, marker[1] + ahead[1] * u + right[1] * v]),
      ),
    ];
  });
}

/** What lies on top where, in the order it is drawn. */
export function layCover(context: PlateContext, plates: readonly (readonly Point[])[]): void {
  const { cover, scene, px } = context;
  for (const ground of ["rough", "heath", "strand", "scrub", "wood", "rock"] as const) {
    for (const { rings } of scene.covered(ground)) cover.fill(rings, ground);
  }
  for (const { rings } of scene.water) cover.fill(rings, "water");
  for (const ring of streamRibbons(context)) cover.fill([ring], "water");
  for (const { rings } of scene.areas("fairway")) {
    cover.fill(rings, "fairway");
    // The first cut is mown too: nothing tall grows on it.
    for (const ring of rings) cover.stroke(closedRing(ring), px(5), "fairway");
  }
  for (const { line } of scene.lines("ridge", "cliff")) cover.stroke(line, px(15), "rock");
  for (const { rings } of scene.areas("teeing-ground")) cover.fill(rings, "tee");
  for (const ring of plates) cover.fill([ring], "tee");
  for (const { rings } of scene.areas("green")) {
    for (const ring of rings) cover.stroke(closedRing(ring), px(6), "fairway");
    cover.fill(rings, "green");
  }
  for (const { rings } of scene.areas("bunker")) cover.fill(rings, "bunker");
  for (const { feature, line } of scene.lines("road", "path"))
    cover.stroke(line, px(feature.widthMetres ?? (feature.kind === "road" ? 5 : 2)) + 3, "built");
  for (const { line } of (["wall", "fence", "hedge"] as const).flatMap(scene.barriers)) cover.stroke(line, 5, "built");
  for (const { rings } of scene.areas("building")) cover.fill(rings, "built");
}
