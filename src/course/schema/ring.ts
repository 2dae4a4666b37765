/**
 * Whether an outline crosses or touches itself, and where. Turf's `kinks` finds the places
 * but not the edges, and a message has to name the edges; the tests hold this search to it.
 *
 * Works on degrees: whether edges cross does not depend on the scale of the axes.
 */
import type { Position } from "geojson";

type Vertex = readonly [x: number, y: number];

export interface Crossing {
  /** Index of the first vertex of each edge, and of its ring. The first edge comes first in reading order. */
  readonly first: { readonly ring: number; readonly edge: number };
  readonly second: { readonly ring: number; readonly edge: number };
  /** `cross`: they run through each other. `touch`: they meet in a point or run along each other. */
  readonly how: "cross" | "touch";
}

interface Edge {
  readonly ring: number;
  readonly edge: number;
  readonly a: Vertex;
  readonly b: Vertex;
  readonly left: number;
  readonly right: number;
}

/** Degrees: a hundredth of a millimetre. Nearer than that is on the line. */
const ON_LINE = 1e-10;

/** Distance of p from the straight line through a and b, left positive; of a point when they coincide. */
function offside(a: Vertex, b: Vertex, p: Vertex): number {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (length === 0) return Math.hypot(p[0] - a[0], p[1] - a[1]);
  return ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / length;
}

const near = (value: number): boolean => Math.abs(value) <= ON_LINE;

const within = (a: Vertex, b: Vertex, p: Vertex): boolean =>
  p[0] >= Math.min(a[0], b[0]) - ON_LINE &&
  p[0] <= Math.max(a[0], b[0]) + ON_LINE &&
  p[1] >= Math.min(a[1], b[1]) - ON_LINE &&
  p[1] <= Math.max(a[1], b[1]) + ON_LINE;

const onEdge = (edge: Edge, p: Vertex): boolean => near(offside(edge.a, edge.b, p)) && within(edge.a, edge.b, p);

function meeting(e: Edge, f: Edge): "cross" | "touch" | undefined {
  const [fa, fb] = [offside(e.a, e.b, f.a), offside(e.a, e.b, f.b)];
  const [ea, eb] = [offside(f.a, f.b, e.a), offside(f.a, f.b, e.b)];
  const clear = !near(fa) && !near(fb) && !near(ea) && !near(eb);
  if (clear) return fa > 0 !== fb > 0 && ea > 0 !== eb > 0 ? "cross" : undefined;
  return onEdge(e, f.a) || onEdge(e, f.b) || onEdge(f, e.a) || onEdge(f, e.b) ? "touch" : undefined;
}

/**
 * An edge and the next meet in their shared vertex by right; at fault only when the next runs back along the
 * first.
 */
function foldsBack({ a: from, b: corner }: Edge, { b: to }: Edge): boolean {
  if (!near(offside(corner, from, to))) return false;
  return (from[0] - corner[0]) * (to[0] - corner[0]) + (from[1] - corner[1]) * (to[1] - corner[1]) > 0;
}

/** Zero-length edges (a vertex written twice) are left out: they neither cross nor touch. */
function edgesOf(rings: readonly (readonly Position[])[]): { edges: Edge[]; follows: Map<Edge, Edge> } {
  const edges: Edge[] = [];
  const follows = new Map<Edge, Edge>();
  const x0 = rings[0]![0]![0]!;
  // Longitudes beside the first vertex, so an outline across the 180th meridian stays whole.
  const vertex = (p: Position): Vertex => [((((p[0]! - x0 + 180) % 360) + 360) % 360) - 180, p[1]!];
  rings.forEach((ring, r) => {
    const own: Edge[] = [];
    for (let i = 1; i < ring.length; i++) {
      const [a, b] = [vertex(ring[i - 1]!), vertex(ring[i]!)];
      if (a[0] === b[0] && a[1] === b[1]) continue;
      own.push({ ring: r, edge: i - 1, a, b, left: Math.min(a[0], b[0]), right: Math.max(a[0], b[0]) });
    }
    own.forEach((edge, i) => follows.set(edge, own[(i + 1) % own.length]!));
    edges.push(...own);
  });
  return { edges, follows };
}

/**
 * Where closed rings of finite positions cross or touch themselves or, for the rings of one
 * polygon, cross each other (two rings may touch). Sweeps from west to east, so it costs
 * little more than sorting for the outlines golf has. Stops after `most`.
 */
export function crossings(rings: readonly (readonly Position[])[], most = 10): Crossing[] {
  const { edges, follows } = edgesOf(rings);
  edges.sort((p, q) => p.left - q.left);
  const found: Crossing[] = [];
  let active: Edge[] = [];
  for (const edge of edges) {
    active = active.filter(({ right }) => right >= edge.left - ON_LINE);
    for (const other of active) {
      const [e, f] =
        other.ring < edge.ring || (other.ring === edge.ring && other.edge < edge.edge) ? [other, edge] : [edge, other];
      let how: "cross" | "touch" | undefined;
      if (follows.get(e) === f || follows.get(f) === e) {
        const [before, after] = follows.get(e) === f ? [e, f] : [f, e];
        how = foldsBack(before, after) ? "touch" : undefined;
      } else {
        how = meeting(e, f);
        if (how === "touch" && e.ring !== f.ring) how = undefined;
      }
      if (how !== undefined)
        found.push({ first: { ring: e.ring, edge: e.edge }, second: { ring: f.ring, edge: f.edge }, how });
    }
    if (found.length >= most * 4) break;
    active.push(edge);
  }
  found.sort((p, q) => p.first.ring - q.first.ring || p.first.edge - q.first.edge || p.second.edge - q.second.edge);
  return found.slice(0, most);
}
