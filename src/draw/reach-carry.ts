/**
 * What reach and carry mean, drawn on an example: a line of play that bends, its corridor,
 * a pond across it past the bend and a bunker beside it. The ground is made up; the figures
 * and the places they are read at come from the measuring every hole goes through.
 */
import type { Feature, FeatureKind } from "../course/types.ts";
import { lineThrough } from "../geo/line.ts";
import type { Point } from "../geo/position.ts";
import { closedRing } from "../geo/ring.ts";
import { distanceMetres } from "../geo/vector.ts";
import { corridorAbout, inCorridor, pointOnArc, type Corridor } from "../measure/corridor.ts";
import { hazardFigures } from "../measure/hazards.ts";
import type { HazardFigures, PlacedFeature } from "../measure/types.ts";
import type { ReachCarryWords } from "../words/words.ts";
import { textAttributes, type TextLine } from "./lettering.ts";
import { painter, type Mark } from "./palette.ts";
import { element, escapeXml, num, polyPath } from "./svg.ts";

export interface ReachCarryOptions {
  readonly idPrefix: string;
  readonly words: ReachCarryWords;
  /** A length in words, its rounding that of a reach or a carry. */
  readonly length: (metres: number, rounding: "down" | "up") => string;
}

export const CORRIDOR_METRES = 25;
const GREEN_METRES = 13;
export const LINE = lineThrough([
  [0, 0],
  [185, 0],
  [300, 95],
]);

/** An oval turned by some degrees, with so many vertices that its straight pieces do not show. */
function oval([x, y]: Point, [long, short]: readonly [number, number], degrees: number): Point[] {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return Array.from({ length: 48 }, (_, i): Point => {
    const [u, v] = [long * Math.cos((i * Math.PI) / 24), short * Math.sin((i * Math.PI) / 24)];
    return [x + u * cos - v * sin, y + u * sin + v * cos];
  });
}

export const POND = oval([209, 32], [50, 15], -56);
export const BUNKER = oval([132, -24], [11, 8], 8);

const WIDTH = 390;
const HEIGHT = 222;
const PX_PER_METRE = 1;
const at = ([x, y]: Point): Point => [22 + x * PX_PER_METRE, 160 - y * PX_PER_METRE];

const TEXT = 11;

const placed = (id: string, kind: FeatureKind, ring: readonly Point[]): PlacedFeature => ({
  feature: {
    id,
    kind,
    name: undefined,
    tee: undefined,
    widthMetres: undefined,
    heightMetres: undefined,
    tags: {},
    geometry: { type: "Polygon", coordinates: [] },
    place: { file: "", line: 1, column: 1 },
  } satisfies Feature,
  shape: { type: "areas", areas: [[closedRing(ring)]] },
  cover: kind === "bunker" ? "bunker" : "water",
  heightMetres: undefined,
  shared: false,
});

/** The example's figures from its tee. */
export function exampleFigures(): { readonly pond: HazardFigures; readonly bunker: HazardFigures } {
  const way = { line: LINE, green: { depthMetres: 2 * GREEN_METRES } };
  const [pond] = hazardFigures(placed("pond", "water", POND), way, CORRIDOR_METRES);
  const [bunker] = hazardFigures(placed("bunker", "bunker", BUNKER), way, CORRIDOR_METRES);
  return { pond: pond!, bunker: bunker! };
}

