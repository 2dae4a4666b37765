/** A hole's data laid into the plane the build measured in, as the measuring code wants it. */
import type { Feature } from "../../course/types.ts";
import type { Frame } from "../../geo/frame.ts";
import type { Area, Point, Position } from "../../geo/position.ts";
import type { PlacedFeature } from "../../measure/types.ts";
import type { HoleData } from "../../contract/hole-data.ts";
import type { LonLat } from "../../contract/map-data.ts";
import { frameAt } from "../../geo/frame.ts";
import { placeFeature } from "../../measure/place.ts";

export interface HolePlane {
  readonly frame: Frame;
  readonly placed: ReadonlyMap<string, PlacedFeature>;
  /** Line of play as the hole draws it. */
  readonly drawn: readonly Point[];
  readonly green: Area;
  readonly corridorMetres: number;
  toLonLat(point: Point): LonLat;
}

/** @throws RangeError when the hole has no green. */
export function holePlane(data: HoleData): HolePlane {
  const frame = frameAt(data.origin);
  const placed = new Map(
    data.features.features.map(({ geometry, properties }) => {
      const { id, kind, name, widthMetres, shared, cover } = properties;
      const feature: Feature = {
        id,
        kind,
        name,
        tee: undefined,
        widthMetres,
        heightMetres: undefined,
        geometry,
        tags: {},
        place: NOWHERE,
      };
      const placed: PlacedFeature = { ...placeFeature(feature, frame, shared === true), cover: cover ?? "none" };
      return [id, placed];
    }),
  );
  const green = [...placed.values()].find(({ feature }) => feature.kind === "green")?.shape;
  if (green?.type !== "areas") throw new RangeError(`Hole ${data.hole.number} has no green to measure to.`);
  return {
    frame,
    placed,
    drawn: data.drawn.map((position) => frame.toPlane(position)),
    green: green.areas[0]!,
    corridorMetres: data.corridorMetres,
    toLonLat(point) {
      const [longitude, latitude]: Position = frame.toPosition(point);
      return [longitude, latitude];
    },
  };
}

/** Where a feature is written is the build's business. */
const NOWHERE = { file: "", line: 0, column: 0 } as const;
