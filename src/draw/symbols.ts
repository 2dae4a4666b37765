/**
 * Small drawings: tufts and crowns strewn by the hundred, and the things a golfer aims at.
 * The strewn ones are SVG markers: one path lists the places and a marker is drawn at each
 * vertex, which is a fifth of the bytes of a `use` per tuft.
 * Each is drawn in plain view from the side, lit from the upper left, foot at the origin.
 */
import * as attr from "../contract/attributes.ts";
import { writeFlag, type FlagPlaces } from "../contract/values.ts";
import type { Point } from "../geo/position.ts";
import type { Painter } from "./palette.ts";
import { beadPath, element, num } from "./svg.ts";

export type StrewnSymbol =
  | "grass-a"
  | "grass-b"
  | "grass-c"
  | "heather-a"
  | "heather-b"
  | "gorse-a"
  | "gorse-b"
  | "tree-a"
  | "tree-b"
  | "reed";

const CROWN_SHADOW = "M-1 1.4c3-1 8-1 11 .2-2.6 1.5-8 1.8-10.6 1z";

function drawing(symbol: StrewnSymbol, paint: Painter): string {
  const path = (mark: Parameters<Painter>[0], d: string, more: Record<string, string | number> = {}): string =>
    element("path", { ...paint(mark), ...more, d });
  const strokes = (mark: "grass" | "heather", d: string, width: number): string =>
    path(mark, d, { "stroke-width": width, "stroke-linecap": "round" });
  switch (symbol) {
    case "grass-a":
      return strokes("grass", "M-2.2 0q.2-1.9-1.3-3.6M-.4 0q.2-2.9-.3-5.2M1.3 0q0-2.2 1.7-4.2", 0.65);
    case "grass-b":
      return strokes("grass", "M-1 0q.1-1.9-1-3.3M.6 0q.2-2 .9-3.9", 0.6);
    case "grass-c":
      return strokes("grass", "M-3 0q-.2-1.6-1.8-2.7M-1.3 0q.3-2.4-.6-4.7M.5 0q0-3 .5-5.6M2 0q.3-2 2-3.6", 0.65);
    case "heather-a":
      return strokes(
        "heather",
        "M-2 0q-.2-1.7-1.4-2.6M0 0v-3.2M2 0q.2-1.7 1.4-2.6M-3.6-3.4h.1M0-4.2h.1M3.5-3.4h.1",
        0.85,
      );
    case "heather-b":
      return strokes("heather", "M-1 0q-.1-1.4-.9-2.2M1 0q.1-1.4.9-2.2M-2.1-3h.1M2-3h.1", 0.85);
    case "reed":
      return strokes("grass", "M-1.4 0q.1-3-.7-5.6M.2 0v-7M1.6 0q0-3 .9-5.2", 0.7);
    case "gorse-a":
      return (
        path("shadow", CROWN_SHADOW, { opacity: ".32" }) +
        path(
          "gorse",
          "M-5 1.5c-1.7-1.3-1-3.4.5-3.8-.2-2 2.2-3.1 3.6-1.9C.2-6 3-5.5 3.3-3.4c2 .2 2.6 2.5 1.3 4C3 2.2-3 2.5-5 1.5z",
          { "stroke-width": 0.55 },
        ) +
        path("gorse-shade", "M4.6.6C5.9-.9 5.3-3.2 3.3-3.4c.9 1.6-.5 3.6-4.1 5 2.2.4 4.4 0 5.4-1z") +
        path("gorse-lit", "M-3.9-1.9c.1-1.4 1.6-2.2 2.8-1.5-1.2.1-2 .8-2.2 2.1z") +
        path("bloom", "M-2.3-.6h1.3v1.3h-1.3zM.4-3.6h1.2v1.2H.4zM-.1-1h1.1v1.1h-1.1z")
      );
    case "gorse-b":
      return (
        path("shadow", CROWN_SHADOW, { opacity: ".32" }) +
        path(
          "gorse",
          "M-3.8 1.2c-1.3-1-.9-2.8.4-3.1.1-1.9 2.3-2.7 3.6-1.5C2-4.2 3.7-2.7 3.3-1.2c1.2.6 1.1 2 .2 2.5-1.6.7-5.8.7-7.3-.1z",
          { "stroke-width": 0.55 },
        ) +
        path("gorse-shade", "M3.5 1.3c.9-.5 1-1.9-.2-2.5-.1 1.1-1.6 2.2-4.4 2.9 1.7.3 3.6.2 4.6-.4z") +
        path("bloom", "M-1.9-1.3h1.2V-.1h-1.2zM.5-2h1.1v1.1H.5z")
      );
    case "tree-a":
      return (
        path("shadow", "M-.5.6c4-1.3 9.5-1.3 14 .4-3.5 2-10 2.2-13.5 1z", { opacity: ".34" }) +
        path("tree-shade", "M-.8 1.5.8 1.5.6-4h-1.2z") +
        path(
          "tree",
          "M-3.4-1.9c-2.6-.3-3-3.4-1.1-4.5-.8-2.4 1.3-4.4 3.3-3.6C.2-12 3.6-11 3.7-8.5c2.3.4 2.8 3.3.9 4.5.1 2-2.2 3-3.8 1.9-1.2 1.1-3.2 1.1-4.2.2z",
          { "stroke-width": 0.65 },
        ) +
        path(
          "tree-shade",
          "M3.7-8.5c2.3.4 2.8 3.3.9 4.5.1 2-2.2 3-3.8 1.9-.7.7-1.7.9-2.6.8 2.8-.7 4.3-2.2 4.2-4 1.4-.7 1.8-2.1 1.3-3.2z",
        ) +
        path("tree-lit", "M-3.9-6.7c-.3-1.7 1-2.9 2.5-2.6-1.3.5-1.9 1.5-1.7 2.9z")
      );
    case "tree-b":
      return (
        path("shadow", "M-.4.5c3-1 7.5-1 10.5.3-2.6 1.6-7.5 1.8-10 .8z", { opacity: ".34" }) +
        path("tree-shade", "M-.6 1.2.6 1.2.5-3h-1z") +
        path(
          "tree",
          "M-2.7-1.3c-2-.4-2.2-2.7-.7-3.5-.5-1.9 1.2-3.3 2.7-2.6C.5-8.8 2.9-7.9 2.9-6c1.7.5 1.9 2.6.5 3.4-.1 1.5-1.8 2-2.9 1.2-.9.8-2.4.8-3.2.1z",
          { "stroke-width": 0.6 },
        ) +
        path(
          "tree-shade",
          "M2.9-6c1.7.5 1.9 2.6.5 3.4-.1 1.5-1.8 2-2.9 1.2-.5.4-1 .5-1.6.5C1-1.3 2.1-2.3 2-3.6c1-.5 1.3-1.5.9-2.4z",
        )
      );
  }
}

