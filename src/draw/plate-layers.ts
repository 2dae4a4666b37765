/**
 * The plate as a list of layers, in the order in which they are drawn, from below. Each
 * first takes room for its lettering, the most important layer first, and then can be drawn
 * with as much texture as one likes.
 */
import * as attr from "../contract/attributes.ts";
import type { Box } from "../geo/box.ts";
import { locate } from "../geo/line.ts";
import type { LengthUnit } from "../geo/units.ts";
import type { Point } from "../geo/position.ts";
import type { MeasuredHole, TeeFigures } from "../measure/types.ts";
import type { Composition } from "./composition.ts";
import { drawTeeFigures, hazardsInPlay } from "./figures.ts";
import { drawNorth, NORTH_REACH } from "./furniture.ts";
import {
  drawBunkers,
  drawCover,
  drawFairways,
  drawGreens,
  drawTeeingGrounds,
  drawWater,
  sandDots,
  shoreLines,
} from "./ground.ts";
import { drawGrowth, drawHachures } from "./growth.ts";
import type { LabelPlacer } from "./labels.ts";
import { drawLineOfPlay, drawTeeMarkers, group } from "./line-of-play.ts";
import { drawLandmarks, drawNames } from "./names.ts";
import { drawPhotoMarks } from "./photo-marks.ts";
import type { PlateContext } from "./plate-context.ts";
import {
  contourRuns,
  drawContours,
  drawGreenContours,
  drawRelief,
  drawScarps,
  scarpMarks,
  type PlateGround,
} from "./relief.ts";
import { flag, flagOnGreen } from "./symbols.ts";
import { element, num } from "./svg.ts";
import { drawUnitFigures } from "./unit-figures.ts";
import type { PlateWords } from "../words/words.ts";
import { drawBounds, drawWorks } from "./works.ts";

/** What a plate is made of, and what its layers leave one another. */
export interface PlateSetup {
  readonly hole: MeasuredHole;
  readonly context: PlateContext;
  readonly words: PlateWords;
  readonly ground: PlateGround | undefined;
  /** The tee set and the unit shown first, and all that are drawn. */
  readonly first: TeeFigures;
  readonly tees: readonly TeeFigures[];
  readonly unit: LengthUnit;
  readonly units: readonly LengthUnit[];
  /** The teeing grounds, as laid on the sheet. */
  readonly plates: readonly (readonly Point[])[];
  readonly room: Room;
}

/** Room for lettering: what holds on every plate, what holds in one unit, what holds for one tee set in one unit. */
export class Room {
  readonly shared: LabelPlacer;
  /** A placer a unit, begun when everything shared has its place. */
  readonly ofUnit = new Map<LengthUnit, LabelPlacer>();
  /** Boxes of names, which suit every unit's figures. */
  names: readonly Box[] = [];
  /**
   * Labels that found no room on the plate shown first, in words: shared ones, then its unit's, then its tee
   * set's.
   */
  readonly unplaced: string[] = [];
  /** Where the lettering shown first stands, and what it keeps clear of. */
  labels: readonly Box[] = [];
  blocked: readonly Box[] = [];

  constructor(shared: LabelPlacer) {
    this.shared = shared;
  }
}

/** Draws a layer with the texture of a composition. */
export type Draw = (texture: Composition) => string;

export interface Layer {
  readonly name: string;
  /** Takes room for its lettering in this order, 1 first; a layer without one takes none. */
  readonly importance?: number;
  /** Everything but the texture, found once. */
  readonly lay: (setup: PlateSetup) => Draw;
}

/** A layer without texture of its own. */
const plain =
  (svg: string): Draw =>
  () =>
    svg;

const textured = ({ context }: PlateSetup, texture: Composition): PlateContext => ({
  ...context,
  composition: texture,
});

const onSheet = ({ context: { sheet } }: PlateSetup, { line }: TeeFigures): Point[] => line.points.map(sheet.toSheet);

const blockAbout = (placer: LabelPlacer, [x, y]: Point, reach: number): void =>
  placer.block([x - reach, y - reach, x + reach, y + reach]);

