/** A hole's features laid on its sheet and cut to it. */
import { kindFacts, type FeatureKind, type GroundCover } from "../course/kinds.ts";
import type { Feature } from "../course/types.ts";
import { contains } from "../geo/area.ts";
import { boxAround, grow, overlaps, type Box } from "../geo/box.ts";
import type { Point } from "../geo/position.ts";
import { openRing } from "../geo/ring.ts";
import type { PlacedFeature } from "../measure/types.ts";
import { clipLine, clipRing, inBox, seaFromCoast } from "./clip.ts";
import { naturalKnots } from "./curves.ts";
import type { Sheet } from "./sheet.ts";

/** An area on the sheet: open rings, the exterior first. */
export interface SceneArea {
  readonly feature: Feature;
  readonly cover: GroundCover;
  readonly rings: readonly (readonly Point[])[];
}

export interface SceneLine {
  readonly feature: Feature;
  readonly line: readonly Point[];
}

export interface ScenePoint {
  readonly feature: Feature;
  readonly point: Point;
}

export interface Scene {
  readonly sheet: Sheet;
  /** What shapes are cut to: larger than the map, so that cut edges are never seen. */
  readonly box: Box;
  readonly areas: (...kinds: FeatureKind[]) => readonly SceneArea[];
  /** Areas of a ground, whatever they are: gorse in a penalty area is gorse. Water is {@link water}. */
  readonly covered: (cover: Exclude<GroundCover, "none" | "water">) => readonly SceneArea[];
  readonly lines: (...kinds: FeatureKind[]) => readonly SceneLine[];
  readonly points: (...kinds: FeatureKind[]) => readonly ScenePoint[];
  /** Burns, penalty areas or not, in the direction of their water. */
  readonly streams: readonly SceneLine[];
  /** Walls, fences and hedges, bounds or not. */
  readonly barriers: (kind: "wall" | "fence" | "hedge") => readonly SceneLine[];
  /** Everything that holds water: sea, ponds, and penalty areas that are water themselves. */
  readonly water: readonly SceneArea[];
}

const BLEED = 22;

/** Distance between knots, as a share of the composition's: small shapes need closer ones, soft edges wider. */
const knotShare = (kind: FeatureKind): number =>
  kind === "bunker" ? 0.62 : kind === "green" ? 1 : kindFacts(kind).edge === "soft" ? 2.8 : 1.6;

/** Lays features on a sheet. Iteration order is the content's own. */
export function sceneOf(placed: Iterable<PlacedFeature>, sheet: Sheet, knots: number): Scene {
  const box = grow(sheet.map, BLEED);
  const areas: SceneArea[] = [];
  const lines: SceneLine[] = [];
  const points: ScenePoint[] = [];
  for (const { feature, shape, cover } of placed) {
    const { edge } = kindFacts(feature.kind);
    const spacing = knots * knotShare(feature.kind);
    if (shape.type === "areas") {
      for (const area of shape.areas) {
        const rings = area
          .map((ring) => openRing(ring.map(sheet.toSheet)))
          .map((ring) => (overlaps(boxAround(ring), box) ? clipRing(ring, box) : []))
          .map((ring, i) => (i > 0 && ring.length < 3 ? undefined : ring))
          .filter((ring) => ring !== undefined);
        if (rings.length === 0 || rings[0]!.length < 3) continue;
        areas.push({
          feature,
          cover,
          rings: edge === "straight" ? rings : rings.map((ring) => naturalKnots(ring, spacing, true)),
        });
      }
    } else if (shape.type === "lines") {
      for (const line of shape.lines) {
        const onSheet = line.map(sheet.toSheet);
        const drawn = edge === "winding" ? naturalKnots(onSheet, knots * 1.6, false) : onSheet;
        for (const piece of clipLine(drawn, box)) lines.push({ feature, line: piece });
      }
    } else {
      for (const point of shape.points) {
        const place = sheet.toSheet(point);
        if (inBox(place, box)) points.push({ feature, point: place });
      }
    }
  }
  const of =
    <T extends { readonly feature: Feature }>(all: readonly T[]) =>
    (...kinds: FeatureKind[]): readonly T[] =>
      all.filter(({ feature }) => kinds.includes(feature.kind));
  return {
    sheet,
    box,
    areas: of(areas),
    lines: of(lines),
    points: of(points),
    covered: (cover) => areas.filter((area) => area.cover === cover),
    barriers: (kind) => lines.filter(({ feature }) => feature.kind === kind || feature.tags["barrier"] === kind),
    streams: lines.filter(({ feature }) => isStream(feature)),
    water: withSea(
      areas.filter(({ cover }) => cover === "water"),
      lines,
      box,
      knots,
    ),
  };
}

/** A burn may be a penalty area too; its water is drawn all the same. */
const isStream = (feature: Feature): boolean => feature.kind === "stream" || feature.tags["waterway"] !== undefined;

/** A coastline makes sea only where no surveyed water lies on its right already. */
function withSea(
  water: readonly SceneArea[],
  lines: readonly SceneLine[],
  box: Box,
  knots: number,
): readonly SceneArea[] {
  const coasts = lines.filter(({ feature }) => feature.kind === "coastline");
  const bare = coasts.filter(({ line }) => {
    const i = Math.floor(line.length / 2);
    const [a, b] = [line[Math.max(0, i - 1)]!, line[i]!];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    const right: Point = [
      (a[0] + b[0]) / 2 - ((b[1] - a[1]) / length) * 3,
      (a[1] + b[1]) / 2 + ((b[0] - a[0]) / length) * 3,
    ];
    return !water.some(({ rings }) => contains(rings, right));
  });
  const [first] = bare;
  if (first === undefined) return water;
  const sea = seaFromCoast(
    bare.map(({ line }) => line),
    box,
  );
  return [
    ...water,
    ...sea.map((ring): SceneArea => ({
      feature: first.feature,
      cover: "water",
      rings: [naturalKnots(ring, knots, true)],
    })),
  ];
}
