/** What surrounds a chart: neat line and graduated border, north arrow, scale bar, title block. */
import * as attr from "../contract/attributes.ts";
import { METRES_PER_YARD, type LengthUnit } from "../geo/units.ts";
import type { Point } from "../geo/position.ts";
import type { Composition } from "./composition.ts";
import { element, escapeXml, num, polyPaths } from "./svg.ts";
import { textAttributes, type TextLine } from "./lettering.ts";
import type { Painter } from "./palette.ts";
import type { Sheet } from "./sheet.ts";
import { textWidth } from "./text-width.ts";

/** The paper, with the map's window left open by drawing it first. */
export const drawPaper = ({ width, height }: Sheet, paint: Painter): string =>
  element("rect", { ...paint("paper"), width: num(width), height: num(height) });

/** Neat line and border; the larger sheets leave room in it for a chart's graduation. */
export function drawFrame(sheet: Sheet, composition: Composition, paint: Painter): string {
  const [minX, minY, maxX, maxY] = sheet.map;
  const { hair, fine, medium, margin } = composition;
  const box = (gap: number, weight: number): string =>
    element("rect", {
      ...paint("frame"),
      x: num(minX - gap),
      y: num(minY - gap),
      width: num(maxX - minX + 2 * gap),
      height: num(maxY - minY + 2 * gap),
      "stroke-width": weight,
    });
  if (composition.name === "phone") return box(0, fine) + box(3.2, medium * 1.1);
  const outer = GRADUATION + Math.min(4, margin / 4);
  return box(0, fine) + box(GRADUATION, fine) + box(outer, medium * 1.4) + box(outer + 2.6, hair);
}

/** Width of the graduated border. */
const GRADUATION = 5;

/** The border's bars: one for every other 50 of the unit, counted from the lower left corner. None on a phone. */
export function drawGraduation(sheet: Sheet, composition: Composition, unit: LengthUnit, paint: Painter): string {
  if (composition.name === "phone") return "";
  const [minX, minY, maxX, maxY] = sheet.map;
  const step = 50 * (unit === "yards" ? METRES_PER_YARD : 1) * sheet.pxPerMetre;
  const pieces: Point[][] = [];
  for (let i = 0, y = maxY; y > minY; i++, y -= step) {
    const top = Math.max(minY, y - step);
    if (i % 2 === 0)
      for (const x of [minX - GRADUATION, maxX])
        pieces.push([
          [x, y],
          [x + GRADUATION, y],
          [x + GRADUATION, top],
          [x, top],
        ]);
  }
  for (let i = 0, x = minX; x < maxX; i++, x += step) {
    const right = Math.min(maxX, x + step);
    if (i % 2 === 0)
      for (const y of [minY - GRADUATION, maxY])
        pieces.push([
          [x, y],
          [right, y],
          [right, y + GRADUATION],
          [x, y + GRADUATION],
        ]);
  }
  return element("path", { ...paint("frame-ink"), d: polyPaths(pieces, true) });
}

/** Half the room a north arrow needs, at scale 1. */
export const NORTH_REACH = 24;

/** A north arrow about a point: half the needle inked, as on a compass card. */
export function drawNorth([x, y]: Point, sheet: Sheet, scale: number, paint: Painter, letter: string): string {
  const turn = -sheet.upBearingDegrees;
  const radians = (turn * Math.PI) / 180;
  // The letter stays upright, wherever north is.
  const [lx, ly] = [Math.sin(radians) * 21, -Math.cos(radians) * 21];
  const text: TextLine = { text: letter, mark: "name", size: 11, weight: "heavy" };
  return element(
    "g",
    { class: "plate-north", transform: `translate(${num(x)} ${num(y)}) scale(${scale})` },
    element(
      "g",
      { transform: `rotate(${num(turn)})` },
      element("circle", { ...paint("casing"), r: 11, "stroke-width": 4, opacity: 0.6 }) +
        element("circle", { ...paint("ring"), r: 11, "stroke-width": 0.6 }) +
        element("path", {
          ...paint("frame-paper"),
          "stroke-width": 0.7,
          "stroke-linejoin": "round",
          d: "M0-15.5-3.8 0 0 13z",
        }) +
        element("path", { ...paint("frame-ink"), "stroke-width": 0.7, d: "M0-15.5 3.8 0 0 13z" }) +
        element("path", { ...paint("frame"), "stroke-width": 0.6, d: "M-13 0h4M9 0h4" }),
    ) +
      element(
        "text",
        { x: num(lx), y: num(ly + 3.9), "text-anchor": "middle", ...textAttributes(text, paint, 3) },
        escapeXml(letter),
      ),
  );
}

/** A scale bar of whole fifties, yards above and metres below. */
export function drawScale(
  at: Point,
  most: number,
  sheet: Sheet,
  composition: Composition,
  unit: LengthUnit,
  paint: Painter,
): { svg: string; width: number } {
  const [x, y] = at;
  const { fine } = composition;
  const size = composition.text.note;
  const yard = METRES_PER_YARD * sheet.pxPerMetre;
  const one = unit === "yards" ? yard : sheet.pxPerMetre;
  const length = [400, 200, 150, 100, 50, 25].find((n) => n * one <= most) ?? 25;
  const part = length > 150 ? length / 4 : length >= 100 ? 25 : length / 5;
  const bar = 4.5 * Math.sqrt(composition.drawing);
  let out = element("rect", {
    ...paint("frame-paper"),
    x: num(x),
    y: num(y),
    width: num(length * one),
    height: num(bar),
    "stroke-width": fine,
  });
  const inked: Point[][] = [];
  for (let n = 0, i = 0; n < length; n += part, i++) {
    const [a, b] = [x + n * one, x + (n + part) * one];
    const [top, bottom] = i % 2 === 0 ? [y, y + bar / 2] : [y + bar / 2, y + bar];
    inked.push([
      [a, top],
      [b, top],
      [b, bottom],
      [a, bottom],
    ]);
  }
  out += element("path", { ...paint("frame-ink"), d: polyPaths(inked, true) });
  const text: TextLine = { text: "", mark: "legend", size, weight: "regular" };
  const label = (n: number, words: string, anchor: string): string =>
    element(
      "text",
      { x: num(x + n * one), y: num(y - 3.5), "text-anchor": anchor, ...textAttributes(text, paint, 0) },
      escapeXml(words),
    );
  const abbreviated = unit === "yards" ? "yd" : "m";
  out += label(0, "0", "middle") + label(length, `${length} ${abbreviated}`, "middle");
  if (length >= 100) out += label(length / 2, String(length / 2), "middle");
  return { svg: out, width: length * one + textWidth(`${length} ${abbreviated}`, size) / 2 };
}

/** Both units of a thing, one shown: a settings script turns them by their `display`. */
export const inBothUnits = (shown: LengthUnit, draw: (unit: LengthUnit) => string): string =>
  (["yards", "metres"] as const)
    .map((unit) =>
      element(
        "g",
        { class: "plate-unit", [attr.unit]: unit, ...(unit === shown ? {} : { display: "none" }) },
        draw(unit),
      ),
    )
    .join("");
