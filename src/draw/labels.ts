/**
 * Finding room for lettering. Every label brings candidate places; the cheapest that
 * touches no figure, no other label and no leader is taken, in order of importance.
 * What finds no room is told to the caller, who lists it beside the sheet.
 */
import { overlaps, type Box } from "../geo/box.ts";
import type { Point } from "../geo/position.ts";
import type { Cover, CoverGrid } from "./cover.ts";

export interface Candidate {
  /** Middle of the label. */
  readonly at: Point;
  /** What this place costs before looking at what lies under it. */
  readonly cost: number;
}

export interface LabelRequest {
  readonly width: number;
  readonly height: number;
  readonly candidates: readonly Candidate[];
  /** Where a leader would run to; its foot keeps clear of other labels. */
  readonly leaderTo?: Point;
  /** Most that may be paid for what the label would cover. */
  readonly limit?: number;
  /** Whether a place will do at all; asked only where nothing else speaks against it. */
  readonly mayLie?: (at: Point) => boolean;
  /** Ground the label may lie on, with a little of it all round; any when left out. */
  readonly only?: (cover: Cover) => boolean;
}

export interface Placement {
  readonly at: Point;
  readonly box: Box;
  readonly leader: readonly [Point, Point] | undefined;
}

/** Cost of covering a square unit of each ground: open ground is free, the green is dear. */
const GROUND_COST: Readonly<Record<Cover, number>> = {
  open: 0,
  rough: 0.01,
  heath: 0.03,
  scrub: 0.06,
  wood: 0.06,
  rock: 0.05,
  strand: 0.03,
  water: 0.02,
  fairway: 0.035,
  green: 0.6,
  tee: 0.5,
  bunker: 0.4,
  built: 0.25,
  taken: 0.2,
};

interface Stroke {
  readonly from: Point;
  readonly to: Point;
  readonly cost: number;
}

export class LabelPlacer {
  private readonly bounds: Box;
  private readonly cover: CoverGrid;
  private readonly boxes: Box[];
  private readonly labels: Box[];
  private readonly strokes: Stroke[];
  private readonly leaders: (readonly [Point, Point])[];

  constructor(bounds: Box, cover: CoverGrid, from?: LabelPlacer) {
    this.bounds = bounds;
    this.cover = cover;
    this.boxes = from ? [...from.boxes] : [];
    this.labels = from ? [...from.labels] : [];
    this.strokes = from ? [...from.strokes] : [];
    this.leaders = from ? [...from.leaders] : [];
  }

  /** A placer that starts from what this one holds. */
  branch(): LabelPlacer {
    return new LabelPlacer(this.bounds, this.cover, this);
  }

  /** Boxes that hold figures, drawings or labels. */
  get taken(): readonly Box[] {
    return this.boxes;
  }

  /** Those of them that are labels. */
  get placed(): readonly Box[] {
    return this.labels;
  }

  /** No label may touch this. */
  block(box: Box): void {
    this.boxes.push(box);
  }

  /** Labels may cross this line at a price. */
  avoid(line: readonly Point[], cost: number): void {
    for (let i = 1; i < line.length; i++) this.strokes.push({ from: line[i - 1]!, to: line[i]!, cost });
  }

