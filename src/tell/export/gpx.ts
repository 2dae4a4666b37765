/**
 * A course as GPX 1.1: a waypoint for each feature, a route for each line of play.
 *
 * GPX has no areas. An area's waypoint stands inside it, so a GPX file is for finding
 * places with a receiver; the outlines are in the GeoJSON and KML exports.
 */
import type { Position } from "geojson";
import { KIND_KEYS } from "../../course/schema/vocabulary.ts";
import { creditLines } from "../../course/credits.ts";
import type { Course, Feature } from "../../course/types.ts";
import { areaSquareMetres, innerPoint } from "../../geo/area.ts";
import { frameAt } from "../../geo/frame.ts";
import { exportFeatures, type ExportFeature } from "./features.ts";
import { degreesText, xml } from "./xml.ts";

/** Order of a point's children as the schema's sequence wants it: ele, name, cmt, desc, type. */
function point(
  tag: string,
  indent: string,
  [longitude, latitude, height]: Position,
  children: readonly (readonly [name: string, text: string])[],
): string {
  // The schema's longitudes end before 180.
  const east = longitude === 180 ? -180 : longitude!;
  const all = [...(height === undefined ? [] : [["ele", String(height)] as const]), ...children];
  const inside = all.map(([name, text]) => `<${name}>${xml(text)}</${name}>`).join("");
  return `${indent}<${tag} lat="${degreesText(latitude!)}" lon="${degreesText(east)}">${inside}</${tag}>`;
}

/** Where a feature's waypoint stands: itself, the middle position of a line, a point within its largest area. */
export function waypointOf({ geometry }: Feature): Position {
  switch (geometry.type) {
    case "Point":
      return geometry.coordinates;
    case "MultiPoint":
      return geometry.coordinates[0]!;
    case "LineString":
      return geometry.coordinates[Math.floor(geometry.coordinates.length / 2)]!;
    case "MultiLineString":
      return geometry.coordinates[0]![0]!;
    case "Polygon":
      return within([geometry.coordinates]);
    case "MultiPolygon":
      return within(geometry.coordinates);
  }
}

function within(polygons: readonly (readonly (readonly Position[])[])[]): Position {
  const [x0, y0] = polygons[0]![0]![0]!;
  const frame = frameAt([x0!, y0!]);
  const areas = polygons.map((rings) => rings.map((ring) => ring.map(([x, y]) => frame.toPlane([x!, y!]))));
  const largest = areas.reduce((best, area) => (areaSquareMetres(area) > areaSquareMetres(best) ? area : best));
  const [longitude, latitude] = frame.toPosition(innerPoint(largest));
  return [Number(longitude.toFixed(7)), Number(latitude.toFixed(7))];
}

/** The tag that says what it is: `golf=bunker`. */
function typeOf({ tags }: ExportFeature): string {
  const key = KIND_KEYS.find((one) => tags[one] !== undefined);
  return key === undefined ? "" : `${key}=${tags[key]}`;
}

function wording(one: ExportFeature): (readonly [string, string])[] {
  const { hole, feature, tags } = one;
  const name = feature.name ?? feature.id;
  const { type } = feature.geometry;
  const shape = type.endsWith("Polygon") ? "area" : type.endsWith("LineString") ? "line" : undefined;
  const pairs = [
    `hole=${hole ?? "all"}`,
    `id=${feature.id}`,
    ...(typeof tags["tee"] === "string" ? [`tee=${tags["tee"]}`] : []),
    ...(shape === undefined ? [] : [`shape=${shape}`]),
  ];
  return [
    ["name", hole === undefined ? name : `${hole} ${name}`],
    ["cmt", pairs.join(" ")],
    ...(shape === undefined
      ? []
      : [
          [
            "desc",
            `A point ${shape === "area" ? "within" : "on"} it; its outline is in the GeoJSON and KML exports.`,
          ] as const,
        ]),
    ["type", typeOf(one)],
  ];
}

/** @returns the document; positions in degrees on WGS 84, heights as written */
export function courseGpx(course: Course): string {
  const features = exportFeatures(course);
  const lines = features.filter(({ feature }) => feature.kind === "line-of-play");
  const waypoints = features
    .filter(({ feature }) => feature.kind !== "line-of-play")
    .map((one) => point("wpt", "  ", waypointOf(one.feature), wording(one)));
  const routes = lines.flatMap(({ hole, feature, tags }) => {
    if (feature.geometry.type !== "LineString") return [];
    // A route's children come as name, cmt, number, type, then its points.
    return [
      "  <rte>",
      `    <name>${xml(`${hole} ${tags["name"] ?? feature.id}`)}</name>`,
      `    <cmt>hole=${hole} id=${xml(feature.id)}</cmt>`,
      `    <number>${hole}</number>`,
      "    <type>golf=hole</type>",
      ...feature.geometry.coordinates.map((position) => point("rtept", "    ", position, [])),
      "  </rte>",
    ];
  });
  const credits = creditLines(course);
  const link = credits.find((credit) => credit.link !== undefined)?.link;
  const copyright =
    credits.length === 0
      ? ""
      : `<copyright author="${xml(credits.map(({ text }) => text).join("; "))}">${link === undefined ? "" : `<license>${xml(link)}</license>`}</copyright>`;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<gpx xmlns="http://www.topografix.com/GPX/1/1" version="1.1" creator="Marram">',
    `  <metadata><name>${xml(course.name)}</name>${copyright}</metadata>`,
    ...waypoints,
    ...routes,
    "</gpx>",
    "",
  ].join("\n");
}
