/**
 * Where photos were taken, on a plate: an eye with a letter, and what it looks at as a cone
 * of sight. The letter stands under the photo too.
 */
import type { Box } from "../geo/box.ts";
import type { Point } from "../geo/position.ts";
import { directionTo, distanceMetres } from "../geo/vector.ts";
import type { Hole, Viewpoint } from "../course/types.ts";
import { centreOf } from "../measure/place.ts";
import type { MeasuredHole } from "../measure/types.ts";
import { Lettering, type TextLine } from "./lettering.ts";
import type { PlateContext } from "./plate-context.ts";
import { drawnTee } from "./sheet.ts";
import { element, num } from "./svg.ts";

/** `from: tee`, the default tee's marker; a feature of that id goes before. */
const TEE = "tee";

export interface PhotoMarks {
  readonly svg: string;
  /** Room they take on the sheet. */
  readonly boxes: readonly Box[];
}

/** A letter for each photo of a hole that says where it was taken, in order; undefined for the others. */
export function photoLetters({ photos }: Pick<Hole, "photos">): (string | undefined)[] {
  let next = 0;
  return photos.map(({ taken }) => (taken === undefined ? undefined : letter(next++)));
}

/** A to Z, then AA. */
const letter = (index: number): string =>
  (index < 26 ? "" : letter(Math.floor(index / 26) - 1)) + String.fromCharCode(65 + (index % 26));

/** Where a camera stood in the course's plane, and the unit direction it looked in. */
export function viewOf(
  hole: MeasuredHole,
  { at, from, towards }: Viewpoint,
): { readonly point: Point; readonly direction: Point | undefined } | undefined {
  const placed = (id: string): Point | undefined => {
    const found = hole.placed.get(id);
    return found && centreOf(found.shape);
  };
  const point =
    at !== undefined
      ? hole.frame.toPlane(at)
      : from === undefined
        ? undefined
        : (placed(from) ?? (from === TEE ? drawnTee(hole).marker : undefined));
  if (point === undefined) return undefined;
  const target = towards === undefined ? undefined : placed(towards);
  return { point, direction: target && distanceMetres(point, target) > 1 ? directionTo(point, target) : undefined };
}

/**
 * Sizes in sheet units at a drawing scale of 1: the eye's half width, its clearance, the cone's reach and
 * half angle.
 */
const EYE = 6.6;
const CLEAR = 14;
const REACH = 24;
const HALF_ANGLE = 0.34;

/**
 * The marks of a hole's photos. One on a tee marker steps back from it, away from what it
 * looks at; one beyond the sheet waits at its edge.
 */
export function drawPhotoMarks({ sheet, composition: c, paint }: PlateContext, hole: MeasuredHole): PhotoMarks {
  const scale = Math.sqrt(c.drawing);
  const letters = photoLetters(hole.hole);
  const markers = hole.tees.map((tee) => sheet.toSheet(tee.marker));
  const lettering = new Lettering(paint, c.text.halo);
  const boxes: Box[] = [];
  let svg = "";
  hole.hole.photos.forEach(({ taken }, i) => {
    const view = taken && viewOf(hole, taken);
    if (!view) return;
    const ahead = view.direction && onSheet(view.direction, sheet.toSheet);
    const [minX, minY, maxX, maxY] = sheet.map;
    const inset = (EYE + 3) * scale;
    let at: Point = clamp(sheet.toSheet(view.point), [
      minX + inset,
      minY + inset,
      maxX - inset,
      maxY - inset - c.text.note,
    ]);
    const back: Point = ahead ? [-ahead[0], -ahead[1]] : [0, 1];
    const others = [...markers, ...boxes.map(([x0, y0, x1, y1]): Point => [(x0 + x1) / 2, (y0 + y1) / 2])];
    for (let step = 0; step < 6 && others.some((other) => distanceMetres(other, at) < CLEAR * scale); step++) {
      at = clamp(
        [at[0] + back[0] * CLEAR * scale * 0.5, at[1] + back[1] * CLEAR * scale * 0.5],
        [minX + inset, minY + inset, maxX - inset, maxY - inset - c.text.note],
      );
    }
    svg += (ahead ? cone(at, ahead, scale) : "") + eye(at, scale);
    const line: TextLine = { text: letters[i]!, mark: "name", size: c.text.note, weight: "heavy" };
    const below: Point = [at[0], at[1] + EYE * scale * 0.7 + c.text.note * 0.62];
    lettering.set([line], below);
    boxes.push([
      at[0] - EYE * scale - 1,
      at[1] - EYE * scale * 0.8,
      at[0] + EYE * scale + 1,
      below[1] + c.text.note * 0.5,
    ]);
  });
  return svg === ""
    ? { svg, boxes }
    : { svg: element("g", { class: "plate-photos" }, svg + lettering.toString()), boxes };

  function cone([x, y]: Point, [dx, dy]: Point, size: number): string {
    const arm = (angle: number, reach: number): string => {
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      return `${num(x + (dx * cos - dy * sin) * reach)} ${num(y + (dx * sin + dy * cos) * reach)}`;
    };
    const reach = REACH * size;
    return (
      element("path", {
        ...paint("paper"),
        opacity: 0.55,
        d: `M${num(x)} ${num(y)}L${arm(-HALF_ANGLE, reach)}A${num(reach)} ${num(reach)} 0 0 1 ${arm(HALF_ANGLE, reach)}Z`,
      }) +
      element("path", {
        ...paint("leader"),
        "stroke-width": c.fine,
        "stroke-linecap": "round",
        d: `M${arm(-HALF_ANGLE, EYE * size)}L${arm(-HALF_ANGLE, reach)}M${arm(HALF_ANGLE, EYE * size)}L${arm(HALF_ANGLE, reach)}`,
      })
    );
  }

  /** Always level: turned with the view it would no longer look like an eye. */
  function eye([x, y]: Point, size: number): string {
    const [w, h] = [num(EYE * size), num(EYE * size * 0.95)];
    return element(
      "g",
      { transform: `translate(${num(x)} ${num(y)})` },
      element("path", { ...paint("spot"), "stroke-width": c.medium, d: `M-${w} 0Q0-${h} ${w} 0Q0 ${h}-${w} 0Z` }) +
        element("circle", { ...paint("frame-ink"), r: num(EYE * size * 0.36) }),
    );
  }
}

/** A direction in the plane as one on the sheet, where y runs down. */
function onSheet(direction: Point, toSheet: (point: Point) => Point): Point {
  return directionTo(toSheet([0, 0]), toSheet(direction));
}

const clamp = ([x, y]: Point, [minX, minY, maxX, maxY]: Box): Point => [
  Math.min(maxX, Math.max(minX, x)),
  Math.min(maxY, Math.max(minY, y)),
];
