/** The live map of one hole: tap, and it says how far. */
import type { FeatureCollection } from "geojson";
import type { Golfer } from "./golfer.ts";
import type { LengthUnit } from "../../geo/units.ts";
import type { HoleData, LonLat } from "../hole-data.ts";
import type { Reading } from "./measure-tap.ts";
import type { BaseMap } from "./base-map.ts";
import type { OpenMap, OpenMapInput } from "./open-map.ts";
import { formatLength } from "../../tell/format.ts";
import { openBaseMap } from "./base-map.ts";
import { holeCamera } from "./camera.ts";
import { collection, line, point } from "./geojson.ts";
import { groundFrom } from "./ground.ts";
import { tapMeasure } from "./measure-tap.ts";
import { panel as makePanel } from "./panel.ts";
import { readOut } from "./read-out.ts";
import { SOURCES } from "./sources.ts";
import { mapStyle } from "./style.ts";
import { WORDS } from "./words.ts";

export async function openHoleMap({ slot, data, address, golfer, fonts, close, fail }: OpenMapInput<HoleData>): Promise<OpenMap> {
  const measure = tapMeasure(data);
  const ground = groundFrom(data.ground, address);
  const panel = makePanel(slot, { reset: WORDS.reset, keys: WORDS.holeKeys, hint: WORDS.holeHint });
  let current = golfer;
  let tapped: LonLat | undefined;

  const show = (map: BaseMap): void => {
    const tee = teeOf(data, current);
    map.setData(SOURCES.play, play(data, tee.id));
    if (tapped === undefined) return;
    const reading = measure.read(tapped, tee.id);
    map.setData(SOURCES.measure, measured(reading, current.units));
    panel.showReading(readOut(reading, current.units));
  };

  try {
    const map = await openBaseMap({
      panel,
      title: WORDS.holeMap(data.hole.number, data.hole.name),
      playDegrees: data.bearingDegrees,
      camera: (view) => holeCamera(data, view),
      style: (colours) => mapStyle({ colours, features: data.features, origin: data.origin, line: data.tees[0]?.line, fonts, bunkersFromZoom: 0, ground }),
      fill: show,
      choose(position, opened) {
        tapped = position;
        show(opened);
      },
      close,
      fail,
    });
    return {
      remove() {
        map.remove();
        panel.remove();
      },
      setGolfer(next) {
        current = next;
        show(map);
      },
      focus: () => map.focus(),
    };
  } catch (cause) {
    panel.remove();
    throw cause;
  }
}

/** The golfer's tee set, or where the hole does not use it, the hole's own. */
const teeOf = (data: HoleData, { tee }: Golfer): HoleData["tees"][number] =>
  data.tees.find(({ id }) => id === tee) ?? data.tees.find(({ id }) => id === data.defaultTee) ?? data.tees[0]!;

function play(data: HoleData, teeId: string): FeatureCollection {
  const chosen = data.tees.find(({ id }) => id === teeId)!;
  const { front, middle, back } = chosen.green;
  return collection([
    line(chosen.line, {}),
    ...data.tees.map(({ id, colour, marker }) => point(marker, { colour, chosen: id === teeId })),
    ...[front, middle, back].map(({ position }) => point(position, { green: true })),
  ]);
}

/** Both legs with their lengths beside them, and where a hazard under the point is reached and carried. */
function measured({ legs, fromTeeMetres, toMiddleMetres, under }: Reading, units: LengthUnit): FeatureCollection {
  const label = (metres: number): string => formatLength(metres, units).value;
  const halfway = ([x1, y1]: LonLat, [x2, y2]: LonLat): LonLat => [(x1 + x2) / 2, (y1 + y2) / 2];
  const [tee, at, middle] = legs;
  return collection([
    line(legs, {}),
    point(at, { tapped: true }),
    point(halfway(tee, at), { leg: label(fromTeeMetres) }),
    point(halfway(at, middle), { leg: label(toMiddleMetres) }),
    ...(under?.hazards ?? []).flatMap(({ reach, carry }) =>
      [reach, ...(carry === undefined ? [] : [carry])].map(({ position, metres }) => point(position, { edge: label(metres) }))),
  ]);
}
