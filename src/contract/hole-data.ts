/** What the live map of a hole fetches: `hole.json` beside its page. */
import type { PerGender } from "../course/types.ts";
import type { HazardFigures } from "../measure/types.ts";
import {
  bounds,
  DATA_VERSION,
  lonLat,
  mapData,
  perGender,
  type Bounds,
  type LonLat,
  type MapData,
} from "./map-data.ts";
import { file, listOf, maybe, number, object, oneOf, text, truth } from "./reading.ts";

/** A place with the build's own figure for it, measured from the tee. */
export interface MeasuredPlace {
  readonly position: LonLat;
  readonly metres: number;
}

export interface HazardData {
  readonly id: string;
  /** Which meeting with the corridor this is, from 1 in order of play, and of how many. */
  readonly stretch: number;
  readonly stretches: number;
  readonly position: HazardFigures["position"];
  readonly inCorridor: boolean;
  readonly reach: MeasuredPlace;
  /** Absent where there is nothing to carry to: a boundary, what runs on beyond the green. */
  readonly carry?: MeasuredPlace;
  /** The carry is to the dry land the green lies on, not past all of the hazard. */
  readonly toGreen?: true;
}

export interface TeeData {
  readonly id: string;
  readonly name: string;
  /** CSS hex colour, `#rrggbb`. */
  readonly colour: string;
  readonly marker: LonLat;
  /** From the marker through the turning points to the middle of the green. */
  readonly line: readonly LonLat[];
  readonly lengthMetres: number;
  /** Distances along the line of play, as the page prints them. */
  readonly green: { readonly front: MeasuredPlace; readonly middle: MeasuredPlace; readonly back: MeasuredPlace };
  /** In order of reach; a hazard that meets the shot corridor twice is here twice. */
  readonly hazards: readonly HazardData[];
}

export interface HoleData extends MapData {
  readonly hole: { readonly number: number; readonly name: string; readonly par: PerGender };
  /** Compass bearing from the furthest-back tee to the middle of the green: up on the plate and on the map. */
  readonly bearingDegrees: number;
  /** Around the hole's own features. */
  readonly bounds: Bounds;
  /** Around every hole's own features: where a golfer counts as being on the course. */
  readonly courseBounds: Bounds;
  /** Half-width of the shot corridor. */
  readonly corridorMetres: number;
  /** Line of play as the hole draws it; from a point of the golfer's own, its turning points still ahead count. */
  readonly drawn: readonly LonLat[];
  /** Longest first; at least one. */
  readonly tees: readonly TeeData[];
}

const place = object<MeasuredPlace>({ position: lonLat, metres: number });

const hazard = object<HazardData>({
  id: text,
  stretch: number,
  stretches: number,
  position: oneOf("left", "right", "across", "beyond"),
  inCorridor: truth,
  reach: place,
  carry: maybe(place),
  toGreen: maybe(oneOf(true)),
});

const tee = object<TeeData>({
  id: text,
  name: text,
  colour: text,
  marker: lonLat,
  line: listOf(lonLat),
  lengthMetres: number,
  green: object<TeeData["green"]>({ front: place, middle: place, back: place }),
  hazards: listOf(hazard),
});

/** @throws UnreadableData when it is of another version, or damaged */
export const readHoleData = file<HoleData>(
  "hole.json",
  DATA_VERSION,
  object<HoleData>({
    ...mapData,
    hole: object<HoleData["hole"]>({ number, name: text, par: perGender }),
    bearingDegrees: number,
    bounds,
    courseBounds: bounds,
    corridorMetres: number,
    drawn: listOf(lonLat),
    tees: listOf(tee, 1),
  }),
);