/** Where the flag stands on the sheet: in today's hole where the content gives it, else in the middle of the green. */
function flagOf({ hole, context: { sheet, composition }, first }: PlateSetup): {
  readonly at: Point;
  readonly scale: number;
  readonly pin: boolean;
} {
  const pin = pinOf(hole);
  return { at: sheet.toSheet(pin ?? first.green.middle), scale: composition.drawing * 1.05, pin: pin !== undefined };
}

/** From below. */
export const LAYERS: readonly Layer[] = [
  {
    name: "ground cover",
    lay: (setup) => {
      const dots = sandDots(setup.context);
      return (texture) => drawCover(textured(setup, texture), dots);
    },
  },
  { name: "fairways", lay: (setup) => plain(drawFairways(setup.context, onSheet(setup, setup.hole.tees[0]!))) },
  { name: "relief", lay: ({ context, ground }) => plain(drawRelief(context, ground)) },
  {
    // Over the fairways, since burns cross them; over the relief, since water is level.
    name: "water",
    lay: (setup) => {
      const shores = shoreLines(setup.context);
      return (texture) => drawWater(textured(setup, texture), shores);
    },
  },
  {
    name: "contours",
    lay: (setup) => {
      const runs = contourRuns(setup.context, setup.ground);
      return (texture) => drawContours(textured(setup, texture), setup.ground, setup.room.shared.taken, runs);
    },
  },
  {
    name: "scarps",
    lay: (setup) => {
      const marks = scarpMarks(setup.context, setup.ground);
      return (texture) => drawScarps(textured(setup, texture), marks);
    },
  },
  { name: "hachures", lay: ({ context }) => plain(drawHachures(context)) },
  { name: "teeing grounds", lay: ({ context, plates }) => plain(drawTeeingGrounds(context, plates)) },
  { name: "greens", lay: ({ context, ground }) => plain(drawGreens(context, drawGreenContours(context, ground))) },
  { name: "bunkers", lay: ({ context }) => plain(drawBunkers(context)) },
  { name: "works", lay: ({ context }) => plain(drawWorks(context)) },
  {
    // Growth keeps out from under the lettering.
    name: "growth",
    lay: (setup) => {
      const {
        context: { sheet },
        hole,
        room,
      } = setup;
      const offPlay = (p: Point): number =>
        Math.abs(locate(hole.tees[0]!.line, sheet.toPlane(p)).offset) * sheet.pxPerMetre;
      return (texture) => drawGrowth(textured(setup, texture), [...room.labels, ...room.blocked], offPlay);
    },
  },
  {
    name: "bounds",
    lay: (setup) => plain(drawBounds(setup.context, onSheet(setup, setup.hole.tees[0]!), setup.context.px(95))),
  },
  {
    name: "lines of play",
    importance: 5,
    lay: (setup) => {
      const { hole, context, tees, first, room } = setup;
      hole.tees.forEach((tee, i) => room.shared.avoid(onSheet(setup, tee), i === 0 ? 60 : 6));
      return plain(
        tees
          .map((tee) => group("plate-tee", { [attr.tee]: tee.tee.id }, tee === first, drawLineOfPlay(context, tee)))
          .join(""),
      );
    },
  },
  { name: "figures of each tee set", importance: 10, lay: layTeeFigures },
  // Over the arcs: a boxed figure breaks the arc behind it.
  { name: "figures of each unit", importance: 8, lay: layUnitFigures },
  {
    name: "tee markers",
    importance: 2,
    lay: ({ hole, context, first, room }) => {
      for (const { marker } of hole.tees)
        blockAbout(room.shared, context.sheet.toSheet(marker), 5.5 * context.composition.drawing);
      return plain(drawTeeMarkers(context, hole, first));
    },
  },
  {
    // Drawn with the lines of play; their rings keep free of lettering.
    name: "bends",
    importance: 3,
    lay: ({ hole, context, room }) => {
      for (const { point } of hole.tees[0]!.bends) blockAbout(room.shared, context.sheet.toSheet(point), 6);
      return plain("");
    },
  },
  {
    // Only where the photos themselves are near.
    name: "photo marks",
    importance: 4,
    lay: ({ hole, context, room }) => {
      if (!context.composition.keep.everyTee) return plain("");
      const photos = drawPhotoMarks(context, hole);
      for (const box of photos.boxes) room.shared.block(box);
      return plain(photos.svg);
    },
  },
  { name: "names", importance: 9, lay: layNames },
  {
    name: "landmarks",
    importance: 6,
    lay: ({ hole, context, first, room }) => {
      const landmarks = drawLandmarks(context, hole, first, room.shared);
      room.unplaced.push(...landmarks.unplaced);
      return plain(landmarks.svg);
    },
  },
  {
    name: "flag",
    importance: 1,
    lay: (setup) => {
      const {
        context: { paint, sheet },
        first: { green },
        room,
      } = setup;
      const { at, scale, pin } = flagOf(setup);
      room.shared.block([at[0] - 3 * scale, at[1] - 23 * scale, at[0] + 13 * scale, at[1] + 2 * scale]);
      return plain(
        pin
          ? element("g", { transform: `translate(${num(at[0])} ${num(at[1])})` }, flag(paint, scale))
          : flagOnGreen(paint, scale, {
              front: sheet.toSheet(green.front),
              middle: at,
              back: sheet.toSheet(green.back),
            }),
      );
    },
  },
  {
    name: "north",
    importance: 7,
    lay: (setup) => {
      const { context, room, words } = setup;
      const north = placeNorth(context, room.shared, flagOf(setup).at);
      return plain(
        north
          ? drawNorth(north, context.sheet, Math.sqrt(context.composition.drawing), context.paint, words.north)
          : "",
      );
    },
  },
];

