/**
 * OSM XML and Overpass JSON as one list of nodes, ways and relations that refer to each
 * other. Geometry written into ways and members (Overpass `out geom`) is taken apart into
 * nodes here, since the library's own way of doing so costs the square of their number.
 */
import { isRecord } from "../../course/record.ts";
import type { Document, Element } from "@xmldom/xmldom";
import { checkCount, LIMITS } from "./limits.ts";
import { BringError } from "./refusal.ts";

type Tags = Record<string, string>;

interface Node {
  readonly type: "node";
  readonly id: number;
  readonly lat: number;
  readonly lon: number;
  readonly tags?: Tags;
}
interface Way {
  readonly type: "way";
  readonly id: number;
  readonly nodes: number[];
  readonly tags?: Tags;
}
interface Member {
  readonly type: string;
  readonly ref: number;
  readonly role: string;
}
interface Relation {
  readonly type: "relation";
  readonly id: number;
  readonly members: readonly Member[];
  readonly tags?: Tags;
}

export type OsmElement = Node | Way | Relation;

interface Corner {
  readonly lat: number;
  readonly lon: number;
}

/** As either format gives it, before references are settled. */
interface Raw {
  readonly type: "node" | "way" | "relation";
  readonly id: number;
  readonly lat: number | undefined;
  readonly lon: number | undefined;
  readonly tags: Tags;
  readonly nodes: readonly number[];
  readonly corners: readonly (Corner | undefined)[];
  readonly members: readonly (Member & {
    readonly lat: number | undefined;
    readonly lon: number | undefined;
    readonly corners: readonly (Corner | undefined)[];
  })[];
}

const number = (value: unknown): number | undefined => {
  const n = typeof value === "number" ? value : typeof value === "string" && value.trim() !== "" ? Number(value) : NaN;
  return Number.isFinite(n) ? n : undefined;
};

const corner = (lat: unknown, lon: unknown): Corner | undefined => {
  const [y, x] = [number(lat), number(lon)];
  return y === undefined || x === undefined ? undefined : { lat: y, lon: x };
};

const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

function fromJson(value: unknown): Raw | undefined {
  if (!isRecord(value)) return undefined;
  const { type } = value;
  const id = number(value["id"]);
  if ((type !== "node" && type !== "way" && type !== "relation") || id === undefined) return undefined;
  const corners = (entries: unknown): (Corner | undefined)[] =>
    list(entries).map((entry) => (isRecord(entry) ? corner(entry["lat"], entry["lon"]) : undefined));
  return {
    type,
    id,
    lat: number(value["lat"]),
    lon: number(value["lon"]),
    tags: Object.fromEntries(
      Object.entries(isRecord(value["tags"]) ? value["tags"] : {}).map(([k, v]) => [k, String(v)]),
    ),
    nodes: list(value["nodes"]).map((ref) => number(ref) ?? NaN),
    corners: corners(value["geometry"]),
    members: list(value["members"]).flatMap((member) => {
      const ref = isRecord(member) ? number(member["ref"]) : undefined;
      if (!isRecord(member) || ref === undefined) return [];
      return {
        type: String(member["type"]),
        ref,
        role: String(member["role"] ?? ""),
        lat: number(member["lat"]),
        lon: number(member["lon"]),
        corners: corners(member["geometry"]),
      };
    }),
  };
}

function* children(parent: Element, ...names: string[]): Generator<Element> {
  for (let child = parent.firstChild; child !== null; child = child.nextSibling) {
    if (child.nodeType === 1 && names.includes(child.nodeName)) yield child as Element;
  }
}

function fromXml(element: Element): Raw | undefined {
  const type = element.nodeName as Raw["type"];
  const id = number(element.getAttribute("id"));
  // Editors keep what was deleted until it is uploaded; a history keeps it as invisible.
  if (id === undefined || element.getAttribute("action") === "delete" || element.getAttribute("visible") === "false")
    return undefined;
  const nds = [...children(element, "nd")];
  const corners = (entries: readonly Element[]): (Corner | undefined)[] =>
    entries.map((nd) => corner(nd.getAttribute("lat"), nd.getAttribute("lon")));
  return {
    type,
    id,
    lat: number(element.getAttribute("lat")),
    lon: number(element.getAttribute("lon")),
    tags: Object.fromEntries(
      [...children(element, "tag")].map((tag) => [tag.getAttribute("k") ?? "", tag.getAttribute("v") ?? ""]),
    ),
    nodes: nds.flatMap((nd) => (nd.hasAttribute("ref") ? (number(nd.getAttribute("ref")) ?? NaN) : [])),
    corners: corners(nds),
    members: [...children(element, "member")].flatMap((member) => {
      const ref = number(member.getAttribute("ref"));
      if (ref === undefined) return [];
      return {
        type: member.getAttribute("type") ?? "",
        ref,
        role: member.getAttribute("role") ?? "",
        lat: number(member.getAttribute("lat")),
        lon: number(member.getAttribute("lon")),
        corners: corners([...children(member, "nd")]),
      };
    }),
  };
}

/** Nodes for positions that have none of their own; those in one place are one, so that rings close and ways join. */
class Nodes {
  readonly byId = new Map<number, Node>();
  readonly #made = new Map<string, number>();
  #next = -1e12;

  /** The id of a node there. */
  at({ lat, lon }: Corner): number {
    const place = `${lat},${lon}`;
    let id = this.#made.get(place);
    if (id === undefined) {
      id = this.#next--;
      this.#made.set(place, id);
      this.byId.set(id, { type: "node", id, lat, lon });
    }
    return id;
  }
}

