/** A photo from the air: a GeoTIFF that knows where it lies, or a picture with its four corners. */
import * as z from "zod";
import { expects, fileName, group, line } from "./fields.ts";
import { lonLat } from "./photo.ts";

const WRITE = "photo: ground/air.tif";
const CORNERS = "corners: [[-9.01, 56.51], [-8.99, 56.51], [-8.99, 56.50], [-9.01, 56.50]]";
const CLOCKWISE = "four positions [longitude, latitude], clockwise from the picture's upper left corner";

type Corner = readonly [number, number];

/**
 * Whether four corners go round clockwise without a dent or a crossing; north is up, degrees are near enough
 * for that.
 */
function goClockwise(corners: readonly Corner[]): boolean {
  return corners.every(([x, y], i) => {
    const [x1, y1] = corners[(i + 1) % 4]!;
    const [x2, y2] = corners[(i + 2) % 4]!;
    return (x1 - x) * (y2 - y1) - (y1 - y) * (x2 - x1) < 0;
  });
}

const corner = () => lonLat("a position [longitude, latitude]", CORNERS);

export const orthophotoSchema = () =>
  z.union(
    [
      fileName("a file in the course's folder", WRITE),
      group(
        {
          file: fileName("a file in the course's folder", "file: ground/air.jpg"),
          crs: line("a coordinate system as an EPSG code or a proj string", 'crs: "EPSG:32629"', 1000).optional(),
          corners: z
            .tuple([corner(), corner(), corner(), corner()], expects(CLOCKWISE, CORNERS))
            .refine(goClockwise, expects(CLOCKWISE, CORNERS))
            .optional(),
        },
        "a group",
      ),
    ],
    expects(
      "a file in the course's folder, or a file with its corners",
      `${WRITE} or photo: { file: ground/air.jpg, ${CORNERS} }`,
    ),
  );
