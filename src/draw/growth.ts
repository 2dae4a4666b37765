/** Grass, heather, gorse and trees, strewn; and the hachures of dunes, ridges and cliffs. */
import type { Box } from "../geo/box.ts";
import { inBox } from "./clip.ts";
import type { Point } from "../geo/position.ts";
import { evenly, LIGHT } from "./curves.ts";
import type { Cover } from "./cover.ts";
import type { PlateContext } from "./plate-context.ts";
import { hash01, strew, type Strewn } from "./scatter.ts";
import { element, polyPath, polyPaths } from "./svg.ts";
import { beads, symbolMarker, type StrewnSymbol } from "./symbols.ts";

const isGrass = (cover: Cover): boolean => cover === "open" || cover === "rough";
const isHeath = (cover: Cover): boolean => cover === "heath";
const isScrub = (cover: Cover): boolean => cover === "scrub";
const isWood = (cover: Cover): boolean => cover === "wood";

/**
 * Everything that grows, back to front.
 *
 * @param keepOff boxes of lettering that no tuft may run under
 * @param fromPlay distance of a place from the line of play, for grass that deepens away from it
 */
export function drawGrowth(
  context: PlateContext,
  keepOff: readonly Box[],
  fromPlay: (point: Point) => number,
): string {
  const { sheet, scene, cover, composition: c, paint, id, px } = context;
  const free = (p: Point): boolean => !keepOff.some((box) => inBox([p[0], p[1] - 2], box));
  const near = px(18);
  const far = px(50);
  const grass = strew(sheet, c.tuftSpacing, 11, (p) => {
    if (!cover.clear([p[0], p[1] - 2.5 * c.drawing], 5 * c.drawing, isGrass)) return 0;
    const depth = Math.max(0, Math.min(1, (fromPlay(p) - near) / (far - near)));
    return c.tuftSpacing * (1.75 - 0.75 * depth);
  });
  const heather = strew(
    sheet,
    c.tuftSpacing * 0.5,
    23,
    (p) => (cover.clear(p, 2, isHeath) ? c.tuftSpacing * 0.5 : 0),
    { cover, on: isHeath },
  );
  const gorse = strew(
    sheet,
    c.crownSpacing,
    31,
    (p) => (cover.clear(p, 2.4 * c.drawing, isScrub) ? c.crownSpacing : 0),
    { cover, on: isScrub },
  );
  const wood = strew(
    sheet,
    c.crownSpacing * 1.15,
    41,
    (p) => (cover.clear(p, 2.4 * c.drawing, isWood) ? c.crownSpacing * 1.15 : 0),
    { cover, on: isWood },
  );
  const lone = scene.points("tree").map(({ point }): Strewn => ({ point, lot: 0.2 }));
  const rows = scene
    .lines("wood", "tree")
    .flatMap(({ line }) =>
      evenly(line, Math.max(c.crownSpacing, px(6)), false).map((point, i): Strewn => ({ point, lot: (i % 3) / 3 })),
    );
  const trees = [...wood, ...lone, ...rows].sort((a, b) => a.point[1] - b.point[1]);

  const groups: [StrewnSymbol, readonly Point[]][] = [];
  const share = (all: readonly Strewn[], kinds: readonly StrewnSymbol[]): void => {
    kinds.forEach((kind, k) => {
      const points = all
        .filter(({ point, lot }) => Math.floor(lot * kinds.length) === k && free(point))
        .map(({ point }) => point);
      if (points.length > 0) groups.push([kind, points]);
    });
  };
  share(grass, ["grass-a", "grass-b", "grass-c"]);
  share(heather, ["heather-a", "heather-b"]);
  // Crowns overlap, so they are drawn in bands down the sheet: farther ones first.
  for (const [all, kinds] of [
    [gorse, ["gorse-a", "gorse-a", "gorse-b"]],
    [trees, ["tree-a", "tree-b"]],
  ] as const) {
    const height = 40 * c.drawing;
    const bands = new Map<number, Strewn[]>();
    for (const one of all) {
      const band = Math.floor(one.point[1] / height);
      const known = bands.get(band);
      if (known) known.push(one);
      else bands.set(band, [one]);
    }
    for (const band of bands.values()) share(band, [...new Set(kinds)]);
  }
  const used = [...new Set(groups.map(([kind]) => kind))];
  return (
    element("defs", {}, used.map((kind) => symbolMarker(id(kind), kind, c.drawing, paint)).join("")) +
    groups.map(([kind, points]) => beads(points, id(kind))).join("")
  );
}

/** A hachure: a stroke that is thick at the crest and runs out down the slope. */
export const hachure = ([x, y]: Point, [ux, uy]: Point, length: number, thickness: number): Point[] => [
  [x - (uy * thickness) / 2, y + (ux * thickness) / 2],
  [x + (uy * thickness) / 2, y - (ux * thickness) / 2],
  [x + ux * length, y + uy * length],
];

/** How dark a slope is that falls in a unit direction: 0 facing the light, 1 turned from it. */
const shadeOf = ([ux, uy]: Point): number => 0.5 - 0.5 * (ux * LIGHT[0] + uy * LIGHT[1]);

/** Dunes and ridges fall to both sides; a cliff to the right of its line (OpenStreetMap's rule). */
export function drawHachures({ scene, paint, composition: c, px, cover }: PlateContext): string {
  const strokes: Point[][] = [];
  const row = (
    line: readonly Point[],
    length: number,
    sides: readonly (1 | -1)[],
    strength: number,
    seed: number,
  ): void => {
    const points = evenly(line, 3.7 * c.drawing, false);
    points.slice(1).forEach((p, i) => {
      const before = points[i]!;
      const size = Math.hypot(p[0] - before[0], p[1] - before[1]) || 1;
      const [tx, ty] = [(p[0] - before[0]) / size, (p[1] - before[1]) / size];
      // Ends of the row run out; lengths vary a little, as a hand's do.
      const ends = Math.min(1, (Math.min(i + 1, points.length - 1 - i) / points.length) * 5 + 0.25);
      for (const side of sides) {
        const down: Point = [-ty * side, tx * side];
        const shade = shadeOf(down);
        const wobble = 0.72 + 0.56 * hash01(i, seed, side + 2);
        const foot: Point = [p[0] + down[0] * length, p[1] + down[1] * length];
        const ground = cover.at(foot);
        if (ground === "green" || ground === "tee" || ground === "bunker" || ground === "built") continue;
        strokes.push(
          hachure(p, down, length * ends * wobble * (0.5 + 0.75 * shade), strength * (0.35 + 1.25 * shade)),
        );
      }
    });
  };
  const base = Math.max(6 * c.drawing, Math.min(14 * c.drawing, px(5)));
  scene.lines("ridge").forEach(({ line }, k) => row(line, base, [1, -1], c.medium, k * 17));
  scene.lines("cliff").forEach(({ line }, k) => row(line, base * 1.1, [1], c.medium * 1.5, k * 29));
  let out = "";
  const cliffs = scene.lines("cliff");
  if (cliffs.length > 0) {
    out += element("path", {
      ...paint("path"),
      "stroke-width": c.medium,
      d: cliffs.map(({ line }) => polyPath(line, false)).join(""),
    });
  }
  if (strokes.length > 0) out += element("path", { ...paint("hachure"), d: polyPaths(strokes, true) });
  return out;
}
