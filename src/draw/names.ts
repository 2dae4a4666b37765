/** Names on the sheet that belong to no tee: landmarks, waters, bounds, named ground. */
import { contains } from "../geo/area.ts";
import type { Box } from "../geo/box.ts";
import type { Point } from "../geo/position.ts";
import type { MeasuredHole, TeeFigures } from "../measure/types.ts";
import { inBox } from "./clip.ts";
import { evenly } from "./curves.ts";
import { around, type Candidate, type LabelPlacer, type LabelRequest } from "./labels.ts";
import { blockSize, Lettering, type TextLine } from "./lettering.ts";
import type { PlateContext } from "./plate-context.ts";
import { element, num, polyPath } from "./svg.ts";
import { landmark, LANDMARK_REACH, landmarkSymbol } from "./symbols.ts";
import type { PlateWords } from "../words/words.ts";

export interface NamesDrawn {
  readonly svg: string;
  /** Boxes of everything drawn here; `labels` are those of them that are lettering. */
  readonly boxes: readonly Box[];
  readonly labels: readonly Box[];
  readonly unplaced: readonly string[];
}

/** Ids that the tip takes aim at: `:aim[id]`. */
export const aimsOf = (hole: MeasuredHole): ReadonlySet<string> =>
  new Set([...hole.hole.tip.markdown.matchAll(/:aim\[([^\]]+)\]/g)].map((match) => match[1]!));

/**
 * Landmarks as the things they are. One the tip takes aim at gets a sight line from the
 * tee; when it stands off the sheet its drawing waits at the edge where that line leaves.
 */
export function drawLandmarks(
  context: PlateContext,
  hole: MeasuredHole,
  tee: TeeFigures,
  placer: LabelPlacer,
): NamesDrawn {
  const { sheet, composition: c, paint } = context;
  const aims = aimsOf(hole);
  const unplaced: string[] = [];
  const boxes: Box[] = [];
  let svg = "";
  const lettering = new Lettering(paint, c.text.halo);
  const from = sheet.toSheet(tee.marker);
  const scale = c.drawing;
  for (const { feature, shape } of hole.placed.values()) {
    if (feature.kind !== "landmark" || shape.type !== "points") continue;
    const symbol = landmarkSymbol(String(feature.tags["man_made"] ?? "tower"));
    const [left, up, right] = LANDMARK_REACH[symbol].map((n) => n * scale) as [number, number, number];
    const [minX, minY, maxX, maxY] = sheet.map;
    const inner: Box = [minX + left + 2, minY + up + 3, maxX - right - 2, maxY - 5];
    const at = sheet.toSheet(shape.points[0]!);
    const here = inBox(at, inner);
    const aimed = aims.has(feature.id);
    if (!here && !aimed) continue;
    const foot = here ? at : edgePoint(from, at, inner);
    // Where the line of play itself leads to it, a second line beside the first would say nothing.
    if (aimed && turnFromPlay(foot, from, sheet.toSheet(tee.line.points[1]!)) > 2.5) {
      const tip: Point = foot;
      const size = Math.hypot(tip[0] - from[0], tip[1] - from[1]) || 1;
      const start: Point = [
        from[0] + ((tip[0] - from[0]) / size) * 9 * scale,
        from[1] + ((tip[1] - from[1]) / size) * 9 * scale,
      ];
      svg += element("path", {
        ...paint("leader"),
        "stroke-width": c.fine,
        "stroke-dasharray": `${num(1.2 * scale)} ${num(3.4 * scale)}`,
        "stroke-linecap": "round",
        d: polyPath([start, tip], false),
      });
    }
    const glyph: Box = [foot[0] - left, foot[1] - up, foot[0] + right, foot[1] + 2];
    placer.block(glyph);
    boxes.push(glyph);
    svg += element(
      "g",
      { transform: `translate(${num(foot[0])} ${num(foot[1])})${scale === 1 ? "" : ` scale(${scale})`}` },
      landmark(symbol, paint, 0.8),
    );
    if (!here) svg += arrowBeyond(foot, at, context);
    if (!feature.name) continue;
    const line: TextLine = { text: feature.name, mark: "name", size: c.text.name, weight: "regular" };
    const { width, height } = blockSize([line]);
    const middle: Point = [foot[0] + (right - left) / 2, foot[1] - up / 2];
    const placed = placer.place({
      width,
      height,
      candidates: [
        { at: [foot[0] + 1, foot[1] + 3 + height / 2], cost: 0 },
        { at: [foot[0] + right + 1 + width / 2, middle[1]], cost: 1 },
        { at: [foot[0] - left - 1 - width / 2, middle[1]], cost: 1.5 },
        ...around(middle, width, height, [up / 2 + 2, up / 2 + 12], 0.5).map(({ at, cost }) => ({
          at,
          cost: cost + 6,
        })),
      ],
    });
    if (!placed) unplaced.push(feature.name);
    else {
      boxes.push(placed.box);
      lettering.set([line], placed.at);
    }
  }
  return { svg: `${svg}${lettering}`, boxes, labels: boxes.filter((box) => placer.placed.includes(box)), unplaced };
}

