/**
 * Landing ground as a strip: the hole laid out straight along its line of play, true to
 * scale, with a bar across it where each player's drive comes to rest. Every tee set is
 * measured back from the green, so players of different tees lie on one strip.
 */
import { contains } from "../geo/area.ts";
import { closedRing, openRing } from "../geo/ring.ts";
import * as attr from "../contract/attributes.ts";
import { densify } from "../geo/segment.ts";
import { boxAround, grow, overlaps, type Box } from "../geo/box.ts";
import { locate, pointAt, type Line } from "../geo/line.ts";
import { fromUnit, inUnit, type LengthUnit } from "../geo/units.ts";
import type { Point } from "../geo/position.ts";
import { COVER_ORDER, isBoundary, kindFacts, type FeatureKind, type GroundCover } from "../course/kinds.ts";
import type { LandingFigures } from "../measure/landing.ts";
import { areasOf, boundariesOf } from "../measure/place.ts";
import type { PlayerId } from "../measure/players.ts";
import type { MeasuredHole } from "../measure/types.ts";
import { clipLine, clipRing } from "./clip.ts";
import { naturalKnots } from "./curves.ts";
import { textAttributes, type TextLine } from "./lettering.ts";
import { painter, type Mark, type Painter, type PlateTheme } from "./palette.ts";
import type { GroundDrawingWords } from "../words/words.ts";
import { element, escapeXml, num, polyPath, smoothPath } from "./svg.ts";
import { beads, symbolMarker } from "./symbols.ts";
import { textWidth } from "./text-width.ts";

/** A player's drive on the strip. */
export interface LandingBar {
  readonly player: PlayerId;
  readonly figures: LandingFigures;
}

export interface LandingOptions {
  readonly idPrefix: string;
  readonly unit: LengthUnit;
  readonly theme?: PlateTheme;
  readonly words: GroundDrawingWords;
}