  place(request: LabelRequest): Placement | undefined {
    const { width, height, leaderTo, limit = Infinity, only, mayLie } = request;
    let best: (Placement & { cost: number }) | undefined;
    for (const { at, cost } of request.candidates) {
      if (best && cost >= best.cost) continue;
      const box: Box = [at[0] - width / 2, at[1] - height / 2, at[0] + width / 2, at[1] + height / 2];
      const [minX, minY, maxX, maxY] = this.bounds;
      if (box[0] < minX || box[1] < minY || box[2] > maxX || box[3] > maxY) continue;
      if (this.boxes.some((other) => overlaps(other, box))) continue;
      if (this.leaders.some(([a, b]) => crossesBox(a, b, box))) continue;
      const leader = leaderTo ? leaderFrom(box, leaderTo) : undefined;
      // A leader may run out of the very mark it points at, so boxes around its foot do not count.
      if (leader && this.boxes.some((other) => crossesBox(leader[0], leader[1], other) && !holds(other, leader[1])))
        continue;
      if (leader && this.leaders.some(([a, b]) => crosses(a, b, leader[0], leader[1]))) continue;
      if (mayLie && !mayLie(at)) continue;
      if (only && !this.liesOn(box, only)) continue;
      const under = this.groundCost(box);
      const strokes = this.strokes.reduce(
        (sum, { from, to, cost: price }) => (crossesBox(from, to, box) ? sum + price : sum),
        0,
      );
      if (under + strokes > limit) continue;
      const total = cost + under + strokes;
      if (!best || total < best.cost) best = { at, box, leader, cost: total };
    }
    if (!best) return undefined;
    this.boxes.push(best.box);
    this.labels.push(best.box);
    if (best.leader) this.leaders.push(best.leader);
    return { at: best.at, box: best.box, leader: best.leader };
  }

  private liesOn([minX, minY, maxX, maxY]: Box, only: (cover: Cover) => boolean): boolean {
    for (let y = minY - 6; y <= maxY + 6; y += 6)
      for (let x = minX - 8; x <= maxX + 8; x += 6) if (!only(this.cover.at([x, y]))) return false;
    return true;
  }

  private groundCost(box: Box): number {
    const step = 4;
    let cost = 0;
    for (let y = box[1] + step / 2; y < box[3]; y += step) {
      for (let x = box[0] + step / 2; x < box[2]; x += step) cost += GROUND_COST[this.cover.at([x, y])] * step * step;
    }
    return cost;
  }
}

/** From the nearest place of a label's edge towards the point it speaks of; none when they touch. */
function leaderFrom([minX, minY, maxX, maxY]: Box, to: Point): readonly [Point, Point] | undefined {
  const from: Point = [Math.max(minX, Math.min(maxX, to[0])), Math.max(minY, Math.min(maxY, to[1]))];
  return Math.hypot(to[0] - from[0], to[1] - from[1]) < 4 ? undefined : [from, to];
}

/** Whether a segment touches a box. */
export function crossesBox(a: Point, b: Point, [minX, minY, maxX, maxY]: Box): boolean {
  let [from, to] = [0, 1];
  for (const [start, step, low, high] of [
    [a[0], b[0] - a[0], minX, maxX],
    [a[1], b[1] - a[1], minY, maxY],
  ] as const) {
    if (Math.abs(step) < 1e-12) {
      if (start < low || start > high) return false;
      continue;
    }
    const [t0, t1] = [(low - start) / step, (high - start) / step];
    from = Math.max(from, Math.min(t0, t1));
    to = Math.min(to, Math.max(t0, t1));
  }
  return from <= to;
}

const holds = ([minX, minY, maxX, maxY]: Box, [x, y]: Point): boolean =>
  x >= minX && x <= maxX && y >= minY && y <= maxY;

function crosses(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return side(a, b, c) > 0 !== side(a, b, d) > 0 && side(c, d, a) > 0 !== side(c, d, b) > 0;
}

/** Places around a point, nearest first: rings of directions at growing distances. */
export function around(
  point: Point,
  width: number,
  height: number,
  distances: readonly number[],
  price: number = 0.35,
  prefer: (direction: Point) => number = () => 0,
): Candidate[] {
  const result: Candidate[] = [];
  for (const distance of distances) {
    for (let k = 0; k < 16; k++) {
      const angle = (k * Math.PI) / 8;
      const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
      result.push({
        at: [point[0] + ux * (distance + width / 2), point[1] + uy * (distance + height / 2)],
        cost: distance * price + prefer([ux, uy]),
      });
    }
  }
  return result;
}
