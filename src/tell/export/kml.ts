/**
 * A course as KML 2.2 (OGC 07-147r2): a folder for each hole, a placemark for each
 * feature, its tags as extended data, so that nothing is lost on the way.
 */
import type { Position } from "geojson";
import { creditLines } from "../../course/credits.ts";
import type { Course, Feature, FeatureKind } from "../../course/types.ts";
import { exportFeatures, type ExportFeature } from "./features.ts";
import { degreesText, xml } from "./xml.ts";

const tuple = ([longitude, latitude, height]: Position): string =>
  `${degreesText(longitude!)},${degreesText(latitude!)}${height === undefined ? "" : `,${height}`}`;

const coordinates = (positions: readonly Position[]): string =>
  `<coordinates>${positions.map(tuple).join(" ")}</coordinates>`;

const ring = (tag: string, positions: readonly Position[]): string =>
  `<${tag}><LinearRing>${coordinates(positions)}</LinearRing></${tag}>`;

const polygon = ([outer, ...inner]: readonly (readonly Position[])[]): string =>
  `<Polygon>${ring("outerBoundaryIs", outer!)}${inner.map((hole) => ring("innerBoundaryIs", hole)).join("")}</Polygon>`;

const point = (position: Position): string => `<Point>${coordinates([position])}</Point>`;
const line = (positions: readonly Position[]): string => `<LineString>${coordinates(positions)}</LineString>`;
const several = (parts: readonly string[]): string => `<MultiGeometry>${parts.join("")}</MultiGeometry>`;

function geometryKml({ geometry }: Feature): string {
  switch (geometry.type) {
    case "Point":
      return point(geometry.coordinates);
    case "MultiPoint":
      return several(geometry.coordinates.map(point));
    case "LineString":
      return line(geometry.coordinates);
    case "MultiLineString":
      return several(geometry.coordinates.map(line));
    case "Polygon":
      return polygon(geometry.coordinates);
    case "MultiPolygon":
      return several(geometry.coordinates.map(polygon));
  }
}

interface Style {
  /** KML colours are alpha, blue, green, red. */
  readonly line: string;
  readonly fill: string;
}

/** Plain map colours; penalty areas and boundary in the Rules' yellow, red and white. */
const STYLES = {
  line: { line: "ff303030", fill: "00ffffff" },
  green: { line: "ff3c7a4a", fill: "a06cc08a" },
  fairway: { line: "ff5a8a60", fill: "6078b080" },
  sand: { line: "ff6090b0", fill: "a0a8d8f0" },
  yellow: { line: "ff00d7ff", fill: "6000d7ff" },
  red: { line: "ff0000ff", fill: "600000ff" },
  white: { line: "ffffffff", fill: "40ffffff" },
  water: { line: "ffb07030", fill: "80d0a060" },
  other: { line: "ff606060", fill: "40808080" },
} as const satisfies Readonly<Record<string, Style>>;

const STYLE_OF: Readonly<Record<FeatureKind, keyof typeof STYLES>> = {
  "line-of-play": "line",
  green: "green",
  fairway: "fairway",
  "teeing-ground": "fairway",
  bunker: "sand",
  sand: "sand",
  "penalty-area-yellow": "yellow",
  "penalty-area-red": "red",
  "out-of-bounds": "white",
  water: "water",
  stream: "water",
  coastline: "water",
  "tee-marker": "other",
  rough: "other",
  pin: "other",
  path: "other",
  road: "other",
  scrub: "other",
  heath: "other",
  wood: "other",
  tree: "other",
  cliff: "other",
  ridge: "other",
  rock: "other",
  grassland: "other",
  wall: "other",
  fence: "other",
  hedge: "other",
  building: "other",
  "driving-range": "other",
  landmark: "other",
  course: "other",
  other: "other",
};

function placemark({ hole, feature, tags }: ExportFeature, indent: string): string {
  const data = { hole: hole ?? "all", id: feature.id, ...tags };
  const extended = Object.entries(data)
    .map(([name, value]) => `<Data name="${xml(name)}"><value>${xml(String(value))}</value></Data>`)
    .join("");
  const name = feature.kind === "line-of-play" ? (tags["name"] ?? feature.id) : (feature.name ?? feature.id);
  return `${indent}<Placemark><name>${xml(String(name))}</name><styleUrl>#${STYLE_OF[feature.kind]}</styleUrl><ExtendedData>${extended}</ExtendedData>${geometryKml(feature)}</Placemark>`;
}

export function courseKml(course: Course): string {
  const features = exportFeatures(course);
  const credits = creditLines(course)
    .map(({ text }) => text)
    .join("; ");
  const folder = (name: string, own: readonly ExportFeature[]): string[] =>
    own.length === 0
      ? []
      : [`    <Folder><name>${xml(name)}</name>`, ...own.map((one) => placemark(one, "      ")), "    </Folder>"];
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<kml xmlns="http://www.opengis.net/kml/2.2">',
    "  <Document>",
    `    <name>${xml(course.name)}</name>`,
    ...(credits === "" ? [] : [`    <description>${xml(credits)}</description>`]),
    ...Object.entries(STYLES).map(
      ([id, style]) =>
        `    <Style id="${id}"><LineStyle><color>${style.line}</color><width>2</width></LineStyle><PolyStyle><color>${style.fill}</color></PolyStyle></Style>`,
    ),
    ...folder(
      "Shared by the holes",
      features.filter(({ hole }) => hole === undefined),
    ),
    ...course.holes.flatMap((hole) =>
      folder(
        `Hole ${hole.number} ${hole.name}`,
        features.filter((one) => one.hole === hole.number),
      ),
    ),
    "  </Document>",
    "</kml>",
    "",
  ].join("\n");
}
