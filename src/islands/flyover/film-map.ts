/** A map that a flight is seen on: opened, pointed, closed. Nothing here knows time. */
import * as attr from "../../contract/attributes.ts";
import type { FeatureCollection } from "geojson";
import type { GeoJSONSource } from "maplibre-gl";
import type { Frame } from "../../geo/frame.ts";
import type { Point } from "../../geo/position.ts";
import type { Pose } from "../../flyover/types.ts";
import type { CourseData } from "../../contract/course-data.ts";
import type { LonLat } from "../../contract/map-data.ts";
import { LngLat } from "maplibre-gl";
import { frameAt } from "../../geo/frame.ts";
import { bearingDegrees, directionOfBearing, directionTo } from "../../geo/vector.ts";
import { radians } from "../../geo/units.ts";
import { collection, line, point } from "../map/geojson.ts";
import { MapFailure } from "../map/failure.ts";
import { tilesFrom } from "../map/tiles.ts";
import { firstPicture, makeMap, readyForMaps, schemeOf } from "../map/maplibre.ts";
import { PATTERN_PIXEL_RATIO, patterns } from "../map/patterns.ts";
import { GROUND_SOURCE, SOURCES } from "../map/sources.ts";
import { filmStyle, FLAG_IMAGE, FLAGS_SOURCE, HEIGHTS_SOURCE } from "./film-style.ts";
import { flagImage } from "./flag.ts";

/** Ground in three dimensions takes a slow device much longer than a flat map. */
const READY_WITHIN_MS = 90_000;

/** A tile of heights that fails to come leaves the ground there flat, and the flight to be seen. */
const ADDED_SOURCES: ReadonlySet<string> = new Set([HEIGHTS_SOURCE, GROUND_SOURCE]);

/** Vertical angle of view: a little wider than the map's own, so that the horizon and the foreground both fit. */
const VIEW_DEGREES = 42;

/**
 * The map is told to look at a point this far off, so that its scale, and so its line widths, stay the same
 * all flight.
 */
const SIGHT_METRES = 130;

export interface FilmMapInput {
  readonly view: HTMLElement;
  readonly title: string;
  readonly course: CourseData;
  /** Where the course's data came from: addresses in it are relative to that. */
  readonly address: URL;
  /** The hole whose line and flag are shown; all of them on a tour. */
  readonly hole: number | undefined;
  readonly first: Pose;
  readonly fonts: readonly string[];
  /** Ends the map. */
  readonly signal: AbortSignal;
  readonly fail: (failure: MapFailure) => void;
}

export interface FilmMap {
  show(pose: Pose): void;
  /** Settles when all there is to see is drawn. */
  settled(): Promise<void>;
}

/** @throws MapFailure when there is no WebGL 2 or no picture comes */
export async function openFilmMap({
  view,
  title,
  course,
  address,
  hole,
  first,
  fonts,
  signal,
  fail,
}: FilmMapInput): Promise<FilmMap> {
  await readyForMaps();
  signal.throwIfAborted();
  const { colours, watch } = schemeOf(view);
  const ground = tilesFrom(course.ground, address);
  const frame = frameAt([course.origin[0], course.origin[1]]);
  const style = (): ReturnType<typeof filmStyle> => filmStyle({ colours: colours(), course, hole, fonts, ground });
  const map = makeMap(view, {
    style: style(),
    interactive: false,
    maxPitch: 89,
    // The camera's height is ours, not the ground's under the middle of the picture.
    centerClampedToGround: false,
    fadeDuration: 0,
    locale: { "Map.Title": title },
  });
  signal.addEventListener("abort", () => map.remove());
  map.setVerticalFieldOfView(VIEW_DEGREES);
  map.setMissingStyleImageResolver((id) => {
    if (map.hasImage(id)) return;
    const pattern =
      id === FLAG_IMAGE
        ? flagImage(colours())
        : Object.entries(patterns(colours(), playDegrees(course, hole, frame))).find(([name]) => name === id)?.[1];
    if (pattern !== undefined) map.addImage(id, pattern, { pixelRatio: PATTERN_PIXEL_RATIO });
  });
  const canvas = map.getCanvas();
  canvas.setAttribute("role", "img");
  canvas.removeAttribute("tabindex");

  const fill = (): void => {
    void map.getSource<GeoJSONSource>(SOURCES.play)?.setData(lines(course, hole));
    void map.getSource<GeoJSONSource>(FLAGS_SOURCE)?.setData(flags(course, hole));
  };
  const show = (pose: Pose): void => {
    const { from, to, sightHeight } = sight(pose, frame);
    map.jumpTo(map.calculateCameraOptionsFromTo(from, pose.heightMetres, to, sightHeight));
    view.setAttribute(
      attr.camera,
      [map.getCenter().lng, map.getCenter().lat, map.getBearing(), map.getPitch()].join(" "),
    );
  };
  const restyle = (): void => {
    map.setStyle(style(), { diff: false });
    map.once("style.load", fill);
  };

  show(first);
  await firstPicture(map, {
    fill,
    drawn: "render",
    withinMilliseconds: READY_WITHIN_MS,
    additions: ADDED_SOURCES,
    signal,
  });
  show(first);
  map.on("webglcontextlost", () => fail(new MapFailure("lost", undefined)));
  watch(restyle, signal);
  return {
    show,
    settled: () =>
      new Promise((resolve) => {
        map.once("idle", () => resolve());
        map.triggerRepaint();
      }),
  };
}

/** From where to where a pose looks. */
function sight(
  { point: at, heightMetres, bearingDegrees: bearing, downDegrees }: Pose,
  frame: Frame,
): { from: LngLat; to: LngLat; sightHeight: number } {
  const [east, north] = directionOfBearing(bearing);
  const level = SIGHT_METRES * Math.cos(radians(downDegrees));
  const lngLat = (place: Point): LngLat => {
    const [longitude, latitude] = frame.toPosition(place);
    return new LngLat(longitude, latitude);
  };
  return {
    from: lngLat(at),
    to: lngLat([at[0] + east * level, at[1] + north * level]),
    sightHeight: heightMetres - SIGHT_METRES * Math.sin(radians(downDegrees)),
  };
}

const flown = (course: CourseData, hole: number | undefined): CourseData["holes"] =>
  course.holes.filter(({ number }) => hole === undefined || number === hole);

const lines = (course: CourseData, hole: number | undefined): FeatureCollection =>
  collection(flown(course, hole).map((one) => line(one.line, {})));

/** The way the mower went on the hole flown; other holes' fairways are too far off to tell. */
function playDegrees(course: CourseData, hole: number | undefined, frame: Frame): number | undefined {
  const way = hole === undefined ? undefined : flown(course, hole)[0]?.line;
  const [start, end] = [way?.[0], way?.[way.length - 1]];
  return (
    start && end && bearingDegrees(directionTo(frame.toPlane([start[0], start[1]]), frame.toPlane([end[0], end[1]])))
  );
}

/** A flag in the middle of each green, where lines of play end. */
const flags = (course: CourseData, hole: number | undefined): FeatureCollection =>
  collection(
    flown(course, hole).flatMap(({ number, line: way }) => {
      const end: LonLat | undefined = way[way.length - 1];
      return end === undefined ? [] : [point(end, hole === undefined ? { number: String(number) } : {})];
    }),
  );
