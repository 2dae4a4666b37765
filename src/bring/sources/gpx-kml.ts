/** GPX and KML, read by @tmcw/togeojson. */
import { gpx, kmlWithFolders, type Folder } from "@tmcw/togeojson";
import type { Document } from "@xmldom/xmldom";
import type { Feature, Geometry } from "geojson";
import { plainGeometries, type Brought, type BroughtFile } from "./brought.ts";
import { soundGeometry } from "./geojson.ts";
import { checkCount, LIMITS } from "./limits.ts";

type Loose = Feature<Geometry | null>;

/** What says which feature it is: the name is all these formats have, and only when it is the only one of its kind. */
function keyed(
  file: string,
  base: string,
  found: readonly { feature: Loose; words: readonly string[]; kind: string }[],
): { features: Brought[]; notes: string[] } {
  checkCount(file, found.length, LIMITS.features, "features");
  const notes: string[] = [];
  const nameOf = ({ feature, words, kind }: (typeof found)[number]): string | undefined => {
    const name: unknown = feature.properties?.["name"];
    return typeof name === "string" && name.trim() !== "" ? [...words, kind, name.trim()].join("/") : undefined;
  };
  const times = new Map<string, number>();
  for (const one of found) {
    const name = nameOf(one);
    if (name !== undefined) times.set(name, (times.get(name) ?? 0) + 1);
  }
  const features = found.flatMap((one, i): Brought[] => {
    const name = nameOf(one);
    const shown: unknown = one.feature.properties?.["name"];
    const from = `${file}, ${one.kind} ${typeof shown === "string" && shown.trim() !== "" ? JSON.stringify(shown.trim().slice(0, 60)) : i + 1}`;
    const geometry = soundGeometry(one.feature.geometry);
    if (typeof geometry === "string") {
      notes.push(`${from} ${geometry}; it was left out.`);
      return [];
    }
    const parts = plainGeometries(geometry);
    const key = name !== undefined && times.get(name) === 1 ? `${base}#${name}` : undefined;
    return parts.map((part, k) => ({
      from,
      key: key !== undefined && parts.length > 1 ? `${key}+${k + 1}` : key,
      properties: one.feature.properties ?? {},
      geometry: part,
      words: one.words,
      mapped: false,
    }));
  });
  return { features, notes };
}

export function readGpx(file: string, base: string, document: Document): BroughtFile {
  const words: Readonly<Record<string, string>> = { rte: "route", trk: "track" };
  const found = gpx(document).features.map((feature) => ({
    feature,
    words: [],
    kind: words[String(feature.properties?.["_gpxType"])] ?? "waypoint",
  }));
  return { format: "GPX", openStreetMap: false, ...keyed(file, base, found) };
}

/** Placemarks with the names of the folders they lie in, outermost first. */
function* placemarks(
  nodes: readonly (Folder | Loose)[],
  folders: readonly string[],
): Generator<{ feature: Loose; words: readonly string[]; kind: string }> {
  for (const node of nodes) {
    if (node.type === "Feature") {
      yield { feature: node, words: folders, kind: "placemark" };
    } else {
      const name: unknown = node.meta["name"];
      yield* placemarks(
        node.children,
        typeof name === "string" && name.trim() !== "" ? [...folders, name.trim()] : folders,
      );
    }
  }
}

export function readKml(file: string, base: string, document: Document): BroughtFile {
  return {
    format: "KML",
    openStreetMap: false,
    ...keyed(file, base, [...placemarks(kmlWithFolders(document).children, [])]),
  };
}
