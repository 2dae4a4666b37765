/** One invented hole, drawn in metres: 400 m due north, a gully across, a bunker beside, a bay to the left. */
import { areaFeature, box, course, hole, lineFeature, pointFeature } from "../support/flat-course.ts";
import { measureCourse } from "../../src/measure/course.ts";
import type { MeasuredCourse } from "../../src/measure/types.ts";

export const sample = (): MeasuredCourse =>
  measureCourse(
    course(
      [
        hole(
          [
            lineFeature(
              "line",
              "line-of-play",
              [
                [0, 0],
                [0, 400],
              ],
              { heights: [10, 18.5] },
            ),
            pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
            pointFeature("tee-forward", "tee-marker", [0, 50], { tee: "forward" }),
            areaFeature("fairway", "fairway", box(-15, 120, 15, 380)),
            areaFeature("green", "green", box(-10, 385, 10, 415)),
            areaFeature("gully", "penalty-area-red", box(-60, 80, 60, 100), { name: "The Gully" }),
            areaFeature("pot", "bunker", box(8, 200, 14, 206)),
            lineFeature(
              "burn",
              "penalty-area-yellow",
              [
                [-60, 300],
                [60, 300],
              ],
              { name: "The Burn", widthMetres: 3 },
            ),
            lineFeature(
              "road",
              "out-of-bounds",
              [
                [50, -20],
                [50, 380],
              ],
              { name: "The Road" },
            ),
            pointFeature("light", "landmark", [30, 480], { name: "The Light", tags: { man_made: "lighthouse" } }),
          ],
          { number: 7, name: "Skerry" },
        ),
      ],
      {
        features: [areaFeature("bay", "water", box(-400, -100, -70, 500), { name: "The Bay" })],
      },
    ),
  );
