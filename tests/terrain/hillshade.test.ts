import { describe, expect, it } from "vitest";
import { gridOf } from "../../src/terrain/grid.ts";
import { hillshade } from "../../src/terrain/hillshade.ts";
import { FIELD, gridOfField, plane } from "./surfaces.ts";

const middle = (grid: { columns: number; rows: number }): number =>
  Math.floor(grid.rows / 2) * grid.columns + Math.floor(grid.columns / 2);

/**
 * Lambert's cosine on a plane that falls by `rise` toward a compass direction, lamp at azimuth and altitude:
 * spherical law.
 */
function expectedShade(slope: number, downhill: number, azimuth: number, altitude: number): number {
  const rad = Math.PI / 180;
  const cosine =
    Math.sin(altitude * rad) * Math.cos(slope) +
    Math.cos(altitude * rad) * Math.sin(slope) * Math.cos((azimuth - downhill) * rad);
  return 1 + 254 * Math.max(0, cosine);
}

describe("hillshade", () => {
  it("is the sine of the lamp's altitude on level ground", () => {
    const grid = gridOfField(() => 3);
    expect(hillshade(grid)[middle(grid)]).toBe(Math.round(1 + 254 * Math.SQRT1_2));
    expect(hillshade(grid, { altitudeDegrees: 90 })[middle(grid)]).toBe(255);
  });

  it.each([
    [0, 45],
    [90, 30],
    [217, 60],
    [315, 45],
  ])("follows the spherical law on a plane, lamp %d / %d", (azimuth, altitude) => {
    const steep = gridOfField((point) => 10 * plane(point));
    const downhill = 180 + (Math.atan2(4, 3) * 180) / Math.PI;
    const shade = hillshade(steep, { fromSheetDegrees: azimuth, altitudeDegrees: altitude })[middle(steep)]!;
    expect(Math.abs(shade - expectedShade(Math.atan(0.5), downhill, azimuth, altitude))).toBeLessThanOrEqual(0.51);
  });

  it("keeps the light at the sheet's upper left whichever way the sheet is turned", () => {
    const grid = gridOfField((point) => 10 * plane(point));
    const turned = hillshade(grid, { fromSheetDegrees: 315, sheetTopDegrees: 130 });
    expect(turned).toEqual(hillshade(grid, { fromSheetDegrees: 315 + 130 }));
    expect(turned).not.toEqual(hillshade(grid));
  });

  it("exaggerates by counting heights more often", () => {
    const gentle = gridOfField(plane);
    const steep = gridOfField((point) => 5 * plane(point));
    expect(hillshade(gentle, { exaggeration: 5 })[middle(gentle)]).toBe(hillshade(steep)[middle(steep)]);
  });

  it("is 1 where no light falls and 0 where nothing is known", () => {
    const wall = gridOf(FIELD, 1, ([x]) => (x === 20 ? undefined : -5 * x));
    const shades = hillshade(wall, { fromSheetDegrees: 270, altitudeDegrees: 20 });
    expect(shades[middle(wall)]).toBe(1);
    expect(shades[60 * wall.columns + 79]).toBe(0);
    expect(shades[60 * wall.columns + 82]).toBe(1);
    expect(shades[5]).toBe(0);
  });
});