export interface Landing {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

const UNITS: readonly LengthUnit[] = ["yards", "metres"];
const WIDTH = 390;
const LEFT = 34;
const LABELS = 108;
const TOP = 8;
const FOOT = 8;
/** Ground shown to each side of the line: a little more than trouble is looked for. */
const SIDE_METRES = 64;
/** Ground shown short of the shortest drive and past the longest. */
const END_METRES = 26;
const MOST_HEIGHT = 440;
const TEXT = 10.5;
const SMALL = 10;
/** Two bars nearer than this along the line share no label line. */
const LABEL_GAP = 29;

/** How each ground fills the strip; what is not drawn is left open. */
const FILLS: Readonly<
  Record<Exclude<GroundCover, "none">, { readonly mark: Mark; readonly edge?: Mark } | undefined>
> = {
  rough: undefined,
  heath: { mark: "heath" },
  strand: { mark: "strand" },
  scrub: { mark: "scrub" },
  wood: { mark: "wood" },
  rock: { mark: "rock" },
  water: { mark: "sea", edge: "shore" },
  fairway: { mark: "fairway", edge: "fairway-edge" },
  tee: undefined,
  green: { mark: "green" },
  bunker: { mark: "bunker", edge: "bunker-edge" },
  built: undefined,
};

interface Strip {
  readonly line: Line;
  readonly map: Box;
  readonly pxPerMetre: number;
  readonly topStation: number;
  /** Place on the sheet of a station and offset. */
  at(station: number, offset: number): Point;
}

/** Draws the strip; undefined without a drive to show. Same hole and options, same bytes. */
export function drawLanding(
  hole: MeasuredHole,
  bars: readonly LandingBar[],
  options: LandingOptions,
): Landing | undefined {
  const longest = hole.tees[0];
  if (bars.length === 0 || !longest) return undefined;
  const { words } = options;
  const paint = painter(options.theme ?? "light");
  const { line } = longest;
  const stations = bars.map(({ figures }) => line.lengthMetres - figures.leavesMetres);
  const [low, high] = [
    Math.min(...stations) - END_METRES,
    Math.min(Math.max(...stations) + END_METRES, line.lengthMetres + 20),
  ];
  const mapWidth = WIDTH - LEFT - LABELS;
  const pxPerMetre = Math.min(mapWidth / (2 * SIDE_METRES), MOST_HEIGHT / (high - low));
  const mapHeight = Math.round((high - low) * pxPerMetre);
  const map: Box = [LEFT, TOP, LEFT + mapWidth, TOP + mapHeight];
  const middle = (map[0] + map[2]) / 2;
  const strip: Strip = {
    line,
    map,
    pxPerMetre,
    topStation: high,
    at: (station, offset) => [middle + offset * pxPerMetre, TOP + (high - station) * pxPerMetre],
  };
  const height = TOP + mapHeight + FOOT;
  const id = (name: string): string => `${options.idPrefix}-${name}`;

  let content = element("rect", { ...paint("ground"), x: LEFT, y: TOP, width: num(mapWidth), height: num(mapHeight) });
  content += drawGround(hole, strip, paint, id);
  content += element("path", {
    ...paint("line"),
    "stroke-width": 0.9,
    "stroke-dasharray": "7 4.5",
    d: `M${num(middle)} ${TOP}V${num(TOP + mapHeight)}`,
  });
  const placed = labelPlaces(bars, stations, strip);
  const lettering = UNITS.map((unit) =>
    element(
      "g",
      { class: "plate-unit", [attr.unit]: unit, ...(unit === options.unit ? {} : { display: "none" }) },
      drawTicks(strip, line.lengthMetres, paint, unit) +
        bars.map((bar, i) => drawLabel(bar, stations[i]!, placed[i]!, strip, paint, unit, words)).join(""),
    ),
  ).join("");
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" class="plate plate-landing" viewBox="0 0 ${WIDTH} ${num(height)}" width="${WIDTH}" height="${num(height)}" role="img" aria-labelledby="${escapeXml(id("title"))}" aria-describedby="${escapeXml(id("description"))}" font-family="Besley, Georgia, 'Times New Roman', serif">` +
    element("title", { id: id("title") }, escapeXml(words.landingTitle({ hole: hole.hole.number }))) +
    element("desc", { id: id("description") }, escapeXml(words.landingDescription)) +
    element(
      "defs",
      {},
      element(
        "clipPath",
        { id: id("map") },
        element("rect", { x: LEFT, y: TOP, width: num(mapWidth), height: num(mapHeight) }),
      ) +
        symbolMarker(id("gorse"), "gorse-b", 0.8, paint) +
        symbolMarker(id("tree"), "tree-b", 1, paint),
    ) +
    element("rect", { ...paint("paper"), width: WIDTH, height: num(height) }) +
    element(
      "g",
      { "clip-path": `url(#${id("map")})` },
      content + bars.map((bar, i) => drawBar(bar, stations[i]!, strip, paint)).join(""),
    ) +
    [0, 3.2]
      .map((gap, i) =>
        element("rect", {
          ...paint("frame"),
          x: num(LEFT - gap),
          y: num(TOP - gap),
          width: num(mapWidth + 2 * gap),
          height: num(mapHeight + 2 * gap),
          "stroke-width": i === 0 ? 0.6 : 1.2,
        }),
      )
      .join("") +
    lettering +
    "</svg>";
  return { svg, width: WIDTH, height };
}

/** Walls, fences and hedges. */
const isBarrier = (kind: FeatureKind): boolean => kindFacts(kind).tags.some((tag) => tag.startsWith("barrier="));

/** Ground of the hole, every vertex at its own station and offset. */
function drawGround(hole: MeasuredHole, strip: Strip, paint: Painter, id: (name: string) => string): string {
  const { line, map, topStation, pxPerMetre } = strip;
  const lowStation = topStation - (map[3] - map[1]) / pxPerMetre;
  const near: Point[] = [];
  for (let station = lowStation; station <= topStation; station += 10) near.push(pointAt(line, station));
  const around = grow(boxAround([...near, pointAt(line, topStation)]), SIDE_METRES + 8);
  const bleed = grow(map, 8);
  const onStrip = (points: readonly Point[]): Point[] =>
    densify(points, 4).map((point) => {
      const { station, offset } = locate(line, point);
      return strip.at(station, offset);
    });
  let out = "";
  for (const ground of COVER_ORDER) {
    const fill = FILLS[ground];
    if (fill === undefined) continue;
    const { mark, edge } = fill;
    const rings: Point[][][] = [];
    for (const one of hole.placed.values()) {
      if (one.cover !== ground) continue;
      for (const area of areasOf(one)) {
        if (!overlaps(boxAround(area[0]!), around)) continue;
        const mapped = area
          .map((ring) => clipRing(openRing(ring), around))
          .filter((ring) => ring.length > 2)
          .map((ring) => clipRing(onStrip(closedRing(ring)).slice(0, -1), bleed))
          .filter((ring) => ring.length > 2)
          .map((ring) => naturalKnots(ring, mark === "bunker" ? 5 : 10, true));
        if (mapped.length > 0) rings.push(mapped);
      }
    }
    if (rings.length === 0) continue;
    const d = rings
      .flat()
      .map((ring) => smoothPath(ring, true))
      .join("");
    out += element("path", { ...paint(mark), "stroke-width": mark === "green" ? 0.8 : 0, "fill-rule": "evenodd", d });
    if (mark === "fairway") out += mownBands(d, map, paint, id("mown"));
    if (edge) out += element("path", { ...paint(edge), "stroke-width": 0.8, d });
    if (mark === "scrub") out += beads(lattice(rings, map, 10), id("gorse"));
    if (mark === "wood") out += beads(lattice(rings, map, 13), id("tree"));
  }
  for (const [drawn, mark, dash] of [
    [isBoundary, "out", "5 3"],
    [isBarrier, "wall", undefined],
  ] as const) {
    let d = "";
    for (const one of hole.placed.values()) {
      if (!drawn(one.feature.kind)) continue;
      for (const path of boundariesOf(one)) {
        for (const piece of clipLine(path, around))
          for (const part of clipLine(onStrip(piece), bleed)) d += polyPath(part, false);
      }
    }
    if (d)
      out += element("path", {
        ...paint(mark),
        "stroke-width": 1.1,
        ...(dash ? { "stroke-dasharray": dash } : {}),
        d,
      });
  }
  return out;
}

/** Mowing runs along the line of play, which is upright here. */
function mownBands(fairway: string, [minX, minY, maxX, maxY]: Box, paint: Painter, clip: string): string {
  const width = 13;
  let d = "";
  for (let x = (minX + maxX) / 2 - 10 * width; x < maxX; x += 2 * width)
    if (x > minX - width) d += `M${num(x)} ${num(minY)}V${num(maxY)}`;
  return (
    element("clipPath", { id: clip }, element("path", { "clip-rule": "evenodd", d: fairway })) +
    element("path", { ...paint("band"), "stroke-width": width, "clip-path": `url(#${clip})`, d })
  );
}

/** Places for tufts, in rows set off by half a step. */
function lattice(
  areas: readonly (readonly (readonly Point[])[])[],
  [minX, minY, maxX, maxY]: Box,
  step: number,
): Point[] {
  const places: Point[] = [];
  for (let row = 0, y = minY + step * 0.8; y < maxY; row++, y += step * 0.8) {
    for (let x = minX + (row % 2 === 0 ? 0.3 : 0.8) * step; x < maxX; x += step) {
      if (areas.some((rings) => contains(rings, [x, y]))) places.push([x, y]);
    }
  }
  return places;
}

/** Fairway as a heavy bar, thin on to the first trouble each side, a ring where the ball lies. */
function drawBar({ figures }: LandingBar, station: number, strip: Strip, paint: Painter): string {
  const at = (offset: number): string => {
    const [x, y] = strip.at(station, offset);
    return `${num(x)} ${num(y)}`;
  };
  const reach = [-(figures.left?.metres ?? SIDE_METRES), figures.right?.metres ?? SIDE_METRES] as const;
  const thin = `M${at(reach[0])}L${at(reach[1])}`;
  const { leftMetres, rightMetres } = figures.fairway;
  let out =
    element("path", { ...paint("casing"), "stroke-width": 3.4, opacity: 0.65, d: thin }) +
    element("path", { ...paint("leader"), "stroke-width": 0.7, "stroke-dasharray": "2 2", d: thin });
  if (leftMetres !== undefined && rightMetres !== undefined) {
    out += element("path", { ...paint("line"), "stroke-width": 1.9, d: `M${at(-leftMetres)}L${at(rightMetres)}` });
    for (const offset of [-leftMetres, rightMetres]) {
      const [x, y] = strip.at(station, offset);
      out += element("path", { ...paint("tick"), "stroke-width": 1.2, d: `M${num(x)} ${num(y - 4)}v8` });
    }
  }
  for (const [side, trouble] of [
    [-1, figures.left],
    [1, figures.right],
  ] as const) {
    if (!trouble) continue;
    const [x, y] = strip.at(station, side * trouble.metres);
    out += element("circle", { ...paint("spot-full"), cx: num(x), cy: num(y), r: 2.5, "stroke-width": 0.8 });
  }
  const [x, y] = strip.at(station, 0);
  return out + element("circle", { ...paint("spot"), cx: num(x), cy: num(y), r: 3.6, "stroke-width": 1.2 });
}

/** Heights of the labels beside the strip, in the bars' order: as near their bars as they can be without touching. */
function labelPlaces(bars: readonly LandingBar[], stations: readonly number[], strip: Strip): number[] {
  const order = bars.map((_, i) => i).sort((a, b) => stations[b]! - stations[a]!);
  const places: number[] = new Array(bars.length);
  let last = strip.map[1] - LABEL_GAP / 2;
  for (const i of order) {
    last = Math.max(last + LABEL_GAP, strip.at(stations[i]!, 0)[1]);
    places[i] = last;
  }
  // Pushed past the foot, the lowest moves back up and the others before it.
  let limit = strip.map[3] - 8;
  for (const i of order.reverse()) {
    places[i] = Math.min(places[i]!, limit);
    limit = places[i] - LABEL_GAP;
  }
  return places;
}

const set = (
  paint: Painter,
  line: TextLine,
  x: number,
  y: number,
  anchor: "start" | "middle" | "end",
  halo = 0,
): string =>
  element(
    "text",
    {
      x: num(x),
      y: num(y),
      ...(anchor === "start" ? {} : { "text-anchor": anchor }),
      ...textAttributes(line, paint, halo),
    },
    escapeXml(line.text),
  );

function drawLabel(
  { player, figures }: LandingBar,
  station: number,
  y: number,
  strip: Strip,
  paint: Painter,
  unit: LengthUnit,
  words: GroundDrawingWords,
): string {
  const whole = (metres: number): string => String(Math.round(inUnit(metres, unit)));
  const x = strip.map[2] + 14;
  const barY = strip.at(station, 0)[1];
  const width =
    figures.fairway.widthMetres > 0 ? `, ${words.wide({ length: whole(figures.fairway.widthMetres) })}` : "";
  let out =
    element("path", {
      ...paint("leader"),
      "stroke-width": 0.6,
      d: polyPath(
        [
          [strip.map[2] + 3.2, barY],
          [strip.map[2] + 9, y],
          [x - 2, y],
        ],
        false,
      ),
    }) +
    set(paint, { text: words.players[player], mark: "title", size: TEXT, weight: "heavy" }, x, y - 1, "start") +
    set(
      paint,
      { text: `${whole(figures.driveMetres)}${width}`, mark: "legend", size: SMALL, weight: "regular" },
      x,
      y + 10.5,
      "start",
    );
  for (const [side, trouble] of [
    [-1, figures.left],
    [1, figures.right],
  ] as const) {
    if (!trouble) continue;
    const text = whole(trouble.metres);
    const [tx, ty] = strip.at(station, side * trouble.metres);
    const half = textWidth(text, SMALL) / 2 + 1;
    const held = Math.max(strip.map[0] + half + 2, Math.min(strip.map[2] - half - 2, tx));
    out += set(paint, { text, mark: "figure", size: SMALL, weight: "regular" }, held, ty - 5, "middle", 2.6);
  }
  return out;
}

/** What is left to the green, at the strip's left edge. */
function drawTicks(strip: Strip, lengthMetres: number, paint: Painter, unit: LengthUnit): string {
  const [minX, minY, , maxY] = strip.map;
  let marks = "";
  let lettering = "";
  for (let value = 25; value <= 700; value += 25) {
    const y = strip.at(lengthMetres - fromUnit(value, unit), 0)[1];
    if (y < minY || y > maxY) continue;
    marks += `M${num(minX)} ${num(y)}h${value % 50 === 0 ? 8 : 4.5}`;
    if (value % 50 === 0 && y > minY + 6 && y < maxY - 4)
      lettering += set(
        paint,
        { text: String(value), mark: "legend", size: SMALL, weight: "regular" },
        minX - 7,
        y + 3.4,
        "end",
      );
  }
  return element("path", { ...paint("tick"), "stroke-width": 1, d: marks }) + lettering;
}
