/** The drawings of a page, in the page's words and the club's unit. */
import { drawPlate } from "../draw/plate.ts";
import type { LengthUnit } from "../geo/units.ts";
import type { MeasuredCourse, MeasuredHole } from "../measure/types.ts";
import type { Words } from "../site/words.ts";

/** A hole's plate for a phone and for a desk; the page's style shows one. */
export const platesSvg = (measured: MeasuredHole, tee: string, unit: LengthUnit, words: Words): string =>
  (["phone", "desk"] as const)
    .map((composition) => drawPlate(measured, { composition, idPrefix: `plate-${composition}`, unit, tee, words: words.draw }).svg)
    .join("");