function layUnitFigures({ hole, context, first, unit, units, room }: PlateSetup): Draw {
  return plain(
    units
      .map((one) => {
        const placer = room.shared.branch();
        room.ofUnit.set(one, placer);
        const figures = drawUnitFigures(context, hole, first, one, placer);
        if (one === unit) room.unplaced.push(...figures.unplaced);
        return group("plate-unit", { [attr.unit]: one }, one === unit, figures.svg);
      })
      .join(""),
  );
}

/** Names must suit every unit's figures, so they are placed against all of them. */
function layNames({ hole, context, words, tees, room }: PlateSetup): Draw {
  const led = new Set(
    tees.flatMap((tee) =>
      hazardsInPlay(tee, hole)
        .slice(0, context.composition.leaders)
        .map(({ id }) => id),
    ),
  );
  const placer = room.shared.branch();
  for (const ofUnit of room.ofUnit.values()) for (const box of ofUnit.taken) placer.block(box);
  const names = drawNames(context, led, words, placer);
  room.names = names.boxes;
  room.labels = names.labels;
  room.unplaced.push(...names.unplaced);
  return plain(names.svg);
}

function layTeeFigures({ hole, context, first, tees, unit, room }: PlateSetup): Draw {
  const groups: string[] = [];
  for (const [one, ofUnit] of room.ofUnit) {
    for (const tee of tees) {
      const own = ofUnit.branch();
      for (const box of room.names) own.block(box);
      const drawn = drawTeeFigures(context, hole, tee, one, own);
      const shown = one === unit && tee === first;
      groups.push(group("plate-tee", { [attr.tee]: tee.tee.id, [attr.unit]: one }, shown, drawn.svg));
      if (!shown) continue;
      room.unplaced.push(...drawn.unplaced);
      room.blocked = own.taken.filter((box) => !own.placed.includes(box) && !room.names.includes(box));
      room.labels = [...own.placed, ...room.labels];
    }
  }
  return plain(groups.join(""));
}

/** Takes room by importance and gives the layers ready to be drawn, from below. */
export function layLayers(setup: PlateSetup, layers: readonly Layer[] = LAYERS): readonly Draw[] {
  const byImportance = [...layers].sort((a, b) => (a.importance ?? Infinity) - (b.importance ?? Infinity));
  const laid = new Map(byImportance.map((layer) => [layer, layer.lay(setup)]));
  return layers.map((layer) => laid.get(layer)!);
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
    candidates: places.map((at) => ({
      at,
      cost: ((at[1] - minY) / (maxY - minY)) * 30 + Math.abs(at[0] - side) * 0.02,
    })),
  })?.at;
}
