/**
 * Tracings of eighteen holes as people draw them, made from the invented demo course by
 * taking away: refs, lines, markers, tags; and by adding what an extract of a map brings
 * along. Nothing of them was traced by anybody.
 */
import { fileURLToPath } from "node:url";
import type { Feature as GeoJsonFeature, FeatureCollection, Geometry, Position } from "geojson";
import type { Course, Feature } from "../../src/course/types.ts";
import { readContent } from "../../src/read/content.ts";

const DEMO = fileURLToPath(new URL("../../content", import.meta.url));

export async function demoCourse(): Promise<Course> {
  const { club } = await readContent(DEMO);
  return club!.courses[0]!;
}

interface Traced {
  /** The hole it is of; undefined for what holes share. */
  readonly hole: number | undefined;
  readonly id: string;
  readonly tags: Record<string, string>;
  readonly geometry: Geometry;
}

/** What a mapper sees: outlines and lines, no markers, pins or names of ours. */
export function traced(course: Course, keep: (feature: Feature) => boolean = () => true): Traced[] {
  const seen = (feature: Feature): boolean => !["tee-marker", "pin"].includes(feature.kind) && keep(feature);
  const tagsOf = (feature: Feature): Record<string, string> =>
    Object.fromEntries(
      Object.entries(feature.tags)
        .filter(([key]) =>
          ["golf", "natural", "waterway", "highway", "barrier", "building", "man_made", "landuse"].includes(key),
        )
        .map(([key, value]) => [key, String(value)]),
    );
  const one =
    (hole: number | undefined) =>
    (feature: Feature): Traced => ({ hole, id: feature.id, tags: tagsOf(feature), geometry: feature.geometry });
  return [
    ...course.holes.flatMap(({ number, features }) => features.filter(seen).map(one(number))),
    ...course.features.filter(seen).map(one(undefined)),
  ];
}

export interface Look {
  /** Lines of play say their hole and par. */
  readonly refs?: boolean;
  /** Greens and tees say their hole. */
  readonly partRefs?: boolean;
  readonly lines?: boolean;
  readonly par?: (hole: number) => number;
}

/** The tags a tracing gives each feature. */
export function asTagged(
  all: readonly Traced[],
  { refs = true, partRefs = false, lines = true, par }: Look,
): Traced[] {
  return all.flatMap((one): Traced[] => {
    const isLine = one.tags["golf"] === "hole";
    if (isLine && !lines) return [];
    const tags = { ...one.tags };
    if (isLine && refs) tags["ref"] = String(one.hole);
    if (isLine && refs && par) tags["par"] = String(par(one.hole!));
    if (partRefs && (tags["golf"] === "green" || tags["golf"] === "tee" || tags["golf"] === "fairway"))
      tags["ref"] = String(one.hole);
    return [{ ...one, tags }];
  });
}

export const asGeoJson = (all: readonly Traced[]): string =>
  JSON.stringify({
    type: "FeatureCollection",
    features: all.map(({ tags, geometry }): GeoJsonFeature => ({ type: "Feature", properties: tags, geometry })),
  } satisfies FeatureCollection);

/** As GDAL's OSM driver writes it: few columns, the rest in one, every area a MultiPolygon. */
export const asGdal = (all: readonly Traced[]): string =>
  JSON.stringify({
    type: "FeatureCollection",
    features: all.map(({ tags, geometry }, i): GeoJsonFeature => {
      const { name = null, natural = null, building = null, ...other } = tags;
      const hstore = Object.entries(other)
        .map(([key, value]) => `"${key}"=>"${value}"`)
        .join(",");
      const many: Geometry =
        geometry.type === "Polygon" ? { type: "MultiPolygon", coordinates: [geometry.coordinates] } : geometry;
      return {
        type: "Feature",
        properties: {
          osm_id: geometry.type === "Polygon" ? null : String(1000 + i),
          osm_way_id: geometry.type === "Polygon" ? String(1000 + i) : null,
          name,
          natural,
          building,
          other_tags: hstore === "" ? null : hstore,
        },
        geometry: many,
      };
    }),
  });