/** The drawing; same words, same bytes. */
export function drawReachCarry({ idPrefix, words, length }: ReachCarryOptions): string {
  const paint = painter("light");
  const { pond, bunker } = exampleFigures();
  const corridor = corridorAbout(LINE, CORRIDOR_METRES);
  const tee = LINE.points[0]!;
  const id = (name: string): string => `${idPrefix}-${name}`;
  const hazards = [
    [pond, POND, "sea", "shore"],
    [bunker, BUNKER, "bunker", "bunker-edge"],
  ] as const;
  let svg = element("rect", { ...paint("ground"), width: WIDTH, height: HEIGHT });
  svg += element("path", { ...paint("fairway"), d: corridorPath(corridor) });
  for (const [, ring, mark, edge] of hazards) {
    const d = polyPath(ring.map(at), true);
    svg +=
      element("path", { ...paint(mark), d }) +
      element("g", { "clip-path": `url(#${id("corridor")})` }, element("path", { d, fill: `url(#${id("hatch")})` })) +
      element("path", { ...paint(edge), fill: "none", "stroke-width": 0.9, d });
  }
  svg += element("circle", {
    ...paint("green"),
    cx: num(at(LINE.points[2]!)[0]),
    cy: num(at(LINE.points[2]!)[1]),
    r: num(GREEN_METRES * PX_PER_METRE),
  });
  svg += element("path", {
    ...paint("arc"),
    "stroke-width": 0.7,
    "stroke-dasharray": "2 2",
    d: corridor.outline.map(edgePath).join(""),
  });
  svg += element("path", {
    ...paint("line"),
    "stroke-width": 0.9,
    "stroke-dasharray": "7 4.5",
    d: polyPath(LINE.points.map(at), false),
  });
  // Circles about the tee: nearer than the first is short, further than the second is past.
  for (const metres of [pond.reachMetres, pond.farMetres]) {
    svg += element("path", {
      ...paint("arc"),
      "stroke-width": 1.3,
      d: polyPath(circleIn(corridor, tee, metres).map(at), false),
    });
  }
  for (const { reachPoint, farPoint } of [pond, bunker]) {
    for (const to of [reachPoint, farPoint])
      svg += element("path", { ...paint("leader"), "stroke-width": 0.8, d: polyPath([tee, to].map(at), false) });
    svg += spot(reachPoint, "spot") + spot(farPoint, "spot-full");
  }
  svg += spot(tee, "spot-full");
  const text = (
    line: string,
    [x, y]: Point,
    {
      mark = "figure",
      weight = "regular",
      italic = false,
      anchor = "start",
    }: Partial<Pick<TextLine, "mark" | "weight" | "italic">> & { readonly anchor?: "start" | "middle" | "end" } = {},
  ): string =>
    element(
      "text",
      {
        ...textAttributes({ text: line, mark, size: TEXT, weight, italic }, paint, 2.6),
        x: num(x),
        y: num(y),
        "text-anchor": anchor,
      },
      escapeXml(line),
    );
  const reach = words.reach({ length: length(pond.reachMetres, "down") });
  const carry = words.carry({ length: length(pond.farMetres, "up") });
  const [reachAt, farAt, bunkerAt] = [at(pond.reachPoint), at(pond.farPoint), at(bunker.farPoint)];
  svg +=
    text(words.tee, [at(tee)[0] - 14, at(tee)[1] - 8]) +
    text(words.corridor, [44, at([0, CORRIDOR_METRES])[1] - 5], { mark: "note", italic: true }) +
    // Between the bunker and the first circle, where no measured line runs.
    text(words.lineOfPlay, [207, at(tee)[1] + 12], { mark: "note", italic: true, anchor: "end" }) +
    text(words.pond, at([176, 82]), { mark: "water-name", italic: true, anchor: "end" }) +
    text(words.dryLand, at([284, 60]), { mark: "note", italic: true, anchor: "middle" }) +
    text(reach, [reachAt[0] - 10, reachAt[1] - 6], { weight: "heavy", anchor: "end" }) +
    text(carry, [farAt[0] + 9, farAt[1] + 4], { weight: "heavy" }) +
    text(words.bunker, [bunkerAt[0] + 8, bunkerAt[1] + 10], { mark: "name", italic: true }) +
    text(
      `${length(bunker.reachMetres, "down")} – ${length(bunker.farMetres, "up")}`,
      [bunkerAt[0] + 8, bunkerAt[1] + 23],
      { weight: "heavy" },
    );
  const defs =
    element("clipPath", { id: id("corridor") }, element("path", { d: corridorPath(corridor) })) +
    element(
      "pattern",
      { id: id("hatch"), patternUnits: "userSpaceOnUse", width: 5, height: 5 },
      element("path", { ...paint("line"), "stroke-width": 0.7, d: "M-1 6 6-1" }),
    );
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" class="plate" viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}" role="img" aria-labelledby="${escapeXml(id("title"))}" aria-describedby="${escapeXml(id("description"))}" font-family="Besley, Georgia, 'Times New Roman', serif">` +
    element("title", { id: id("title") }, escapeXml(words.title)) +
    element(
      "desc",
      { id: id("description") },
      escapeXml(words.description({ reach: length(pond.reachMetres, "down"), carry: length(pond.farMetres, "up") })),
    ) +
    element("defs", {}, defs) +
    svg +
    "</svg>"
  );
}

const spot = (point: Point, mark: Mark & ("spot" | "spot-full")): string => {
  const [x, y] = at(point);
  return element("circle", { ...painter("light")(mark), cx: num(x), cy: num(y), r: 2.4, "stroke-width": 0.8 });
};

/** Legs and the outsides of bends as one shape; parts that lie over each other are filled once. */
function corridorPath({ legs, halfWidthMetres }: Corridor): string {
  return legs
    .map(({ start, direction: [dx, dy], corridorMetres }, i) => {
      const corner = (t: number, right: number): Point => [
        start[0] + dx * t + dy * right,
        start[1] + dy * t - dx * right,
      ];
      const leg = polyPath(
        [
          corner(0, -halfWidthMetres),
          corner(corridorMetres, -halfWidthMetres),
          corner(corridorMetres, halfWidthMetres),
          corner(0, halfWidthMetres),
        ].map(at),
        true,
      );
      if (i === 0) return leg;
      const [x, y] = at(start);
      const r = num(halfWidthMetres * PX_PER_METRE);
      return `${leg}M${num(x)} ${num(y)}m-${r} 0a${r} ${r} 0 1 1 ${num(2 * halfWidthMetres * PX_PER_METRE)} 0a${r} ${r} 0 1 1-${num(2 * halfWidthMetres * PX_PER_METRE)} 0z`;
    })
    .join("");
}

const edgePath = (edge: Corridor["outline"][number]): string => {
  if (edge.type === "straight") return polyPath([edge.from, edge.to].map(at), false);
  const steps = 12;
  return polyPath(
    Array.from({ length: steps + 1 }, (_, i) =>
      at(pointOnArc(edge.centre, edge.radius, edge.start + ((edge.end - edge.start) * i) / steps)),
    ),
    false,
  );
};

/** The part of a circle about a place that lies in the corridor, in one piece. */
function circleIn(corridor: Corridor, centre: Point, radius: number): Point[] {
  const points = Array.from({ length: 721 }, (_, i) => pointOnArc(centre, radius, ((i - 360) * Math.PI) / 720));
  return points.filter((point) => inCorridor(corridor, point) && distanceMetres(point, centre) > 0);
}