/** Degrees between two directions from a point. */
function turnFromPlay(to: Point, from: Point, along: Point): number {
  const [a, b] = [Math.atan2(to[1] - from[1], to[0] - from[0]), Math.atan2(along[1] - from[1], along[0] - from[0])];
  const turn = Math.abs(((a - b) * 180) / Math.PI) % 360;
  return Math.min(turn, 360 - turn);
}

/** Where the straight way from one point to another leaves a box. */
function edgePoint(from: Point, to: Point, [minX, minY, maxX, maxY]: Box): Point {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const exits = [
    dx > 0 ? (maxX - from[0]) / dx : dx < 0 ? (minX - from[0]) / dx : Infinity,
    dy > 0 ? (maxY - from[1]) / dy : dy < 0 ? (minY - from[1]) / dy : Infinity,
  ];
  const t = Math.max(0, Math.min(1, ...exits));
  return [from[0] + dx * t, from[1] + dy * t];
}

/** A small arrow past a drawing at the edge: what it shows lies farther that way. */
function arrowBeyond(foot: Point, at: Point, { composition: c, paint }: PlateContext): string {
  const size = Math.hypot(at[0] - foot[0], at[1] - foot[1]) || 1;
  const angle = (Math.atan2(at[1] - foot[1], at[0] - foot[0]) * 180) / Math.PI;
  const [ux, uy] = [(at[0] - foot[0]) / size, (at[1] - foot[1]) / size];
  const reach = uy < -0.5 ? 26 * c.drawing : 11 * c.drawing;
  const [x, y] = [foot[0] + ux * reach, foot[1] + uy * Math.min(reach, 26 * c.drawing)];
  return element("path", {
    ...paint("landmark-ink"),
    transform: `translate(${num(x)} ${num(y)}) rotate(${num(angle)}) scale(${c.drawing})`,
    d: "M5 0-2-3.2-.4 0-2 3.2z",
  });
}

