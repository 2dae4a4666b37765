/** What people built: roads, paths, walls, fences, hedges, buildings; and the stakes of the Rules. */
import { ALL_KINDS, kindFacts } from "../course/kinds.ts";
import type { Point } from "../geo/position.ts";
import { closedRing } from "../geo/ring.ts";
import { nearestOnPath } from "../geo/segment.ts";
import { crescents, evenly, LIGHT, shifted } from "./curves.ts";
import { areaPath } from "./ground.ts";
import type { PlateContext } from "./plate-context.ts";
import type { SceneLine } from "./scene.ts";
import { element, polyPath, polyPaths } from "./svg.ts";

const joined = (lines: readonly SceneLine[]): string => lines.map(({ line }) => polyPath(line, false)).join("");

export function drawWorks({ scene, paint, composition: c, px }: PlateContext): string {
  let out = "";
  const paths = scene.lines("path");
  if (paths.length > 0) {
    out += element("path", {
      ...paint("path"),
      "stroke-width": c.medium,
      "stroke-dasharray": `${4 * c.drawing} ${2.2 * c.drawing}`,
      opacity: 0.8,
      d: joined(paths),
    });
  }
  const roads = scene.lines("road").map(({ feature, line }) => ({
    width: Math.max(4.5 * c.drawing, px(feature.widthMetres ?? 5)),
    d: polyPath(line, false),
  }));
  // All edges before all surfaces: where roads meet, no edge runs across.
  for (const { width, d } of roads)
    out += element("path", { ...paint("road-edge"), "stroke-width": width + 2 * c.fine, d });
  for (const { width, d } of roads) out += element("path", { ...paint("road"), "stroke-width": width, d });
  const walls = scene.barriers("wall");
  if (walls.length > 0) {
    const d = joined(walls);
    // Two courses of stones: a dark wall with light, uneven stones laid into it.
    out +=
      element("path", { ...paint("wall"), "stroke-width": 3 * c.drawing, "stroke-linejoin": "round", d }) +
      element("path", {
        ...paint("wall-stone"),
        "stroke-width": 1.7 * c.drawing,
        "stroke-dasharray": [3.2, 0.8, 2.1, 0.8, 4, 0.8]
          .map((n) => n * c.drawing)
          .map((n) => Math.round(n * 10) / 10)
          .join(" "),
        d,
      });
  }
  const fences = scene.barriers("fence");
  if (fences.length > 0) {
    const d = joined(fences);
    out +=
      element("path", { ...paint("wall"), "stroke-width": c.fine, d }) +
      element("path", {
        ...paint("wall"),
        "stroke-width": 4.2 * c.drawing,
        "stroke-dasharray": `${0.8 * c.drawing} ${7 * c.drawing}`,
        d,
      });
  }
  const hedges = scene.barriers("hedge");
  if (hedges.length > 0) {
    out += element("path", {
      ...paint("hedge"),
      "stroke-width": 4 * c.drawing,
      "stroke-linecap": "round",
      "stroke-dasharray": `.1 ${3.4 * c.drawing}`,
      d: joined(hedges),
    });
  }
  const buildings = scene.areas("building");
  if (buildings.length > 0) {
    const thrown = buildings.map((one) => ({
      ...one,
      rings: one.rings.map((ring) => ring.map(([x, y]): Point => [x + 3.4 * c.drawing, y + 2.6 * c.drawing])),
    }));
    out +=
      element("path", { ...paint("shadow"), opacity: 0.3, d: areaPath(thrown, false) }) +
      element("path", {
        ...paint("building"),
        "stroke-width": c.fine,
        "stroke-linejoin": "round",
        "fill-rule": "evenodd",
        d: areaPath(buildings, false),
      }) +
      // The slopes of the roof that turn from the light.
      element("path", {
        ...paint("roof-shade"),
        opacity: 0.42,
        d: polyPaths(
          buildings.flatMap(({ rings }) =>
            crescents(evenly(rings[0]!, 2.5, true), [-LIGHT[0], -LIGHT[1]], Math.min(px(3.4), 9 * c.drawing)),
          ),
          true,
        ),
      });
  }
  return out;
}

/** A stake drawn upright, foot at the origin. */
const STAKE = "M-1.1 0v-6.2h2.2V0z";

/** Stakes along bounds, in the Rules' colours; the out-of-bounds line ticked on its outer side. */
export function drawBounds(context: PlateContext, lineOfPlay: readonly Point[], reachPx: number): string {
  const { scene, paint, composition: c, id, px } = context;
  const gap = 34 * c.drawing;
  let defs = "";
  let out = "";
  const stakes = (colour: "white" | "yellow" | "red", lines: readonly (readonly Point[])[]): void => {
    const feet = lines
      .flatMap((line) => evenly(line, gap, false).slice(0, -1))
      .filter((p) => nearestOnPath(lineOfPlay, p).distance <= reachPx)
      .sort((a, b) => a[1] - b[1]);
    if (feet.length === 0) return;
    const name = id(`stake-${colour}`);
    defs += element("path", {
      ...paint(`stake-${colour}`),
      id: name,
      "stroke-width": 0.6,
      d: STAKE,
      ...(c.drawing === 1 ? {} : { transform: `scale(${c.drawing})` }),
    });
    out += feet
      .map(([x, y]) => element("use", { href: `#${name}`, x: Math.round(x * 10) / 10, y: Math.round(y * 10) / 10 }))
      .join("");
  };
  const out0 = [
    ...scene.lines("out-of-bounds").map(({ line }) => line),
    ...scene.areas("out-of-bounds").flatMap(({ rings }) => rings.map(closedRing)),
  ];
  if (out0.length > 0) {
    const ticks = out0.flatMap((line) => outwardTicks(line, lineOfPlay, 5.5 * c.drawing, 5 * c.drawing));
    out += element("path", {
      ...paint("out"),
      "stroke-width": c.fine,
      d: out0.map((line) => polyPath(line, false)).join(""),
    });
    out += element("path", { ...paint("out"), "stroke-width": c.hair, d: polyPaths(ticks, false) });
    stakes("white", out0);
  }
  for (const colour of ["yellow", "red"] as const) {
    const kinds = ALL_KINDS.filter((kind) => kindFacts(kind).stakes === colour);
    const rings = scene.areas(...kinds).flatMap(({ rings }) => rings.map(closedRing));
    // A burn drawn as a line is staked on both banks.
    const lines = scene.lines(...kinds).flatMap(({ feature, line }) => {
      const bank = px(feature.widthMetres ?? 2) / 2 + 4 * c.drawing;
      return [shifted(line, -bank), shifted(line, bank)];
    });
    stakes(colour, [...rings, ...lines]);
  }
  return (defs ? element("defs", {}, defs) : "") + out;
}

/** Short slanting ticks on the side of a boundary that faces away from the line of play. */
function outwardTicks(line: readonly Point[], lineOfPlay: readonly Point[], gap: number, length: number): Point[][] {
  const points = evenly(line, gap, false);
  return points.slice(1).map((p, i) => {
    const before = points[i]!;
    const size = Math.hypot(p[0] - before[0], p[1] - before[1]) || 1;
    const [tx, ty] = [(p[0] - before[0]) / size, (p[1] - before[1]) / size];
    const towards = nearestOnPath(lineOfPlay, p).point;
    const side = -ty * (towards[0] - p[0]) + tx * (towards[1] - p[1]) > 0 ? -1 : 1;
    const [nx, ny] = [-ty * side, tx * side];
    return [p, [p[0] + (nx * 0.8 + tx * 0.6) * length, p[1] + (ny * 0.8 + ty * 0.6) * length]];
  });
}
