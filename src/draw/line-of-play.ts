/** The line of play from each tee set, and the tee markers. */
import * as attr from "../contract/attributes.ts";
import { pointAt } from "../geo/line.ts";
import type { MeasuredHole, TeeFigures } from "../measure/types.ts";
import type { PlateContext } from "./plate-context.ts";
import { element, num, polyPath } from "./svg.ts";

/** A group that a settings script shows or hides by its `display` attribute. */
export function group(name: string, data: Readonly<Record<string, string>>, shown: boolean, content: string): string {
  return element("g", { class: name, ...data, ...(shown ? {} : { display: "none" }) }, content);
}

/** The dashed line of play from one tee set, with its bends as rings. */
export function drawLineOfPlay({ sheet, composition: c, paint }: PlateContext, tee: TeeFigures): string {
  const end = tee.line.lengthMetres;
  const stop = pointAt(tee.line, end - 3);
  const points = [...tee.line.points.slice(0, -1), stop].map(sheet.toSheet);
  const d = polyPath(points, false);
  const dash = `${num(7 * c.drawing)} ${num(4.5 * c.drawing)}`;
  return (
    element("path", { ...paint("casing"), "stroke-width": c.medium + 2.2 * c.drawing, opacity: 0.5, d }) +
    element("path", { ...paint("line"), "stroke-width": c.medium, "stroke-dasharray": dash, d }) +
    tee.bends
      .map(({ point }) => {
        const [x, y] = sheet.toSheet(point);
        return (
          element("circle", {
            ...paint("spot"),
            cx: num(x),
            cy: num(y),
            r: 4.4 * Math.sqrt(c.drawing),
            "stroke-width": c.medium,
          }) + element("circle", { ...paint("frame-ink"), cx: num(x), cy: num(y), r: 1.2 * Math.sqrt(c.drawing) })
        );
      })
      .join("")
  );
}

/** Tee markers in the club's colours; the one played from is ringed. */
export function drawTeeMarkers(
  { sheet, composition: c, paint }: PlateContext,
  hole: MeasuredHole,
  first: TeeFigures,
): string {
  const r = 3.1 * Math.sqrt(c.drawing);
  const dots = hole.tees.map((tee) => {
    const [x, y] = sheet.toSheet(tee.marker);
    const ring = group(
      "plate-tee",
      { [attr.tee]: tee.tee.id },
      tee === first,
      element("circle", { ...paint("casing"), cx: num(x), cy: num(y), r: r + 3, "stroke-width": 3 }) +
        element("circle", { ...paint("ring"), cx: num(x), cy: num(y), r: r + 3, "stroke-width": c.medium }),
    );
    const { class: name, stroke } = paint("marker");
    return (
      ring +
      element("circle", {
        class: name,
        fill: tee.tee.colour,
        stroke,
        cx: num(x),
        cy: num(y),
        r,
        "stroke-width": c.fine * 1.3,
      })
    );
  });
  return element("g", {}, dots.join(""));
}