/** Definition of a strewn symbol at a scale. */
export const symbolMarker = (id: string, symbol: StrewnSymbol, scale: number, paint: Painter): string =>
  element(
    "marker",
    { id, markerUnits: "userSpaceOnUse", markerWidth: 1, markerHeight: 1, overflow: "visible" },
    scale === 1 ? drawing(symbol, paint) : element("g", { transform: `scale(${scale})` }, drawing(symbol, paint)),
  );

/** A marker at each of the points, in their order. */
export function beads(points: readonly Point[], markerId: string): string {
  if (points.length === 0) return "";
  // A path of one vertex has no markers in some renderers; a second, coincident one would draw it twice.
  const data = points.length === 1 ? `${beadPath(points)}h0` : beadPath(points);
  const url = `url(#${markerId})`;
  return element("path", {
    fill: "none",
    d: data,
    "marker-start": url,
    ...(points.length > 1 ? { "marker-end": url } : {}),
    ...(points.length > 2 ? { "marker-mid": url } : {}),
  });
}

export type LandmarkSymbol = "lighthouse" | "cairn" | "beacon" | "mast" | "tower";

/** How far a landmark's drawing reaches: left, up, right of its foot, at scale 1. */
export const LANDMARK_REACH: Readonly<Record<LandmarkSymbol, readonly [number, number, number]>> = {
  lighthouse: [7, 24, 12],
  cairn: [7, 11, 10],
  beacon: [5, 19, 8],
  mast: [7, 26, 8],
  tower: [6, 19, 10],
};

export const landmarkSymbol = (kind: string): LandmarkSymbol =>
  (kind in LANDMARK_REACH ? kind : "tower") as LandmarkSymbol;

