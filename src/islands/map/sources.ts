/** The style's sources by name, and the filters its layers pick features with. */
import type { ExpressionSpecification } from "maplibre-gl";
import type { FeatureKind } from "../../course/types.ts";

/** Sources the map fills while it runs. */
export const SOURCES = { features: "features", names: "names", play: "play", measure: "measure" } as const;

/** The source of heights; a tile of it that fails to come spoils nothing else. */
export const GROUND_SOURCE = "ground";

/** The same heights for the shape of the ground: the map reads the two at different sizes. */
export const HEIGHTS_SOURCE = "heights";

/** What lies beyond the ground there are heights of. */
export const BEYOND_SOURCE = "beyond";

export const kindIs = (kinds: readonly FeatureKind[]): ExpressionSpecification => [
  "in",
  ["get", "kind"],
  ["literal", [...kinds]],
];

export const IS_AREA: ExpressionSpecification = ["==", ["geometry-type"], "Polygon"];
export const IS_LINE: ExpressionSpecification = ["==", ["geometry-type"], "LineString"];
export const IS_POINT: ExpressionSpecification = ["==", ["geometry-type"], "Point"];