/** Names of waters and other ground that carry no figures, and of the bounds. */
export function drawNames(
  context: PlateContext,
  led: ReadonlySet<string>,
  words: PlateWords,
  placer: LabelPlacer,
): NamesDrawn {
  const { scene, composition: c, paint, sheet } = context;
  const unplaced: string[] = [];
  const boxes: Box[] = [];
  const lettering = new Lettering(paint, c.text.halo);
  const said = new Set<string>();
  const put = (
    line: TextLine,
    candidates: readonly Candidate[],
    limit: number,
    where: Pick<LabelRequest, "only" | "mayLie"> = {},
    must = true,
  ): boolean => {
    const { width, height } = blockSize([line]);
    const placed = placer.place({ width, height, candidates, limit, ...where });
    if (placed) {
      boxes.push(placed.box);
      lettering.set([line], placed.at);
    } else if (must) unplaced.push(line.text);
    return placed !== undefined;
  };
  const inside = (rings: readonly (readonly Point[])[]): Candidate[] => {
    const [xs, ys] = [rings[0]!.map((p) => p[0]), rings[0]!.map((p) => p[1])];
    const bounds: Box = [
      Math.max(sheet.map[0], Math.min(...xs)),
      Math.max(sheet.map[1], Math.min(...ys)),
      Math.min(sheet.map[2], Math.max(...xs)),
      Math.min(sheet.map[3], Math.max(...ys)),
    ];
    const [cx, cy] = [(bounds[0] + bounds[2]) / 2, (bounds[1] + bounds[3]) / 2];
    const result: Candidate[] = [];
    for (let y = bounds[1] + 6; y < bounds[3]; y += 7) {
      for (let x = bounds[0] + 6; x < bounds[2]; x += 9)
        result.push({ at: [x, y], cost: Math.hypot(x - cx, y - cy) * 0.06 });
    }
    return result;
  };
  for (const { feature, rings } of scene.water) {
    const name = feature.name;
    if (!name || led.has(feature.id) || said.has(name)) continue;
    // Water that only grazes the sheet needs no name on it.
    if (!inside(rings).some(({ at }) => scene.water.some((one) => contains(one.rings, at)))) continue;
    said.add(name);
    const sizes = [c.text.water, c.text.water * 0.8, ...(c.keep.lesserNames ? [c.text.name] : [])];
    const room = inside(rings);
    sizes.some((size, i) => {
      const last = i === 2;
      const spacing = i === 0 ? 0.12 : i === 1 ? 0.04 : 0;
      return put(
        { text: name, mark: "water-name", size, weight: "regular", italic: true, spacing },
        room,
        60,
        last ? {} : { only: (cover) => cover === "water" },
        last,
      );
    });
  }
  for (const { feature, line } of c.keep.lesserNames ? scene.streams : []) {
    const name = feature.name;
    if (!name || led.has(feature.id) || said.has(name) || !line.some((p) => inBox(p, sheet.map))) continue;
    said.add(name);
    const text: TextLine = { text: name, mark: "water-name", size: c.text.name, weight: "regular", italic: true };
    const { width, height } = blockSize([text]);
    put(
      text,
      evenly(line, 24, false).flatMap((p) => around(p, width, height, [5, 10], 0.5)),
      90,
    );
  }
  const bounds = scene.lines("out-of-bounds").filter(({ line }) => line.some((p) => inBox(p, sheet.map)));
  if (bounds.length > 0 && c.keep.lesserNames) {
    const text: TextLine = {
      text: words.outOfBounds,
      mark: "note",
      size: c.text.note,
      weight: "regular",
      italic: true,
    };
    const { width, height } = blockSize([text]);
    put(
      text,
      bounds.flatMap(({ line }) =>
        evenly(line, 30, false)
          .filter((p) => inBox(p, sheet.map))
          .flatMap((p) => around(p, width, height, [9, 15], 0.8)),
      ),
      80,
    );
  }
  if (c.keep.groundNames) {
    const ways = [
      ...scene.lines("road", "ridge", "cliff").map(({ feature, line }) => ({ feature, line })),
      ...scene.areas("building").map(({ feature, rings }) => ({ feature, line: rings[0]! })),
    ];
    for (const { feature, line } of ways) {
      const name = feature.name;
      if (!name || said.has(name) || !line.some((p) => inBox(p, sheet.map))) continue;
      said.add(name);
      const text: TextLine = { text: name, mark: "note", size: c.text.note, weight: "regular", italic: true };
      const { width, height } = blockSize([text]);
      const near = evenly(line, 30, false).filter((p) => inBox(p, sheet.map));
      put(
        text,
        near.flatMap((p) => around(p, width, height, [7, 12, 20], 0.8)),
        40,
        {},
        false,
      );
    }
    for (const { feature, rings } of scene.areas("scrub", "wood", "heath", "sand", "rock", "grassland")) {
      const name = feature.name;
      if (!name || said.has(name)) continue;
      said.add(name);
      const text: TextLine = { text: name, mark: "note", size: c.text.note, weight: "regular", italic: true };
      const { width } = blockSize([text]);
      put(
        text,
        inside(rings),
        110,
        { mayLie: ([x, y]) => [-0.4, 0, 0.4].every((t) => contains(rings, [x + t * width, y])) },
        false,
      );
    }
  }
  return { svg: lettering.toString(), boxes, labels: boxes, unplaced };
}
