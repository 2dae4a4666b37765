/**
 * A hole shot by shot: parts of one plate, each a window on the ground of a shot. The
 * sheet is drawn once, in the first window; the others show it again from there.
 */
import { boxAround, grow, type Box } from "../geo/box.ts";
import { pointAt } from "../geo/line.ts";
import type { MeasuredHole, TeeFigures } from "../measure/types.ts";
import { COMPOSITIONS, type Composition } from "./composition.ts";
import { drawPlate, PLATE_FAMILY, type PlateOptions } from "./plate.ts";
import { layHole, type Sheet } from "./sheet.ts";
import { element, escapeXml, num } from "./svg.ts";

export interface StillOf {
  /** Where along the line of play the shot is hit from. */
  readonly fromMetres: number;
  /** Where it ends; the same place for a look at it alone. */
  readonly toMetres: number;
  /** Id of the element on the page that names the still. */
  readonly labelledBy: string;
}

export interface Still {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

/**
 * At one size for a phone's width: 190 m of ground across, so that a shot fits and its
 * lettering is as large as on the plate.
 */
export const STILL_COMPOSITION: Composition = {
  ...COMPOSITIONS.phone,
  width: [374, 1400],
  height: [300, 2400],
  mostPxPerMetre: 2,
  keep: { ...COMPOSITIONS.phone.keep, everyTee: false, legend: false },
};

/** Room around a shot's line, and the least size of a window; sheet units. */
const ROOM = 56;
const WIDTH = 374;
const LEAST_HEIGHT = 280;
/** A place alone is seen from nearer. */
const NEAR = { width: 240, height: 190 } as const;

/** @param options of the plate; its composition and labels are this module's own */
export function drawStills(
  hole: MeasuredHole,
  tee: TeeFigures,
  stills: readonly StillOf[],
  options: Omit<PlateOptions, "composition" | "labelledBy" | "describedBy">,
): Still[] {
  const sheet = layHole(hole, STILL_COMPOSITION);
  const first = stills[0];
  if (first === undefined) return [];
  const id = `${options.idPrefix}-sheet`;
  const { body } = drawPlate(hole, {
    ...options,
    composition: STILL_COMPOSITION,
    tee: tee.tee.id,
    labelledBy: first.labelledBy,
    describedBy: first.labelledBy,
  });
  return stills.map((still, i) => {
    const [minX, minY, maxX, maxY] = windowOf(sheet, tee, still);
    const [width, height] = [maxX - minX, maxY - minY];
    const shown = i === 0 ? element("g", { id }, body) : element("use", { href: `#${id}` });
    return {
      width,
      height,
      svg: `<svg xmlns="http://www.w3.org/2000/svg" class="plate plate-still" viewBox="${[minX, minY, width, height].map(num).join(" ")}" width="${num(width)}" height="${num(height)}" role="img" aria-labelledby="${escapeXml(still.labelledBy)}" font-family="${PLATE_FAMILY}">${shown}</svg>`,
    };
  });
}

/** The window of a still: around the shot's line, within the map. */
function windowOf({ map, toSheet }: Sheet, { line }: TeeFigures, { fromMetres, toMetres }: StillOf): Box {
  const steps = 8;
  const points = Array.from({ length: steps + 1 }, (_, i) =>
    toSheet(pointAt(line, fromMetres + ((toMetres - fromMetres) * i) / steps)),
  );
  const [minX, minY, maxX, maxY] = grow(boxAround(points), ROOM);
  const alone = toMetres - fromMetres < 1;
  const width = alone ? NEAR.width : Math.max(WIDTH, maxX - minX);
  const height = alone ? NEAR.height : Math.max(LEAST_HEIGHT, maxY - minY);
  const [left, right] = within((minX + maxX) / 2, width, map[0], map[2]);
  const [top, bottom] = within((minY + maxY) / 2, height, map[1], map[3]);
  return [left, top, right, bottom];
}

/** An interval of a length about a middle, pushed to lie within bounds, or all of them where it is longer. */
function within(middle: number, length: number, least: number, most: number): [number, number] {
  if (length >= most - least) return [least, most];
  const start = Math.min(most - length, Math.max(least, middle - length / 2));
  return [start, start + length];
}
