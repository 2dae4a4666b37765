/** The photo from the air as a layer of the live map. */
import { expect, test } from "vitest";
import { holeData } from "../../src/site/files/hole-data.ts";
import { mapColours } from "../../src/islands/map/colours.ts";
import { tilesFrom } from "../../src/islands/map/tiles.ts";
import { mapStyle } from "../../src/islands/map/style.ts";
import { sample } from "./sample.ts";

const tiles = {
  tiles: "../air/{z}/{x}/{y}.webp",
  minimumZoom: 14,
  maximumZoom: 18,
  bounds: [-9.01, 56.5, -8.99, 56.51] as const,
};
const data = holeData(sample().holes[0]!, "yards");
const style = (shown: boolean | undefined) =>
  mapStyle({
    colours: mapColours("light", () => ""),
    features: data.features,
    origin: data.origin,
    line: undefined,
    fonts: ["serif"],
    bunkersFromZoom: 0,
    ground: undefined,
    photo: shown === undefined ? undefined : { tiles, shown },
  });

test("its address is made absolute with its places for zoom and tile left open", () => {
  expect(tilesFrom(tiles, new URL("https://example.org/guide/links/7/hole.json"))!.tiles).toBe(
    "https://example.org/guide/links/air/{z}/{x}/{y}.webp",
  );
  expect(tilesFrom(undefined, new URL("https://example.org/"))).toBeUndefined();
});

test("it lies over the painted ground and under stakes, boundaries, lines of play and names", () => {
  const ids = style(true).layers.map(({ id }) => id);
  const at = ids.indexOf("photo");
  expect(at).toBeGreaterThan(ids.indexOf("green"));
  for (const above of ["penalty-yellow", "penalty-red", "boundary", "pins"])
    expect(ids.indexOf(above), above).toBeGreaterThan(at);
  expect(ids.filter((id) => id !== "photo")).toEqual(style(undefined).layers.map(({ id }) => id));
});

test("hidden until asked for, so that none of it is fetched", () => {
  const layer = (shown: boolean) => style(shown).layers.find(({ id }) => id === "photo");
  expect([layer(false), layer(true)].map((one) => one?.layout)).toEqual([
    { visibility: "none" },
    { visibility: "visible" },
  ]);
  expect(style(false).sources["photo"]).toMatchObject({
    type: "raster",
    tileSize: 256,
    minzoom: 14,
    maxzoom: 18,
    bounds: [-9.01, 56.5, -8.99, 56.51],
  });
  expect(style(undefined).sources["photo"]).toBeUndefined();
});
