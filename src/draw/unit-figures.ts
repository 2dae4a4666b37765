/** Figures that no tee set changes: what is left to the green, its depth, each tee's own length. */
import type { Box } from "../geo/box.ts";
import type { LengthUnit } from "../geo/units.ts";
import type { Point } from "../geo/position.ts";
import { rightOf } from "../geo/vector.ts";
import type { MeasuredHole, TeeFigures } from "../measure/types.ts";
import { leftPoints } from "./arcs.ts";
import { evenly } from "./curves.ts";
import { whole, type Figures } from "./figures.ts";
import type { LabelPlacer } from "./labels.ts";
import { blockSize, Lettering, type TextLine } from "./lettering.ts";
import type { PlateContext } from "./plate-context.ts";
import { element, num, polyPath } from "./svg.ts";

/** Figures that hold for every tee set: ticks of what is left, the green's depth, and each tee's own length. */
export function drawUnitFigures(
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
  for (const { value, at, ahead } of leftPoints(tee, unit)) {
    const right = rightOf(ahead);
    const [p, q] = [sheet.toSheet(at), sheet.toSheet([at[0] + right[0], at[1] + right[1]])];
    const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
    const [ux, uy] = [(q[0] - p[0]) / length, (q[1] - p[1]) / length];
    const half = 6 * Math.sqrt(c.drawing);
    const text: TextLine = { text: String(value), mark: "pill-figure", size: c.text.arc, weight: "heavy" };
    const size = blockSize([text]);
    const [width, height] = [size.width + 6 * Math.sqrt(c.drawing), size.height + 2.5];
    const beside = (gap: number, side: 1 | -1): Point => [
      p[0] + ux * side * (gap + width / 2),
      p[1] + uy * side * (gap + (Math.abs(uy) > 0.7 ? height / 2 : width / 2)),
    ];
    const placed = placer.place({
      width,
      height,
      candidates: [
        { at: beside(half + 1, 1), cost: 0 },
        { at: beside(half + 1, -1), cost: 2 },
        { at: beside(half + 9, 1), cost: 9 },
        { at: beside(half + 9, -1), cost: 10 },
        { at: beside(half + 20, 1), cost: 18 },
        { at: beside(half + 20, -1), cost: 19 },
      ],
      leaderTo: p,
    });
    const end: Point = [p[0] + ux * half, p[1] + uy * half];
    const start: Point = [p[0] - ux * half, p[1] - uy * half];
    // A tick without its figure would say nothing.
    if (!placed) {
      unplaced.push(`${value} left`);
      continue;
    }
    const tick = polyPath([start, end], false);
    marks +=
      element("path", { ...paint("casing"), "stroke-width": c.medium + 2.4, opacity: 0.6, d: tick }) +
      element("path", { ...paint("tick"), "stroke-width": c.medium * 1.3, d: tick });
    if (placed.leader)
      marks += element("path", { ...paint("leader"), "stroke-width": c.fine, d: polyPath(placed.leader, false) });
    marks += pill(placed.box, context);
    lettering.set([text], placed.at);
  }
  if (c.keep.greenDepth) {
    marks += drawDepth(context, tee, unit, placer, lettering);
  }
  if (c.keep.teeNames) {
    for (const each of hole.tees) {
      const at = sheet.toSheet(each.marker);
      const text: TextLine = {
        text: `${each.tee.name} ${whole(each.lengthMetres, unit)}`,
        mark: "name",
        size: c.text.note,
        weight: "regular",
      };
      const { width, height } = blockSize([text]);
      const candidates = [18, 30, 44, 60].flatMap((gap) =>
        ([1, -1] as const).flatMap((side) =>
          [0, -9, 9, -18, 18].map((dy) => ({
            at: [at[0] + side * (gap + width / 2), at[1] + dy] as Point,
            cost: gap * 0.3 + Math.abs(dy) * 0.12 + (side === 1 ? 0 : 1),
          })),
        ),
      );
      const placed = placer.place({ width, height, candidates, leaderTo: at, limit: 60 });
      if (!placed) {
        unplaced.push(text.text);
        continue;
      }
      if (placed.leader) {
        const [from, to] = placed.leader;
        const size = Math.hypot(to[0] - from[0], to[1] - from[1]);
        const stop: Point = [to[0] + ((from[0] - to[0]) / size) * 7, to[1] + ((from[1] - to[1]) / size) * 7];
        marks += element("path", { ...paint("leader"), "stroke-width": c.hair, d: polyPath([from, stop], false) });
      }
      lettering.set([text], placed.at);
    }
  }
  return { svg: `${marks}${lettering}`, unplaced };
}

function pill([minX, minY, maxX, maxY]: Box, { paint, composition: c }: PlateContext): string {
  return element("rect", {
    ...paint("pill"),
    x: num(minX),
    y: num(minY),
    width: num(maxX - minX),
    height: num(maxY - minY),
    rx: num((maxY - minY) / 2),
    "stroke-width": c.fine,
  });
}

/** A dimension line beside the green, front edge to back edge. */
function drawDepth(
  { sheet, composition: c, paint, cover }: PlateContext,
  tee: TeeFigures,
  unit: LengthUnit,
  placer: LabelPlacer,
  lettering: Lettering,
): string {
  const { front, back, sides, middle, depthMetres } = tee.green;
  const text: TextLine = { text: whole(depthMetres, unit), mark: "figure", size: c.text.figure, weight: "heavy" };
  const { width, height } = blockSize([text]);
  const options = ([1, 0] as const).map((side) => {
    const [edge, centre] = [sheet.toSheet(sides[side]), sheet.toSheet(middle)];
    const length = Math.hypot(edge[0] - centre[0], edge[1] - centre[1]) || 1;
    const [ux, uy] = [(edge[0] - centre[0]) / length, (edge[1] - centre[1]) / length];
    const out = length + 9 * c.drawing;
    const shift = (p: Point): Point => {
      const [x, y] = sheet.toSheet(p);
      return [x + ux * out, y + uy * out];
    };
    const [a, b] = [shift(front), shift(back)];
    return {
      a,
      b,
      ux,
      uy,
      at: [(a[0] + b[0]) / 2 + ux * (4 + width / 2), (a[1] + b[1]) / 2 + uy * (4 + height / 2)] as Point,
    };
  });
  // The bar itself must lie on clear ground: sand or water under it would be misread as measured.
  const clear = options.filter(({ a, b }) =>
    evenly([a, b], 4, false).every((p) => !["bunker", "water", "green", "built"].includes(cover.at(p))),
  );
  const placed = placer.place({
    width,
    height,
    candidates: clear.map(({ at }) => ({ at, cost: at === options[0]!.at ? 0 : 3 })),
    limit: 120,
  });
  if (!placed) return "";
  const bar = clear.find(({ at }) => at === placed.at)!;
  placer.block([
    Math.min(bar.a[0], bar.b[0]) - 3,
    Math.min(bar.a[1], bar.b[1]),
    Math.max(bar.a[0], bar.b[0]) + 3,
    Math.max(bar.a[1], bar.b[1]),
  ]);
  const { a, b, ux, uy } = bar;
  const serif = (p: Point): string =>
    polyPath(
      [
        [p[0] - ux * 3, p[1] - uy * 3],
        [p[0] + ux * 3, p[1] + uy * 3],
      ],
      false,
    );
  lettering.set([text], placed.at);
  return element("path", {
    ...paint("tick"),
    "stroke-width": c.fine,
    d: polyPath([a, b], false) + serif(a) + serif(b),
  });
}
