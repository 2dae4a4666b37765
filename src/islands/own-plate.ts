/**
 * The golfer's own drive on the plates of the page: an arc across the shot corridor, as far from the tee as
 * it carries.
 */
import * as attr from "../contract/attributes.ts";
import { planeOf, type Plane } from "../contract/values.ts";
import { arcAt } from "../draw/arcs.ts";
import { lineThrough } from "../geo/line.ts";
import type { LengthUnit } from "../geo/units.ts";
import { formatLength } from "../tell/format.ts";
import type { IslandWords } from "../words/island-words.ts";
import type { UnitWords } from "../words/words.ts";
import type { FromTee } from "../contract/ground-data.ts";

export interface OwnArc {
  readonly from: FromTee;
  readonly corridorMetres: number;
  /** What the driver carries; undefined draws none. */
  readonly carryMetres: number | undefined;
}

export interface ArcOnSheet {
  /** Path data. */
  readonly path: string;
  /** Its left end, where its figure stands, and which way the arc goes on from there. */
  readonly left: readonly [x: number, y: number];
  readonly outward: readonly [x: number, y: number];
}

const place = (value: number): string => value.toFixed(1);

/** Undefined where the drive is as long as the hole. */
export function arcOnSheet(
  { from: { marker, line }, corridorMetres, carryMetres }: OwnArc,
  [a, b, c, d, e, f]: Plane,
): ArcOnSheet | undefined {
  if (carryMetres === undefined) return undefined;
  const arc = arcAt({ line: lineThrough(line), marker }, carryMetres, corridorMetres);
  if (arc === undefined) return undefined;
  const [left, right] = [arc.left, arc.right].map(([x, y]) => [a * x + c * y + e, b * x + d * y + f] as const) as [
    readonly [number, number],
    readonly [number, number],
  ];
  const radius = place(carryMetres * Math.hypot(a, b));
  const across = Math.hypot(left[0] - right[0], left[1] - right[1]) || 1;
  return {
    path: `M${place(left[0])} ${place(left[1])}A${radius} ${radius} 0 0 1 ${place(right[0])} ${place(right[1])}`,
    left,
    outward: [(left[0] - right[0]) / across, (left[1] - right[1]) / across],
  };
}

const SVG = "http://www.w3.org/2000/svg";

function piece(name: string, attributes: Readonly<Record<string, string>>): SVGElement {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  return element;
}

const LINE = 13;

/** Two short lines beyond the arc's left end; within the sheet's width. */
function figureAt(
  { left: [x, y], outward: [dx, dy] }: ArcOnSheet,
  lines: readonly string[],
  width: number,
): SVGElement {
  const sideways = Math.abs(dx) >= Math.abs(dy);
  const anchor = !sideways ? "middle" : dx < 0 ? "end" : "start";
  const half = 34;
  const at = sideways ? x + Math.sign(dx) * 4 : Math.min(Math.max(x, half), width - half);
  // Too near the sheet's edge it stands over the arc instead.
  const fits = anchor === "end" ? at > 2 * half : anchor === "start" ? at < width - 2 * half : true;
  const top = sideways ? (fits ? y - LINE * 0.1 : y - LINE * 1.6) : dy < 0 ? y - LINE * 1.4 : y + LINE * 1.1;
  const text = piece("text", {
    class: "plate-figure",
    "text-anchor": fits ? anchor : anchor === "end" ? "start" : "end",
    "stroke-width": "3",
    "paint-order": "stroke",
    "stroke-linejoin": "round",
    "font-size": "12",
    "font-weight": "600",
  });
  lines.forEach((line, i) => {
    const part = piece("tspan", { x: place(at), y: place(top + i * LINE) });
    part.textContent = line;
    text.append(part);
  });
  return text;
}

/** What is drawn now, for a plate that arrives later: a wide screen's. */
let drawn: (() => void) | undefined;
let watching = false;

/** Draws the arc on every plate of the page, in place of an earlier one. */
export function showOwnArc(
  own: OwnArc | undefined,
  units: LengthUnit,
  words: IslandWords["lengths"],
  unitWords: UnitWords,
): void {
  drawn = () => {
    for (const plate of document.querySelectorAll<SVGSVGElement>(`svg[${attr.plane}]`)) {
      plate.querySelector(`[${attr.ownArc}]`)?.remove();
      const plane = planeOf(plate.getAttribute(attr.plane));
      const arc = own && plane && arcOnSheet(own, plane);
      if (arc === undefined || own?.carryMetres === undefined) continue;
      const group = piece("g", { [attr.ownArc]: "", class: "own-arc" });
      const { text } = formatLength(own.carryMetres, units, unitWords);
      group.append(
        piece("path", { class: "plate-casing", d: arc.path, "stroke-width": "5", opacity: "0.7" }),
        piece("path", { class: "own-arc-line", d: arc.path }),
        figureAt(arc, [words.arc, text], plate.viewBox.baseVal.width),
      );
      // Under the frame: the map's own window cuts it off.
      (plate.querySelector(":scope > g[clip-path]") ?? plate).append(group);
    }
  };
  drawn();
  if (watching) return;
  watching = true;
  const plates = document.querySelector("#live-map");
  if (plates === null) return;
  new MutationObserver((changes) => {
    if (changes.some(({ addedNodes }) => [...addedNodes].some((node) => node instanceof SVGSVGElement))) drawn?.();
  }).observe(plates, { childList: true });
}