/** As attribute tables of a survey office that speaks German: no OSM tags at all. */
export function asGermanTable(all: readonly Traced[]): string {
  const words: Readonly<Record<string, string>> = {
    hole: "Spiellinie",
    green: "Grün",
    fairway: "Fairway",
    tee: "Abschlag",
    bunker: "Bunker",
    lateral_water_hazard: "Seitliches Wasserhindernis",
    water_hazard: "Wasserhindernis",
    rough: "Rough",
  };
  return JSON.stringify({
    type: "FeatureCollection",
    features: all.flatMap(({ hole, tags, geometry }): GeoJsonFeature[] => {
      const word = words[tags["golf"] ?? ""];
      return word === undefined || hole === undefined
        ? []
        : [{ type: "Feature", properties: { OBJECTID: hole, Typ: word, Bahn: hole }, geometry }];
    }),
  });
}

/**
 * OSM XML: ways, areas of several rings as multipolygons, and relations that an extract of the islands
 * brings along.
 */
export function asOsm(
  all: readonly Traced[],
  { multipolygons = false, archipelago = 0 }: { readonly multipolygons?: boolean; readonly archipelago?: number } = {},
): string {
  const nodes: string[] = [];
  const ways: string[] = [];
  const relations: string[] = [];
  let next = 1;
  const tag = (of: Record<string, string>): string =>
    Object.entries(of)
      .map(([k, v]) => `<tag k="${k}" v="${v.replaceAll("&", "&amp;").replaceAll('"', "&quot;")}"/>`)
      .join("");
  const way = (path: readonly Position[], of: Record<string, string>): number => {
    const closed = path.length > 3 && path[0]!.join() === path.at(-1)!.join();
    const refs = (closed ? path.slice(0, -1) : path).map(([lon, lat]) => {
      nodes.push(`<node id="${next}" lat="${lat}" lon="${lon}"/>`);
      return next++;
    });
    ways.push(
      `<way id="${next}">${[...refs, ...(closed ? [refs[0]] : [])].map((ref) => `<nd ref="${ref}"/>`).join("")}${tag(of)}</way>`,
    );
    return next++;
  };
  const relation = (rings: readonly (readonly Position[])[], of: Record<string, string>): void => {
    const members = rings.map(
      (ring, i) => `<member type="way" ref="${way(ring, {})}" role="${i === 0 ? "outer" : "inner"}"/>`,
    );
    relations.push(`<relation id="${next++}">${members.join("")}${tag({ type: "multipolygon", ...of })}</relation>`);
  };
  for (const { tags, geometry } of all) {
    if (geometry.type === "Point") {
      nodes.push(
        `<node id="${next++}" lat="${geometry.coordinates[1]}" lon="${geometry.coordinates[0]}">${tag(tags)}</node>`,
      );
    } else if (geometry.type === "LineString") way(geometry.coordinates, tags);
    else if (geometry.type === "MultiLineString") for (const line of geometry.coordinates) way(line, tags);
    else if (geometry.type === "Polygon") {
      if (
        geometry.coordinates.length > 1 ||
        (multipolygons && ["green", "bunker", "fairway"].includes(tags["golf"] ?? ""))
      )
        relation(geometry.coordinates, tags);
      else way(geometry.coordinates[0]!, tags);
    } else if (geometry.type === "MultiPolygon") for (const rings of geometry.coordinates) relation(rings, tags);
  }
  if (archipelago > 0) {
    const members = Array.from(
      { length: archipelago },
      (_, i) => `<member type="way" ref="${9_000_000 + i}" role="outer"/>`,
    ).join("");
    relations.push(
      `<relation id="${next++}">${members}${tag({ type: "multipolygon", place: "archipelago", name: "The Outer Skerries" })}</relation>`,
    );
    relations.push(
      `<relation id="${next++}">${members}${tag({ type: "boundary", boundary: "administrative", name: "Parish" })}</relation>`,
    );
  }
  return `<?xml version="1.0" encoding="UTF-8"?>\n<osm version="0.6" generator="invented">${nodes.join("")}${ways.join("")}${relations.join("")}</osm>`;
}
