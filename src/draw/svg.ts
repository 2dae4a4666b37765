/**
 * Writing SVG small: escaped text, short numbers and relative path data. Sheet units are
 * CSS pixels at the sheet's natural size; coordinates are rounded to a tenth of one, which
 * on a plate is some 3 to 6 cm of ground.
 */
import type { Point } from "../geo/position.ts";

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text made safe between tags and inside quoted attributes; characters XML 1.0 forbids are dropped. */
export const escapeXml = (text: string): string =>
  text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, "").replace(/[&<>"']/g, (c) => ENTITIES[c]!);

/** A number to one decimal without a leading or trailing zero: `12`, `-.5`. */
export const num = (value: number): string => tenths(Math.round(value * 10));

function tenths(n: number): string {
  if (n === 0) return "0";
  const sign = n < 0 ? "-" : "";
  const whole = Math.floor(Math.abs(n) / 10);
  const rest = Math.abs(n) % 10;
  if (rest === 0) return `${sign}${whole}`;
  return `${sign}${whole === 0 ? "" : whole}.${rest}`;
}

/** Numbers in tenths, joined with no more separators than SVG's path grammar needs. */
function packed(values: readonly number[]): string {
  let text = "";
  let previousHasDot = false;
  values.forEach((value, i) => {
    const next = tenths(value);
    const separate = i > 0 && next[0] !== "-" && !(next[0] === "." && previousHasDot);
    text += separate ? ` ${next}` : next;
    previousHasDot = next.includes(".");
  });
  return text;
}

const round = ([x, y]: Point, grain = 1): [number, number] => [
  Math.round((x * 10) / grain) * grain,
  Math.round((y * 10) / grain) * grain,
];

/**
 * A path of straight pieces. Steps are taken between rounded points, so that rounding
 * never adds up along the path.
 */
export function polyPath(points: readonly Point[], closed: boolean): string {
  if (points.length === 0) return "";
  let [x, y] = round(points[0]!);
  let data = `M${packed([x, y])}`;
  const steps: number[] = [];
  for (let i = 1; i < points.length; i++) {
    const [nx, ny] = round(points[i]!);
    if (nx === x && ny === y) continue;
    steps.push(nx - x, ny - y);
    [x, y] = [nx, ny];
  }
  if (steps.length > 0) data += `l${packed(steps)}`;
  return closed ? `${data}z` : data;
}

/**
 * A smooth path through points that lie about evenly: a uniform Catmull-Rom spline. Its
 * control points mirror each other at every knot, so SVG's `s` says each piece with two
 * points instead of three.
 */
export function smoothPath(points: readonly Point[], closed: boolean): string {
  const n = points.length;
  if (n < 3) return polyPath(points, closed);
  const at = (i: number): Point => (closed ? points[((i % n) + n) % n]! : points[Math.max(0, Math.min(n - 1, i))]!);
  const tangent = (i: number): Point => [(at(i + 1)[0] - at(i - 1)[0]) / 6, (at(i + 1)[1] - at(i - 1)[1]) / 6];
  let [x, y] = round(points[0]!);
  let data = `M${packed([x, y])}`;
  const first = tangent(0);
  const steps: number[] = [];
  const last = closed ? n : n - 1;
  for (let i = 1; i <= last; i++) {
    const end = at(i);
    const [tx, ty] = tangent(i);
    const [cx, cy] = round([end[0] - tx, end[1] - ty]);
    const [nx, ny] = round(end);
    if (i === 1)
      data += `c${packed([Math.round(first[0] * 10), Math.round(first[1] * 10), cx - x, cy - y, nx - x, ny - y])}`;
    else steps.push(cx - x, cy - y, nx - x, ny - y);
    [x, y] = [nx, ny];
  }
  if (steps.length > 0) data += `s${packed(steps)}`;
  return closed ? `${data}z` : data;
}

/**
 * Many small shapes of straight pieces as one path; each begins by a step from where the
 * last one began or ended.
 *
 * @param grain tenths that coordinates are rounded to: strewn marks need no fine places
 */
export function polyPaths(shapes: readonly (readonly Point[])[], closed: boolean, grain = 1): string {
  let [x, y] = [0, 0];
  let data = "";
  for (const shape of shapes) {
    if (shape.length === 0) continue;
    const [startX, startY] = round(shape[0]!, grain);
    data += `${data === "" ? "M" : "m"}${packed([startX - x, startY - y])}`;
    [x, y] = [startX, startY];
    const steps: number[] = [];
    for (let i = 1; i < shape.length; i++) {
      const [nx, ny] = round(shape[i]!, grain);
      if (nx === x && ny === y) continue;
      steps.push(nx - x, ny - y);
      [x, y] = [nx, ny];
    }
    if (steps.length > 0) data += `l${packed(steps)}`;
    if (!closed) continue;
    // Closing returns to the shape's start, from where the next step is taken.
    data += "z";
    [x, y] = [startX, startY];
  }
  return data;
}

/** Points, to a whole unit, as one subpath that markers can be hung on: `M x y l dx dy ...`. */
export const beadPath = (points: readonly Point[]): string => polyPaths([points], false, 10);

/** Zero-length strokes, to half a unit: with round caps each is a dot. */
export function dotPath(points: readonly Point[]): string {
  let [x, y] = [0, 0];
  let data = "";
  points.forEach((point, i) => {
    const [nx, ny] = round(point, 5);
    data += `${i === 0 ? "M" : "m"}${packed([nx - x, ny - y])}h0`;
    [x, y] = [nx, ny];
  });
  return data;
}

/** A number to two decimals: weights and opacities need more than a place on the sheet does. */
function fine(value: number): string {
  const text = String(Math.round(value * 100) / 100);
  return Math.abs(value) < 1 ? text.replace(/^(-?)0\./, "$1.") : text;
}

/** Attributes in the order given; undefined ones are left out. */
export function attributes(values: Readonly<Record<string, string | number | undefined>>): string {
  let text = "";
  for (const [name, value] of Object.entries(values)) {
    if (value === undefined) continue;
    text += ` ${name}="${typeof value === "number" ? fine(value) : escapeXml(value)}"`;
  }
  return text;
}

/** An element; without content it closes itself, and a group or text without content is left out. */
export function element(
  name: string,
  values: Readonly<Record<string, string | number | undefined>>,
  content?: string,
): string {
  if (content === undefined) return `<${name}${attributes(values)}/>`;
  if (content === "" && (name === "g" || name === "text")) return "";
  return `<${name}${attributes(values)}>${content}</${name}>`;
}
