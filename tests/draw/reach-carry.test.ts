/** The drawing of reach and carry shows what the measuring says of its example, in every language. */
import { describe, expect, test } from "vitest";
import { BUNKER, CORRIDOR_METRES, drawReachCarry, exampleFigures, LINE, POND } from "../../src/draw/reach-carry.ts";
import { distanceMetres } from "../../src/geo/vector.ts";
import { wholeIn, type LengthUnit } from "../../src/geo/units.ts";
import { corridorAbout, inCorridor } from "../../src/measure/corridor.ts";
import { LANGUAGES, words } from "../../src/site/language/words.ts";
import { formatLength } from "../../src/tell/format.ts";

const UNITS: readonly LengthUnit[] = ["yards", "metres"];
const { pond, bunker } = exampleFigures();

describe("the example of reach and carry", () => {
  test("has every part of both hazards in the corridor between reach and carry, and both can be carried", () => {
    const corridor = corridorAbout(LINE, CORRIDOR_METRES);
    for (const [ring, { reachMetres, farMetres, carryMetres }] of [
      [POND, pond],
      [BUNKER, bunker],
    ] as const) {
      const inside = ring
        .filter((point) => inCorridor(corridor, point))
        .map((point) => distanceMetres(LINE.points[0]!, point));
      expect(inside.length).toBeGreaterThan(5);
      for (const metres of inside) {
        expect(metres).toBeGreaterThanOrEqual(reachMetres - 1e-6);
        expect(metres).toBeLessThanOrEqual(farMetres + 1e-6);
      }
      expect(carryMetres).toBe(farMetres);
    }
    expect(pond.position).toBe("across");
    expect(bunker.position).toBe("right");
  });

  test("prints its measured reach rounded down and carry rounded up, and says them to those who do not see it", () => {
    for (const language of LANGUAGES) {
      const say = words(language);
      for (const unit of UNITS) {
        const length = (metres: number, rounding: "down" | "up"): string =>
          formatLength(metres, unit, say.tell.units, rounding).text;
        const svg = drawReachCarry({ idPrefix: "example", words: say.figures.drawing, length });
        const description = /<desc[^>]*>([^<]*)</.exec(svg)![1]!;
        for (const whole of [wholeIn(pond.reachMetres, unit, "down"), wholeIn(pond.farMetres, unit, "up")]) {
          expect(description).toContain(String(whole));
          expect(svg.replace(description, "")).toContain(`${whole}`);
        }
      }
    }
  });
});
