/** The live map of a course: tap a hole, and its page opens. */
import type { FeatureCollection } from "geojson";
import { readCourseData, type CourseData } from "../../contract/course-data.ts";
import type { OpenMap, OpenMapInput } from "./open-map.ts";
import { openBaseMap } from "./base-map.ts";
import { courseCamera } from "./camera.ts";
import { collection, line, point } from "./geojson.ts";
import { nearestHole } from "./nearest.ts";
import { panel as makePanel } from "./panel.ts";
import { photoTool, type PhotoState } from "./photo-tool.ts";
import { keepsRelief, reliefTool } from "./relief-tool.ts";
import { SOURCES } from "./sources.ts";
import { mapStyle } from "./style.ts";
import { tilesFrom } from "./tiles.ts";

/** A hole fills a phone from about here. */
const BUNKERS_FROM_ZOOM = 16;

/** Half a fingertip, CSS pixels. */
const TOUCH_PIXELS = 22;

/** @throws UnreadableData for data of another version, or damaged */
export async function openCourseMap({
  slot,
  data: written,
  address,
  fonts,
  speech: { say },
  signal,
  close,
  fail,
}: OpenMapInput): Promise<OpenMap> {
  signal.throwIfAborted();
  const data = readCourseData(written);
  const ground = tilesFrom(data.ground, address);
  const photo = tilesFrom(data.photo, address);
  const air: PhotoState = { shown: false };
  const panel = makePanel(slot, say, {
    reset: say.resetCourse,
    keys: say.courseKeys,
    hint: say.courseHint,
    tools: [...(ground === undefined ? [] : ["relief" as const]), ...(photo === undefined ? [] : ["photo" as const])],
  });
  signal.addEventListener("abort", () => panel.remove());
  const map = await openBaseMap({
    panel,
    title: say.courseMap({ course: data.course.name }),
    words: say,
    playDegrees: undefined,
    camera: (view, pitch) => courseCamera(data.bounds, data.origin, view, pitch),
    bounds: data.bounds,
    ground,
    relief: keepsRelief(),
    style: (colours) =>
      mapStyle({
        colours,
        features: data.features,
        origin: data.origin,
        line: undefined,
        fonts,
        bunkersFromZoom: BUNKERS_FROM_ZOOM,
        ground,
        photo: photo && { tiles: photo, ...air },
      }),
    fill: (opened) => opened.setData(SOURCES.play, holeLines(data)),
    choose(position, opened) {
      const hole = nearestHole(data, position, TOUCH_PIXELS * opened.metresPerPixel());
      if (hole === undefined) panel.showLine(say.noHole);
      else window.location.assign(new URL(hole.path, address));
    },
    signal,
    close,
    fail,
  });
  reliefTool(panel, map, ground !== undefined, say);
  photoTool(panel, map, air, say);
  // Lines and numbers are the same from every tee.
  return { setGolfer: () => undefined, focus: map.focus };
}

/** Each hole's line, and its number where it starts. */
const holeLines = (data: CourseData): FeatureCollection =>
  collection(
    data.holes.flatMap((hole) => {
      const start = hole.line[0];
      return start === undefined ? [] : [line(hole.line, { hole: hole.number }), point(start, { hole: hole.number })];
    }),
  );
