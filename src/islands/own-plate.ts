/** The golfer's own drive on the plates of the page: an arc across the shot corridor, as far from the tee as it carries. */
import { arcAt } from "../draw/arcs.ts";
import { lineThrough } from "../geo/line.ts";
import type { LengthUnit } from "../geo/units.ts";
import { formatLength, type UnitWords } from "../tell/format.ts";
import type { FromTee } from "./conditions-data.ts";
import type { LengthsWords } from "./lengths-words.ts";
import { fill } from "./map/words.ts";

export interface OwnArc {
  readonly from: FromTee;
  readonly corridorMetres: number;
  /** What the driver carries; undefined draws none. */
  readonly carryMetres: number | undefined;
}

/** A plate's place on the measuring plane, as `data-plane` has it: x of the sheet is `a·x + c·y + e`, y is `b·x + d·y + f`. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export function matrixOf(written: string | null): Matrix | undefined {
  const numbers = (written ?? "").split(" ").map(Number);
  return numbers.length === 6 && numbers.every(Number.isFinite) && written !== "" ? (numbers as unknown as Matrix) : undefined;
}

export interface ArcOnSheet {
  /** Path data. */
  readonly path: string;
  /** Where its figure stands: at the left end. */
  readonly label: readonly [x: number, y: number];
}

const place = (value: number): string => value.toFixed(1);

/** Undefined where the drive is as long as the hole. */
export function arcOnSheet({ from: { marker, line }, corridorMetres, carryMetres }: OwnArc, [a, b, c, d, e, f]: Matrix): ArcOnSheet | undefined {
  if (carryMetres === undefined) return undefined;
  const arc = arcAt({ line: lineThrough(line), marker }, carryMetres, corridorMetres);
  if (arc === undefined) return undefined;
  const [left, right] = [arc.left, arc.right].map(([x, y]) => [a * x + c * y + e, b * x + d * y + f] as const) as [readonly [number, number], readonly [number, number]];
  const radius = place(carryMetres * Math.hypot(a, b));
  return { path: `M${place(left[0])} ${place(left[1])}A${radius} ${radius} 0 0 1 ${place(right[0])} ${place(right[1])}`, label: left };
}

const SVG = "http://www.w3.org/2000/svg";

function piece(name: string, attributes: Readonly<Record<string, string>>): SVGElement {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  return element;
}

/** What is drawn now, for a plate that arrives later: a wide screen's. */
let drawn: (() => void) | undefined;
let watching = false;

/** Draws the arc on every plate of the page, in place of an earlier one. */
export function showOwnArc(own: OwnArc | undefined, units: LengthUnit, words: LengthsWords, unitWords: UnitWords): void {
  drawn = () => {
    for (const plate of document.querySelectorAll<SVGSVGElement>("svg[data-plane]")) {
      plate.querySelector("[data-own-arc]")?.remove();
      const matrix = matrixOf(plate.getAttribute("data-plane"));
      const arc = own && matrix && arcOnSheet(own, matrix);
      if (arc === undefined || own?.carryMetres === undefined) continue;
      const group = piece("g", { "data-own-arc": "", class: "own-arc" });
      const figure = piece("text", { class: "plate-figure", x: place(arc.label[0]), y: place(arc.label[1]), dy: "-3", "stroke-width": "3", "paint-order": "stroke", "font-size": "12", "font-weight": "600" });
      figure.textContent = fill(words.arc, { length: formatLength(own.carryMetres, units, unitWords).text });
      group.append(
        piece("path", { class: "plate-casing", d: arc.path, "stroke-width": "5", opacity: "0.7" }),
        piece("path", { class: "own-arc-line", d: arc.path }),
        figure,
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
