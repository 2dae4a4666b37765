/** What lies ahead of a standing point: the few hazards that matter from there, with reach and carry. */
import type { FeatureKind } from "../../course/types.ts";
import type { Point } from "../../geo/position.ts";
import type { HazardFigures } from "../../measure/types.ts";
import type { HoleData, MeasuredPlace, TeeData } from "../../contract/hole-data.ts";
import type { HolePlane } from "./hole-plane.ts";
import { contains } from "../../geo/area.ts";
import { carriedOver } from "../../measure/carried.ts";
import { hazardsOn } from "../../measure/hazards.ts";
import { playFrom } from "../../measure/line-of-play.ts";
import { areasOf } from "../../measure/place.ts";
import { metresFromYards } from "../../geo/units.ts";

export interface HazardAhead {
  readonly id: string;
  readonly name: string | undefined;
  readonly kind: FeatureKind;
  readonly position: HazardFigures["position"];
  readonly reach: MeasuredPlace;
  /** Absent where it has no far side to play to. */
  readonly carry: MeasuredPlace | undefined;
  /** The carry is to the dry land the green lies on, not past all of it. */
  readonly toGreen: boolean;
}

/** More would be a list, and the page has one. */
const MOST = 3;

/** Beyond any stroke of a visiting golfer's (320 yd; common practice, no source). */
const FURTHEST_METRES = metresFromYards(320);

/**
 * Nearer than this one stands in it or at its edge: it is under the point, not ahead of it. What one stands
 * within begins at once.
 */
const UNDERFOOT_METRES = 2;

/** Hazards within the shot corridor on the way still to play from a point, nearest first. */
export function hazardsAhead(plane: HolePlane, standing: Point): readonly HazardAhead[] {
  const way = playFrom(standing, plane.drawn, plane.green);
  const all = hazardsOn(plane.placed, way, plane.corridorMetres).flatMap((hazard): HazardAhead[] => {
    const placed = plane.placed.get(hazard.id);
    if (placed === undefined || !hazard.inCorridor || hazard.reachMetres < UNDERFOOT_METRES) return [];
    if (hazard.stationMetres[0] < UNDERFOOT_METRES && areasOf(placed).some((area) => contains(area, standing)))
      return [];
    const { feature } = placed;
    const place = (point: Point, metres: number): MeasuredPlace => ({ position: plane.toLonLat(point), metres });
    const carried = carriedOver(hazard);
    return [
      {
        id: hazard.id,
        name: feature.name,
        kind: feature.kind,
        position: hazard.position,
        reach: place(hazard.reachPoint, hazard.reachMetres),
        carry: carried && place(carried.point, carried.metres),
        toGreen: carried?.to === "green",
      },
    ];
  });
  return thatMatter(all);
}

/** The same from a tee, with the build's own figures. */
export function hazardsFromTee({ features }: HoleData, tee: TeeData): readonly HazardAhead[] {
  return thatMatter(
    tee.hazards
      .filter(({ inCorridor }) => inCorridor)
      .flatMap((hazard): HazardAhead[] => {
        const properties = features.features.find(({ properties: { id } }) => id === hazard.id)?.properties;
        if (properties === undefined) return [];
        const { id, position, reach, carry, toGreen = false } = hazard;
        return [{ id, name: properties.name, kind: properties.kind, position, reach, carry, toGreen }];
      }),
  );
}

/** What lies across the way first, then what is nearest; told in order of reach. */
function thatMatter(all: readonly HazardAhead[]): readonly HazardAhead[] {
  const weight = ({ position }: HazardAhead): number => (position === "across" ? 0 : 1);
  return all
    .filter(({ reach }) => reach.metres <= FURTHEST_METRES)
    .sort((a, b) => weight(a) - weight(b) || a.reach.metres - b.reach.metres)
    .slice(0, MOST)
    .sort((a, b) => a.reach.metres - b.reach.metres);
}