/** Keys by which a relation can be ground or water of a course. */
const GROUND_KEYS = [
  "golf",
  "natural",
  "landuse",
  "waterway",
  "water",
  "leisure",
  "barrier",
  "building",
  "highway",
  "man_made",
];

/**
 * Why a relation is not put together: a coast, a county or a bus route takes thousands of
 * ways of which a course needs none.
 */
function whyNotRead({ tags, members }: Raw): string | undefined {
  const { type = "", name } = tags;
  const shown =
    [tags["place"], tags["boundary"], tags["natural"], tags["route"], type].find(
      (one) => one !== undefined && one !== "" && one !== "multipolygon",
    ) ?? "no type";
  const whole = `(${[shown, name].filter(Boolean).join(", ")}, ${members.length.toLocaleString("en-GB")} members)`;
  const golf = tags["golf"] !== undefined || tags["leisure"] === "golf_course";
  // A multipolygon without tags of its own takes them from its outline.
  const ground =
    GROUND_KEYS.some((key) => tags[key] !== undefined) ||
    Object.keys(tags).every((key) => key === "type" || key === "source");
  if (!golf && (type !== "multipolygon" || !ground || tags["boundary"] !== undefined || tags["place"] !== undefined))
    return `${whole} has nothing to do with golf; it was left out`;
  if (members.length > LIMITS.parts)
    return `${whole} has more than the ${LIMITS.parts.toLocaleString("en-GB")} members that are put together; it was left out. If the course needs it, cut the file first: osmium extract --bbox WEST,SOUTH,EAST,NORTH -s smart FILE -o course.osm`;
  return undefined;
}

function settle(file: string, raws: readonly Raw[]): { elements: OsmElement[]; notes: string[] } {
  const nodes = new Nodes();
  const ways = new Map<number, Way>();
  const relations: Relation[] = [];
  const notes: string[] = [];
  const tagged = (tags: Tags): { tags?: Tags } => (Object.keys(tags).length > 0 ? { tags } : {});
  const drawn = (corners: Raw["corners"]): number[] => corners.flatMap((c) => (c === undefined ? [] : nodes.at(c)));
  for (const raw of raws) {
    if (raw.type === "node" && raw.lat !== undefined && raw.lon !== undefined) {
      nodes.byId.set(raw.id, { type: "node", id: raw.id, lat: raw.lat, lon: raw.lon, ...tagged(raw.tags) });
    }
  }
  for (const raw of raws) {
    if (raw.type !== "way") continue;
    const own = raw.corners.some((c) => c !== undefined)
      ? drawn(raw.corners)
      : raw.nodes.filter((ref) => nodes.byId.has(ref));
    if (own.length < Math.max(raw.nodes.length, raw.corners.length)) {
      notes.push(
        `${file}, way/${raw.id} lacks ${own.length === 0 ? "its positions" : "some of its positions"}, as when only part of the data was saved; ${own.length < 2 ? "it was left out" : "it is shorter than it should be"}. Ask Overpass for "out geom;", or save the area around it too.`,
      );
    }
    if (own.length >= 2) ways.set(raw.id, { type: "way", id: raw.id, nodes: own, ...tagged(raw.tags) });
  }
  for (const raw of raws) {
    if (raw.type !== "relation") continue;
    const foreign = whyNotRead(raw);
    if (foreign !== undefined) {
      notes.push(`${file}, relation/${raw.id} ${foreign}.`);
      continue;
    }
    for (const member of raw.members) {
      if (member.type === "way" && !ways.has(member.ref) && member.corners.length > 0)
        ways.set(member.ref, { type: "way", id: member.ref, nodes: drawn(member.corners) });
    }
    const areas = ["multipolygon", "boundary"].includes(raw.tags["type"] ?? "");
    if (areas && raw.members.some(({ type, ref }) => type === "way" && !ways.has(ref))) {
      notes.push(`${file}, relation/${raw.id} lacks some of its ways; look at its outline.`);
    }
    relations.push({
      type: "relation",
      id: raw.id,
      members: raw.members.map(({ type, ref, role }) => ({ type, ref, role })),
      ...tagged(raw.tags),
    });
  }
  // Nodes of what was left out are nobody's.
  const used = new Set([...ways.values()].flatMap((way) => way.nodes));
  const own = [...nodes.byId.values()].filter(({ id, tags }) => tags !== undefined || used.has(id));
  const positions = [...ways.values()].reduce((sum, way) => sum + way.nodes.length, own.length);
  checkCount(file, positions, LIMITS.positions * 2, "positions");
  return { elements: [...own, ...ways.values(), ...relations], notes };
}

/** @throws BringError for a change file, which says what to alter and not what is there */
export function elementsOfXml(file: string, document: Document): { elements: OsmElement[]; notes: string[] } {
  const root = document.documentElement!;
  if (root.nodeName !== "osm") {
    throw new BringError(
      file,
      `starts with <${root.nodeName}>, a file of changes: expected <osm>. Download the area itself as .osm.`,
    );
  }
  return settle(
    file,
    [...children(root, "node", "way", "relation")].flatMap((element) => fromXml(element) ?? []),
  );
}

export const elementsOfJson = (
  file: string,
  elements: readonly unknown[],
): { elements: OsmElement[]; notes: string[] } =>
  settle(
    file,
    elements.flatMap((element) => fromJson(element) ?? []),
  );
