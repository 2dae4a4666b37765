import { describe, expect, test } from "vitest";
import {
  courseCamera,
  holeCamera,
  metresPerPixel,
  RELIEF_PITCH_DEGREES,
  zoomFor,
  type Camera,
} from "../../src/islands/map/camera.ts";
import type { LonLat } from "../../src/contract/map-data.ts";
import { courseData } from "../../src/site/files/course-data.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { FRAME } from "../support/flat-course.ts";
import { pixelOf } from "../support/mercator.ts";
import { tiltedPixelOf } from "../support/pinhole.ts";
import { sample } from "./sample.ts";

const measured = sample();
const data = holeData(measured.holes[0]!, "yards");

describe("scale", () => {
  test("is that of 256 pixel tiles, one zoom apart", () => {
    // Computed, regression, from 156543.03392804 cos(latitude) / 2^zoom for 256 pixel tiles:
    // 4.777314 m to the pixel at zoom 15 on the equator, 0.667860 m at zoom 17 and 56 degrees.
    expect(metresPerPixel(14, 0)).toBeCloseTo(4.777314, 6);
    expect(metresPerPixel(16, 56)).toBeCloseTo(0.66786, 6);
  });

  test("zoom and scale undo each other", () => {
    for (const zoom of [12, 15.5, 20]) expect(zoomFor(metresPerPixel(zoom, 56.5), 56.5)).toBeCloseTo(zoom, 10);
  });
});

const views = [
  { width: 358, height: 560, top: 56 },
  { width: 1200, height: 640, top: 0 },
  { width: 200, height: 900, top: 56 },
];

describe.each(views)("a hole in $width by $height", (view) => {
  const camera = holeCamera(data, view);
  const seen = (position: LonLat) => pixelOf(position, camera, view);

  test("is wholly in view", () => {
    for (const { marker, green } of data.tees) {
      for (const { x, y } of [seen(marker), seen(green.front.position), seen(green.back.position)]) {
        expect(x).toBeGreaterThan(0);
        expect(x).toBeLessThan(view.width);
        expect(y).toBeGreaterThan(view.top);
        expect(y).toBeLessThan(view.height);
      }
    }
  });

  test("plays straight up", () => {
    const tee = seen(data.tees[0]!.marker);
    const green = seen(data.tees[0]!.green.middle.position);
    expect(tee.y).toBeGreaterThan(green.y);
    expect(Math.abs(tee.x - green.x)).toBeLessThan(1);
  });

  test("fills the view one way or the other: no more ground than needed", () => {
    // From 24 m behind the tee at 0 to 40 m past the back edge at 415; 40 m to each side of the green.
    const scale = metresPerPixel(camera.zoom, camera.center[1]);
    expect(Math.max((415 + 24 + 40) / ((view.height - view.top) * scale), 80 / (view.width * scale))).toBeCloseTo(
      1,
      2,
    );
  });
});

describe.each(views)("a hole seen aslant in $width by $height", (view) => {
  const camera = holeCamera(data, view, RELIEF_PITCH_DEGREES);
  const seen = (position: LonLat) => tiltedPixelOf(position, 0, camera, view);

  test("is wholly in view, tees below the green", () => {
    for (const { marker, green } of data.tees) {
      for (const { x, y } of [seen(marker), seen(green.front.position), seen(green.back.position)]) {
        expect(x).toBeGreaterThan(0);
        expect(x).toBeLessThan(view.width);
        expect(y).toBeGreaterThan(view.top);
        expect(y).toBeLessThan(view.height);
      }
      expect(seen(marker).y).toBeGreaterThan(seen(green.middle.position).y);
    }
  });

  test("begins at the foot of the view", () => {
    // 24 m behind the tee at 0.
    const [longitude, latitude] = FRAME.toPosition([0, -24]);
    expect(seen([longitude, latitude]).y).toBeCloseTo(view.height, 0);
  });
});

test("no tilt is the flat map, and a tilted one says so", () => {
  expect(holeCamera(data, views[0]!).pitch).toBe(0);
  expect(holeCamera(data, views[0]!, 52).pitch).toBe(52);
});

test("a course is shown north up, all of it", () => {
  const course = courseData(measured, "yards", () => "");
  const view = { width: 358, height: 400, top: 56 };
  const camera: Camera = courseCamera(course.bounds, course.origin, view);
  expect(camera.bearing).toBe(0);
  const [west, south, east, north] = course.bounds;
  for (const corner of [
    [west, south],
    [east, north],
  ] as const) {
    const { x, y } = pixelOf(corner, camera, view);
    expect(Math.min(x, y - view.top, view.width - x, view.height - y)).toBeGreaterThan(0);
  }
});
