import { describe, expect, it } from "vitest";
import { decodeTerrarium } from "../../src/terrain/terrarium.ts";
import { encodeTerrarium, TERRARIUM_STEP_METRES } from "../support/terrarium.ts";

describe("terrarium", () => {
  // Published: tilezen/joerd, docs/formats.md.
  it("encodes and decodes the format note's example", () => {
    expect(encodeTerrarium(2523.266)).toEqual([137, 219, 68]);
    expect(decodeTerrarium([137, 219, 68])).toBe(2523.265625);
    expect(encodeTerrarium(-11000)).toEqual([85, 8, 0]);
  });

  it("encodes 8,900 m as the formula has it; the note's table prints 198, which decodes to 8,902", () => {
    expect(encodeTerrarium(8900)).toEqual([162, 196, 0]);
    expect(decodeTerrarium([162, 198, 0])).toBe(8902);
  });

  // Computed from the formula, regression.
  it.each([
    [0, [128, 0, 0]],
    [100, [128, 100, 0]],
    [-1.5, [127, 254, 128]],
    [12.34, [128, 12, 87]],
  ] as const)("encodes %f", (height, rgb) => expect(encodeTerrarium(height)).toEqual(rgb));

  it("is at most one step low and never high", () => {
    for (let k = 0; k < 2000; k++) {
      const height = -500 + k * 4.7713;
      const off = height - decodeTerrarium(encodeTerrarium(height));
      expect(off).toBeGreaterThanOrEqual(0);
      expect(off).toBeLessThan(TERRARIUM_STEP_METRES);
    }
  });

  it("holds its extremes and refuses what is beyond them", () => {
    expect(encodeTerrarium(-32768)).toEqual([0, 0, 0]);
    expect(encodeTerrarium(32767.999)).toEqual([255, 255, 255]);
    for (const height of [32768, -32768.01, NaN, Infinity]) expect(() => encodeTerrarium(height)).toThrow(RangeError);
  });
});
