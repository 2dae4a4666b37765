/** The shape a kind is drawn in, and whether tags and shape hold to the content's own checks. */
import { featureKind } from "../../course/feature-kind.ts";
import { kindFacts, type FeatureKind } from "../../course/kinds.ts";
import { checkGeometry, type CheckedGeometry } from "../../course/schema/geometry.ts";
import { checkVocabulary, type Tags } from "../../course/schema/vocabulary.ts";
import { cleaned } from "./clean.ts";

/** A walked outline rarely ends where it began. */
const CLOSED_DEGREES = 5e-5;

/** A line that comes home, where an area is meant, is its outline; an outline where a line is meant is the line. */
function fitShape(geometry: CheckedGeometry, kind: FeatureKind, tags: Tags): CheckedGeometry {
  if (
    geometry.type === "LineString" &&
    kindFacts(kind).closed === "area" &&
    tags["natural"] !== "tree_row" &&
    geometry.coordinates.length >= 4
  ) {
    const [first, last] = [geometry.coordinates[0]!, geometry.coordinates[geometry.coordinates.length - 1]!];
    const gap = Math.hypot(first[0]! - last[0]!, first[1]! - last[1]!);
    if (gap <= CLOSED_DEGREES) return cleaned({ type: "Polygon", coordinates: [geometry.coordinates] });
  }
  if (geometry.type === "Polygon" && kindFacts(kind).closed === "line" && geometry.coordinates.length === 1)
    return { type: "LineString", coordinates: geometry.coordinates[0]! };
  return geometry;
}

/** What tags say a feature is, and its geometry in the shape that takes. */
export function kindAndShape(tags: Tags, geometry: CheckedGeometry): { kind: FeatureKind; shaped: CheckedGeometry } {
  const shaped = fitShape(geometry, featureKind(tags, geometry.type), tags);
  return { kind: featureKind(tags, shaped.type), shaped };
}

/** The first thing the content's own checks would say against it. */
export function unfit(tags: Tags, geometry: CheckedGeometry): string | undefined {
  const findings = [...checkVocabulary(tags, geometry.type, [], "it"), ...checkGeometry(geometry, [], "it").findings];
  const fault = findings.find(({ severity }) => severity === "error");
  return fault?.message.replace(/^it: /, "").replace(/\.$/, "");
}