/** A landmark, foot at the origin. */
export function landmark(symbol: LandmarkSymbol, paint: Painter, weight: number): string {
  const body = (d: string): string =>
    element("path", { ...paint("landmark"), "stroke-width": weight, "stroke-linejoin": "round", d });
  const dark = (d: string): string => element("path", { ...paint("landmark-ink"), d });
  const line = (d: string): string =>
    element("path", { ...paint("pole"), "stroke-width": weight, "stroke-linecap": "round", d });
  const shadow = (d: string): string => element("path", { ...paint("shadow"), opacity: ".32", d });
  switch (symbol) {
    case "lighthouse":
      return (
        shadow("M2 0c4-1.2 8-1 11 .5-3 1.3-9 1.7-13 1z") +
        body("M-3.6 0-2.2-15h4.4L3.6 0z") +
        dark("M.4 0 .4-15h1.8L3.6 0zM-3-6.5-2.7-10h5.4L3-6.5z") +
        body("M-3-15h6v-1.8h-6zM-1.9-16.8v-3.4h3.8v3.4zM-2.5-20.2 0-23l2.5 2.8z") +
        line("M-3.6-19.6-6.6-20.6M-3.6-18-6.8-17.6M3.6-19.6l3-1M3.6-18l3.2.4")
      );
    case "cairn":
      return (
        shadow("M2 .2c3-1 6-.8 8.5.4-2.6 1.1-6 1.3-9 .7z") +
        body(
          "M-6 .4c-.8-2.2 1.6-2.8 2-2.6-.4-2.6 1.2-2.9 1.8-2.8-.2-2.4.8-4.8 2.4-4.8 1.7 0 2.3 2.3 1.9 4.6 1.4-.2 2.2 1.2 1.8 2.8C5.7-2.6 6.7-1.2 6 .4z",
        ) +
        dark("M6 .4c.7-1.6-.3-3-2.1-2.8.4-1.6-.4-3-1.8-2.8.2-1.6 0-3-.6-3.9.5 2.6-.2 5.4-1 9.5z") +
        line("M-4-2.2 0-2M-2.2-5 1-5M-1.5 0l.3-1.8M.6-2.2.8-4.8")
      );
    case "beacon":
      return (
        shadow("M1 0c3-.9 6-.7 8 .4-2.5 1-6 1.2-8.5.6z") +
        line("M0 0v-13M-3 0h6") +
        body("M-3.6-12.5h7.2L0-18.5z") +
        dark("M0-12.5h3.6L0-18.5z")
      );
    case "mast":
      return (
        shadow("M1 0c3-.9 6-.7 8 .4-2.5 1-6 1.2-8.5.6z") +
        line("M0 0v-25M-5.5-17.5h11M-3.6-10.5 0-14.5l3.6 4M-5.5-17.5 0-21l5.5 3.5M-3 0 0-6 3 0") +
        dark("M0-25h4.2L3-23.5l1.2 1.5H0z")
      );
    case "tower":
      return (
        shadow("M2 0c4-1.2 7-1 10 .5-3 1.3-8 1.7-12 1z") +
        body("M-3.8 0v-15h-1v-3h1.8v1.4h1.6V-18h2.8v1.4H3V-18h1.8v3h-1V0z") +
        dark("M1.2 0v-15h2.6V0z")
      );
  }
}

/** The flag in the middle of a green; a page's script moves it to the third the golfer says the hole is cut in. */
export const flagOnGreen = (paint: Painter, scale: number, places: FlagPlaces): string =>
  element(
    "g",
    { transform: `translate(${places.middle.map(num).join(" ")})`, [attr.flag]: writeFlag(places, num) },
    flag(paint, scale),
  );

/** The flag: pole, pennant and the shadow both throw to the lower right. */
export function flag(paint: Painter, scale: number): string {
  const s = (d: string): string => d;
  return element(
    "g",
    { transform: `scale(${scale})` },
    element("path", {
      ...paint("shadow"),
      opacity: ".45",
      d: s("M0-.4 8.6-1.6 8.8-.9 0 .5z M8.4-1.7 14-4.2 15.5-.7 8.8-.6z"),
    }) +
      element("path", { ...paint("pole"), "stroke-width": 1.2, "stroke-linecap": "round", d: s("M0 0v-21") }) +
      element("path", {
        ...paint("flag"),
        "stroke-width": 0.6,
        "stroke-linejoin": "round",
        d: s("M.3-21c3.5-1.3 5.2 1.1 10 .2-1.6 1.7-1.8 2.8-1 4.9-4 .9-5.8-1.2-9 0z"),
      }) +
      element("ellipse", { ...paint("landmark-ink"), cx: 0, cy: 0, rx: 1.6, ry: 1 }),
  );
}
